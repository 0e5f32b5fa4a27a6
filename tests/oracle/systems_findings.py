"""What must be said of a state of systems_solve.py: findings and verdict, derived from docs/guide (findings.md and the page of
each part), not from the library's code. A finding is its code, its severity, its part, its value in SI, and whether it says
what could not be judged. systems_conclude.py holds the library's beside it."""

import math

from fluid import Refused, fuels, si
from systems_model import root
from vapor import CLASSES, COLDEST, PSI, as_mixed, vapor_pressure

COMMON_PRACTICE = {
    "dutyCycle": 0.85, "pumpReserve": 0.15, "pressureDeviation": 0.03, "mixtureDeviation": 0.05, "voltageDrop": 0.7,
    "feedVelocity": 4.0, "suctionVelocity": 1.2, "vaporMargin": 20e3,
    "lowestCorrection": 0.75, "highestCorrection": 1.25,
}
# Ahead of a reducing regulator the page says of a reserve what it counts, but not by which formula: held no closer than this.
# At fuel cut it is shut, and nothing says what it will hold: not held at all.
LOOSE = 0.1
NOTE, WARNING, DANGER = "Note", "Warning", "Danger"
REFUSED = {"code": "StateRefused", "severity": WARNING, "part": None, "value": None, "notKnown": True}


def limits_of(document):
    """Common practice, the document's own, and the owner's in their place."""
    told = document["limits"]
    if told == "common practice":
        return dict(COMMON_PRACTICE), []
    found = COMMON_PRACTICE | {k: si(told[k]) for k in COMMON_PRACTICE if k in told}
    own = told.get("own", [])
    for limit in own:
        found |= {k: si(v) for k, v in limit.items() if k != "reason"}
    return found, own


def verdict(findings):
    """assessments.md: the worst decides, "do not run" above "not known" above "act first" above "holds"."""
    if any(f["severity"] == DANGER for f in findings):
        return "DoNotRun"
    warnings = [f for f in findings if f["severity"] == WARNING]
    if any(f["notKnown"] for f in warnings):
        return "NotKnown"
    return "ActFirst" if warnings else "Holds"


def findings(system, point, state):
    return Judge(system, point, state).all()


def without_the_sensor(system, point, found):
    """assessments.md: a held mixture is judged without its sensor, too, by what the controller was told. A danger of that state is
    a warning, and what is found with the sensor already, as grave or graver, is not said again."""
    command = point["command"]
    if not isinstance(command, dict) or command["kind"] != "hold lambda":
        return []
    if any("belief" not in stage for stage in system.stages):
        return [{"code": "SensorFailureNotJudged", "severity": NOTE, "part": "mixture", "value": None, "notKnown": True}]
    bare = {**point, "command": {"kind": "open loop", "lambda": command["lambda"]}}
    try:
        left = findings(system, bare, system.solve(bare))
    except Refused:
        left = [REFUSED]
    rank = (NOTE, WARNING, DANGER).index
    left = [{**f, "severity": WARNING if f["severity"] == DANGER else f["severity"]} for f in left]
    return [f for f in left if not any((g["code"], g["part"]) == (f["code"], f["part"]) and rank(g["severity"]) >= rank(f["severity"]) for g in found)]


