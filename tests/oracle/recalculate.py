"""Recalculates each number that the sample prints, from its input files alone, by other means than the library's.

    dotnet run --project docs/samples/Assessment -c Release -- docs/samples/Assessment/data/training-stand.json --out out/stand --force
    python3 tests/oracle/recalculate.py docs/samples/Assessment/data/training-stand.json out/stand

Python 3, standard library only. Reads the system, its points and its bench readings, and what the sample wrote: every table as
CSV, and the words of the pictures on the page. States come from the independent model of systems.py, vapor pressures and the
bench from recalculate_bench.py. A printed number is right when it is the one here, rounded to the digits that were printed. It
ends with 1 when one is not, or when a number of a table was left out.
"""

import copy
import json
import os
import re
import sys

from fluid import si
from printed import Printed
from recalculate_bench import bench_checks, measured_injectors, pulse_checks, trims
from systems_model import Pump
from systems_solve import NoState, Solve, System
from vapor import vapor_pressure

BAR, LITERS = 1e5, 3.6e6
LIMIT = 5.0  # % lean; [Common-practice]


def celsius(text):
    return si(text) - 273.15


def as_measured(document, measured):
    """The same system with the injectors of the bench in its seats; the controller still believes the old ones."""
    if not measured:
        return None
    other = copy.deepcopy(document)
    for stage in other["stages"]:
        for seat in stage["seats"]:
            flow, dead, name = measured[stage["name"], seat["chamber"]]
            own = copy.deepcopy(next(i for i in document["injectors"] if i["name"] == seat["injector"]))
            own["name"] = name
            own["rating"].pop("massFlow", None)
            own["rating"]["volumeFlow"] = f"{flow!r} cm3/min"
            if dead:
                own["deadTime"] = {"voltages": [f"{v!r} V" for v in dead], "differentialPressures": ["300 kPa"],
                                   "values": [[f"{t!r} ms"] for t in dead.values()]}
            other["injectors"].append(own)
            seat["injector"] = name
    return System(other)


class States:
    """Each point as described and as measured, and both with nobody correcting where a sensor holds the mixture."""

    def __init__(self, document, points, measured):
        self.described = System(document)
        self.measured = as_measured(document, measured)
        self.points = points
        self.all = {}
        for point in points:
            name, kind = point["name"], point["command"]["kind"]
            for basis, system in (("as described", self.described), ("as measured", self.measured)):
                if system:
                    self.all[name, basis] = system.solve(point)
                    if kind == "hold lambda":
                        free = {**point, "command": {"kind": "open loop", "lambda": point["command"]["lambda"]}}
                        self.all[name, f"{basis}, if the sensor fails"] = system.solve(free)

    def of(self, name, basis="as described"):
        return self.all[name, basis]


def unburned(document, system):
    """By how much a mixture is leaner when none of the oil burns: stoichiometric ratio without it, over that with it."""
    fuel = next((f for f in document["fuels"] if f["name"] == document["fuel"]), None)
    if not fuel or fuel["kind"] != "premix":
        return 1.0
    base, oil = system.known[fuel["fuel"]], system.known[fuel["oil"]]
    at, part = si(fuel["mixedAt"]), si(fuel["oilPerFuel"])
    gasoline, added = base.density(at), part * oil.density(at)
    whole = system.fuel.stoichiometric * (gasoline + added)
    return whole / (base.stoichiometric * gasoline)


def regulators(document):
    return [l for l in document["plan"]["lines"] if "regulator" in l]


def reserve(document, state):
    """With a return: what the regulators pass by, those of the rails."""
    return sum(state["flows"][l["name"]] for l in regulators(document)) * LITERS


def drawn(state):
    return sum(i["flow"] for i in state["injectors"]) * LITERS


def duties(document, point, state):
    turns = 2 if document["engine"]["kind"] == "four-stroke" else 1
    for stage, own in zip(document["stages"], state["stages"]):
        period = turns / si(point["speed"]) / stage["pulsesPerCycle"]
        yield own["width"], period, own["width"] / period


