#!/bin/sh
# How long a guide of 77 steps takes to all of its forms, beside an equally long document on the way
# Markdown, pandoc, HTML, WeasyPrint, PDF: on the same machine, in the same run.
#
#   sh tests/speed/publish.sh [PROGRAM] [RUNS]
#
# Prints whole-process times, and how many times longer each takes than the PDF alone. What this
# machine lacks is told as "skipped". It judges nothing: a loaded machine makes all of it slow.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
program=${1:-$root/build/matchmark}
runs=${2:-15}
guide=$root/samples/press/renew-platen.mmk
name=renew-platen

out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
"$program" publish "$guide" --to markdown -o "$out" >"$out/log" 2>&1 || {
    cat "$out/log"
    exit 1
}
cd "$out"

commands=$out/commands
all="'$program' publish '$guide' --to html,pdf,sheet,map -o '$out/all'"
alone="'$program' publish '$guide' --to pdf -o '$out/alone'"
printf '%s\t%s\n' "matchmark: page, PDF, sheet, map" "$all" "matchmark: PDF alone" "$alone" >"$commands"
if command -v pandoc >/dev/null; then
    to_html="pandoc -f gfm -t html -s --metadata title=x '$name.md' -o '$name.html'"
    sh -c "$to_html"
    printf '%s\t%s\n' "pandoc: its Markdown to HTML" "$to_html" >>"$commands"
    if command -v weasyprint >/dev/null; then
        printf '%s\t%s\n' "weasyprint: that HTML to PDF" \
            "weasyprint -q '$name.html' '$name.weasy.pdf'" >>"$commands"
    else
        echo "skipped: weasyprint is not there"
    fi
else
    echo "skipped: pandoc is not there, and WeasyPrint would have no HTML"
fi

# Seconds, "median minimum", of a command. Its output goes nowhere: it is the same in each run.
if command -v hyperfine >/dev/null; then
    measured() {
        hyperfine --warmup 1 --runs "$runs" --export-csv "$out/times.csv" "$1" >/dev/null 2>&1
        tail -n 1 "$out/times.csv" | awk -F, '{ print $(NF - 4), $(NF - 1) }'
    }
else
    echo "skipped: hyperfine is not there; a loop with the clock of date stands in for it"
    measured() {
        sh -c "$1" >/dev/null 2>&1
        for _ in $(seq "$runs"); do
            before=$(date +%s%N)
            sh -c "$1" >/dev/null 2>&1
            echo $((($(date +%s%N) - before) / 1000))
        done | sort -n | awk '{ t[NR] = $1 } END { print t[int((NR + 1) / 2)] / 1e6, t[1] / 1e6 }'
    }
fi

cut -d' ' -f1-3 /proc/loadavg 2>/dev/null | sed 's/^/load of the machine before: /' || true
while IFS='	' read -r label command; do
    printf '%s\t%s\n' "$label" "$(measured "$command")"
done <"$commands" >"$out/results"
awk -F'\t' '
    { split($2, t, " "); label[NR] = $1; median[NR] = t[1] * 1000; least[NR] = t[2] * 1000 }
    END {
        printf "%-34s %10s %10s %12s\n", "", "median", "shortest", "x PDF alone"
        for (i = 1; i <= NR; ++i)
            printf "%-34s %7.0f ms %7.0f ms %12.1f\n", label[i], median[i], least[i], least[i] / least[2]
        if (NR == 4) {
            other = least[3] + least[4]
            printf "%-34s %7.0f ms %7.0f ms %12.1f\n", "pandoc and weasyprint",
                median[3] + median[4], other, other / least[2]
            printf "They take %.1f times as long as all four forms, %.1f times as long as the PDF alone.\n",
                other / least[1], other / least[2]
        }
    }' "$out/results"
if command -v pdfinfo >/dev/null; then
    for file in all/$name.pdf all/$name.sheet.pdf all/$name.map.pdf $name.weasy.pdf; do
        [ ! -f "$file" ] || echo "$file: $(pdfinfo "$file" | awk '/^Pages/ { print $2 }') pages"
    done
fi
