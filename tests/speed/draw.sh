#!/bin/sh
# How long a drawing takes beside `dot -Tsvg` on the same boxes and lines.
#
#   sh tests/speed/draw.sh [PROGRAM] [RUNS]
set -eu
here=$(cd "$(dirname "$0")" && pwd)
exec python3 -B "$here/draw.py" "${1:-$here/../../build/matchmark}" "${2:-5}"
