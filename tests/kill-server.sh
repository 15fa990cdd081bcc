#!/usr/bin/env bash
# Kills the server (SIGKILL) while it saves, and checks that every acknowledged save is there, the database opens and
# the history is whole. Usage: tests/kill-server.sh [TIMES] [SEED]; 20 times unless told, 200 before a release.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
exec dotnet run --project tests/Clothwright.PowerCut -- "${1:-20}" "${2:-1}"
