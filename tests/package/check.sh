#!/usr/bin/env bash
# usage: tests/package/check.sh FOLDER
# Installs the packages of a folder into an empty project outside the repository, builds it and runs the example of each
# readme. Then packs a clone of the repository at another place, and compares the files inside. Needs the .NET SDK and git.
set -euo pipefail
packed=$(cd "$1" && pwd)
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# example NAME README PART END: the block of C# of a readme that holds PART, as a method that ends with END.
example() {
    echo "    public static void Run$1()"
    echo "    {"
    awk -v part="$3" '
        /^```csharp/ { inside = 1; block = ""; next }
        /^```/ { if (inside && index(block, part)) { printf "%s", block; found = 1; exit } inside = 0 }
        inside { block = block $0 "\n" }
        END { if (!found) { print "no block of C# holds " part > "/dev/stderr"; exit 1 } }' "$root/$2"
    echo "    $4"
    echo "    }"
}

mkdir "$work/consumer"
cp "$root"/tests/package/*.cs "$work/consumer"
cp "$root/tests/package/Consumer.csproj.txt" "$work/consumer/Consumer.csproj"
{
    printf 'using %s;\n' FuelMath FuelMath.Exercises FuelMath.Formulas FuelMath.Workbooks UnitsNet
    echo "internal static class Readme"
    echo "{"
    example Network README.md 'new Network(' 'Console.WriteLine(rail);'
    example System README.md 'SystemDocument.ReadFile(' 'Console.WriteLine(line);'
    example Exercises src/FuelMath.Exercises/README.md 'Draw(' ''
    example Workbooks src/FuelMath.Workbooks/README.md 'WriteFile(' 'if (!File.Exists("openings.xlsx")) throw new FileNotFoundException();'
    echo "}"
} >"$work/consumer/Readme.cs"

# A cache of its own, so that no older package of the same version is taken; what they depend on may come from the usual one.
export NUGET_FALLBACK_PACKAGES=${NUGET_PACKAGES:-$HOME/.nuget/packages} NUGET_PACKAGES="$work/cache"
cd "$work/consumer"
CI=false dotnet build -c Release -v quiet -p:RestoreAdditionalProjectSources="$packed" -o "$work/out"
cp -r "$root/docs/samples/Assessment/data" data
dotnet "$work/out/Consumer.dll" >"$work/said"
cat "$work/said"
grep -q '^rail .* kPa gauge' "$work/said"
unset NUGET_PACKAGES

# The same commit, with what is not committed yet, at another place.
git clone -q "$root" "$work/clone"
(cd "$root" && git ls-files -z --cached --others --exclude-standard | tar --null --ignore-failed-read -cf - -T - 2>/dev/null) | tar -xf - -C "$work/clone"
if url=$(git -C "$root" remote get-url origin 2>/dev/null); then
    git -C "$work/clone" remote set-url origin "$url"
else
    git -C "$work/clone" remote remove origin
fi
cd "$work/clone"
for project in FuelMath FuelMath.Exercises FuelMath.Workbooks; do
    dotnet pack "src/$project" -c Release -v quiet -p:RunAnalyzers=false --output "$work/again"
done
dotnet "$work/out/Consumer.dll" compare "$packed" "$work/again"