def point_checks(p, document, states, oil):
    for k, row in p.rows("points"):
        point = states.points[k]
        name, state = point["name"], states.of(point["name"])
        asked = point["command"].get("lambda")
        stage = document["stages"][0]
        told = si(stage["belief"]["differentialPressure"])
        if stage["belief"].get("railReference") == "fixed" and stage["discharge"] == "manifold":
            told -= si(point["manifold"]) - si(point["ambient"])
        lean = [c["lambda"] for (n, _), s in states.all.items() if n == name for c in s["chambers"] if c["lambda"]]
        p.cell("points", k, "asked", asked)
        p.cell("points", k, "reached", state["lambda"])
        p.cell("points", k, "leanest", max(lean) * oil if lean else None)
        p.cell("points", k, "told", told / BAR)
        p.cell("points", k, "across", min(i["difference"] for i in state["injectors"]) / BAR)
        for number, (width, _, duty) in enumerate(duties(document, point, state), 1):
            p.cell("points", k, f"width {number}", width * 1e3 if width else None)
            p.cell("points", k, f"duty {number}", 100 * duty if width else None)
        p.cell("points", k, "drawn", drawn(state))
        p.cell("points", k, "reserve", reserve(document, state))

        least = min(zip(state["injectors"], (s for g in document["stages"] for s in g["seats"])), key=lambda i: i[0]["difference"])
        given = {"speed": si(point["speed"]) * 60, "manifold": si(point["manifold"]) / 1e3, "ambient": si(point["ambient"]) / 1e3,
                 "charge": celsius(point["charge"]), "fuel": celsius(point["fuel"]), "supply": si(point["supply"]),
                 "rail": state["pressures"][least[1]["node"]] / BAR}
        for head, mine in given.items():
            p.cell("conditions", k, head, mine)
        text = dict(p.rows("conditions"))[k]["command"]
        p.words(f"conditions, {name}, command", text, [asked] if asked else [])

    for table, kind, unit in (("path-pressures", "pressures", 1 / BAR), ("part-flows", "flows", LITERS)):
        for k, row in p.rows(table):
            for point in states.points:
                p.cell(table, k, point["name"], states.of(point["name"])[kind][next(iter(row.values()))] * unit)


def pump_parts(document):
    return {l["name"]: l["pump"] for l in document["plan"]["lines"] if "pump" in l}


def pump_of(document, state, name):
    """What a pump does; none where its switch has stopped it."""
    lines = [l for l in document["plan"]["lines"] if "pump" in l]
    if len(lines) > len(state["pumps"]):
        lines = [l for l in lines if "switch" not in l or state["flows"][l["name"]] != 0]
    names = [l["name"] for l in lines]
    return state["pumps"][names.index(name)] if name in names else None


def part_checks(p, document, states):
    for k, row in p.rows("pumps"):
        state = states.of(row["point"])
        pump = pump_of(document, state, row["pump"])
        p.cell("pumps", k, "voltage", pump and pump["voltage"])
        p.cell("pumps", k, "current", pump and pump["current"])
        p.cell("pumps", k, "flow", pump and state["flows"][row["pump"]] * LITERS)
        p.cell("pumps", k, "rise", pump and pump["rise"] / BAR)
    for k, row in p.rows("surge-tanks") if p.has("surge-tanks") else []:
        tank = states.of(row["point"])["surgeTanks"][0]
        for head, key in (("lifted", "lift"), ("returned", "returned"), ("drawn", "drawn"), ("overflow", "overflow")):
            p.cell("surge-tanks", k, head, tank[key] * LITERS)
        net = tank["drawn"] - tank["returned"]
        p.cell("surge-tanks", k, "lasts", None if tank["lift"] >= net else states.described.surge[row["surge tank"]] / (net - tank["lift"]))
        p.cell("surge-tanks", k, "lasts without lift", tank["lasts"])


def chamber_checks(p, document, states, oil):
    trapping = si(document["engine"].get("trappingEfficiency", "100 %"))
    for k, row in p.rows("chambers"):
        state = states.of(row["point"], row["injectors"])
        asked = next(q for q in states.points if q["name"] == row["point"])["command"]["lambda"]
        p.cell("chambers", k, "asked", asked)
        p.cell("chambers", k, "mean", state["lambda"])
        lean = max(c["lambda"] for c in state["chambers"])
        for number, chamber in enumerate(state["chambers"], 1):
            p.cell("chambers", k, str(number), chamber["lambda"])
        p.cell("chambers", k, "leanest", 100 * (lean / asked - 1))
        if "trapped" in row:
            p.cell("chambers", k, "trapped", state["lambda"] * trapping)
        if "leanest if no oil burns" in row:
            p.cell("chambers", k, "leanest if no oil burns", 100 * (lean * oil / asked - 1))


