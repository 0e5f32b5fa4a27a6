#!/usr/bin/env bash
# Calculates a hundred cells of a spreadsheet through the native library in a headless office suite, by a function in Basic
# that calls Python, compares them, and prints what a cell costs.
# Usage: tests/native/office.sh FuelMath.Native.so. Needs Debian's libreoffice-calc, python3-uno and
# libreoffice-script-provider-python. Uses an empty profile of its own.
set -euo pipefail
library=$(realpath "$1")
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

office() {
    timeout 300 soffice "-env:UserInstallation=file://$folder/profile" --headless --norestore "$@" >/dev/null 2>&1
}

# The first start makes the profile, with an empty module in Basic.
office --terminate_after_init
cp "$here/office.xba" "$folder/profile/user/basic/Standard/Module1.xba"
mkdir -p "$folder/profile/user/Scripts/python"
cp "$here/office.py" "$folder/profile/user/Scripts/python/"

# A hundred cells of one formula at a hundred pressures, and one that is refused; no cell holds a value yet.
python3 - "$folder/cells.fods" <<'END'
import sys

call = "of:=FUELMATH(&quot;Orifice.CarriedVolumeFlow&quot;;800;300;740;{};740)"
cells = [call.format(200 + 4 * i) for i in range(100)] + [call.format(-1)]
rows = "".join(f'<table:table-row><table:table-cell table:formula="{cell}"/></table:table-row>' for cell in cells)
spaces = " ".join(f'xmlns:{s}="urn:oasis:names:tc:opendocument:xmlns:{s}:1.0"' for s in ("office", "table", "text"))
with open(sys.argv[1], "w", encoding="utf-8") as sheet:
    sheet.write(
        f'<?xml version="1.0" encoding="UTF-8"?><office:document {spaces} xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" '
        'office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>'
        f'<table:table table:name="cells">{rows}</table:table></office:spreadsheet></office:body></office:document>'
    )
END

export FUELMATH_LIBRARY="$library" FUELMATH_SAMPLE="$here/../../docs/samples/Native" FUELMATH_TIMES="$folder/times"
office --convert-to csv --outdir "$folder" "$folder/cells.fods"

python3 - "$folder/cells.csv" "$folder/times" <<'END'
import math
import sys

with open(sys.argv[1], encoding="utf-8") as file:
    lines = file.read().splitlines()
with open(sys.argv[2], encoding="ascii") as file:
    times = [float(line) for line in file]
for i, line in enumerate(lines[:100]):
    # A nozzle's flow goes with the root of pressure. A sheet shows ten digits.
    expected = 800 * math.sqrt((200 + 4 * i) / 300)
    if abs(float(line) - expected) > 1e-7 * expected:
        raise SystemExit(f"cell {i + 1} holds {line}; {expected} was expected")
if "must be" not in lines[100]:
    raise SystemExit(f"the refused cell holds {lines[100]!r}")
steps = sorted(b - a for a, b in zip(times, times[1:]))
print(f"100 cells and one refused; {1e3 * steps[len(steps) // 2]:.2f} ms a cell (median)")
END
