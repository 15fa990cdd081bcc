#!/usr/bin/env bash
# Times the main command from start to files written, five times, after a Release build, then planning itself for every sample.
# Prints; asserts nothing.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
dotnet build -c Release -v q --nologo src/Clothwright.Cli >/dev/null
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
for _ in 1 2 3 4 5; do
  begun=$(date +%s%N)
  dotnet artifacts/bin/Clothwright.Cli/release/clothwright.dll plan samples/reedbed-scarves.json --out "$out" >/dev/null
  echo "plan, start to files written: $((($(date +%s%N) - begun) / 1000000)) ms"
done
dotnet build -c Release -v q --nologo bench/Clothwright.Benchmarks >/dev/null
dotnet artifacts/bin/Clothwright.Benchmarks/release/Clothwright.Benchmarks.dll plan samples
