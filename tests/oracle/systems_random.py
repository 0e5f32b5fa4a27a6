"""Random fuel systems as documents, all invented, each from a seed: only random.random is drawn from, which keeps its sequence."""

import random

SOURCE = {"key": "Workshop-class", "locator": "random system for a comparison; invented"}


class Draw:
    def __init__(self, seed):
        self.next = random.Random(seed).random

    def between(self, low, high):
        return low + (high - low) * self.next()

    def whole(self, low, high):
        return low + int((high - low + 1) * self.next())

    def one_of(self, *items):
        return items[int(len(items) * self.next())]


def text(value, unit, digits=5):
    return f"{value:.{digits}g} {unit}"


def fuel(draw, two_stroke):
    kind = draw.one_of("plain", "blend", "blend", "gasoline")
    own = {"kind": "gasoline", "name": "gasoline", "at15Celsius": text(draw.between(720, 760), "kg/m3"),
           "reidVaporPressure": "60 kPa absolute"}
    if two_stroke:
        return [{"kind": "premix", "name": "mix", "oilPerFuel": text(draw.between(1, 5), "%"), "mixedAt": "18 degC",
                 "fuel": own if kind == "gasoline" else "pump gasoline", "oil": "two-stroke oil"}], "mix", 14.5
    if kind == "plain":
        return [], *draw.one_of(("pump gasoline", 14.5), ("ethanol", 9.0), ("methanol", 6.5))
    if kind == "gasoline":
        return [own], "gasoline", 14.5
    share = draw.whole(5, 85)
    return [{"kind": "blend by volume", "name": "blend", "mixedAt": "15 degC",
             "parts": [{"fraction": f"{100 - share} %", "fuel": own}, {"fraction": f"{share} %", "fuel": "ethanol"}]}], "blend", 14.5 - 0.055 * share


def injector(draw, name, grams):
    volts = [5, 7, 9, 11, 13, 15, 17]
    pressures = [50, 300, 900] if draw.next() < 0.7 else [300]
    base, tilt = draw.between(0.5, 1.0), draw.between(0.0003, 0.0008)
    values = [[f"{base * (12 / v) ** 1.7 * (1 + tilt * p):.4f} ms" for p in pressures] for v in volts]
    rated = draw.one_of(250, 300, 350)
    correction = "none"
    if draw.next() < 0.5:
        a, b = draw.between(0.01, 0.04), draw.between(0.0, 0.03)
        correction = {"effectiveWidths": ["0.2 ms", "0.5 ms", "1.2 ms"],
                      "corrections": [f"{a:.4f} ms", f"{b:.4f} ms", "0 ms"], "source": SOURCE}
    flow = grams * (rated / 300) ** 0.5
    rating = {"massFlow": text(flow, "g/s")} if draw.next() < 0.5 else {"volumeFlow": text(flow / 0.684 * 60, "cm3/min")}
    return {
        "name": name,
        "rating": {**rating, "differentialPressure": f"{rated} kPa", "fluid": "n-heptane",
                   "fluidTemperature": f"{draw.whole(15, 25)} degC", "source": SOURCE},
        "deadTime": {"voltages": [f"{v} V" for v in volts], "differentialPressures": [f"{p} kPa" for p in pressures],
                     "values": values, "outside": "refuse", "source": SOURCE},
        "correction": correction,
        "smallestRepeatableWidth": text(draw.between(0.3, 0.6), "ms"),
        "closingTime": text(draw.between(0.5, 1.0), "ms"),
        "coil": text(draw.between(11, 16), "ohm"),
    }


