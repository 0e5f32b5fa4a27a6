"""The bench for recalculate.py: means with intervals, trims, lines through pulses. Standard library only."""

import csv
import json
import math
import os
import re

from fluid import si
from systems_model import Injector, root

# Two-sided, 95 %, by degrees of freedom; from memory, printed in any table of Student's distribution.
STUDENT_95 = {1: 12.7062, 2: 4.30265, 3: 3.18245, 4: 2.77645, 5: 2.57058, 6: 2.44691, 7: 2.36462, 8: 2.30600, 9: 2.26216,
              10: 2.22814, 11: 2.20099, 12: 2.17881, 14: 2.14479, 16: 2.11991, 18: 2.10092, 20: 2.08596}


def measured_injectors(document, system, stem):
    """Readings by stage and injector, carried to the rating: by the root of pressure, and of density."""
    path = stem + "-bench.csv"
    if not os.path.exists(path):
        return {}, {}
    with open(path, encoding="utf-8") as file:
        rows = list(csv.DictReader(line for line in file if line.strip() and not line.startswith("#")))
    readings, measured = {}, {}
    for stage in document["stages"]:
        rating = next(i for i in document["injectors"] if i["name"] == stage["belief"]["injector"])["rating"]
        fluid = system.known[rating["fluid"]]
        rated = fluid.density(si(rating["fluidTemperature"]))
        for seat in stage["seats"]:
            own = [r for r in rows if r["stage"] == stage["name"] and int(r["chamber"]) == seat["chamber"]]
            carried = [
                60 * float(r["collected volume (cm3)"]) / float(r["collection time (s)"])
                * math.sqrt(si(rating["differentialPressure"]) / 1e3 / float(r["differential pressure (kPa)"])
                            * system.known[r["fluid"]].density(273.15 + float(r["fluid temperature (degC)"])) / rated)
                for r in own if r["reading"] == "static flow"
            ]
            dead = {float(r["voltage (V)"]): float(r["dead time (ms)"]) for r in own if r["reading"] == "dead time"}
            dead = dict(sorted(dead.items()))
            name = own[0]["injector"]
            readings.setdefault(stage["name"], {})[name] = carried
            measured[stage["name"], seat["chamber"]] = (sum(carried) / len(carried), dead, name)
    return readings, measured


def bench_checks(p, document, system, readings, measured):
    found = {}
    for number, stage in enumerate(document["stages"], 1):
        if stage["name"] not in readings:
            continue
        stem = f"{number}-" + "".join(c if c.isascii() and c.isalnum() else "-" for c in stage["name"].lower())
        own = readings[stage["name"]]
        means = {n: sum(c) / len(c) for n, c in own.items()}
        mean = sum(means.values()) / len(means)
        # Repeats of all injectors together, each about its own mean: they were read on one bench.
        free = sum(len(c) - 1 for c in own.values())
        scatter = math.sqrt(sum((x - means[n]) ** 2 for n, c in own.items() for x in c) / free)
        half = {n: STUDENT_95[free] * scatter / math.sqrt(len(c)) for n, c in own.items()}
        told = next(i for i in document["injectors"] if i["name"] == stage["belief"]["injector"])
        injector = system.injectors[stage["belief"]["injector"]]
        rated = injector.mass / injector.density * 6e7
        spread = 100 * (max(means.values()) - min(means.values())) / mean
        found[stage["name"]] = {"spread": spread, "from rating": {n: 100 * (m / rated - 1) for n, m in means.items()}}
        for k, row in p.rows("bench-injectors"):
            if row["stage"] == stage["name"]:
                n = row["injector"]
                for head, mine in (("flow", means[n]), ("+/-", half[n]), ("of rating", 100 * means[n] / rated), ("of set's mean", 100 * means[n] / mean)):
                    p.cell("bench-injectors", k, head, mine)
        for k, row in p.rows("bench-sets"):
            if row["stage"] == stage["name"]:
                count = min(len(c) for c in own.values())
                deviation = math.sqrt(sum((m - mean) ** 2 for m in means.values()) / (len(means) - 1))
                p.cell("bench-sets", k, "mean", mean)
                p.cell("bench-sets", k, "spread", spread)
                p.cell("bench-sets", k, "coefficient of variation", 100 * deviation / mean)
                p.cell("bench-sets", k, "repeats", 100 * scatter / mean)
                p.cell("bench-sets", k, "can show", 100 * STUDENT_95[free] * scatter * math.sqrt(2 / count) / mean)
        density = system.known[stage["belief"]["fuel"]].density(si(stage["belief"]["fuelTemperature"]))
        for k, row in p.rows(f"{stem}-static-flow"):
            if row["flow"].startswith("measured"):
                as_told = row["flow"].endswith("told")
                rho, dp = (density, si(stage["belief"]["differentialPressure"])) if as_told else (injector.density, injector.pressure)
                mass = mean / 6e7 * injector.density * math.sqrt(dp / injector.pressure * rho / injector.density)
                at = stage["belief"]["fuelTemperature"] if as_told else told["rating"]["fluidTemperature"]
                for head, mine in (("at", si(at) - 273.15), ("across it", dp / 1e5), ("volume", mass / rho * 6e7), ("mass", mass * 1e3),
                                   ("+/-", 100 * sum(half.values()) / len(half) / mean)):
                    p.cell(f"{stem}-static-flow", k, head, mine)
        dead = {n: d for _, d, n in measured.values() if n in own}
        for k, row in p.rows(f"{stem}-dead-time-measured") if p.has(f"{stem}-dead-time-measured") else []:
            volts = sorted(next(iter(dead.values())))[k]
            values = [d[volts] for d in dead.values()]
            p.cell(f"{stem}-dead-time-measured", k, "voltage", volts)
            p.cell(f"{stem}-dead-time-measured", k, "mean", sum(values) / len(values))
            p.cell(f"{stem}-dead-time-measured", k, "+/-", (max(values) - min(values)) / 2)
        at = min((si(v) for v in told["deadTime"]["voltages"]), key=lambda v: abs(v - 14))
        for k, row in p.rows(f"{stem}-injectors"):
            n = row["injector"]
            chamber = next(c for (s, c), m in measured.items() if s == stage["name"] and m[2] == n)
            volts = sorted(dead[n])
            table = Bench(dead[n])
            for head, mine in (("chamber", chamber), ("flow", means[n]), ("+/-", half[n]), ("dead", table(at) if volts[0] <= at <= volts[-1] else None)):
                p.cell(f"{stem}-injectors", k, head, mine)
    return found


