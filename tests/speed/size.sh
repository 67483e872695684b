#!/bin/sh
# How time and memory grow with the text: a library of many devices up to a million lines, and one
# device up to a hundred thousand. Prints the exponent that fits best, and the peak of memory.
#
#   sh tests/speed/size.sh [PROGRAM] [LINES...]
set -eu
here=$(cd "$(dirname "$0")" && pwd)
program=${1:-$here/../../build/matchmark}
[ $# -eq 0 ] || shift
exec python3 -B "$here/size.py" "$program" "$@"
