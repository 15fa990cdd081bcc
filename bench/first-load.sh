#!/usr/bin/env bash
# Publishes the server and times the opening of its page, cold and warm, in Debian's Chromium. Prints; asserts nothing.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
dotnet publish src/Clothwright.Server -c Release -o artifacts/bench-studio -v q --nologo
dotnet run -c Release --project bench/Clothwright.FirstLoad -- artifacts/bench-studio "${1:-5}"
