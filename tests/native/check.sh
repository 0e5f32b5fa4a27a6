#!/usr/bin/env bash
# Compiles the native library ahead of time and calls it from C, Python (ctypes) and Node.
# Usage: tests/native/check.sh folder most-bytes [properties of dotnet publish]. Fails where the library is larger than that.
# Installs a C compiler, Python and Node from the system's packages (Debian) where they are missing and this runs as root.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root="$here/../.."
mkdir -p "$1"
out=$(cd "$1" && pwd)
most=$2
shift 2

missing=()
command -v clang >/dev/null || command -v gcc >/dev/null || missing+=(clang)
command -v python3 >/dev/null || missing+=(python3)
command -v node >/dev/null || missing+=(nodejs)
command -v npm >/dev/null || missing+=(npm)
if ((${#missing[@]} > 0)); then
    if ((EUID != 0)) || ! command -v apt-get >/dev/null; then
        echo "Please install: ${missing[*]}" >&2
        exit 1
    fi
    apt-get update -qq
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}"
fi
compiler=$(command -v clang || command -v gcc)

# With an output named like FuelMath.dll publishing succeeds, and only this note says that each export would throw.
log="$out/publish.log"
dotnet publish "$root/src/FuelMath.Native" -c Release -o "$out" -p:CppCompilerAndLinker="$(basename "$compiler")" "$@" \
    2>&1 | tee "$log"
if grep -qi "will always throw" "$log"; then
    echo "The compiler made exports that always throw." >&2
    exit 1
fi

library="$out/FuelMath.Native.so"
size=$(stat -c %s "$library")
if ((size > most)); then
    echo "The library must have at most $most bytes; it has $size. What is in it: dotnet publish -p:IlcGenerateMapFile=true." >&2
    exit 1
fi

"$compiler" -std=c11 -D_GNU_SOURCE -O2 -Wall -Wextra -Werror -I "$root/src/FuelMath.Native/include" \
    "$here/check.c" "$library" -lm -o "$out/check"
"$out/check"
python3 "$here/check.py" "$library"
(cd "$here" && npm ci --ignore-scripts --no-audit --no-fund --silent && node check.mjs "$library")
