#!/usr/bin/env bash
# usage: tests/mutation/run.sh ROOM [SAMPLE [SEED]]
# Mutants of a room of the library (Wiring, Tightness, Tables, Formulas, Bench, Findings, Networks, or any other folder), run by
# the tests that reach them: those of the room, then, for what those leave, all others. dotnet-stryker makes the mutants, once for
# all rooms; FuelMath.Mutation finds out which tests reach which, once too, and runs them, because a session of the test platform
# for each would take a second and more. After a change delete artifacts/mutation, so that both are made again.
# SAMPLE draws so many at random, with SEED; without it all are run. MUTATION_CAP limits the seconds of the room's tests
# for a mutant (20), MUTATION_FAR_CAP those of all others (60), MUTATION_PATIENCE how long one may hang (20); MUTATION_TESTS names
# the tests that take part, MUTATION_WITHOUT those that don't, because they take minutes, and MUTATION_ONLY single mutants.
# survivors.tsv lists mutants that were looked at and change nothing that matters.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
out="$root/artifacts/mutation"
# The same cases of properties for each mutant.
export FUELMATH_SEED=${FUELMATH_SEED:-20261127}
export RunAnalyzers=false UseSharedCompilation=false MSBUILDDISABLENODEREUSE=1 DOTNET_CLI_USE_MSBUILD_SERVER=0
# Both give up early on a busy machine.
export DOTNET_INFO_WAIT_TIME=120000 VSTEST_CONNECTION_TIMEOUT=900

files="^$1/"
own="FuelMath.Tests.$1."
if [[ $1 == Findings ]]; then
    files='(^Findings/|Findings\.cs$)'
    own='FuelMath.Tests.Bench.|FuelMath.Tests.Seals.|FuelMath.Tests.Regulators.|FuelMath.Tests.Lines.|FuelMath.Tests.Injectors.|FuelMath.Tests.Systems.|FuelMath.Tests.Assessments.'
fi

if [[ ! -e $out/report.json ]]; then
    rm -rf "$out"
    mkdir -p "$out/tree"
    cd "$root"
    dotnet tool restore >/dev/null
    dotnet restore FuelMath.sln >/dev/null
    dotnet build tests/FuelMath.Tests -c Release --no-restore -v q >/dev/null
    # Stryker works on a copy. The remark keeps texts as they are: one that is chosen by a condition is a mere string, and a
    # refusal would lose the data that its holes carry. Left out of the report is not enough, they are compiled all the same.
    git ls-files -z -- src tests/mutation '*.props' '*.targets' '*.json' .editorconfig nuget.config .config |
        xargs -0 cp --parents -t "$out/tree"
    find "$out/tree/src/FuelMath" -name '*.cs' -exec sed -i '1s|^\(\xEF\xBB\xBF\)\?|/* Stryker disable string,regex */ |' {} +
    maker="$out/tree/tests/mutation/FuelMath.Mutation.Maker"
    dotnet restore "$maker" >/dev/null
    (
        cd "$maker"
        # Stryker makes all mutants and reports where each is; it runs none, because the one test here reaches nothing.
        dotnet stryker -f ../stryker.json --skip-version-check -O "$out/stryker" >"$out/stryker.txt" 2>&1 &
        making=$!
        while kill -0 "$making" 2>/dev/null; do
            # The mutated library stands in the folder of the maker until Stryker ends, which puts the old one back.
            if grep -q 'mutants created' "$out/stryker.txt" && [[ ! -e $out/bin ]]; then
                cp -r "$root/tests/FuelMath.Tests/bin/Release/net10.0" "$out/bin"
                cp "$maker/bin/Release/net10.0/FuelMath.dll" "$out/bin"
            fi
            sleep 0.3
        done
        wait "$making"
    )
    cp "$out/stryker/reports/mutation-report.json" "$out/report.json"
fi

dotnet build "$root/tests/mutation/FuelMath.Mutation" -c Release -v q >/dev/null
exec dotnet "$root/tests/mutation/FuelMath.Mutation/bin/Release/net10.0/FuelMath.Mutation.dll" "$out/bin/FuelMath.Tests.dll" \
    "$out/report.json" "$here/survivors.tsv" "$files" "${MUTATION_TESTS:-FuelMath.Tests.}" "$own" "${2:-0}" "${3:-20261129}"
