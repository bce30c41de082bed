#!/usr/bin/env bash
# Takes the pictures of the README anew, from the example pieces. Needs chromium, Node.js and ImageMagick (convert).
set -euo pipefail
cd "$(dirname "$0")/../.."

# The bench with an empty shelf, so with the examples on it.
shelf=$(mktemp -d)
dotnet build -c Release -v q src/Coilwright.Web
dotnet src/Coilwright.Web/bin/Release/net10.0/Coilwright.Web.dll --port 0 --shelf "$shelf/shelf" >"$shelf/said" &
bench=$!
trap 'kill "$bench"; rm -rf "$shelf"' EXIT
until address=$(grep -o 'http://[0-9.:]*' "$shelf/said"); do kill -0 "$bench"; sleep 0.2; done

picture() { # NAME WIDTH HEIGHT light|dark
  node docs/pictures/look.mjs "$address" "$shelf/picture.png" "$2" "$3" "$4"
  # Few inks: so small a palette takes nothing from it that an eye would miss, and half of its bytes.
  convert "$shelf/picture.png" -strip -colors 255 -define png:compression-level=9 "png8:docs/pictures/$1.png"
}
picture bench-desk 1440 1150 light
picture bench-tablet 820 1180 dark
picture bench-phone 360 780 light
