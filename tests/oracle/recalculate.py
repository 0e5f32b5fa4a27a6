"""Recalculates numbers that the sample prints, from its input files alone, by other means than the library's.

    dotnet run --project docs/samples/Assessment -c Release -- docs/samples/Assessment/data/training-stand.json --out out/stand --force
    python3 tests/oracle/recalculate.py docs/samples/Assessment/data/training-stand.json out/stand

Python 3, standard library only. Reads the system, its points and its bench readings, and the tables that the sample wrote as
CSV. Each line shows what was printed, what comes out here, and the difference; it ends with 1 when one is off by more than its
tolerance. Densities of fuels are taken from the printed fuel table where they are correlations; n-heptane from its own line.
"""

import csv
import json
import math
import os
import statistics
import sys

HEPTANE_20 = 683.8  # kg/m3 at 20 degC; from memory, the value that handbooks give; 0.2 %
# Two-sided, by degrees of freedom; from memory, printed in any table of it.
STUDENT_95 = {1: 12.706, 2: 4.303, 3: 3.182, 4: 2.776, 5: 2.571, 6: 2.447, 7: 2.365, 8: 2.306, 9: 2.262, 10: 2.228}


def number(text):
    return float(str(text).split()[0])


def table(folder, name):
    with open(os.path.join(folder, "tables", name + ".csv"), encoding="utf-8", newline="") as file:
        rows = list(csv.reader(file))
    heads = [head.split(" [")[0] for head in rows[0]]
    return [dict(zip(heads, row)) for row in rows[1:]]


class Check:
    def __init__(self):
        self.failed = 0
        self.count = 0

    def near(self, what, printed, mine, tolerance):
        self.count += 1
        off = abs(float(printed) - mine)
        good = off <= tolerance
        self.failed += not good
        print(f"{'ok  ' if good else 'OFF '} {what}: printed {printed}, here {mine:.5g}")


def interpolate(table, volts, kilopascals):
    """Bilinear in voltage and pressure, as two straight lines of straight lines."""
    v = [number(x) for x in table["voltages"]]
    p = [number(x) for x in table.get("differentialPressures", [])]
    values = table["values"]

    def place(axis, x):
        i = max(0, min(len(axis) - 2, sum(a <= x for a in axis) - 1))
        return i, (x - axis[i]) / (axis[i + 1] - axis[i])

    i, f = place(v, volts)
    if len(p) < 2:
        value = lambda k: number(values[k][0] if isinstance(values[k], list) else values[k])
        return value(i) + f * (value(i + 1) - value(i))
    j, g = place(p, kilopascals)
    row = lambda k: number(values[k][j]) + g * (number(values[k][j + 1]) - number(values[k][j]))
    return row(i) + f * (row(i + 1) - row(i))


def bench(path):
    with open(path, encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if line.strip() and not line.startswith("#")))


