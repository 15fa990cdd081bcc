#!/usr/bin/env bash
# Times the main command from start to files written, five times, after a Release build, then planning itself for every sample.
# Processor time stands beside the clock's: on a machine busy with other work only the former means much. Prints; asserts nothing.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
dotnet build -c Release -v q --nologo src/Clothwright.Cli >/dev/null
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
TIMEFORMAT='plan, start to files written: %R s by the clock, %U s + %S s of processor'
for _ in 1 2 3 4 5; do
  time dotnet artifacts/bin/Clothwright.Cli/release/clothwright.dll plan samples/reedbed-scarves.json --out "$out" >/dev/null
done
dotnet build -c Release -v q --nologo bench/Clothwright.Benchmarks >/dev/null
dotnet artifacts/bin/Clothwright.Benchmarks/release/Clothwright.Benchmarks.dll plan samples
