#!/usr/bin/env bash
# usage: tests/mutation/run.sh ROOM [SAMPLE [SEED]]
# Mutants of a room of the library (Wiring, Tightness, Tables, Formulas, Bench, Findings, Networks), run by the tests that reach
# them. dotnet-stryker makes the mutants, once for all rooms (about five minutes; delete artifacts/mutation to make them again
# after a change); FuelMath.Mutation runs them, because a session of the test platform for each would take a second and more.
# SAMPLE draws so many at random, with SEED; without it all are run. MUTATION_CAP limits the seconds of tests for a mutant,
# MUTATION_PATIENCE how long one may hang, MUTATION_TESTS names other tests, MUTATION_ONLY single mutants.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
out="$root/artifacts/mutation"
# The same cases of properties for each mutant.
export FUELMATH_SEED=${FUELMATH_SEED:-20261127}
export RunAnalyzers=false UseSharedCompilation=false MSBUILDDISABLENODEREUSE=1
# Both give up early on a busy machine.
export DOTNET_INFO_WAIT_TIME=120000 VSTEST_CONNECTION_TIMEOUT=900

files="^$1/"
tests="FuelMath.Tests.$1."
if [[ $1 == Findings ]]; then
    files='(^Findings/|Findings\.cs$)'
    tests='FuelMath.Tests.Bench.|FuelMath.Tests.Seals.|FuelMath.Tests.Regulators.|FuelMath.Tests.Lines.|FuelMath.Tests.Injectors.|FuelMath.Tests.Systems.|FuelMath.Tests.Assessments.'
fi

if [[ ! -e $out/report.json ]]; then
    mkdir -p "$out"
    bin="$root/tests/FuelMath.Tests/bin/Release/net10.0"
    (
        cd "$root/tests/FuelMath.Tests"
        # Only tests that read files: Stryker's own run then ends at once, and leaves what it made.
        dotnet stryker -f ../mutation/stryker.json --skip-version-check -O "$out/stryker" >"$out/stryker.txt" 2>&1 &
        making=$!
        while kill -0 "$making" 2>/dev/null; do
            if grep -q 'mutants created' "$out/stryker.txt" && [[ ! -e $out/bin/FuelMath.Tests.dll ]]; then
                cp -r "$bin" "$out/bin"
            fi
            sleep 0.3
        done
        wait "$making"
    )
    cp "$out/stryker/reports/mutation-report.json" "$out/report.json"
fi

dotnet build "$root/tests/mutation/FuelMath.Mutation" -c Release -v q >/dev/null
dotnet "$root/tests/mutation/FuelMath.Mutation/bin/Release/net10.0/FuelMath.Mutation.dll" "$out/bin/FuelMath.Tests.dll" \
    "$out/report.json" "$files" "${MUTATION_TESTS:-$tests}" "${2:-0}" "${3:-20261129}"
