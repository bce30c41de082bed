#!/usr/bin/env bash
# Draws the pictures of the README anew from the example pieces. Needs rsvg-convert (librsvg2-bin) for the PNG.
set -euo pipefail
cd "$(dirname "$0")/../.."
dotnet run --project src/Coilwright.Cli -- reckon examples/tidewrack.piece.json --draw docs/pictures/turn-rows.svg >/dev/null
rsvg-convert --width 1600 docs/pictures/turn-rows.svg --output docs/pictures/turn-rows.png
