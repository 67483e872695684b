#!/bin/sh
# How long the findings take to come after one letter, in guides of about 2,000 lines: one with few
# words over a device of 560 items, one with many words over a device of 120.
#
#   sh tests/speed/editor.sh [PROGRAM] [LETTERS]
#
# Prints the median, the 95th percentile and the longest, in milliseconds, from the letter sent to the
# findings read, by a client in another process. It judges nothing: a loaded machine makes it slow.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
program=${1:-$root/build/matchmark}
letters=${2:-200}

exec python3 "$here/editor.py" "$program" "$letters"
