#!/bin/sh
# On a build server: checks the guides that a branch touches, and says what changed in them.
#
#   sh ci.sh BASE [GUIDES]      BASE: the branch or commit to compare with; GUIDES: the folder (.)
#
# Writes findings.sarif, findings.xml and changes.html. Fails when a guide has errors; that a
# procedure changed is no failure.
set -eu
base=$1
guides=${2:-.}
before=$(mktemp -d)
trap 'rm -rf "$before"' EXIT

git diff --name-only --relative "$base" >"$before/touched"
status=0
matchmark check "$guides" --touched - --as sarif <"$before/touched" >findings.sarif || status=$?
matchmark check "$guides" --touched - --as junit <"$before/touched" >findings.xml || true
matchmark check "$guides" --touched - <"$before/touched" || true

# Where the base has no such folder yet, there is nothing to compare with.
if git rev-parse -q --verify "$base:./$guides" >/dev/null; then
    mkdir "$before/base"
    git archive "$base" "$guides" | tar -x -C "$before/base"
    changed=0
    matchmark compare "$before/base/$guides" "$guides" --html -o changes.html || changed=$?
    [ "$changed" -ne 2 ] || status=2
fi
exit "$status"
