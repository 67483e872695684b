#!/bin/sh
# How long checking a library of guides takes: without a cache, with one that is empty, full, and
# after one file has changed; and how time and memory grow from 100 guides to 10,000.
#
#   sh tests/speed/library.sh [PROGRAM] [GUIDES...]
#
# Prints whole-process times and the peak of memory. It fails when the cache changes what is said; it
# judges no time.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
program=${1:-$root/build/matchmark}
[ $# -eq 0 ] || shift
[ $# -ne 0 ] || set -- 100 1000 10000
lscpu 2>/dev/null | sed -n 's/^Model name: *//p; s/^CPU(s): */processors: /p'
cut -d' ' -f1-3 /proc/loadavg 2>/dev/null | sed 's/^/load of the machine before: /' || true
exec python3 -B "$here/library.py" "$program" "$@"