def pulsing_checks(p, document, states):
    """At most: all injectors of a stage at once, each for its effective width: the square wave's mean square and cube."""
    for k, row in p.rows("pulsing"):
        point = next(q for q in states.points if q["name"] == row["point"])
        state, at = states.of(row["point"]), 0
        for stage, (width, period, _) in zip(document["stages"], duties(document, point, state)):
            own = state["injectors"][at : at + len(stage["seats"])]
            at += len(stage["seats"])
            if stage["name"] != row["stage"]:
                continue
            system = states.described
            density = system.fuel.density(si(point["fuel"]))
            waves = []
            for one, seat in zip(own, stage["seats"]):
                static = system.injectors[seat["injector"]].static(one["difference"], density)
                waves.append((static, min(1.0, one["mass"] / static / period)))
            edges = sorted({0.0, *(share for _, share in waves), 1.0})
            power = [0.0] * 4
            for low, high in zip(edges, edges[1:]):
                level = sum(q for q, share in waves if share > (low + high) / 2)
                for n in range(1, 4):
                    power[n] += (high - low) * level**n
            p.cell("pulsing", k, "over time", power[2] / power[1] ** 2)
            p.cell("pulsing", k, "over flow", power[3] / power[1] ** 3)


def sheet_checks(p, document, states):
    """What is handed on from the documents, and densities and flows in the fuel that the controller is told."""
    system = states.described
    for number, stage in enumerate(document["stages"], 1):
        stem = f"{number}-" + "".join(c if c.isascii() and c.isalnum() else "-" for c in stage["name"].lower())
        told = stage["belief"]
        own = next(i for i in document["injectors"] if i["name"] == told["injector"])
        injector, fuel = system.injectors[told["injector"]], system.known[told["fuel"]]
        density = fuel.density(si(told["fuelTemperature"]))
        across = si(told["differentialPressure"])
        for k, row in p.rows(f"{stem}-static-flow"):
            if row["flow"].startswith("measured"):
                continue
            rated = row["flow"] == "rating"
            rho, dp = (injector.density, injector.pressure) if rated else (density, across)
            at = own["rating"]["fluidTemperature"] if rated else told["fuelTemperature"]
            mass = injector.static(dp, rho)
            for head, mine in (("at", celsius(at)), ("across it", dp / BAR), ("volume", mass / rho * 6e7), ("mass", mass * 1e3)):
                p.cell(f"{stem}-static-flow", k, head, mine)
        for k, row in p.rows(f"{stem}-dead-time"):
            for head in row:
                mine = si(own["deadTime"]["voltages"][k]) if head == "voltage" else 1e3 * injector.dead_time(float(row["voltage"]), BAR * float(head.split()[0]))
                p.cell(f"{stem}-dead-time", k, head, mine)
        for k, row in p.rows(f"{stem}-short-pulses") if p.has(f"{stem}-short-pulses") else []:
            p.cell(f"{stem}-short-pulses", k, "width after dead time", si(own["correction"]["effectiveWidths"][k]) * 1e3)
            p.cell(f"{stem}-short-pulses", k, "add", si(own["correction"]["corrections"][k]) * 1e3)
        numbers = [across / BAR, si(own["smallestRepeatableWidth"]) * 1e3, stage["pulsesPerCycle"], density, celsius(told["fuelTemperature"])]
        for k, row in p.rows(f"{stem}-numbers"):
            p.cell(f"{stem}-numbers", k, "value", numbers[k])
    for k, row in p.rows("fuel"):
        stage = next((s for s in document["stages"] if row["used for"] == f"told, {s['name']}"), None)
        name = stage["belief"]["fuel"] if stage else document["fuel"]
        at = si(stage["belief"]["fuelTemperature"]) if stage else si(next(q for q in states.points if q["name"] in row["used for"])["fuel"])
        p.cell("fuel", k, "at", at - 273.15)
        p.cell("fuel", k, "density", system.known[name].density(at))
        p.cell("fuel", k, "vapor pressure", vapor_pressure(document, name, at) / BAR)
    for k, row in p.rows("regulators"):
        part = regulators(document)[k]["regulator"]
        p.cell("regulators", k, "ratio", 1.0)
        p.cell("regulators", k, "set", si(part["setPoint"]["differentialPressure"]) / BAR)
        p.cell("regulators", k, "at flow", si(part["setPoint"]["bypassedFlow"]) * LITERS)
    if p.has("staging"):
        p.cell("staging", 0, "duty of the first", 100 * si(document["staging"]["transitionDutyCycle"]))