class Bench:
    """Dead time over voltage, straight between the readings."""

    def __init__(self, readings):
        self.volts, self.values = list(readings), list(readings.values())

    def __call__(self, at):
        for a, b, x, y in zip(self.volts, self.volts[1:], self.values, self.values[1:]):
            if a <= at <= b:
                return x + (y - x) * (at - a) / (b - a)
        return None


def trims(p, document, states, measured):
    """Fuel to add for a chamber so that the largest departure that is left over the points is as small as one number makes it."""
    for number, stage in enumerate(document["stages"], 1):
        stem = f"{number}-" + "".join(c if c.isascii() and c.isalnum() else "-" for c in stage["name"].lower())
        old = states.described.injectors[stage["belief"]["injector"]]
        own = [measured[stage["name"], s["chamber"]] for s in stage["seats"]]
        mean_flow = sum(m[0] for m in own) / len(own)
        mean_dead = Bench({v: sum(m[1][v] for m in own) / len(own) for v in own[0][1]}) if own[0][1] else None
        first = sum(len(s["seats"]) for s in document["stages"][: number - 1])
        for k, row in p.rows(f"{stem}-injectors"):
            flow, dead, _ = own[k]
            dead = Bench(dead) if dead else None
            cases = []
            for point in states.points:
                state = states.of(point["name"])
                turns = 2 if document["engine"]["kind"] == "four-stroke" else 1
                period = turns / si(point["speed"]) / stage["pulsesPerCycle"]
                all_ = state["injectors"][first : first + len(own)]
                wanted = sum(i["mass"] for i in all_) / len(all_)
                if wanted <= 0:
                    continue
                one, rho = all_[k], states.described.fuel.density(si(point["fuel"]))
                give = lambda f, d: pulses(old, f, d, one, rho, period)
                entered, fitted = give(mean_flow, mean_dead), give(flow, dead)
                if entered and fitted:
                    cases.append((wanted, entered, fitted, period))
            need = [e(width(f, w, period)) / w - 1 for w, e, f, period in cases]
            trim = (max(need) + min(need)) / 2
            off = lambda t: max((f(width(e, w * (1 + t), period)) / w - 1 for w, e, f, period in cases), key=abs)
            for head, mine in (("trim", trim), ("without", off(0.0)), ("left", off(trim))):
                # Left is a size; which of the two equal ends is the largest is left to rounding.
                printed = float(row[head] or 0)
                p.cell(f"{stem}-injectors", k, head, math.copysign(100 * mine, printed) if head == "left" and printed else 100 * mine)


