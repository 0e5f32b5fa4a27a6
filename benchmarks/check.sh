#!/usr/bin/env bash
# Compares this checkout's speed with benchmarks/ratios.csv and reports what is slower by more than a quarter; listens for
# the compiler's refusal to inline. "benchmarks/check.sh write" writes the file anew.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
run() { dotnet run --no-build -c Release --project benchmarks/FuelMath.Benchmarks -- "$@"; }
dotnet build benchmarks/FuelMath.Benchmarks -c Release -v q
if [[ ${1:-} == write ]]; then
    run ratios write benchmarks/ratios.csv
    exit
fi
code=0
run ratios benchmarks/ratios.csv || code=1
run inlining || code=1
exit "$code"