def finding_checks(p, document, states, bench):
    """Findings by their kind: what each number in their words must be."""
    oil = unburned(document, states.described)
    fuel = document["fuel"]
    for k, row in p.rows("findings"):
        where, text, what = f"findings, {row['at']}, {row['what'][:40]}", row["value"], row["what"]
        point = next((q for q in states.points if q["name"] == row["at"]), None)
        state = states.of(row["at"], row["seen"]) if point and row["seen"] else None
        asked = point["command"].get("lambda") if point else None
        if "leaner than asked for" in what:
            one = re.search(r"Chamber (\d+)", what)
            mine = state["chambers"][int(one[1]) - 1]["lambda"] if one else state["lambda"]
            numbers = [mine, 100 * (mine / asked - 1), asked]
            if "the mean of all chambers" in text:
                numbers.append(100 * (state["lambda"] / asked - 1))
            p.words(where, text, numbers)
            p.words(where + ", limit", row["limit"], [asked, LIMIT])
        elif "premix" in what:
            chamber = max(range(len(state["chambers"])), key=lambda c: round(state["chambers"][c]["lambda"], 9))
            lean = state["chambers"][chamber]["lambda"]
            p.words(where, text, [lean, None, lean * oil])
            p.words(where + ", limit", row["limit"], [asked, LIMIT])
        elif "boil" in what:
            node = re.search(r"'([^']*)'", what)[1]
            at = si(point["fuel"])
            vapor = vapor_pressure(document, fuel, at)
            gap = abs(state["pressures"][node] + si(point["ambient"]) - vapor)
            p.words(where, text.split(" (")[0], [gap / BAR, vapor / BAR, at - 273.15])
        elif "Voltage drop to pump" in what:
            pump = pump_of(document, state, re.search(r"pump '([^']*)'", what)[1])
            p.words(where, text, [si(point["supply"]) - pump["voltage"]])
        elif "kind of pump" in what:
            line = re.search(r"pump '([^']*)'", what)[1]
            match, rho = pump_of(document, state, line), state["density"]
            part = pump_parts(document)[line]
            tested = states.described.known[part["fluid"]].density(si(part.get("fluidTemperature", "20 degC")))
            flows = []
            for principle in ("displacement", "rotodynamic"):
                pump = Pump({**part, "principle": principle}, rho, tested)
                pump.set(match["voltage"])
                flows.append(pump.flow(0.0, match["rise"], None) * LITERS)
            p.words(where, text, [*flows, 100 * (rho / tested - 1)])
        elif row["at"] in bench:
            found = bench[row["at"]]
            if "not matched" in what:
                p.words(where, text, [found["spread"]])
            elif "off its rating" in what:
                p.words(where, text, [found["from rating"][re.search(r"'([^']*)'", what)[1]]])
            elif re.search(r"\d", re.sub(r"'[^']*'", "", text)):
                p.fail(where, text, "no rule here")
        elif re.search(r"\d", text):
            p.fail(where, text, "no rule here")


def switch_checks(p, document, states):
    """The pressure in the manifold and both thresholds, wherever they are named."""
    for k, row in p.rows("pump-switches") if p.has("pump-switches") else []:
        point = states.points[k]
        gauge = (si(point["manifold"]) - si(point["ambient"])) / 1e3
        by = next(l["switch"] for l in document["plan"]["lines"] if "switch" in l)
        known = [gauge, si(by["joinAbove"]) / 1e3, si(by["leaveBelow"]) / 1e3]
        for text in re.findall(r"(-?\d+(?:\.\d+)?) kPa", row["what they do"]):
            p.near(f"pump-switches, {row['point']}", text, min(known, key=lambda x: abs(x - float(text))))


