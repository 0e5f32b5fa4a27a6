"""Fuel systems that stand on both sides of each limit of a finding: random systems with one input moved. All invented. Python 3,
standard library only.

    python3 tests/oracle/systems_limits.py FOLDER

Two ways: an input is moved in steps through what it decides, such as a pump's flow or the supply's voltage; and a limit of the
owner's is put just above and just below the greatest value that the state of systems_solve.py has."""

import copy
import json
import os
import sys

from fluid import Refused, si
from systems_findings import Judge
from systems_random import SOURCE, random_system, text
from systems_solve import System

FOR_ALL = ("idle, held", "middle", "peak, held", "given widths", "cut")
STEPS = (0.4, 0.6, 0.75, 0.85, 0.93, 1.0, 1.08, 1.2, 1.5, 2.0)


def scaled(quantity, factor):
    number, unit = quantity.split(" ", 1)
    return f"{float(number) * factor:.6g} {unit}"


def base(seed, *names):
    document, points = random_system(seed)
    found = {p["name"]: p for p in points["points"]}
    return document, [found[n] for n in names or FOR_ALL]


def lines(document, key):
    return [l for l in document["plan"]["lines"] if key in l]


def numbered(point, k, **changes):
    return {**copy.deepcopy(point), "name": f"{point['name']}, {k}", **changes}


# ---- one input at a time; each yields documents with their points


def told_pressure():
    """What the controller was told: correction, mean mixture, pressure not as told, rail reference."""
    for seed in (1, 4, 5, 13, 14):
        for k, step in enumerate((0.3, 0.5, 0.6, 0.75, 0.84, 0.86, 0.95, 0.97, 1.0, 1.03, 1.1, 1.16, 1.18, 1.3, 1.6)):
            document, points = base(seed, "idle, held", "peak, open loop", "given widths")
            for stage in document["stages"]:
                stage["belief"]["differentialPressure"] = text(300 * step, "kPa", 6)
            yield f"told-{seed}-{k}", document, points
            if k % 5 == 0:
                document = copy.deepcopy(document)
                for stage in document["stages"]:
                    told = stage["belief"]
                    told["railReference"] = "measured" if k == 10 else "fixed" if told["railReference"] == "manifold" else "manifold"
                points = [p for p in points if k != 10 or "open loop" not in p["name"]]
                yield f"reference-{seed}-{k}", document, points


def lambdas():
    """The lambda asked for moves widths, so that pulses get too short, and too long to close."""
    for seed in (2, 9, 23):
        document, points = base(seed, "idle, held", "peak, held", "peak, open loop")
        more = [numbered(p, k, command=p["command"] | {"lambda": round(p["command"]["lambda"] * f, 4)})
                for p in points for k, f in enumerate((0.55, 0.7, 0.8, 0.9, 1.1, 1.4, 2.0, 3.0))]
        yield f"lambda-{seed}", document, more


def given_widths():
    """Pulses about as long as the dead time: some chambers get none."""
    for seed in (1, 3, 11, 18, 25):
        document, (point,) = base(seed, "given widths")
        count = len(document["stages"])
        more = [numbered(point, k, command={"kind": "pulse widths", "widths": [w] + ["0 ms"] * (count - 1)})
                for k, w in enumerate(("0.5 ms", "0.7 ms", "0.8 ms", "0.9 ms", "1 ms", "1.1 ms", "1.3 ms", "1.6 ms", "2 ms", "9 ms"))]
        yield f"widths-{seed}", document, more


def supplies():
    for seed in (1, 6, 22):
        for contacts in (1, 12):
            document, points = base(seed, "idle, held", "peak, open loop", "cut", "all open")
            for name in ("pumps", "injectors"):
                circuit = document["power"][name]
                circuit["contacts"] = scaled(circuit["contacts"], contacts)
            more = [numbered(p, v, supply=f"{v} V") for p in points for v in (9, 11, 12.5, 14)]
            yield f"supply-{seed}-{contacts}", document, more


def pump_sizes(which, seeds, *names):
    """The flow of one pump or of all: reserve, regulators shut and starved, velocities, a tank that drains."""
    for seed in seeds:
        for k, step in enumerate((0.2, 0.3, 0.4, 0.5, 0.55, 0.6, 0.65, 0.7, 0.8, 1.2, 2.0)):
            document, points = base(seed, *names)
            for line in lines(document, "pump"):
                if which in line["name"]:
                    for curve in line["pump"]["curves"]:
                        for point in curve["points"]:
                            point["flow"], point["current"] = scaled(point["flow"], step), scaled(point["current"], max(step, 1))
            yield f"{which.replace(' ', '-')}-{seed}-{k}", document, points


