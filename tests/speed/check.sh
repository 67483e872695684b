#!/bin/sh
# How long checking takes beside cmark-gfm on the same bytes.
#
#   sh tests/speed/check.sh [PROGRAM] [RUNS]
#
# It judges nothing: a loaded machine makes both slow.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
exec python3 -B "$here/check.py" "${1:-$here/../../build/matchmark}" "${2:-5}"
