// Reads a file of LaTeX, one formula a line, and typesets each in strict mode: any warning is an error.
import { readFileSync } from "node:fs";
import katex from "katex";

const lines = readFileSync(process.argv[2], "utf8").split("\n").filter((line) => line.length > 0);
let bad = 0;
for (const line of lines) {
  try {
    katex.renderToString(line, { strict: "error", throwOnError: true, displayMode: true });
  } catch (error) {
    bad++;
    console.log(`${error.message}\n    ${line}`);
  }
}

console.log(`${lines.length} lines, ${bad} invalid`);
process.exit(bad === 0 && lines.length > 0 ? 0 : 1);