def bores(name, seeds):
    for seed in seeds:
        for k, step in enumerate((0.2, 0.25, 0.3, 0.4, 0.5, 0.65, 0.75, 0.9, 1.1)):
            document, points = base(seed, "idle, held", "peak, held", "cut")
            for line in document["plan"]["lines"]:
                if line["name"] == name:
                    part = line.get("hose") or line["fitting"]
                    part["bore"] = scaled(part["bore"], step)
            yield f"{name.replace(' ', '-')}-{seed}-{k}", document, points


def temperatures():
    """Hot and cold fuel, on a hill and not: near boiling, boiling, vapor pressure not known."""
    celsius = (-10, 0, 4.4, 4.5, 20, 37.7, 37.8, 37.9, 45, 55, 62)
    for seed in (1, 9, 19, 20):
        document, points = base(seed, "idle, held")
        yield f"warm-{seed}", document, [numbered(p, f"{c}, {a}", fuel=f"{c} degC", ambient=a) for p in points
                                         for c in celsius for a in ("100 kPa absolute", "82 kPa absolute")]
    document, points = base(1, "idle, held")
    document["fuels"][0]["reidVaporPressure"] = "103 kPa absolute"
    yield "cold-on-a-hill", document, [numbered(points[0], f"{c}, {a}", fuel=f"{c} degC", ambient=f"{a} kPa absolute", manifold="30 kPa absolute")
                                       for c in (-10, 4.4, 4.5, 8) for a in (50, 54, 58, 70)]
    document, points = base(9, "idle, held")
    document["fuels"] = [{"kind": "blend by volume", "name": "blend", "mixedAt": "15 degC",
                          "parts": [{"fraction": "85 %", "fuel": "pump gasoline"}, {"fraction": "15 %", "fuel": "methanol"}]}]
    yield "vapor-not-known", document, [numbered(points[0], c, fuel=f"{c} degC") for c in celsius[1:]]


def classes():
    """Fuel sold as E85, of gasolines and contents that its class allows, and of others."""
    for k, psi in enumerate((6.01, 7, 7.6, 8.4, 9.2, 10, 11, 12.5, 14)):
        for number in (1, 2, 3, 4):
            document, points = base(9, "idle, held")
            share = (55, 70, 82)[(k + number) % 3]
            document["fuels"] = [{"kind": "E85", "name": "blend", "ethanol": f"{share} %", "class": number, "gasoline": {
                "kind": "gasoline", "name": "its gasoline", "at15Celsius": "740 kg/m3", "reidVaporPressure": f"{psi * 6.894757:.6g} kPa absolute"}}]
            yield f"class-{number}-{k}", document, [numbered(points[0], c, fuel=f"{c} degC") for c in (15, 45)]


def filters():
    for seed in (2, 8):
        for k, step in enumerate(STEPS):
            document, points = base(seed, "idle, held", "cut", "all open")
            (line,) = lines(document, "filter")
            part = line["filter"]
            for point in part["points"]:
                point["flow"] = scaled(point["flow"], step * 0.55)
            part["collapse"] = text(10 * step, "kPa")
            yield f"filter-{seed}-{k}", document, points


def leaks():
    """A jet out of the rail to where nothing comes back from, under pressure or not."""
    for seed in (2, 8, 22):
        for k, (flow, outside) in enumerate((("0.05 L/h", 0), ("2 L/h", 0), ("10 L/h", 0), ("2 L/h", 900))[: 3 if seed == 8 else 4]):
            document, points = base(seed, "idle, held", "peak, held", "cut")
            rail = next(n for n in document["plan"]["nodes"] if n["name"] == "rail")
            document["plan"]["nodes"].append({**rail, "kind": "tank", "name": "outside", "pressure": f"{outside} kPa gauge"})
            document["plan"]["lines"].append({"name": "leak", "from": "rail", "to": "outside", "jet": {
                "name": "leak", "flow": flow, "differentialPressure": "300 kPa", "density": "745 kg/m3", "source": SOURCE}})
            yield f"leak-{seed}-{k}", document, points


def weaker_pumps():
    """Of two pumps side by side one gives up against less pressure, and both end at no flow."""
    for seed in (7, 16):
        for k, share in enumerate((0.25, 0.3, 0.33, 0.36, 0.4, 0.5, 0.7, 0.9)):
            document, points = base(seed, "idle, held", "peak, held", "cut")
            for line in lines(document, "pump"):
                for curve in line["pump"]["curves"]:
                    most = curve["points"][-1]["flow"].split(" ")
                    for point in curve["points"]:
                        flow, unit = point["flow"].split(" ")
                        point["flow"] = f"{max(0.0, float(flow) - float(most[0])):.6g} {unit}"
                        if line["name"] == "pump 2":
                            point["pressureRise"] = scaled(point["pressureRise"], share)
            yield f"weaker-{seed}-{k}", document, points


