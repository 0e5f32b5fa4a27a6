"""An independent model of whole fuel systems, held beside the library's states. Python 3, standard library only.

    python3 tests/oracle/systems.py write FOLDER        28 random systems, the bundled ones and those of `written`, with their points
    dotnet run -c Release --project benchmarks/FuelMath.Benchmarks -- states FOLDER
    python3 tests/oracle/systems.py compare FOLDER > tests/oracle/systems.md

Those of `written` are kinds that are not bundled (a returnless rotary, banks with a relief valve, a single on much alcohol), made
from the guide alone. The random ones come from seeds, so that the same files come out each time (`write FOLDER 100` writes 100); from the twenty-first on each has a surge tank, and most a second pump on a switch. All are invented.
fluid.py holds fuels and tables, systems_model.py the parts, systems_solve.py the state. Each formula is written from the work
that docs/sources.md cites, and solved another way: pressures are the only unknowns of the path. Fluids' constants, and the
library's reading of the chart of gasoline viscosities, are taken as data. It ends with 1 when anything is off by more than TOLERANCE.
"""

import glob
import json
import os
import shutil
import sys

from fluid import Refused
from systems_random import random_system
from systems_solve import System

# Here the rounds end when nothing moves by more than 1e-9 (V, bar, ms); the library settles to less.
TOLERANCE = 1e-7
KINDS = ("density", "viscosity", "stoichiometric ratio", "pressures", "flows", "pump voltage", "pump current", "widths",
         "difference at injectors", "voltage at injectors", "dead time", "mass of a pulse", "lambda by chamber", "lambda", "surge tank", "surge tank lasts")


def write(folder, count):
    os.makedirs(folder, exist_ok=True)
    data = os.path.join(os.path.dirname(__file__), "../../docs/samples/Assessment/data")
    for name in ("time-trial-car", "training-stand", "circuit-car"):
        for end in (".json", "-points.json"):
            shutil.copy(os.path.join(data, name + end), folder)
    for path in glob.glob(os.path.join(os.path.dirname(__file__), "written", "*.json")):
        shutil.copy(path, folder)
    for seed in range(1, count + 1):
        system, points = random_system(seed)
        for end, text in (("", system), ("-points", points)):
            with open(os.path.join(folder, f"random-{seed:03}{end}.json"), "w", encoding="utf-8") as file:
                json.dump(text, file, indent=1)


def pairs(theirs, mine):
    """Kind, both numbers, and the scale that a difference counts against."""
    yield "density", theirs["density"], mine["density"], mine["density"]
    yield "viscosity", theirs["viscosity"], mine["viscosity"], mine["viscosity"]
    yield "stoichiometric ratio", theirs["stoichiometricRatio"], mine["stoichiometricRatio"], mine["stoichiometricRatio"]
    pressure = max(abs(p) for p in mine["pressures"].values())
    flow = max(abs(q) for q in mine["flows"].values())
    for node, value in theirs["pressures"].items():
        yield "pressures", value, mine["pressures"][node], pressure
    for line, value in theirs["flows"].items():
        yield "flows", value, mine["flows"][line], flow
    for a, b in zip(theirs["pumps"], mine["pumps"], strict=True):
        yield "pump voltage", a["voltage"], b["voltage"], b["voltage"]
        yield "pump current", a["current"], b["current"], b["current"]
    for a, b in zip(theirs["stages"], mine["stages"], strict=True):
        yield "widths", a["width"], b["width"], b["width"]
    names = {"difference": "difference at injectors", "voltage": "voltage at injectors", "deadTime": "dead time",
             "mass": "mass of a pulse"}
    for a, b in zip(theirs["injectors"], mine["injectors"], strict=True):
        for key, kind in names.items():
            yield kind, a[key], b[key], pressure if key == "difference" else b[key]
    for a, b in zip(theirs["chambers"], mine["chambers"], strict=True):
        yield "lambda by chamber", a["lambda"], b["lambda"], b["lambda"]
    yield "lambda", theirs["lambda"], mine["lambda"], mine["lambda"]
    for a, b in zip(theirs["surgeTanks"], mine["surgeTanks"], strict=True):
        for key in ("lift", "returned", "drawn", "overflow"):
            yield "surge tank", a[key], b[key], flow
        yield "surge tank lasts", a["lasts"], b["lasts"], b["lasts"]


def off(theirs, mine, scale):
    if theirs is None or mine is None:
        return 0.0 if theirs is mine else float("inf")
    return abs(theirs - mine) / abs(scale) if scale else abs(theirs - mine)


def compare(folder):
    worst, numbers = dict.fromkeys(KINDS, (0.0, "")), dict.fromkeys(KINDS, 0)
    rows, failed = [], []
    for states in sorted(glob.glob(os.path.join(folder, "*-states.json"))):
        stem = states[: -len("-states.json")]
        name = os.path.basename(stem)
        with open(stem + ".json", encoding="utf-8") as a, open(stem + "-points.json", encoding="utf-8") as b, open(states, encoding="utf-8") as c:
            system, points, found = System(json.load(a)), json.load(b)["points"], json.load(c)
        row = [0, 0, 0, 0.0]
        for point, theirs in zip(points, found, strict=True):
            where = f"{name}, {point['name']}"
            try:
                mine, why = system.solve(point), None
            except Refused as refusal:
                mine, why = None, refusal.reasons
            if "refused" in theirs or mine is None:
                agree = "refused" in theirs and mine is None and (
                    theirs["code"], theirs["part"] if theirs["code"] == "OutsideData" else theirs["node"]) in why
                row[1] += agree
                if not agree:
                    failed.append(f"{where}: library: {theirs.get('refused', 'a state')}; here: {why or 'a state'}")
                continue
            row[0] += 1
            for kind, a, b, scale in pairs(theirs, mine):
                numbers[kind] += 1
                row[2] += 1
                difference = off(a, b, scale)
                row[3] = max(row[3], difference)
                if difference > worst[kind][0]:
                    worst[kind] = (difference, where)
                if difference > TOLERANCE:
                    failed.append(f"{where}: {kind}: library {a}, here {b}")
        rows.append((name, row))
        print(name, *row, file=sys.stderr, flush=True)
    report(rows, worst, numbers, failed)
    return 1 if failed else 0


def report(rows, worst, numbers, failed):
    print("# Whole systems against an independent model\n")
    print("Made by `systems.py compare`; how, its head says. Differences are relative: pressures to the greatest pressure, flows")
    print("to the greatest flow of the state, all else to itself.\n")
    print("| number | compared | worst difference | where |\n|---|---|---|---|")
    for kind in KINDS:
        print(f"| {kind} | {numbers[kind]} | {worst[kind][0]:.1e} | {worst[kind][1]} |")
    print("\n| system | states | refused by both | numbers | worst difference |\n|---|---|---|---|---|")
    for name, (states, refused, count, difference) in rows:
        print(f"| {name} | {states} | {refused} | {count} | {difference:.1e} |")
    print(f"\n{sum(r[0] for _, r in rows)} states, {sum(numbers.values())} numbers, {len(failed)} disagreements.")
    for line in failed[:200]:
        print(f"\n- {line}")


if __name__ == "__main__":
    if len(sys.argv) < 3 or sys.argv[1] not in ("write", "compare"):
        sys.exit(__doc__)
    if sys.argv[1] == "write":
        write(sys.argv[2], int(sys.argv[3]) if len(sys.argv) > 3 else 28)
    else:
        sys.exit(compare(sys.argv[2]))
