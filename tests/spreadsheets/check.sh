#!/usr/bin/env bash
# Calculates every formula of the catalog at six random points, and the assessments of the bundled systems, in two spreadsheet
# engines and compares with the library.
# Needs the .NET SDK, Node 20, unzip and LibreOffice Calc ("soffice"); run from anywhere. FUELMATH_SEED gives the same points again.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
[[ -d node_modules ]] || npm ci --no-audit --no-fund
WRITE_SHEETS="$folder" dotnet test ../FuelMath.Tests -c Release --filter "FullyQualifiedName~Files_AskedFor_AreWritten"

# An empty profile, so that no setting of a user counts. No file holds a value of a formula: the office suite has to
# calculate every cell, and stores what it found.
soffice "-env:UserInstallation=file://$folder/profile" --headless --convert-to xlsx --outdir "$folder/out" "$folder"/*.xlsx >/dev/null

node compare.mjs "$folder"
