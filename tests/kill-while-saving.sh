#!/usr/bin/env bash
# Kills a program with kill -9 while it saves, 200 times or as many as asked for, and shows that no edit is lost that it was told was kept.
# In a folder of its own; or, after the number, in the empty database of an address.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet build -c Release -v q tests/Coilwright.KillWhileSaving
exec dotnet tests/Coilwright.KillWhileSaving/bin/Release/net10.0/Coilwright.KillWhileSaving.dll check "${@:-200}"
