#!/usr/bin/env bash
# Prints the page of each bundled system on A4 and letter by a browser and holds: at most six pages, no word beyond a margin,
# every number of the page on paper. On demand: needs Chromium and poppler-utils (Debian: chromium poppler-utils) and Python 3.
# Usage: tests/paper/check.sh [folder that keeps the papers and their pictures]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
out=${1:-$(mktemp -d)}
mkdir -p "$out"
browser() {
    local profile
    profile=$(mktemp -d)
    chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking --disable-component-update \
        --disable-sync --user-data-dir="$profile" "$@" >/dev/null 2>&1
    rm -rf "$profile"
}
dotnet build docs/samples/Assessment -c Release -v q
failed=0
for system in time-trial-car training-stand circuit-car; do
    dotnet run --project docs/samples/Assessment -c Release --no-build -- \
        "docs/samples/Assessment/data/$system.json" --out "$out/$system" --force --dated 2026-11-20 >/dev/null || true
    for paper in A4 letter; do
        page="$out/$system/$paper.html"
        sed "s/@page{/@page{size:$paper;/" "$out/$system/assessment.html" >"$page"
        browser --no-pdf-header-footer --print-to-pdf="$out/$system-$paper.pdf" "file://$(realpath "$page")"
        pdftoppm -r 100 -png "$out/$system-$paper.pdf" "$out/$system-$paper"
        pdftotext -bbox "$out/$system-$paper.pdf" "$out/$system-$paper.html"
        python3 tests/paper/check.py "$system, $paper" "$page" "$out/$system-$paper.html" || failed=1
    done
done
echo "papers: $out"
exit $failed