class Judge:
    def __init__(self, system, point, state):
        self.s, self.point, self.state, self.solve = system, point, state, state["solve"]
        self.plan = system.document["plan"]
        self.limits, self.own = limits_of(system.document)
        self.kind = self.solve.command["kind"]
        self.pulsed = self.kind not in ("cut", "all open")
        self.target = self.solve.command.get("lambda")
        self.found, self.share = [], None

    def say(self, code, severity, part, value=None, not_known=False):
        self.found.append({"code": code, "severity": severity, "part": part, "value": value, "notKnown": not_known})

    def all(self):
        self.mixture()
        self.pulses()
        self.told()
        self.wiring()
        self.pumps()
        self.regulators()
        self.reserve()
        self.path()
        self.vapor()
        for limit in self.own:
            self.say("LimitOfOwner", NOTE, "limits", next(si(v) for k, v in limit.items() if k != "reason"))
        return self.found

    # ---- mixture: assessments.md "The mixture", controllers.md "At a limit", premix.md

    def mixture(self):
        """Against the lambda asked for; where none is, a chamber against the mean of its bank. A chamber no leaner than a mean that is
        too lean is part of that; a bank of one chamber has no mean beside it."""
        if not self.pulsed:
            return
        if self.state["lambda"] is None:
            for k in range(self.s.chambers if any(self.solve.widths) else 0):
                self.say("ChamberWithoutFuel", DANGER, f"chamber {k + 1}")
            return
        lambdas = {k: c["lambda"] for k, c in enumerate(self.state["chambers"], 1)}
        for number, bank in enumerate(self.solve.banks, 1):
            part = "mixture" if len(self.solve.banks) == 1 else f"bank {number}"
            self.bank(part, {k: lambdas[k] for k in sorted(bank)})
            if self.kind == "hold lambda":
                self.correction(part, self.solve.of_bank[number - 1])
        self.premix(lambdas)

    def bank(self, part, lambdas):
        limit = self.limits["mixtureDeviation"]
        given = sum(1 / x for x in lambdas.values() if x)
        if self.target is None:
            self.say("MixtureNotJudged", WARNING, part, not_known=True)
        mean = len(lambdas) / given if given else None
        asked = self.target or mean
        off = mean / asked - 1 if mean else 0.0
        if off > limit and len(lambdas) > 1:
            self.say("MixtureLean", DANGER, part, off)
        elif off < -limit:
            self.say("MixtureRich", WARNING, part, off)
        for k, lean in lambdas.items():
            if lean is None:
                self.say("ChamberWithoutFuel", DANGER, f"chamber {k}")
            elif lean / asked - 1 > limit and (off <= limit or lean > mean * (1 + 1e-9) or len(lambdas) == 1):
                self.say("ChamberLean", DANGER, f"chamber {k}", lean / asked - 1)

    def premix(self, lambdas):
        """The leanest chamber, had none of the oil burned: a warning where only that exceeds the limit, else a note."""
        fuel = next((f for f in self.s.document["fuels"] if f["name"] == self.s.document["fuel"]), {})
        if fuel.get("kind") != "premix":
            return
        limit, asked = self.limits["mixtureDeviation"], self.target or self.state["lambda"]
        at, inside = si(fuel["mixedAt"]), fuel["fuel"]
        burns = self.s.known[inside] if isinstance(inside, str) else fuels({"fuels": [inside]})[inside["name"]]
        oil = si(fuel["oilPerFuel"]) * self.s.known[fuel["oil"]].density(at)
        clean = burns.density(at) / (burns.density(at) + oil)
        leaner = self.s.fuel.stoichiometric / (clean * burns.stoichiometric)
        worst = max((k for k in lambdas if lambdas[k]), key=lambdas.get)
        with_oil, without = lambdas[worst] / asked - 1, lambdas[worst] * leaner / asked - 1
        self.say("PremixMixture", WARNING if with_oil <= limit < without else NOTE, f"chamber {worst}", without)

    def correction(self, part, widths):
        """The fuel that the controller, by its belief, thinks that it gives, over the fuel that it means to give."""
        given = 0.0
        for s, stage in enumerate(self.s.stages):
            if "belief" not in stage:
                return
            give, *_ = self.solve.believed_model(s)
            given += give(widths[s]) if widths[s] > 0 else 0.0
        correction = given / self.solve.believed_demand()
        if correction > self.limits["highestCorrection"]:
            self.say("CorrectionAtLimit", DANGER, part, correction)
        elif correction < self.limits["lowestCorrection"]:
            self.say("CorrectionAtLimit", WARNING, part, correction)

    # ---- pulses: systems.md, injectors.md

    def pulses(self):
        if not self.pulsed:
            return
        for s, stage in enumerate(self.s.stages):
            width, period = self.solve.widths[s], self.solve.period[s]
            if width <= 0:
                continue
            mine = [(self.s.injectors[p["injector"]], r["deadTime"]) for (t, p), r in zip(self.solve.seats, self.state["injectors"]) if t == s]
            if any(period - width < i.closing * (1 - 1e-9) for i, _ in mine):
                self.say("InjectorHeldOpen", DANGER, stage["name"], width / period)
            elif width / period > self.limits["dutyCycle"]:
                self.say("DutyCycleHigh", WARNING, stage["name"], width / period)
            if any(width - dead <= i.least * (1 + 1e-9) for i, dead in mine):
                # What is left of the width of the first that can't repeat it; at the shortest that all repeat it is the excess of fuel.
                short = [width - dead for i, dead in mine if width - dead < i.least * (1 - 1e-9)]
                self.say("PulseNotRepeatable", WARNING, stage["name"], max(short[0], 0.0) if short else None)

    # ---- what the controller was told: findings.md, controllers.md

    def told(self):
        """Of each stage that sprays, where its pressure is furthest from what was told; the lowest where that is a danger. A rail told with another reference than
        its regulator has is one finding, and what would be off beside that, told with the right one, is another."""
        if not self.pulsed:
            return
        limit = self.limits["pressureDeviation"]
        for s, stage in enumerate(self.s.stages):
            belief = stage.get("belief")
            if belief is None or belief.get("railReference") == "measured" or self.solve.widths[s] <= 0:
                continue
            told = self.solve.told_difference(s)
            seen = [(r["difference"], p["node"]) for (t, p), r in zip(self.solve.seats, self.state["injectors"]) if t == s]
            difference, node = self.worst(seen, told)
            off = difference / told - 1
            if abs(off) <= limit:
                continue
            fixed = [part["reference"] != "manifold" for line in self.plan["lines"] for key, part in line.items()
                     if key in ("regulator", "reducingRegulator")]
            if stage["discharge"] == "manifold" and fixed and fixed[0] != (belief.get("railReference") == "fixed"):
                self.off("RailReferenceNotAsTold", stage["name"], off)
                other = si(belief["differentialPressure"]) - (self.solve.against[s] if fixed[0] else 0.0)
                difference, node = self.worst(seen, other)
                off = difference / other - 1
            if not any(f["code"] == "PressureNotAsTold" and f["part"] == node and abs(f["value"] - off) < 1e-9 for f in self.found):
                self.off("PressureNotAsTold", node, off)

    @staticmethod
    def worst(seen, told):
        least = min(seen)
        return least if least[0] / told - 1 < -0.15 else max(seen, key=lambda x: abs(x[0] / told - 1))

    def off(self, code, part, off):
        if abs(off) > self.limits["pressureDeviation"]:
            self.say(code, DANGER if off < -0.15 else WARNING, part, off)

    # ---- wiring.md, systems.md

    def wiring(self):
        limit = self.limits["voltageDrop"]
        drop = self.solve.supply - self.solve.injector_volts
        if drop > limit:
            self.say("InjectorVoltageLow", WARNING, "injectors", drop)
        for line, _, pump in self.solve.lines:
            if pump and self.solve.supply - self.solve.volts_at(line) > limit:
                self.say("PumpVoltageLow", WARNING, line["name"], self.solve.supply - self.solve.volts_at(line))

    # ---- pumps.md, systems.md

    def pumps(self):
        """A stalled pump is a danger; where no pump lifts and nothing is drawn it runs against a closed line, a warning."""
        flows, running = self.state["flows"], [(l, p) for l, _, p in self.solve.lines if p]
        closed = all(flows[l["name"]] <= 0 for l, _ in running) and all(i["flow"] <= 0 for i in self.state["injectors"])
        for line, pump in running:
            flow, rise = flows[line["name"]], self.solve.rise(line)
            if flow <= 0:
                self.say("PumpStalled", WARNING if closed else DANGER, line["name"])
            if pump.principle is None:
                both = [pump.at(rise), pump.at(rise / pump.ratio)]
                if max(both) > 1.01 * min(both) or flow <= 0:
                    self.say("PumpPrincipleNotKnown", NOTE, line["name"], min(both))
                    # How far the pressure is above what a stalled pump stops at, a closed line does not say.
                    self.found[-1]["either"] = flow <= 0

    def reserve(self):
        """systems.md: held against what the pumps must deliver, what injectors draw and what no valve shuts."""
        flows = self.state["flows"]
        lifts = self.s.lift_lines() if self.s.surge else set()
        pumps = [(l, p) for l, _, p in self.solve.lines if p and l["name"] not in lifts]
        self.state["reserve"] = None
        if pumps:
            total = sum(flows[l["name"]] for l, _ in pumps)
            returned = sum(flows[l["name"]] for l in self.plan["lines"] if "regulator" in l)
            reducing = next((l for l in self.plan["lines"] if "reducingRegulator" in l), None)
            left = self.beyond(pumps, total, reducing) if reducing else returned
            self.state["reserve"] = left
            short = any(f["code"] in ("RegulatorShut", "RegulatorStarved") for f in self.found)
            self.share = None if reducing or total == returned else left / (total - returned)
            least = self.limits["pumpReserve"] * (total - returned)
            loose = LOOSE * least if reducing else 0
            shut = reducing and self.kind == "cut"
            if (left < least + loose or shut) and not short:
                self.say("PumpReserveLow", WARNING, "pumps", left)
                if reducing:
                    self.found[-1] |= {"within": math.inf if shut else loose, "either": shut or abs(left - least) < loose}
        for tank, balance in zip(self.s.surge, self.state["surgeTanks"]):
            need = balance["drawn"] - balance["returned"]
            left = balance["lift"] - need
            if 0 <= left < self.limits["pumpReserve"] * need:
                self.say("PumpReserveLow", WARNING, tank, left)

    def beyond(self, pumps, total, reducing):
        """What the curves hold once the surplus ahead of a reducing regulator is used up, losses growing with the square."""
        solve = self.solve
        rise = solve.rise(pumps[0][0])
        surplus = -solve.rise(reducing) - solve.open_loss(reducing)
        if surplus <= 0:
            return 0.0
        ends = [l for l in self.plan["lines"] if l is not reducing and any(k in l for k in ("hose", "fitting", "filter"))]
        route = [l for l in ends if {l["from"], l["to"]} & ({pumps[0][0]["from"], pumps[0][0]["to"], reducing["from"]})]
        losses = sum(-solve.rise(l) for l in route) + solve.open_loss(reducing)
        give = lambda need: sum(p.at(need / p.factor) for _, p in pumps)
        x = root(lambda x: x * total - give(rise - surplus + (x * x - 1) * losses), 1.0, 10.0)
        return (x - 1) * total

    # ---- the value of a state that a limit is held against: systems_limits.py puts limits beside it

    def measure(self, kind):
        """The greatest, of a margin the least; None where there is none."""
        self.limits = {k: 0.0 for k in self.limits} | {"vaporMargin": 1e9}
        self.all()
        code = {"dutyCycle": "DutyCycleHigh", "pressureDeviation": "PressureNotAsTold", "mixtureDeviation": "ChamberLean",
                "voltageDrop": "PumpVoltageLow", "feedVelocity": "HoseVelocityHigh", "suctionVelocity": "HoseVelocityHigh",
                "vaporMargin": "VaporMarginLow", "pumpReserve": None}[kind]
        found = [f for f in self.found if f["code"] == code]
        if kind.endswith("Velocity"):
            ahead = self.suction()
            near = {l["name"] for l in self.plan["lines"] if {l["from"], l["to"]} & ahead}
            found = [f for f in found if (f["part"] in near) == (kind == "suctionVelocity")]
        values = [f["value"] if kind == "vaporMargin" else abs(f["value"]) for f in found]
        if kind == "pumpReserve":
            values = [self.share] if self.share else []
        return (min if kind == "vaporMargin" else max)(values, default=None)

    # ---- regulators.md

    def regulators(self):
        for line, _, _ in self.solve.lines:
            for key in ("regulator", "reducingRegulator"):
                if key not in line:
                    continue
                flow, state = self.state["flows"][line["name"]], self.solve.regulator_state(line)
                if key == "regulator" and state == "seated":
                    self.say("RegulatorShut", DANGER, line["name"])
                elif key == "regulator" and state == "fully open":
                    self.say("RegulatorFullyOpen", WARNING, line["name"])
                elif key == "reducingRegulator" and state == "fully open":
                    self.say("RegulatorStarved", DANGER, line["name"])

    # ---- hoses.md, filters.md, fittings, tanks

    def suction(self):
        """Places ahead of a pump: joined to its inlet, tanks and pumps not passed."""
        near = {l["from"] for l in self.plan["lines"] if "pump" in l} - set(self.s.tanks)
        for _ in self.plan["lines"]:
            for line in self.plan["lines"]:
                if any(k in line for k in ("hose", "fitting", "filter")) and {line["from"], line["to"]} & near:
                    near |= {line["from"], line["to"]} - set(self.s.tanks)
        return near

    def path(self):
        ahead = self.suction()
        for line in self.plan["lines"]:
            flow = abs(self.state["flows"][line["name"]])
            if "hose" in line:
                speed = flow / (math.pi / 4 * si(line["hose"]["bore"]) ** 2)
                suction = bool({line["from"], line["to"]} & ahead)
                if speed > self.limits["suctionVelocity" if suction else "feedVelocity"]:
                    self.say("HoseVelocityHigh", WARNING if suction else NOTE, line["name"], speed)
            if line.get("fitting", {}).get("basis") == "estimate":
                self.say("LossEstimated", NOTE, line["name"])
            if any(line.get(k, {}).get("estimate") for k in ("regulator", "reducingRegulator")):
                self.say("RegulatorEstimated", NOTE, line["name"])
            if "reliefValve" in line and flow > 0:
                self.say("ReliefOpen", WARNING, line["name"], flow)
            if "filter" in line:
                if flow > max(si(p["flow"]) for p in line["filter"]["points"]):
                    self.say("FilterBeyondTest", WARNING, line["name"], flow)
                loss = abs(self.solve.rise(line))
                if "collapse" in line["filter"] and loss > si(line["filter"]["collapse"]):
                    self.say("FilterCollapse", DANGER, line["name"], loss)
        for tank, balance in zip(self.s.surge, self.state["surgeTanks"]):
            gain = balance["lift"] + balance["returned"] - balance["drawn"]
            if gain < -1e-9 * balance["drawn"]:
                self.say("SurgeTankDrains", DANGER, tank, self.s.surge[tank] / -gain)
        drawn = {l["from"] for l in self.plan["lines"]}
        for place in self.s.tanks:
            arrives = sum(self.state["flows"][l["name"]] for l in self.plan["lines"] if l["to"] == place)
            if place not in drawn and arrives > 0:
                self.say("FuelEscapes", DANGER, place, arrives)

    # ---- vapor.md

    def vapor(self):
        at = si(self.point["fuel"])
        for fuel in self.s.document["fuels"]:
            if fuel["name"] == self.s.document["fuel"] and "class" in fuel:
                mixed, (low, high) = as_mixed(self.s.document, fuel), CLASSES[fuel["class"]]
                if not low * PSI <= mixed <= high * PSI:
                    self.say("FuelOutsideClass", NOTE, fuel["name"], mixed)
        ambient, name = si(self.point["ambient"]), self.s.document["fuel"]
        boils = vapor_pressure(self.s.document, name, at)
        if boils is None:
            # Colder than its data a fuel has at most the vapor pressure of their low end.
            most = vapor_pressure(self.s.document, name, COLDEST) if at < COLDEST else None
            if most is None or min(self.state["pressures"].values()) + ambient - most < self.limits["vaporMargin"]:
                self.say("VaporNotChecked", WARNING if at > 273.15 + 37.8 else NOTE, name, None if most is None else at, not_known=True)
            return
        for node, gauge in self.state["pressures"].items():
            margin = gauge + ambient - boils
            if margin < self.limits["vaporMargin"]:
                self.say("VaporMarginLow", DANGER if margin < 0 else WARNING, node, margin)