def engine(draw):
    kind = draw.one_of("four-stroke", "four-stroke", "four-stroke", "two-stroke", "rotary")
    chambers = draw.whole(1, 6) if kind == "four-stroke" else draw.whole(1, 3)
    each = draw.between(250, 650)
    boost = draw.next() < 0.4
    speeds = ["100 rpm", "2000 rpm", "5000 rpm", "9000 rpm"]
    v = [draw.between(40, 70), draw.between(70, 90), draw.between(80, 105), draw.between(60, 90)]
    if draw.next() < 0.5:
        table = {"kind": "over speed and pressure", "speeds": speeds,
                 "manifoldPressures": ["15 kPa absolute", "100 kPa absolute", "300 kPa absolute"],
                 "values": [[text(x * draw.between(0.7, 0.9), "%"), text(x, "%"), text(x * draw.between(0.95, 1.05), "%")] for x in v],
                 "outside": "refuse", "source": SOURCE}
    else:
        table = {"kind": "over speed", "speeds": speeds, "takenAt": "100 kPa absolute", "values": [text(x, "%") for x in v],
                 "outside": "refuse", "source": SOURCE}
    found = {"kind": kind, "name": "engine"}
    if kind == "rotary":
        found |= {"rotors": chambers, "chamberDisplacement": text(each, "cm3"), "volumetricEfficiency": table}
    else:
        found |= {"cylinders": chambers, "displacement": text(each * chambers, "cm3")}
        found |= {"deliveryRatio": table, "trappingEfficiency": "75 %"} if kind == "two-stroke" else {"volumetricEfficiency": table}
    return found, chambers, each, boost, kind


def pump(draw, name, free, principle):
    curves = []
    bend, drop = draw.between(0.05, 0.25), draw.between(0.4, 0.6)
    for volts, share, most in ((6, 0.42, 450), (10, 0.75, 800), (13, 1.0, 1000), (16, 1.2, 1100)):
        points = []
        for k in range(6):
            t = k / 5
            flow = free * share * (1 - drop * ((1 - bend) * t + bend * t * t))
            points.append({"pressureRise": text(most * t, "kPa"), "flow": text(flow, "L/h"),
                           "current": text(1.5 + share * free * (most * t * 0.6 + 60) / 3600 / volts / 0.4 * (1 + 0.05 * t), "A")})
        curves.append({"voltage": f"{volts} V", "points": points, "source": SOURCE})
    found = {"name": name, "curves": curves, "fluid": "n-heptane", "source": SOURCE}
    return found | ({"principle": principle} if principle else {})


def hose(draw, name, bore, longest):
    return {"name": name, "length": text(draw.between(0.2, longest), "m", 3), "bore": text(bore, "mm", 3),
            "roughness": draw.one_of("0.0015 mm", "0.01 mm", "0.05 mm"), "lossCoefficient": round(draw.between(0, 5), 2), "source": SOURCE}


def circuit(draw, name):
    wire = lambda: {"size": draw.one_of("12 AWG", "14 AWG", "16 AWG", "2.5 mm2", "4 mm2"), "length": text(draw.between(0.5, 4), "m", 3),
                    "temperature": f"{draw.whole(10, 70)} degC"}
    return {"name": name, "supply": [wire()], "ground": [wire()], "contacts": text(draw.between(2, 25), "mohm", 3)}