def pulses(old, flow, dead, state, rho, period):
    """Mass by width of an injector with this flow and dead time under a state's conditions; none where it was not read there."""
    time = dead(state["voltage"]) if dead else old.dead_time(state["voltage"], state["difference"]) * 1e3
    if time is None:
        return None
    static = flow / 6e7 * old.density * math.sqrt(state["difference"] / old.pressure * rho / old.density)
    return lambda w: old.pulse(w, period, static, time / 1e3)


def width(give, mass, period):
    return root(lambda w: give(w) / mass - 1, 0.0, period * 0.999)


def pulse_checks(p, stem):
    """A line through pulses by least squares over the longest run of widths that lie within 1 % of it."""
    path = stem + "-pulses.json"
    if not os.path.exists(path):
        return
    with open(path, encoding="utf-8") as file:
        document = json.load(file)
    lines = p.paragraphs()
    for injector in document["injectors"]:
        all_ = sorted((si(r["pulseWidth"]), float(r["collected"]["amount"].split()[0]) / r["pulses"]) for r in injector["now"]["pulses"])  # s, g
        widths = sorted({w for w, _ in all_})
        runs = [(n, i) for n in range(len(widths), 2, -1) for i in range(len(widths) - n + 1)]
        fits = []
        for n, i in runs:
            run = widths[i : i + n]
            points = [x for x in all_ if run[0] <= x[0] <= run[-1]]
            slope, level = fit(points)
            worst = max(abs(sum(m for v, m in points if v == w) / sum(v == w for v, _ in points) / (level + slope * w) - 1) for w in run)
            if worst <= 0.01:
                fits.append((-n, worst, run, points, slope, level))
        _, _, run, points, slope, level = min(fits, key=lambda f: f[:2])
        zero = -level / slope
        at = next(k for k, line in enumerate(lines) if f"{injector['name']} at" in line)
        p.words("pulses, head", re.sub(r"^\s*\S+ at", "", lines[at]), [None, None, len(all_)])
        low, high = reach(points, slope, level, 0.01)
        p.words("pulses, line", lines[at + 1].replace("95 %", ""), [slope, 1e3 * zero, 1e3 * low, 1e3 * high])
        p.words("pulses, range", lines[at + 2].split(" within")[0], [1e3 * run[0], 1e3 * run[-1]])
        below = [w for w in widths if zero < w < run[0]]
        for line, w in zip(lines[at + 3 :], below):
            mean = sum(m for v, m in all_ if v == w) / sum(v == w for v, _ in all_)
            p.words("pulses, correction", line, [1e3 * (w - zero), 1e3 * (mean / slope - (w - zero))])


def fit(points):
    n = len(points)
    x, y = sum(w for w, _ in points) / n, sum(m for _, m in points) / n
    slope = sum((w - x) * (m - y) for w, m in points) / sum((w - x) ** 2 for w, _ in points)
    return slope, y - slope * x


def reach(points, slope, level, tolerance):
    """Fieller's interval of the zero crossing, widened by what a departure within the tolerance could have moved it: all widths at
    once, each to the worse side, or one that pulls the line along."""
    n = len(points)
    x = sum(w for w, _ in points) / n
    about = sum((w - x) ** 2 for w, _ in points)
    rest = sum((m - level - slope * w) ** 2 for w, m in points) / (n - 2)
    t = STUDENT_95[n - 2]
    # (level + slope z)^2 = t^2 rest (1/n + (z - x)^2 / about)
    k = t * t * rest
    a, b, c = slope**2 - k / about, level * slope + k * x / about, level**2 - k * (1 / n + x * x / about)
    root_ = math.sqrt(b * b - a * c)
    low, high = (-b - root_) / a, (-b + root_) / a
    widths = sorted({w for w, _ in points})

    def off(at):
        each = []
        for w in widths:
            count = sum(v == w for v, _ in points)
            pull = lambda z: count * (1 / n + (z - x) * (w - x) / about)
            each.append((abs(pull(at)) * tolerance * (level + slope * w), pull(w)))
        return max(sum(e for e, _ in each), max(e / (1 - own) for e, own in each))

    away = max(w for w, _ in points) - low
    growth = (off(low - away) - off(low)) / away
    return low - off(low) / (slope - min(growth, slope / 2)), high + off(high) / slope
