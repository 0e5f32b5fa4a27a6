// Compares the results of two spreadsheet engines with those of the library.
// Usage: node compare.mjs folder, where the folder holds NAME.json (cells and expected results) and out/NAME.xlsx (the workbook
// as the office suite calculated it; it stores 15 digits, which is 5e-15 of a value).
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { HyperFormula } from "hyperformula";

const limit = 1e-12;
const folder = process.argv[2];
const stems = readdirSync(folder).filter((name) => name.endsWith(".json")).map((name) => name.slice(0, -5));
const engines = { office: new Map(), second: new Map() };
let longest = 0;
let formulas = 0;

const column = (name) => [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
const place = (reference) => {
  const [, letters, digits] = /^([A-Z]+)(\d+)$/.exec(reference);
  return { col: column(letters), row: Number(digits) - 1 };
};

// A sheet as rows; a link shows its text, which no result depends on.
const rows = (cells) => {
  const table = [];
  for (const [reference, text] of Object.entries(cells)) {
    const { col, row } = place(reference);
    while (table.length <= row) table.push([]);
    while (table[row].length <= col) table[row].push(null);
    const isNumber = text.length > 0 && !text.startsWith("=") && Number.isFinite(Number(text));
    table[row][col] = text.startsWith("=HYPERLINK") ? "link" : isNumber ? Number(text) : text;
    if (text.startsWith("=")) {
      longest = Math.max(longest, text.length - 1);
      formulas++;
    }
  }
  return table;
};

// The values that a calculated workbook stores on a sheet, counted from one.
const results = (file, number) => {
  const sheet = execFileSync("unzip", ["-p", file, `xl/worksheets/sheet${number}.xml`], { encoding: "utf8", maxBuffer: 1e9 });
  return new Map([...sheet.matchAll(/<c r="([A-Z]+\d+)"[^>]*t="n"[^>]*>(?:<f[^>]*>[^<]*<\/f>)?<v>([^<]*)<\/v>/g)].map((m) => [m[1], Number(m[2])]));
};

const note = (engine, name, difference) =>
  engines[engine].set(name, Math.max(engines[engine].get(name) ?? 0, Number.isNaN(difference) ? Infinity : difference));

for (const stem of stems) {
  const { sheets, expected } = JSON.parse(readFileSync(join(folder, `${stem}.json`), "utf8"));
  const contents = Object.fromEntries(Object.entries(sheets).map(([name, cells]) => [name, rows(cells)]));
  const engine = HyperFormula.buildFromSheets(contents, { licenseKey: "gpl-v3", smartRounding: false });
  const calculated = join(folder, "out", `${stem}.xlsx`);
  const names = Object.keys(sheets);
  const pages = existsSync(calculated) ? names.map((_, index) => results(calculated, index + 1)) : null;
  for (const { Name, Sheet = "Contents", Cell, Value, Scale } of expected) {
    const home = engine.getSheetId(Sheet);
    const office = pages?.[names.indexOf(Sheet)];
    const { col, row } = place(Cell);
    const scale = Math.max(Math.abs(Value), Scale) || 1;
    note("second", Name, Math.abs(engine.getCellValue({ sheet: home, col, row }) - Value) / scale);
    if (office) note("office", Name, Math.abs((office.get(Cell) ?? NaN) - Value) / scale);
  }
}

let failed = false;
for (const [engine, worst] of Object.entries(engines)) {
  const bad = [...worst].filter(([, difference]) => !(difference <= limit));
  const [where, most] = [...worst].sort((a, b) => b[1] - a[1])[0] ?? ["none", NaN];
  console.log(`${engine}: ${worst.size - bad.length} of ${worst.size} results agree in ${stems.length} workbooks within ${limit}; worst ${most.toExponential(1)} (${where})`);
  for (const [name, difference] of bad) console.log(`    ${name}: ${difference}`);
  failed ||= bad.length > 0 || worst.size === 0;
}

console.log(`longest cell: ${longest} characters; ${formulas} cells with formulas`);
process.exit(failed ? 1 : 0);
