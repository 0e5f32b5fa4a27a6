"""The state of a whole system at one operating point, by the parts of systems_model.py."""

import math

from fluid import Outside, fuels, si
from systems_model import (
    AIR, G, Injector, Pump, breathing, coils_on, filter_, fitting, hose, jet, regulator, root, wire_resistance,
)

MAKERS = {"hose": hose, "fitting": fitting, "jet": jet, "filter": filter_}


class NoState(Exception):
    """Nothing satisfies the equations."""


class System:
    def __init__(self, document):
        self.document = document
        self.known = fuels(document)
        self.fuel = self.known[document["fuel"]]
        self.injectors = {i["name"]: Injector(i, self.known) for i in document["injectors"]}
        engine = document["engine"]
        self.chambers = engine.get("cylinders") or engine["rotors"]
        self.volume = si(engine["chamberDisplacement"]) if "rotors" in engine else si(engine["displacement"]) / self.chambers
        self.turns = 2 if engine["kind"] == "four-stroke" else 1
        self.efficiency = breathing(engine)
        plan = document["plan"]
        self.height = {n["name"]: si(n["elevation"]) for n in plan["nodes"]}
        self.tanks = {n["name"]: si(n["pressure"]) for n in plan["nodes"] if n["kind"] == "tank"}
        self.free = [n["name"] for n in plan["nodes"] if n["kind"] == "junction"]
        self.stages = document["stages"]
        self.wires = [wire_resistance(document["power"][k]) for k in ("pumps", "injectors")]

    def solve(self, point):
        return Solve(self, point).run()