def path(draw, free, dead_head, two_rails, principle):
    """Nodes and lines; free is the pump's flow at no pressure, L/h."""
    z = lambda low, high: text(draw.between(low, high), "m", 3)
    tall = z(0.6, 0.9)
    names = ["pump inlet", "pump outlet", "filter outlet", "Y", "rail", "other rail", "rail end", "return start"]
    if not two_rails:
        names.remove("other rail")
    if dead_head:
        names.remove("return start")
        names.remove("rail end")
    heights = {"rail end": tall, "return start": tall} | ({"filter outlet": tall, "Y": tall} if dead_head else {})
    nodes = [{"kind": "tank", "name": "tank", "pressure": text(draw.between(0, 3), "kPa gauge", 3), "elevation": z(0.2, 1.1)}]
    nodes += [{"kind": "junction", "name": n, "elevation": heights.get(n) or z(0.1, 0.9)} for n in names]
    line = lambda name, a, b, **part: {"name": name, "from": a, "to": b, **part}
    wide = 5 + 0.3 * free**0.5
    lines = [line("suction hose", "tank", "pump inlet", hose=hose(draw, "suction", wide + 3, 1))]
    count = draw.one_of(1, 1, 2)
    for k in range(count):
        lines.append(line(f"pump {k + 1}", "pump inlet", "pump outlet", pump=pump(draw, f"pump {k + 1}", free / count, principle)))
    loss = draw.between(5, 25)
    points = [{"flow": text(free * x, "L/h"), "pressureLoss": text(loss * (0.6 * x + 0.4 * x * x) * y, "kPa")}
              for x, y in ((0.2, 1), (0.6, draw.between(0.95, 1.05)), (1.5, 1))]
    lines.append(line("filter", "pump outlet", "filter outlet",
                      filter={"name": "filter", "points": points, "density": "684 kg/m3", "viscosity": "0.41 mPa s", "source": SOURCE}))
    opened = {"pressureLoss": text(draw.between(10, 30), "kPa"), "flow": text(free, "L/h"), "density": "745 kg/m3"}
    reference = draw.one_of("manifold", "ambient")
    held = draw.between(250, 400)
    body = {"name": "regulator", "diaphragm": text(draw.between(600, 1000), "mm2"), "seat": text(draw.between(8, 25), "mm2"),
            "fullyOpen": opened, "reference": reference, "source": SOURCE}
    if dead_head:
        droop, supply = draw.between(2, 10), draw.between(550, 650)
        body |= {"setPoint": {"differentialPressure": text(held, "kPa"), "flow": text(0.1 * free, "L/h"), "supply": text(supply, "kPa gauge")},
                 "secondReading": {"differentialPressure": text(held - droop, "kPa"), "flow": text(0.5 * free, "L/h"),
                                   "supply": text(supply, "kPa gauge")}}
        lines.append(line("regulator", "filter outlet", "Y", reducingRegulator=body))
        lines.append(line("bleed", "pump outlet", "tank", jet={"name": "bleed", "flow": text(free * draw.between(0.2, 0.4), "L/h"),
                          "differentialPressure": "500 kPa", "density": "745 kg/m3", "source": SOURCE}))
    else:
        rise = draw.between(1, 8)
        body |= {"setPoint": {"differentialPressure": text(held, "kPa"), "bypassedFlow": text(0.2 * free, "L/h")},
                 "secondReading": {"differentialPressure": text(held + rise, "kPa"), "bypassedFlow": text(0.6 * free, "L/h")}}
        lines.append(line("feed hose", "filter outlet", "Y", hose=hose(draw, "feed", wide, 4)))
        lines.append(line("regulator", "rail end", "return start", regulator=body))
        lines.append(line("return hose", "return start", "tank", hose=hose(draw, "return", wide, 4)))
    lines.append(line("branch", "Y", "rail", hose=hose(draw, "branch", wide - 1, 1)))
    if two_rails:
        lines.append(line("other branch", "Y", "other rail", hose=hose(draw, "other branch", wide - 2, 1)))
    if not dead_head:
        lines.append(line("outlet", "rail", "rail end", hose=hose(draw, "outlet", wide - 1, 1)))
        if two_rails:
            lines.append(line("other outlet", "other rail", "rail end", fitting={"name": "tee", "bore": text(wide - 2, "mm", 3),
                              "lossCoefficient": round(draw.between(1, 8), 2), "basis": "estimate", "source": SOURCE}))
    return {"nodes": nodes, "lines": lines}