def main(system_file, folder):
    check = Check()
    with open(system_file, encoding="utf-8") as file:
        system = json.load(file)
    stem = os.path.splitext(system_file)[0]
    with open(stem + "-points.json", encoding="utf-8") as file:
        asked = json.load(file)["points"]
    for point in asked:
        if isinstance(point["command"], str):
            point["command"] = {"kind": point["command"]}
    readings = bench(stem + "-bench.csv") if os.path.exists(stem + "-bench.csv") else []
    injectors = {i["name"]: i for i in system["injectors"]}
    fuel = table(folder, "fuel")
    points = table(folder, "points")
    cycle_turns = 1 if "two-stroke" in system["engine"]["kind"] else 2

    for place, stage in enumerate(system["stages"], 1):
        prefix = f"{place}-" + "".join(c if c.isascii() and c.isalnum() else "-" for c in stage["name"].lower()) + "-"
        told = injectors[stage["belief"]["injector"]]
        rating = told["rating"]
        density = next(float(f["density"]) for f in fuel if f["used for"] == "told, " + stage["name"])
        told_bar = number(stage["belief"]["differentialPressure"]) / 100
        rated_bar = number(rating["differentialPressure"]) / 100
        flows = {row["flow"]: row for row in table(folder, prefix + "static-flow")}
        if rating["fluid"] == "n-heptane":
            rated = number(rating["volumeFlow"]) if "volumeFlow" in rating else number(rating["massFlow"]) * 6e4 / HEPTANE_20
            volume = rated * math.sqrt(told_bar / rated_bar * HEPTANE_20 / density)
            check.near(f"{stage['name']}, as told, cm3/min", flows["rating, as told"]["volume"], volume, 0.002 * volume)
            check.near(f"{stage['name']}, as told, g/s", flows["rating, as told"]["mass"], volume * density / 6e4, 0.002 * volume * density / 6e4)

        dead = table(folder, prefix + "dead-time")
        for row in dead:
            for head, value in row.items():
                if head != "voltage" and "values" in told["deadTime"]:
                    mine = interpolate(told["deadTime"], float(row["voltage"]), 100 * float(head.split()[0]))
                    check.near(f"{stage['name']}, dead time at {row['voltage']} V, {head}", value, mine, 0.0006)

        own = [r for r in readings if r["stage"] == stage["name"]]
        if own and rating["fluid"] == "n-heptane":
            names = list(dict.fromkeys(r["injector"] for r in own))
            means, all_carried = {}, {}
            for name in names:
                # Carried by the root of pressure, and of density by 0.00125 of it for each kelvin (from memory, n-heptane).
                carried = [
                    60 * float(r["collected volume (cm3)"]) / float(r["collection time (s)"])
                    * math.sqrt(100 * rated_bar / float(r["differential pressure (kPa)"]))
                    * math.sqrt(1 - 0.00125 * (float(r["fluid temperature (degC)"]) - number(rating["fluidTemperature"])))
                    for r in own
                    if r["injector"] == name and r["reading"] == "static flow" and r["fluid"] == "n-heptane"
                ]
                if not carried:
                    continue
                row = next(x for x in table(folder, prefix + "injectors") if x["injector"] == name)
                means[name] = statistics.mean(carried)
                check.near(f"{name}, mean flow", row["flow"], means[name], 0.001 * means[name])
                all_carried[name] = carried
            # Repeats of all injectors together, each about its own mean: they were read on one bench.
            free = sum(len(c) - 1 for c in all_carried.values())
            if free in STUDENT_95:
                squares = sum(sum((x - means[n]) ** 2 for x in c) for n, c in all_carried.items())
                for name, carried in all_carried.items():
                    row = next(x for x in table(folder, prefix + "injectors") if x["injector"] == name)
                    half = STUDENT_95[free] * math.sqrt(squares / free / len(carried))
                    check.near(f"{name}, half of the interval", row["+/-"], half, 0.06 + 0.03 * half)
            if means:
                check.near(f"{stage['name']}, measured mean", flows["measured mean"]["volume"], statistics.mean(means.values()), 0.001 * rated)
            volts = sorted({float(r["voltage (V)"]) for r in own if r["reading"] == "dead time"})
            measured = {float(r["voltage"]): r for r in table(folder, prefix + "dead-time-measured")} if volts else {}
            for v in volts:
                all_read = [float(r["dead time (ms)"]) for r in own if r["reading"] == "dead time" and float(r["voltage (V)"]) == v]
                if v in measured:
                    check.near(f"{stage['name']}, mean dead time at {v} V", measured[v]["mean"], statistics.mean(all_read), 0.0006)
                    check.near(f"{stage['name']}, half spread at {v} V", measured[v]["+/-"], (max(all_read) - min(all_read)) / 2, 0.0006)

        for point, printed in zip(asked, points):
            width = printed[f"width {place}"]
            if width:
                period = 60e3 / number(point["speed"]) * cycle_turns / stage["pulsesPerCycle"]
                check.near(f"{point['name']}, duty of {stage['name']}", printed[f"duty {place}"], 100 * float(width) / period, 0.06)
        correction = told["correction"] if isinstance(told.get("correction"), dict) else {}
        shorts = table(folder, prefix + "short-pulses") if correction else []
        for row, w, c in zip(shorts, correction.get("effectiveWidths", []), correction.get("corrections", [])):
            check.near(f"{stage['name']}, short pulse {w}", row["add"], number(c), 0.00006)

    for point, printed in zip(asked, points):
        if "lambda" in point["command"]:
            check.near(f"{point['name']}, asked", printed["asked"], float(point["command"]["lambda"]), 0.0006)
        if point["command"]["kind"] == "hold lambda" and printed["reached"]:
            check.near(f"{point['name']}, held", printed["reached"], float(point["command"]["lambda"]), 0.0006)
    drawn_checks(check, system, asked, points, fuel, folder)
    print(f"{check.count} numbers, {check.failed} off")
    return 1 if check.failed else 0


def drawn_checks(check, system, asked, points, fuel, folder):
    """Fuel drawn, from the air that the engine breathes: volume over time, ideal gas, lambda and stoichiometric ratio."""
    engine = system["engine"]
    breathing = engine.get("volumetricEfficiency") or engine.get("deliveryRatio")
    if not isinstance(breathing, dict) or "speeds" not in breathing or "displacement" not in engine:
        return
    with open(os.path.join(folder, "tables", "fuel.json"), encoding="utf-8") as file:
        ratio = float(json.load(file)["note"].split("ratio ")[1].split()[0])
    speeds = [number(s) for s in breathing["speeds"]]
    pressures = [number(p) for p in breathing.get("manifoldPressures", [])]
    values = [[number(x) / 100 for x in (row if isinstance(row, list) else [row])] for row in breathing["values"]]
    turns = 1 if "two-stroke" in engine["kind"] else 2

    def at(axis, x):
        i = max(0, min(len(axis) - 2, sum(a <= x for a in axis) - 1))
        return i, (x - axis[i]) / (axis[i + 1] - axis[i])

    for point, printed in zip(asked, points):
        if not printed["reached"]:
            continue
        rpm, kpa = number(point["speed"]), number(point["manifold"])
        i, f = at(speeds, rpm)
        filled = [values[i][j] * (1 - f) + values[i + 1][j] * f for j in range(len(values[i]))]
        j, g = at(pressures, kpa) if len(pressures) > 1 else (0, 0)
        share = filled[j] * (1 - g) + (filled[j + 1] * g if g else 0)
        density = kpa * 1e3 / (287.05 * (number(point["charge"]) + 273.15))
        air = share * density * number(engine["displacement"]) * 1e-6 * rpm / 60 / turns
        row = next(r for r in fuel if r["used for"].startswith("in the tank") and point["name"] in r["used for"])
        drawn = air / (ratio * float(printed["reached"])) / float(row["density"]) * 3.6e6
        check.near(f"{point['name']}, drawn, L/h", printed["drawn"], drawn, 0.06 + 0.004 * drawn)


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit("usage: recalculate.py system.json folder")
    sys.exit(main(sys.argv[1], sys.argv[2]))
