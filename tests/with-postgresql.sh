#!/usr/bin/env bash
# Runs a command beside a PostgreSQL server of its own, which is gone afterwards; CLOTHWRIGHT_POSTGRESQL tells the command where it is.
# Usage: tests/with-postgresql.sh dotnet test tests/Clothwright.Storage.PostgreSql.Tests
set -euo pipefail
programs=$(find /usr/lib/postgresql -maxdepth 2 -name bin -type d 2>/dev/null | sort -V | tail -n 1)
[ -n "$programs" ] || { echo "with-postgresql: PostgreSQL is not installed (apt-get install postgresql)" >&2; exit 1; }
folder=$(mktemp -d)
# Its server does not run as root.
own() { if [ "$(id -u)" -eq 0 ]; then runuser -u postgres -- "$@"; else "$@"; fi; }
[ "$(id -u)" -ne 0 ] || chown postgres "$folder"
end() { own "$programs/pg_ctl" -D "$folder/data" -m immediate -s stop >/dev/null 2>&1 || true; rm -rf "$folder"; }
trap end EXIT
cd "${TMPDIR:-/tmp}"
own "$programs/initdb" -D "$folder/data" -U clothwright -A trust -E UTF8 --locale=C.UTF-8 --no-sync >"$folder.log" 2>&1 || { cat "$folder.log" >&2; exit 1; }
rm -f "$folder.log"
for _ in 1 2 3 4 5; do
  port=$((20000 + RANDOM % 20000))
  if own "$programs/pg_ctl" -D "$folder/data" -s -w -t 60 -l "$folder/data/server.log" \
    -o "-p $port -c listen_addresses=127.0.0.1 -c unix_socket_directories=$folder -c max_connections=200 -c fsync=off" start; then
    started=$port; break
  fi
done
[ -n "${started:-}" ] || { cat "$folder/data/server.log" >&2; exit 1; }
cd - >/dev/null
export CLOTHWRIGHT_POSTGRESQL="Host=127.0.0.1;Port=$started;Username=clothwright;Database=postgres"
"$@"
