"""The native library from Python: every example, columns, a solved system, and calls that no caller should make."""

import array
import ctypes
import math
import os
import random
import sys
import time

ROOT = os.path.join(os.path.dirname(__file__), "..", "..")
sys.path.insert(0, os.path.join(ROOT, "docs", "samples", "Native"))
LIBRARY = os.path.abspath(sys.argv[1])

start = time.process_time()
import fuelmath

fm = fuelmath.Library(LIBRARY)
duty = fm.call(fm._library.fuelmath_count() and 0, *fm.describe(0)["example"]["arguments"])
first_answer = time.process_time() - start


def expect(condition, what):
    if not condition:
        raise SystemExit(f"native, Python: {what}")


formulas = [fm.describe(i) for i in range(fm._library.fuelmath_count())]
for formula in formulas:
    example = formula["example"]
    value = fm.call(formula["name"], *example["arguments"])
    near = example["relativeTolerance"] * abs(example["expected"]) + 1e-300
    expect(abs(value - example["expected"]) <= near, f"{formula['name']} gave {value}")

# 800 cm3/min carried from 300 to 400 kPa: times the root of 4/3.
carried = fm.call("Orifice.CarriedVolumeFlow", 800, 300, 740, 400, 740, units="customary")
expect(abs(carried - 800 * math.sqrt(4 / 3)) < 1e-9, f"carried flow {carried}")
results, bad, first = fm.column("Pulse.DutyCycle", [0.008, 0.005, math.nan], 0.02)
expect(list(results[:2]) == [0.4, 0.25] and math.isnan(results[2]) and (bad, first) == (1, 2), "duty cycle")

data = os.path.join(ROOT, "docs", "samples", "Assessment", "data")
read = lambda name: open(os.path.join(data, name), encoding="utf-8").read()
if hasattr(fm._library, "fuelmath_solve"):
    answer = fm.solve(read("circuit-car.json"), read("circuit-car-points.json"))
    expect(answer["verdict"] == "Holds" and len(answer["tables"]) > 2, f"verdict {answer['verdict']}")
    for text in ["", "{", "{}", "\0" * 50, "nothing", read("circuit-car.json")[:-9], "[" * 100000]:
        try:
            fm.solve(text, read("circuit-car-points.json"))
            expect(False, f"solved {text[:20]!r}")
        except fuelmath.Refused as refused:
            expect(str(refused), "a refusal without words")

# What no caller should do: each is refused in words, or bounded; the process lives on.
library, rng = fm._library, random.Random(20261129)
odd = [0, 1, -1, 5, 16, 17, len(formulas) - 1, len(formulas), 2**31 - 1, -(2**31)]
numbers = [math.nan, math.inf, -math.inf, 0.0, -0.0, 1e308, -1e308, 5e-324, 1.0, 300.0, 0.02]
result, status, refusals = ctypes.c_double(), 0, 0
for _ in range(20000):
    place, count, units = rng.choice(odd), rng.choice([0, 1, 2, 3, 5, 7, 16, -1, -(2**31)]), rng.choice([0, 1, 2, -5])
    place = rng.randrange(len(formulas)) if rng.random() < 0.7 else place
    given = (ctypes.c_double * 16)(*[rng.choice(numbers) for _ in range(16)])
    pointer = None if rng.random() < 0.1 else given
    to = None if rng.random() < 0.1 else ctypes.byref(result)
    status = library.fuelmath_call(place, units, pointer, count, to)
    expect(0 <= status <= 7, f"status {status} of formula {place}: {fm.message()}")
    if status == 0:
        expect(math.isfinite(result.value), f"{result.value} passed")
    else:
        refusals += 1
        expect(fm.message(), "a refusal without words")
    room = rng.choice([0, 1, 2, 7, 100, -1, -(2**31)])
    text = ctypes.create_string_buffer(b"\xff" * 128, 128)
    size = library.fuelmath_describe(place, text if rng.random() < 0.9 else None, room)
    expect(size > 0 or size == -5, f"describe gave {size}")
    expect(text.raw[max(room, 0) :] == b"\xff" * (128 - max(room, 0)), "describe wrote beyond its room")
expect(refusals > 10000, "the calls were not odd enough")
for _ in range(3000):
    place, rows = rng.randrange(len(formulas)), rng.choice([0, 1, 7, 8, 9, 40, -1, 2**60, -(2**63)])
    count = len(formulas[place]["arguments"]) if rng.random() < 0.9 else rng.choice(odd)
    size = min(max(rows, 1), 64)
    arrays = [(ctypes.c_double * size)(*[rng.choice(numbers) for _ in range(size)]) for _ in range(16)]
    columns = (fuelmath.DOUBLES * 16)(*[None if rng.random() < 0.5 else ctypes.cast(a, fuelmath.DOUBLES) for a in arrays])
    fixed = (ctypes.c_double * 16)(*[rng.choice(numbers) for _ in range(16)])
    results = arrays[0] if rng.random() < 0.2 else (ctypes.c_double * size)()
    bad = ctypes.c_int64(-7)
    status = library.fuelmath_column(
        place,
        None if rng.random() < 0.1 else columns,
        None if rng.random() < 0.1 else fixed,
        count,
        rows,
        None if rng.random() < 0.1 else ctypes.cast(results, fuelmath.DOUBLES),
        None if rng.random() < 0.1 else ctypes.byref(bad),
        None,
    )
    expect(0 <= status <= 7, f"status {status} of a column of {formulas[place]['name']}: {fm.message()}")
    if status == 0 and rows > 0 and bad.value >= 0:
        expect(bad.value == sum(map(math.isnan, results)), "bad rows are miscounted")
    if status != 0:
        expect(fm.message(), "a refusal without words")
half = array.array("d", [1.0] * 20)
at = half.buffer_info()[0]
overlap = (fuelmath.DOUBLES * 2)(ctypes.cast(at, fuelmath.DOUBLES), None)
status = library.fuelmath_column(
    fm.indices["Pulse.DutyCycle"], overlap, (ctypes.c_double * 2)(1, 1), 2, 10, ctypes.cast(at + 8, fuelmath.DOUBLES), None, None
)
expect(status == 5 and "lie apart" in fm.message(), "an overlap passed")

size = os.path.getsize(LIBRARY) / 1e6
print(f"Python: {len(formulas)} formulas; library {size:.2f} MB; first answer after {1e3 * first_answer:.0f} ms of processor time")