def with_surge_tank(draw, plan, demand):
    """The same path fed from a surge tank that a lift pump fills; most have a second pump that joins by a switch."""
    plan["nodes"][0]["name"] = "main tank"
    places = lambda: {k: text(draw.between(-0.4, 0.4), "m", 3) for k in ("forward", "left")}
    for node in plan["nodes"]:
        node |= places()
    plan["nodes"].insert(1, {"kind": "surge tank", "name": "tank", "pressure": text(draw.between(0, 2), "kPa gauge", 3),
                             "elevation": text(draw.between(1.6, 2), "m", 3), "usableVolume": text(draw.between(500, 3000), "cm3"), **places()})
    plan["nodes"].insert(2, {"kind": "junction", "name": "lifted", "elevation": text(draw.between(0.1, 0.9), "m", 3), **places()})
    wide = 5 + 0.3 * demand**0.5
    plan["lines"][:0] = [
        {"name": "lift pump", "from": "main tank", "to": "lifted", "pump": pump(draw, "lift pump", demand * draw.between(0.9, 1.8), None)},
        {"name": "lift hose", "from": "lifted", "to": "tank", "hose": hose(draw, "lift", wide + 2, 2)},
    ]
    home = draw.next() < 0.3
    for line in plan["lines"]:
        if home and line["name"] in ("return hose", "bleed"):
            line["to"] = "main tank"
    # The two sides of a regulator at one place, so that nothing is carried between them while it is shut.
    at = {n["name"]: n for n in plan["nodes"]}
    for line in plan["lines"]:
        for key in ("forward", "left"):
            if "regulator" in line or "reducingRegulator" in line:
                at[line["to"]][key] = at[line["from"]][key]
    first = next(l for l in plan["lines"] if l["name"] == "pump 1")
    if draw.next() < 0.75:
        kind = draw.one_of("manifold above", "pressure below", "total draw above", "flow above")
        seen = {"manifold above": {"joinAbove": text(draw.between(-20, -5), "kPa gauge"), "leaveBelow": text(draw.between(-45, -25), "kPa gauge")},
                "pressure below": {"node": "pump outlet", "joinBelow": text(draw.between(250, 330), "kPa gauge"),
                                   "leaveAbove": text(draw.between(380, 450), "kPa gauge")},
                "total draw above": {"joinAbove": text(demand * draw.between(0.35, 0.6), "L/h"), "leaveBelow": text(demand * draw.between(0.1, 0.3), "L/h")},
                "flow above": {"link": "branch", "joinAbove": text(demand * draw.between(0.35, 0.6), "L/h"),
                               "leaveBelow": text(demand * draw.between(0.1, 0.3), "L/h")}}[kind]
        plan["lines"].append({"name": "switched pump", "from": "pump inlet", "to": "pump outlet",
                              "pump": {**first["pump"], "name": "switched pump"},
                              "switch": {"kind": kind, **seen, "was": draw.one_of("running", "stopped")}})


