// Parses the sheets that the tests wrote to a folder, and compares each question with what was written.
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { createRequire } from "node:module";

const { parse } = createRequire(import.meta.url)("gift-pegjs");
const folder = process.argv[2];
const unescape = (text) =>
  text
    .replace(/&#(\d+);/g, (_, code) => String.fromCodePoint(Number(code)))
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&");
let sheets = 0;
let questions = 0;
let bad = 0;
const complain = (text) => {
  bad++;
  console.log(text);
};

for (const file of readdirSync(folder).filter((name) => name.endsWith(".gift"))) {
  const expected = JSON.parse(readFileSync(join(folder, file.replace(".gift", ".json")), "utf8"));
  let parsed;
  try {
    parsed = parse(readFileSync(join(folder, file), "utf8"));
  } catch (error) {
    complain(`${file}: ${error.message}`);
    continue;
  }

  sheets++;
  if (parsed.length !== expected.length) complain(`${file}: ${parsed.length} questions for ${expected.length}`);
  parsed.forEach((question, i) => {
    questions++;
    const place = `${file}, question ${i + 1}`;
    const want = expected[i];
    if (question.type !== "Numerical") complain(`${place}: ${question.type}`);
    if (question.title !== `${i + 1}. ${want.title}`) complain(`${place}: title ${question.title}`);
    if (!unescape(question.stem.text).includes(want.statement)) complain(`${place}: statement ${question.stem.text}`);
    if (!unescape(question.globalFeedback.text).includes(want.working))
      complain(`${place}: working ${question.globalFeedback.text}\n    ${want.working}`);
    if (question.choices.length !== want.values.length) complain(`${place}: ${question.choices.length} answers`);
    question.choices.forEach((choice, way) => {
      const { number, range } = choice.text;
      const tolerance = want.tolerances[way];
      if (Math.abs(number - want.values[way]) > 1e-3 * tolerance) complain(`${place}: ${number} for ${want.values[way]}`);
      if (Math.abs(range / tolerance - 1) > 1e-3) complain(`${place}: within ${range} for ${tolerance}`);
      if (choice.weight !== (way === 0 ? 100 : 0)) complain(`${place}: weight ${choice.weight}`);
      if (way > 0 && !unescape(choice.feedback.text).includes(want.reasons[way - 1]))
        complain(`${place}: feedback ${choice.feedback.text}`);
    });
  });
}

console.log(`${sheets} sheets, ${questions} questions, ${bad} differences`);
process.exit(bad === 0 && sheets > 0 ? 0 : 1);