def figure_checks(p, document, states, bench):
    """The words of pictures."""
    busiest = max(states.points, key=lambda q: drawn(states.of(q["name"])))
    measured = "as measured" if states.measured else "as described"
    for text in p.figures():
        if text.startswith("Fuel path"):
            state = states.of(re.match(r"Fuel path at (.*?)\. ", text)[1])
            for line in document["plan"]["lines"]:
                rise = state["pressures"][line["to"]] - state["pressures"][line["from"]]
                flow = state["flows"][line["name"]]
                said = re.search(rf"[ .;]{re.escape(line['name'])} from [^:;]*: ([^;]*)", text)[1]
                p.words(f"path, {line['name']}", said, [(rise if flow >= 0 else -rise) / BAR, abs(flow) * LITERS])
        elif text.startswith("Lambda by chamber"):
            basis = f"{measured}, if the sensor fails" if "nobody corrects" in text else measured
            for point in states.points:
                said = re.search(rf"{re.escape(point['name'])}: leanest chamber (\d+), ([+-]?[\d.]+) %", text)
                if said:
                    one = (point["name"], basis) if (point["name"], basis) in states.all else (point["name"], measured)
                    lean = max(c["lambda"] for c in states.all[one]["chambers"])
                    p.near(f"lambda by chamber, {point['name']}", said[2], 100 * (lean / point["command"]["lambda"] - 1))
        elif text.startswith("Duty cycle"):
            state = states.of(busiest["name"])
            for stage, (width, _, duty) in zip(document["stages"], duties(document, busiest, state)):
                p.near(f"duty, {stage['name']}", re.search(rf"{re.escape(stage['name'])} ([\d.]+) %", text)[1], 100 * duty)
        elif text.startswith("Injectors against"):
            for found in bench.values():
                for name, mine in found["from rating"].items():
                    p.near(f"spread, {name}", re.search(rf"{re.escape(name)} ([+-]?[\d.]+) %", text)[1], mine)
        elif "Pump '" in text:
            line = re.search(r"\(([^()]*)\) at ", text)[1]
            point = re.match(rf".*? \({re.escape(line)}\) at (.*?)\. Pump", text)[1]
            state = states.of(point)
            pump = pump_of(document, state, line)
            said = re.search(r"gives ([\d.]+) L/h at ([\d.]+) bar and ([\d.]+) V", text)
            for one, mine in zip(said.groups(), (state["flows"][line] * LITERS, pump["rise"] / BAR, pump["voltage"])):
                p.near(f"pump {line}", one, mine)
            said = re.search(r"draws ([\d.]+) L/h; .*?([\d.]+) L/h \((\d+) %\) to spare", text)
            left = reserve(document, state)
            for one, mine in zip(said.groups() if said else (), (drawn(state), left, 100 * left / drawn(state))):
                p.near(f"pump {line}, reserve", one, mine)


FOURTH = {"normal": 3.0, "rectangular": 9 / 5, "triangular": 12 / 5}  # fourth moments of unit variance; [Definition]


class OffSystem(System):
    """The same system with one uncertain input off: controllers still believe what they were told."""

    def __init__(self, document, kind, by, seat):
        other = copy.deepcopy(document)
        number = 0
        for stage in other["stages"] if kind in ("injector flow", "each injector flow", "dead time") else []:
            for place in stage["seats"]:
                own = copy.deepcopy(next(i for i in document["injectors"] if i["name"] == place["injector"]))
                own["name"] = place["injector"] = f"seat {number}"
                if kind == "dead time":
                    own["deadTime"]["values"] = [[f"{si(t) + by!r} s" for t in row] for row in own["deadTime"]["values"]]
                elif kind == "injector flow" or number == seat:
                    head = "massFlow" if "massFlow" in own["rating"] else "volumeFlow"
                    value, unit = own["rating"][head].split(" ", 1)
                    own["rating"][head] = f"{float(value) * (1 + by)!r} {unit}"
                other["injectors"].append(own)
                number += 1
        for line in other["plan"]["lines"]:
            if kind == "pump flow" and "pump" in line:
                for point in (q for c in line["pump"]["curves"] for q in c["points"]):
                    value, unit = point["flow"].split(" ", 1)
                    point["flow"] = f"{float(value) * (1 + by)!r} {unit}"
            if kind == "regulator set point" and "regulator" in line:
                for reading in (line["regulator"]["setPoint"], line["regulator"]["secondReading"]):
                    reading["differentialPressure"] = f"{si(reading['differentialPressure']) + by!r} Pa"
        super().__init__(other)
        if kind == "fuel density":
            self.fuel = copy.copy(self.fuel)
            density = self.fuel.density
            self.fuel.density = lambda at: density(at) * (1 + by)