def random_system(seed):
    draw = Draw(seed)
    motor, chambers, each, boost, kind = engine(draw)
    fuels, in_tank, ratio = fuel(draw, kind == "two-stroke")
    turns = 2 if kind == "four-stroke" else 1
    top_speed, top_pressure = draw.between(5000, 8500), draw.between(130, 260) if boost else 98.0
    peak = each * 1e-6 * chambers * 0.9 * top_pressure * 1e3 / (287 * 313) * top_speed / 60 / turns / (ratio * 0.85)  # kg/s
    demand = peak / 0.75 * 3600  # L/h
    two_stages, dead_head = draw.next() < 0.35, draw.next() < 0.35
    two_rails = draw.next() < 0.5
    duty = draw.between(0.55, 0.85)
    grams = 1000 * peak / chambers / duty * (0.55 if two_stages else 1)
    injectors, stages = [], []
    for s in range(2 if two_stages else 1):
        told = injector(draw, f"told {s + 1}", grams)
        injectors.append(told)
        fitted = [told["name"]] * chambers
        if draw.next() < 0.6:
            for c in range(chambers):
                if draw.next() < 0.5:
                    other = injector(draw, f"fitted {s + 1}.{c + 1}", grams * draw.between(0.8, 1.15))
                    injectors.append(other)
                    fitted[c] = other["name"]
        node = lambda c: "other rail" if two_rails and (s == 1 if two_stages else c % 2) else "rail"
        stages.append({
            "name": f"stage {s + 1}", "discharge": draw.one_of("manifold", "manifold", "ambient"),
            "pulsesPerCycle": draw.one_of(1, 1, 2),
            "belief": {"injector": told["name"], "differentialPressure": "300 kPa", "railReference": draw.one_of("manifold", "fixed"),
                       "fuel": in_tank, "fuelTemperature": "20 degC"},
            "seats": [{"chamber": c + 1, "node": node(c), "injector": fitted[c]} for c in range(chambers)],
        })
        if boost and stages[-1]["belief"]["railReference"] == "fixed":
            stages[-1]["belief"]["railReference"] = "manifold"
    document = {
        "document": "fuel system", "version": "1", "name": f"random system {seed}", "source": SOURCE, "fuels": fuels,
        "injectors": injectors, "fuel": in_tank, "engine": motor,
        "plan": path(draw, demand * draw.between(1.6, 3.5), dead_head, two_rails, draw.one_of(None, "displacement", "rotodynamic")),
        "stages": stages,
    }
    lifted = seed > 20
    if lifted:
        with_surge_tank(draw, document["plan"], demand)
    for stage in stages:
        if draw.next() < 0.6:
            stage["firingGroups"] = draw.one_of(*(g for g in range(1, chambers + 1) if chambers % g == 0))
    if two_stages:
        document["staging"] = {"transitionDutyCycle": text(draw.between(40, 75), "%")}
    document |= {"power": {"pumps": circuit(draw, "pumps"), "injectors": circuit(draw, "injectors")}, "limits": "common practice"}
    found = points(draw, top_speed, top_pressure, len(stages))
    if lifted:
        names = [l["name"] for l in document["plan"]["lines"] if "pump" in l]
        document["power"]["feeds"] = [{"line": n, "circuit": circuit(draw, n + " circuit")} for n in names if draw.next() < 0.6]
        if not document["power"]["feeds"]:
            del document["power"]["feeds"]
        for point in found:
            if draw.next() < 0.5:
                point["acceleration"] = {k: text(draw.between(-5, 5), "m/s2", 3) for k in ("forward", "left", "up")}
    return document, {"document": "operating list", "version": "1", "points": found}


def points(draw, top_speed, top_pressure, stages):
    found = []
    for name, speed, pressure, command in (
        ("idle, open loop", 0.15, 0.35, "open loop"), ("idle, held", 0.17, 0.4, "hold lambda"), ("cruise", 0.45, 0.6, "hold lambda"),
        ("middle", 0.6, 0.8, "open loop"), ("peak, held", 1, 1, "hold lambda"), ("peak, open loop", 0.97, 1, "open loop"),
        ("given widths", 0.5, 0.7, "pulse widths"), ("cut", 0.6, 0.25, "cut"), ("all open", 0.3, 0.9, "all open"),
    ):
        asked = command if command in ("cut", "all open") else {"kind": command}
        if command in ("open loop", "hold lambda"):
            asked["lambda"] = round(draw.between(0.8, 1.0), 3)
        elif command == "pulse widths":
            asked["widths"] = [text(draw.between(2, 6), "ms", 3) for _ in range(stages)]
        found.append({
            "name": name, "speed": text(speed * top_speed, "rpm"), "manifold": text(max(pressure * top_pressure, 25), "kPa absolute"),
            "ambient": text(draw.between(94, 103), "kPa absolute"), "charge": f"{draw.whole(15, 60)} degC",
            "fuel": f"{draw.whole(5, 50)} degC", "supply": text(draw.between(11.5, 14.4), "V", 4), "command": asked,
        })
    return found