def no_way_back():
    """Ahead of a reducing regulator, without a bleed: at fuel cut the pump runs against a closed line."""
    for seed in (3, 6, 8, 15):
        document, points = base(seed, "idle, held", "peak, held", "cut")
        document["plan"]["lines"] = [l for l in document["plan"]["lines"] if l["name"] != "bleed"]
        for line in lines(document, "pump"):
            for curve in line["pump"]["curves"]:
                curve["points"][-1]["flow"] = "0 L/h"
        yield f"no-way-back-{seed}", document, points


def principles():
    """The density that a pump's curve was measured at, about that of the fuel."""
    for seed in (9, 16):
        for k, celsius in enumerate((-20, -10, 0, 10, 20, 40, 60)):
            document, points = base(seed, "idle, held")
            for line in lines(document, "pump"):
                line["pump"].pop("principle", None)
                line["pump"]["fluidTemperature"] = f"{celsius} degC"
            yield f"principle-{seed}-{k}", document, [numbered(p, c, fuel=f"{c} degC") for p in points for c in (10, 60, 80)]


def estimates():
    for seed, basis in ((2, "published"), (9, "estimate"), (12, "supplied"), (8, "estimate")):
        document, points = base(seed)
        for line in document["plan"]["lines"]:
            if "fitting" in line:
                line["fitting"]["basis"] = basis
            for key in ("regulator", "reducingRegulator"):
                if key in line and basis == "estimate":
                    line[key]["estimate"] = "invented: the second reading is typical"
        yield f"estimate-{seed}", document, points


def uneven_rails():
    """One rail above what was told and one below it: neither may hide the other."""
    for seed in (9, 14):
        for k, bore in enumerate((1.2, 1.5, 1.9, 2.4, 3)):
            for told in (220, 280):
                document, points = base(seed, "cruise", "peak, held")
                for line in document["plan"]["lines"]:
                    if line["name"] == "other branch":
                        line["hose"]["bore"] = f"{bore} mm"
                    if line["name"] == "other outlet":
                        line["fitting"] = {**line["fitting"], "bore": "0.2 mm"}
                for stage in document["stages"]:
                    stage["belief"]["differentialPressure"] = f"{told} kPa"
                yield f"uneven-{seed}-{k}-{told}", document, points


# ---- limits of the owner's on both sides of what a state has


OWN = {
    "dutyCycle": ("%", 100, 10, 100), "pumpReserve": ("%", 100, 0, 1000), "pressureDeviation": ("%", 100, 0.1, 50),
    "mixtureDeviation": ("%", 100, 0.1, 50), "voltageDrop": ("V", 1, 0.01, 5), "feedVelocity": ("m/s", 1, 0.1, 20),
    "suctionVelocity": ("m/s", 1, 0.1, 20), "vaporMargin": ("kPa", 1e-3, 0.1, 300),
}


def own_limits():
    for seed in (1, 2, 5, 14, 22):
        document, points = base(seed, "cruise", "peak, open loop")
        system = System(copy.deepcopy(document))
        for kind, (unit, scale, low, high) in OWN.items():
            for point in points:
                try:
                    value = Judge(system, point, system.solve(point)).measure(kind)
                except Refused:
                    continue
                if value is None or not low < value * scale < high:
                    continue
                for side, factor in (("above", 1 + 1e-5), ("below", 1 - 1e-5)):
                    changed = {**copy.deepcopy(document), "limits": {"own": [
                        {kind: f"{value * scale * factor:.9g} {unit}", "reason": "invented: beside what the state has"}]}}
                    yield f"own-{kind}-{seed}-{points.index(point)}-{side}", changed, [point]


FAMILIES = (
    told_pressure, lambdas, given_widths, supplies, lambda: pump_sizes("pump", (2, 3, 10), "idle, held", "peak, held", "all open", "cut"),
    lambda: pump_sizes("lift pump", (21, 22, 26), "idle, held", "peak, held"), lambda: bores("return hose", (1, 9)), lambda: bores("suction hose", (2, 8)),
    lambda: bores("feed hose", (1, 22)), temperatures, classes, filters, leaks, weaker_pumps, no_way_back, principles, estimates,
    uneven_rails, own_limits,
)


def main(folder):
    os.makedirs(folder, exist_ok=True)
    for family in FAMILIES:
        for name, document, points in family():
            document["name"] = name
            for end, held in (("", document), ("-points", {"document": "operating list", "version": "1", "points": points})):
                with open(os.path.join(folder, f"{name}{end}.json"), "w", encoding="utf-8") as file:
                    json.dump(held, file, indent=1)


if __name__ == "__main__":
    sys.exit(__doc__ if len(sys.argv) != 2 else main(sys.argv[1]))