def scatter_of(document, point, node):
    """Per input the variances of the rail's pressure and of each chamber's lambda: Gauss's rule of three points."""

    def outputs(system):
        state = system.solve(point)
        return [state["pressures"][node] / BAR, *(c["lambda"] for c in state["chambers"] if c["lambda"])]

    best = outputs(System(document))
    for item in document["uncertain"]:
        kind, moment, off = item["kind"], FOURTH[item.get("shape", "normal")], si(item["standardDeviation"])
        seats = range(sum(len(s["seats"]) for s in document["stages"])) if kind == "each injector flow" else [None]
        found = [0.0] * len(best)
        for seat in seats:
            more, less = (outputs(OffSystem(document, kind, side * off * moment**0.5, seat)) for side in (1, -1))
            for k, (high, low) in enumerate(zip(more, less)):
                odd, even = (high - low) / 2, (high + low) / 2 - best[k]
                found[k] += odd**2 / moment + even**2 * (moment - 1) / moment**2
        yield kind, found


def scatter_checks(p, document, states):
    """What each uncertain input makes by itself, and its share; inputs that are left out must round to nothing."""
    if not p.has("scatter"):
        if "uncertain" in document:
            p.fail("scatter", "no table", "uncertain inputs are given")
        return
    node = document["stages"][0]["seats"][0]["node"]
    for point in states.points:
        inputs = dict(scatter_of((states.measured or states.described).document, point, node))
        total = [sum(column) for column in zip(*inputs.values())]
        worst = max(range(1, len(total)), key=lambda k: total[k], default=None)
        left = dict(inputs)
        for k, row in ((k, row) for k, row in p.rows("scatter") if row["point"] == point["name"]):
            kind = row["uncertain"].removesuffix(" (bent)")
            mine = total if kind == "all together" else inputs[kind]
            left.pop(kind, None)
            for head, share, one in (("lambda", "of lambda", worst), ("rail", "of rail", 0)):
                p.cell("scatter", k, head, None if one is None else mine[one] ** 0.5)
                p.cell("scatter", k, share, None if one is None else 100 * mine[one] / total[one])
        for kind, mine in left.items():
            for one in (0, worst):
                if one is not None and mine[one] > 0.005 * total[one]:
                    p.fail(f"scatter, {point['name']}, {kind}", "left out", mine[one] / total[one])


def main(system_file, folder):
    with open(system_file, encoding="utf-8") as file:
        document = json.load(file)
    stem = os.path.splitext(system_file)[0]
    with open(stem + "-points.json", encoding="utf-8") as file:
        points = json.load(file)["points"]
    for point in points:
        if isinstance(point["command"], str):
            point["command"] = {"kind": point["command"]}
    p = Printed(folder)
    plain = System(document)
    readings, measured = measured_injectors(document, plain, stem)
    states = States(document, points, measured)
    oil = unburned(document, plain)
    point_checks(p, document, states, oil)
    part_checks(p, document, states)
    chamber_checks(p, document, states, oil)
    pulsing_checks(p, document, states)
    sheet_checks(p, document, states)
    bench = bench_checks(p, document, plain, readings, measured)
    if measured:
        trims(p, document, states, measured)
    finding_checks(p, document, states, bench)
    scatter_checks(p, document, states)
    switch_checks(p, document, states)
    figure_checks(p, document, states, bench)
    pulse_checks(p, stem)
    for k, row in p.rows("evidence"):
        # Counts of the solver are its own; what is left over must be nothing beside what is printed of flows and pressures.
        p.done |= {("evidence", k, "rounds"), ("evidence", k, "iterations")}
        p.cell("evidence", k, "flow left over", 0.0)
        p.cell("evidence", k, "pressure left over", 0.0)
    left = p.left()
    for table, row, head in left:
        print(f"LEFT {table}, {row}, {head}")
    print(f"{document['name']}: {len(p.lines)} numbers, worst {p.worst[0]:.3f} of the last printed digit ({p.worst[1]}); {p.failed} off, {len(left)} left out")
    return 1 if p.failed or left else 0


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    sys.exit(main(sys.argv[1], sys.argv[2]))