class Solve:
    def __init__(self, system, point):
        self.s, self.point = system, point
        at = si(point["fuel"])
        self.rho, self.mu = system.fuel.density(at), system.fuel.viscosity(at)
        self.speed, manifold = si(point["speed"]), si(point["manifold"])
        self.supply = si(point["supply"])
        self.gauge = manifold - si(point["ambient"])
        density = manifold / (AIR * si(point["charge"]))
        self.air = system.efficiency(self.speed, manifold) * density * system.volume  # [Heywood-1988], [ISO-2533]
        self.command = point["command"] if isinstance(point["command"], dict) else {"kind": point["command"]}
        self.lines = []
        for line in system.document["plan"]["lines"]:
            kind = next(k for k in line if k not in ("name", "from", "to"))
            part = line[kind]
            if kind == "pump":
                tested = system.known[part["fluid"]].density(si(part.get("fluidTemperature", "20 degC")))
                pump = Pump(part, self.rho, tested)
                self.lines.append((line, pump.flow, pump))
            elif kind in MAKERS:
                self.lines.append((line, MAKERS[kind](part, self.rho, self.mu), None))
            else:
                self.lines.append((line, regulator(part, self.rho, kind == "reducingRegulator"), None))
        self.seats = [(s, seat) for s, stage in enumerate(system.stages) for seat in stage["seats"]]
        self.cycle = system.turns / self.speed
        self.period = [self.cycle / stage["pulsesPerCycle"] for stage in system.stages]
        self.against = [self.gauge if stage["discharge"] == "manifold" else 0.0 for stage in system.stages]
        self.volts = [self.supply, self.supply]
        self.pressure = dict(system.tanks)
        for n in system.free:
            self.pressure[n] = 200e3 + self.gauge
        self.widths = [0.0] * len(system.stages)

    # ---- pulses

    def flow_of(self, seat, pressure):
        """Mean volume flow of an injector at a pressure of its node."""
        s, place = self.seats[seat]
        return self.mass_of(s, self.s.injectors[place["injector"]], self.widths[s], pressure - self.against[s]) / (
            self.rho * self.period[s]
        )

    def mass_of(self, s, injector, width, difference):
        if difference <= 0:
            return 0.0
        static = injector.static(difference, self.rho)
        if self.command["kind"] == "all open":
            return static * self.period[s]
        return injector.pulse(width, self.period[s], static, injector.dead_time(self.volts[1], difference))

    def shared(self, models, mass):
        """Widths of one or two stages for a mass; a model is the mean mass by width, least, most and period."""
        transition = si(self.s.document["staging"]["transitionDutyCycle"]) if len(models) > 1 else 1.0

        def width_for(model, wanted):
            give, least, most, period = model
            if wanted <= give(least):
                return least
            return period if wanted > give(most) else root(lambda w: give(w) / wanted - 1, least, most)

        at = lambda model, duty: max(duty * model[3], model[1])
        first = models[0]
        alone = first[0](at(first, transition)) if len(models) > 1 else math.inf
        if len(models) == 1 or mass <= alone:
            return [width_for(first, mass)] + [0.0] * (len(models) - 1)
        second = models[1]
        least = second[0](second[1])
        if mass - alone <= least:
            return [width_for(first, mass - least), second[1]]
        if mass - alone <= second[0](transition * second[3]):
            return [at(first, transition), width_for(second, mass - alone)]
        most = min(1.0, *(m[2] / m[3] for m in models))
        both = lambda duty: sum(m[0](at(m, duty)) for m in models)
        duty = root(lambda d: both(d) / mass - 1, transition, most) if most > transition and both(most) >= mass else 1.0
        return [at(m, duty) for m in models]

    def model(self, s, injectors, statics, deads):
        per_chamber = self.s.stages[s]["pulsesPerCycle"] * len(self.s.stages[s]["seats"]) / self.s.chambers
        period = self.period[s]
        least = min(max(d + i.least for i, d in zip(injectors, deads)), period)
        most = max(period - max(i.closing for i in injectors), least)
        give = lambda w: per_chamber * sum(i.pulse(w, period, q, d) for i, q, d in zip(injectors, statics, deads)) / len(injectors)
        return give, least, most, period

    def believed(self):
        models = []
        for s, stage in enumerate(self.s.stages):
            told = stage["belief"]
            injector = self.s.injectors[told["injector"]]
            difference = si(told["differentialPressure"])
            if told.get("railReference") == "fixed":
                difference -= self.against[s]
            if difference <= 0:
                raise NoState("the controller makes no pulse")
            density = self.s.known[told["fuel"]].density(si(told["fuelTemperature"]))
            dead = injector.dead_time(self.supply, difference, held=False)
            models.append(self.model(s, [injector], [injector.static(difference, density)], [dead]))
        fuel = self.s.known[self.s.stages[0]["belief"]["fuel"]]
        return self.shared(models, self.air / (fuel.stoichiometric * self.command["lambda"]))

    def fitted(self):
        models = []
        for s in range(len(self.s.stages)):
            mine = [(self.s.injectors[p["injector"]], max(self.pressure[p["node"]] - self.against[s], 1.0))
                    for t, p in self.seats if t == s]
            models.append(self.model(s, [i for i, _ in mine], [i.static(d, self.rho) for i, d in mine],
                                     [i.dead_time(self.volts[1], d) for i, d in mine]))
        return self.shared(models, self.air / (self.s.fuel.stoichiometric * self.command["lambda"]))

    def set_widths(self, first):
        kind = self.command["kind"]
        if kind == "open loop" and first:
            self.widths = self.believed()
        elif kind == "hold lambda":
            self.widths = self.fitted()
        elif kind == "pulse widths":
            self.widths = [si(w) for w in self.command["widths"]]
        elif kind == "all open":
            self.widths = list(self.period)

    # ---- path: Newton on the pressures, slopes by differences

    def through(self, k, pressure):
        line, flow, _ = self.lines[k]
        z = self.s.height
        head = lambda n: pressure[n] + self.rho * G * z[n]
        return flow(head(line["from"]) , head(line["to"]), self.at()) if not self.plain(k) else flow(
            pressure[line["from"]], pressure[line["to"]], self.at())

    def plain(self, k):
        """A regulator feels the pressures as they are; its ports stand at one height."""
        return "regulator" in self.lines[k][0] or "reducingRegulator" in self.lines[k][0]

    def at(self):
        return {"manifold": self.gauge}

    def balance(self, pressure):
        miss = {n: 0.0 for n in self.s.free}
        for k, (line, _, _) in enumerate(self.lines):
            q = self.through(k, pressure)
            for node, sign in ((line["from"], -1), (line["to"], 1)):
                if node in miss:
                    miss[node] += sign * q
        for seat, (_, place) in enumerate(self.seats):
            miss[place["node"]] -= self.flow_of(seat, pressure[place["node"]])
        return miss

    def slopes(self, pressure):
        free = self.s.free
        index = {n: i for i, n in enumerate(free)}
        a = [[0.0] * len(free) for _ in free]
        step = 0.05
        for k, (line, _, _) in enumerate(self.lines):
            for moved in {line["from"], line["to"]} & set(free):
                up, down = dict(pressure), dict(pressure)
                up[moved] += step
                down[moved] -= step
                slope = (self.through(k, up) - self.through(k, down)) / (2 * step)
                for node, sign in ((line["from"], -1), (line["to"], 1)):
                    if node in index:
                        a[index[node]][index[moved]] += sign * slope
        for seat, (_, place) in enumerate(self.seats):
            n = place["node"]
            slope = (self.flow_of(seat, pressure[n] + step) - self.flow_of(seat, pressure[n] - step)) / (2 * step)
            a[index[n]][index[n]] -= slope
        return a

    def path(self):
        """Newton with ever less leak to where each pressure stands; each step is cut until the balance is better."""
        free, p = self.s.free, dict(self.pressure)
        scale = 1e-3 / 3600  # one liter an hour
        leak = 1e-10
        for step in range(400):
            miss = self.balance(p)
            worst = max(abs(m) for m in miss.values())
            if worst < 1e-9 * scale:
                self.pressure = p
                return
            a = self.slopes(p)
            for i in range(len(free)):
                a[i][i] -= leak
            move = eliminate(a, [-miss[n] for n in free])
            biggest = max(abs(m) for m in move)
            share = min(1.0, 2e5 / biggest) if biggest > 0 else 1.0
            best = None
            for _ in range(12):
                trial = dict(p)
                for n, m in zip(free, move):
                    trial[n] += share * m
                norm = sum(x * x for x in self.balance(trial).values())
                if best is None or norm < best[0]:
                    best = (norm, trial)
                if norm < sum(m * m for m in miss.values()):
                    break
                share /= 2
            better = best[0] < sum(m * m for m in miss.values())
            leak = max(leak / 10, 1e-21) if better else min(leak * 30, 1e-7)
            p = best[1] if better else p
            if not better and worst < 1e-6 * scale:
                self.pressure = p
                return
        raise NoState(f"path: {worst:.3g} m3/s left over")

    # ---- all of it

    def run(self):
        for round_ in range(200):
            before = list(self.volts) + [self.pressure[n] / 1e5 for n in self.s.free] + [w * 1e3 for w in self.widths]
            for _, _, pump in self.lines:
                if pump:
                    pump.set(self.volts[0])
            self.set_widths(round_ == 0)
            self.path()
            self.wire()
            after = list(self.volts) + [self.pressure[n] / 1e5 for n in self.s.free] + [w * 1e3 for w in self.widths]
            if round_ and max(abs(x - y) for x, y in zip(before, after)) < 1e-9:
                return self.report()
        raise NoState("rounds do not settle")

    def rise(self, line):
        """What a pump adds, the column between its ends included."""
        z = self.s.height
        return self.pressure[line["to"]] - self.pressure[line["from"]] + self.rho * G * (z[line["to"]] - z[line["from"]])

    def wire(self):
        amperes = sum(pump.amperes(self.rise(line)) for line, _, pump in self.lines if pump)
        pulsed = self.command["kind"] not in ("cut", "all open")
        opening, longest = 0.0, 0.0
        for (s, place), dead in zip(self.seats, self.dead_times()):
            if self.widths[s] > 0 and pulsed:
                longest = max(longest, dead)
        for s, stage in enumerate(self.s.stages):
            mine = [self.s.injectors[p["injector"]] for t, p in self.seats if t == s]
            on = coils_on(len(mine), stage.get("firingGroups", len(mine)), self.widths[s], self.period[s], longest)
            opening += on / len(mine) * sum(1 / i.coil for i in mine)
        to_pumps = self.supply - self.s.wires[0] * amperes
        self.volts = [(self.volts[0] + to_pumps) / 2, self.supply / (1 + self.s.wires[1] * opening)]

    def dead_times(self):
        return [self.s.injectors[p["injector"]].dead_time(self.volts[1], self.pressure[p["node"]] - self.against[s])
                for s, p in self.seats]

    def report(self):
        injectors, chambers = [], [0.0] * self.s.chambers
        pulsed = self.command["kind"] not in ("cut", "all open")
        for (s, place), seat in zip(self.seats, range(len(self.seats))):
            injector = self.s.injectors[place["injector"]]
            difference = self.pressure[place["node"]] - self.against[s]
            if pulsed and difference > 0:
                injector.dead_time(self.volts[1], difference, held=False)
            if self.widths[s] > 0 and difference <= 0:
                raise NoState("no fuel can pass an injector")
            mass = self.mass_of(s, injector, self.widths[s], difference) if self.command["kind"] != "cut" else 0.0
            chambers[place["chamber"] - 1] += mass * self.s.stages[s]["pulsesPerCycle"]
            injectors.append({
                "difference": difference,
                "voltage": self.volts[1],
                "deadTime": injector.dead_time(self.volts[1], difference) if pulsed else 0.0,
                "mass": mass,
                "flow": mass / self.period[s] / self.rho,
            })
        pumps = []
        for line, _, pump in self.lines:
            if pump:
                pump.judge(self.volts[0], self.rise(line))
                pumps.append({"voltage": self.volts[0], "current": pump.amperes(self.rise(line)), "rise": self.rise(line)})
        ratio = self.s.fuel.stoichiometric
        total = sum(chambers)
        return {
            "density": self.rho,
            "viscosity": self.mu,
            "stoichiometricRatio": ratio,
            "pressures": {n: self.pressure[n] for n in self.pressure},
            "flows": {line["name"]: self.through(k, self.pressure) for k, (line, _, _) in enumerate(self.lines)},
            "pumps": pumps,
            "stages": [{"width": w} for w in self.widths],
            "injectors": injectors,
            "chambers": [{"lambda": self.air / (ratio * m) if m > 0 else None} for m in chambers],
            "lambda": self.air * self.s.chambers / (ratio * total) if total > 0 else None,
        }


def eliminate(a, b):
    """Gauss with pivots."""
    n = len(b)
    a = [row[:] + [x] for row, x in zip(a, b)]
    for i in range(n):
        best = max(range(i, n), key=lambda r: abs(a[r][i]))
        a[i], a[best] = a[best], a[i]
        for r in range(i + 1, n):
            share = a[r][i] / a[i][i]
            if share:
                a[r] = [x - share * y for x, y in zip(a[r], a[i])]
    x = [0.0] * n
    for i in reversed(range(n)):
        x[i] = (a[i][n] - sum(a[i][j] * x[j] for j in range(i + 1, n))) / a[i][i]
    return x
