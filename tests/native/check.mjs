// The native library from Node: every example, a column, and refusals. Usage: node check.mjs FuelMath.Native.so
import assert from "node:assert/strict";
import koffi from "koffi";
import { open } from "../../docs/samples/Native/fuelmath.mjs";

const fm = open(koffi, process.argv[2]);
for (const { name, example } of fm.formulas) {
  const value = fm.call(name, example.arguments);
  const near = example.relativeTolerance * Math.abs(example.expected) + 1e-300;
  assert.ok(Math.abs(value - example.expected) <= near, `${name} gave ${value}`);
}

const { results, badRows, firstBadRow } = fm.column("Pulse.DutyCycle", [Float64Array.of(0.008, 0.005, NaN), 0.02]);
assert.deepEqual([...results], [0.4, 0.25, NaN]);
assert.deepEqual([badRows, firstBadRow], [1, 2]);
assert.throws(() => fm.call("Pulse.DutyCycle", [0.01, -1]), /period must be from 1E-09 s/);
assert.throws(() => fm.call("Pulse.DutyCycle", [0.01]), /must have 2 arguments/);
assert.throws(() => fm.call("Nothing", []), /No formula/);
console.log(`Node: ${fm.formulas.length} formulas`);
