#!/bin/sh
# How long the least way in takes in a device of 500 items with 50 alternatives, beside gringo and
# clasp on the same problem, and what-if over a device of 200 items. Shortest of five runs; gringo
# and clasp run once.
#
#   sh tests/speed/plan.sh [PROGRAM]
#
# PROGRAM is build/tests/plans. It fails when the two do not agree; it judges no time.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
lscpu 2>/dev/null | sed -n 's/^Model name: *//p; s/^CPU(s): */processors: /p'
cut -d' ' -f1-3 /proc/loadavg 2>/dev/null | sed 's/^/load of the machine before: /' || true
exec "${1:-$root/build/tests/plans}" speed
