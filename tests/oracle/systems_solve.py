"""The state of a whole system at one operating point, by the parts of systems_model.py."""

import math

from fluid import Refused, fuels, si
from systems_model import (
    AIR, G, Injector, Pump, breathing, coils_on, filter_, fitting, hose, jet, regulator, relief, root, strainer, wire_resistance,
)

MAKERS = {"hose": hose, "fitting": fitting, "jet": jet, "filter": filter_, "strainer": strainer, "reliefValve": relief}


class NoState(Refused):
    """Nothing satisfies the equations."""

    def __init__(self, text, code="NotConverged", where=None):
        super().__init__(text, code, where)


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
        self.places = {n["name"]: [si(n.get(k, "0 m")) for k in ("forward", "left", "elevation")] for n in plan["nodes"]}
        self.tanks = {n["name"]: si(n["pressure"]) for n in plan["nodes"] if "tank" in n["kind"]}
        self.surge = {n["name"]: si(n["usableVolume"]) for n in plan["nodes"] if n["kind"] == "surge tank"}
        self.free = [n["name"] for n in plan["nodes"] if n["kind"] == "junction"]
        self.stages = document["stages"]
        power = document["power"]
        own = power.get("feeds", [])
        self.wires = [wire_resistance(c) for c in (power["pumps"], *(f["circuit"] for f in own))]
        self.feed = {f["line"]: k + 1 for k, f in enumerate(own)}
        self.injector_wires = wire_resistance(power["injectors"])
        self.switches = {l["name"]: l["switch"] for l in plan["lines"] if "switch" in l}

    def solve(self, point):
        """Of the sets of pumps that may run, the one that its own state leaves alone: first the one that was, then those
        that one switch after another makes of it, then the only one that is left."""
        names = list(self.switches)
        if not names:
            return Solve(self, point, set()).run()
        found = {}

        def disagree(running):
            """The switches that a set's state would throw; all of them where it has none."""
            key = frozenset(running)
            if key not in found:
                one = Solve(self, point, running)
                try:
                    state = one.run()
                    found[key] = (state, [n for n in names if one.throws(self.switches[n], n in running)])
                except NoState:
                    found[key] = (None, names + [""])
            return found[key]

        was = {n for n in names if self.switches[n]["was"] == "running"}
        now = set(was)
        for _ in range(2 ** len(names)):
            state, thrown = disagree(now)
            if not thrown:
                return state
            if len(thrown) > 1:
                break
            now ^= set(thrown)
        every = [{n for k, n in enumerate(names) if mask >> k & 1} for mask in range(2 ** len(names))]
        last = [state for state, thrown in map(disagree, every) if not thrown]
        if len(last) != 1:
            raise NoState(f"{len(last)} sets of running pumps last", "SeveralStates" if last else "NoSwitchState")
        return last[0]

    def lift_lines(self):
        """Lines that come from elsewhere: joined, tanks apart, to a pump that does not draw from the surge tank."""
        lines = self.document["plan"]["lines"]

        def joined(names, by):
            """All places that some lines join to places, tanks not passed through."""
            found = set(names)
            for _ in lines:
                for line in by:
                    ends = {line["from"], line["to"]}
                    if ends & found and (ends & found - set(self.tanks) or ends & set(names)):
                        found |= ends
            return found

        pipes = [l for l in lines if "pump" not in l]
        near = joined(self.surge, pipes)
        lifts = [l for l in lines if "pump" in l and l["from"] not in near]
        past = joined({l["to"] for l in lifts}, pipes) - set(self.tanks)
        return {l["name"] for l in lines if {l["from"], l["to"]} & past}


class Solve:
    def __init__(self, system, point, running):
        self.s, self.point = system, point
        a = point.get("acceleration", {})
        pull = [si(a.get(k, "0 m/s2")) for k in ("forward", "left", "up")]
        pull[2] += G
        self.head = {n: sum(x * y for x, y in zip(place, pull)) for n, place in system.places.items()}  # m2/s2
        at = si(point["fuel"])
        self.rho, self.mu = system.fuel.density(at), system.fuel.viscosity(at)
        self.speed, manifold = si(point["speed"]), si(point["manifold"])
        self.supply = si(point["supply"])
        self.gauge = manifold - si(point["ambient"])
        density = manifold / (AIR * si(point["charge"]))
        self.references = {"manifold": self.gauge, "ambient": 0.0, "tank": next(iter(system.tanks.values()))}
        self.air = system.efficiency(self.speed, manifold) * density * system.volume if self.speed > 0 else 0.0  # [Heywood-1988], [ISO-2533]
        self.command = point["command"] if isinstance(point["command"], dict) else {"kind": point["command"]}
        self.lines = []
        for line in system.document["plan"]["lines"]:
            kind = next(k for k in line if k not in ("name", "from", "to", "switch"))
            part = line[kind]
            if "switch" in line and line["name"] not in running:
                self.lines.append((line, lambda inlet, outlet, at: 0.0, None))  # its check valve is shut
            elif kind == "pump":
                tested = system.known[part["fluid"]].density(si(part.get("fluidTemperature", "20 degC")))
                pump = Pump(part, self.rho, tested)
                self.lines.append((line, pump.flow, pump))
            elif kind in MAKERS:
                self.lines.append((line, MAKERS[kind](part, self.rho, self.mu), None))
            else:
                self.lines.append((line, regulator(part, self.rho, kind == "reducingRegulator"), None))
        self.seats = [(s, seat) for s, stage in enumerate(system.stages) for seat in stage["seats"]]
        self.cycle = system.turns / self.speed if self.speed > 0 else 1.0  # an engine that stands still: any time serves a static test
        self.period = [self.cycle / stage["pulsesPerCycle"] for stage in system.stages]
        self.against = [self.gauge if stage["discharge"] == "manifold" else 0.0 for stage in system.stages]
        self.volts = [self.supply for _ in system.wires]
        self.injector_volts = self.supply
        self.pressure = dict(system.tanks)
        for n in system.free:
            self.pressure[n] = 500e3 + self.gauge  # above, so that no injector is held open for want of pressure in the first rounds
        self.banks = [set(bank) for bank in system.document.get("banks", [])] or [set(range(1, system.chambers + 1))]
        self.of_bank = [[0.0] * len(system.stages) for _ in self.banks]

    # ---- pulses

    @property
    def widths(self):
        """Of each stage the longest of all banks."""
        return [max(bank[s] for bank in self.of_bank) for s in range(len(self.s.stages))]

    def width_at(self, seat):
        s, place = self.seats[seat]
        return next(widths[s] for bank, widths in zip(self.banks, self.of_bank) if place["chamber"] in bank)

    def flow_of(self, seat, pressure):
        """Mean volume flow of an injector at a pressure of its node."""
        s, place = self.seats[seat]
        return self.mass_of(s, self.s.injectors[place["injector"]], self.width_at(seat), pressure - self.against[s]) / (
            self.rho * self.period[s]
        )

    def mass_of(self, s, injector, width, difference):
        if difference <= 0:
            return 0.0
        static = injector.static(difference, self.rho)
        if self.command["kind"] == "all open":
            return static * self.period[s]
        return injector.pulse(width, self.period[s], static, injector.dead_time(self.injector_volts, difference))

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

    def model(self, s, injectors, statics, deads, chambers=None):
        seats = len(injectors) if chambers else len(self.s.stages[s]["seats"])
        per_chamber = self.s.stages[s]["pulsesPerCycle"] * seats / (chambers or self.s.chambers)
        period = self.period[s]
        least = min(max(d + i.least for i, d in zip(injectors, deads)), period)
        most = max(period - max(i.closing for i in injectors), least)
        give = lambda w: per_chamber * sum(i.pulse(w, period, q, d) for i, q, d in zip(injectors, statics, deads)) / len(injectors)
        return give, least, most, period

    def told_difference(self, s):
        """The pressure that the controller reckons with across the injectors of a stage."""
        told = self.s.stages[s]["belief"]
        if told.get("railReference") == "measured":
            seen = [self.pressure[p["node"]] - self.against[s] for t, p in self.seats if t == s]
            return max(sum(seen) / len(seen), 1.0)
        return si(told["differentialPressure"]) - (self.against[s] if told.get("railReference") == "fixed" else 0.0)

    def believed_model(self, s):
        told, difference = self.s.stages[s]["belief"], self.told_difference(s)
        injector = self.s.injectors[told["injector"]]
        if difference <= 0:
            raise NoState("the controller makes no pulse", "NoFuelPasses")
        density = self.s.known[told["fuel"]].density(si(told["fuelTemperature"]))
        dead = injector.dead_time(self.supply, difference, held=False)
        return self.model(s, [injector], [injector.static(difference, density)], [dead])

    def believed_demand(self):
        fuel = self.s.known[self.s.stages[0]["belief"]["fuel"]]
        return self.air / (fuel.stoichiometric * self.command["lambda"])

    def believed(self):
        return self.shared([self.believed_model(s) for s in range(len(self.s.stages))], self.believed_demand())

    def fitted(self, bank):
        """The widths by which the sensor of a bank sees what is asked for."""
        models = []
        for s in range(len(self.s.stages)):
            mine = [(self.s.injectors[p["injector"]], max(self.pressure[p["node"]] - self.against[s], 1.0))
                    for t, p in self.seats if t == s and p["chamber"] in bank]
            models.append(self.model(s, [i for i, _ in mine], [i.static(d, self.rho) for i, d in mine],
                                     [i.dead_time(self.injector_volts, d) for i, d in mine], len(bank)))
        return self.shared(models, self.air / (self.s.fuel.stoichiometric * self.command["lambda"]))

    def set_widths(self, first):
        kind = self.command["kind"]
        measures = any(stage.get("belief", {}).get("railReference") == "measured" for stage in self.s.stages)
        if kind == "hold lambda":
            self.of_bank = [self.fitted(bank) for bank in self.banks]
            return
        widths = {"open loop": self.believed if first or measures else None, "all open": lambda: list(self.period),
                  "pulse widths": lambda: [si(w) for w in self.command["widths"]]}.get(kind)
        if widths:
            same = widths()
            self.of_bank = [list(same) for _ in self.banks]

    # ---- path: Newton on the pressures, slopes by differences

    def through(self, k, pressure, more=0.0):
        """What passes a line; all but a regulator ask for the drop between their ends alone, to which more may be added."""
        line, flow, _ = self.lines[k]
        inlet, outlet = pressure[line["from"]], pressure[line["to"]]
        column = self.rho * (self.head[line["from"]] - self.head[line["to"]])
        if "regulator" in line or "reducingRegulator" in line:
            return flow(inlet, outlet, {**self.references, "column": column})
        return flow(inlet - outlet + column + more, 0.0, None)

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
        for k, (line, _, pump) in enumerate(self.lines):
            if not pump and any(key in line for key in MAKERS):
                # Where next to nothing flows a fitting's slope has no end: the step is a share of the drop.
                drop = pressure[line["from"]] - pressure[line["to"]] + self.rho * (self.head[line["from"]] - self.head[line["to"]])
                small = min(step, 1e-3 * abs(drop)) or step
                slope = (self.through(k, pressure, small) - self.through(k, pressure, -small)) / (2 * small)
                for end, sign in ((line["from"], 1), (line["to"], -1)):
                    for node, side in ((line["from"], -1), (line["to"], 1)):
                        if end in index and node in index:
                            a[index[node]][index[end]] += side * sign * slope
                continue
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
        """A pump that is pressed beyond what it can reach passes nothing, however far: a state far up there may balance, though no
        pump leads to it. Then, and where none is found, check valves leak, ever less and in the end not at all."""
        start, found = dict(self.pressure), None
        try:
            self.newton()
            found = self.pressure
            if all(self.rise(line) <= pump.factor * pump.over_flow(0) * (1 + 1e-9) for line, _, pump in self.lines if pump):
                return
        except NoState:
            pass
        self.pressure = start
        try:
            for leak in (1e-11, 1e-13, 1e-15, 1e-17):  # m3/s for each Pa
                self.leaking(leak)
            self.leaking(0.0)
        except NoState:
            if found is None:
                raise
            self.pressure = found  # a closed line, in which nothing says how far above the pump it stands

    def leaking(self, leak):
        for _, _, pump in self.lines:
            if pump:
                pump.leak = leak
        try:
            self.newton()
        finally:
            for _, _, pump in self.lines:
                if pump:
                    pump.leak = 0.0

    def newton(self):
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
            # What the last digit of a pressure makes of the flows can't be got rid of.
            grain = max(sum(map(abs, row)) for row in a) * math.ulp(max(map(abs, p.values())))
            if not better and worst < max(1e-6 * scale, grain):
                self.pressure = p
                return
        raise NoState(f"path: {worst:.3g} m3/s left over")

    # ---- all of it

    def run(self):
        for round_ in range(200):
            before = self.volts + [self.injector_volts] + [self.pressure[n] / 1e5 for n in self.s.free] + [w * 1e3 for bank in self.of_bank for w in bank]
            for line, _, pump in self.lines:
                if pump:
                    pump.set(self.volts_at(line))
            self.set_widths(round_ == 0)
            self.path()
            self.wire()
            after = self.volts + [self.injector_volts] + [self.pressure[n] / 1e5 for n in self.s.free] + [w * 1e3 for bank in self.of_bank for w in bank]
            if round_ and max(abs(x - y) for x, y in zip(before, after)) < 1e-9:
                return self.report()
        raise NoState("rounds do not settle")

    def rise(self, line):
        """What a pump adds, the column between its ends included."""
        return self.pressure[line["to"]] - self.pressure[line["from"]] + self.rho * (self.head[line["to"]] - self.head[line["from"]])

    def regulator_state(self, line):
        inlet, outlet = self.pressure[line["from"]], self.pressure[line["to"]]
        flow = next(f for l, f, _ in self.lines if l is line)
        return flow.state(inlet, outlet, {**self.references, "column": self.rho * (self.head[line["from"]] - self.head[line["to"]])})

    def open_loss(self, line):
        """What a regulator would lose at its flow, open to its stop."""
        opened = line.get("regulator", line.get("reducingRegulator"))["fullyOpen"]
        flow = next(self.through(k, self.pressure) for k, (l, _, _) in enumerate(self.lines) if l is line)
        return si(opened["pressureLoss"]) * self.rho / si(opened["density"]) * (flow / si(opened["flow"])) ** 2

    def volts_at(self, line):
        return self.volts[self.s.feed.get(line["name"], 0)]

    def throws(self, switch, runs):
        """Whether a switch acts on a pump that runs, or stands still, in this state."""
        kind = switch["kind"]
        if kind == "manifold above":
            seen = self.gauge
        elif kind.startswith("pressure"):
            seen = self.pressure[switch["node"]]
        elif kind == "flow above":
            seen = next(self.through(k, self.pressure) for k, (l, _, _) in enumerate(self.lines) if l["name"] == switch["link"])
        else:
            seen = sum(self.flow_of(seat, self.pressure[p["node"]]) for seat, (_, p) in enumerate(self.seats))
        join, leave = (si(v) for k, v in sorted(switch.items()) if k.startswith(("join", "leave")))
        sign = -1 if kind == "pressure below" else 1
        return sign * seen < sign * leave if runs else sign * seen > sign * join

    def wire(self):
        amperes = [0.0 for _ in self.volts]
        for line, _, pump in self.lines:
            if pump:
                amperes[self.s.feed.get(line["name"], 0)] += pump.amperes(self.rise(line))
        pulsed = self.command["kind"] not in ("cut", "all open")
        opening, longest = 0.0, 0.0
        for seat, dead in enumerate(self.dead_times()):
            if self.width_at(seat) > 0 and pulsed:
                longest = max(longest, dead)
        for s, stage in enumerate(self.s.stages):
            mine = [self.s.injectors[p["injector"]] for t, p in self.seats if t == s]
            on = coils_on(len(mine), stage.get("firingGroups", len(mine)), self.widths[s], self.period[s], longest)
            opening += on / len(mine) * sum(1 / i.coil for i in mine)
        follows = [self.supply - r * i for r, i in zip(self.s.wires, amperes)]
        self.volts = [0.1 * v + 0.9 * f for v, f in zip(self.volts, follows)]
        self.injector_volts = self.supply / (1 + self.s.injector_wires * opening)

    def dead_times(self):
        return [self.s.injectors[p["injector"]].dead_time(self.injector_volts, self.pressure[p["node"]] - self.against[s])
                for s, p in self.seats]

    def judge(self):
        """Refuses what the rounds settled on where it is no state or lies outside the data, with all reasons that there are."""
        refusals = []

        def hold(check, *arguments):
            try:
                check(*arguments)
            except Refused as refusal:
                refusals.append(refusal)

        def above_vacuum():
            lowest = min(self.s.free, key=lambda n: self.pressure[n])
            if self.pressure[lowest] + si(self.point["ambient"]) < 0:
                raise NoState(f"{self.pressure[lowest]:.6g} Pa gauge at {lowest}", "TooLittleFlow", lowest)

        def passed(s, node, difference):
            if self.widths[s] > 0 and difference <= 0:
                raise NoState(f"no fuel can pass an injector at {node}", "NoFuelPasses", node)

        hold(above_vacuum)
        for s, place in self.seats:
            difference = self.pressure[place["node"]] - self.against[s]
            if difference > 0 and self.command["kind"] not in ("cut", "all open"):
                hold(self.s.injectors[place["injector"]].dead_time, self.injector_volts, difference, False)
            hold(passed, s, place["node"], difference)
        for line, _, pump in self.lines:
            if pump:
                hold(pump.judge, self.volts_at(line), self.rise(line))
        if refusals:
            refusals[0].reasons = [reason for refusal in refusals for reason in refusal.reasons]
            raise refusals[0]

    def report(self):
        self.judge()
        injectors, chambers = [], [0.0] * self.s.chambers
        pulsed = self.command["kind"] not in ("cut", "all open")
        for (s, place), seat in zip(self.seats, range(len(self.seats))):
            injector = self.s.injectors[place["injector"]]
            difference = self.pressure[place["node"]] - self.against[s]
            mass = self.mass_of(s, injector, self.width_at(seat), difference) if self.command["kind"] != "cut" else 0.0
            chambers[place["chamber"] - 1] += mass * self.s.stages[s]["pulsesPerCycle"]
            injectors.append({
                "difference": difference,
                "voltage": self.injector_volts,
                "deadTime": injector.dead_time(self.injector_volts, difference) if pulsed else 0.0,
                "mass": mass,
                "flow": mass / self.period[s] / self.rho,
            })
        pumps = []
        for line, _, pump in self.lines:
            if pump:
                pumps.append({"voltage": self.volts_at(line), "current": pump.amperes(self.rise(line)), "rise": self.rise(line)})
        flows = {line["name"]: self.through(k, self.pressure) for k, (line, _, _) in enumerate(self.lines)}
        ratio = self.s.fuel.stoichiometric
        total = sum(chambers)
        return {
            "solve": self,
            "density": self.rho,
            "viscosity": self.mu,
            "stoichiometricRatio": ratio,
            "pressures": {n: self.pressure[n] for n in self.pressure},
            "flows": flows,
            "surgeTanks": [self.balance_of(tank, flows) for tank in self.s.surge],
            "pumps": pumps,
            "stages": [{"width": w} for w in self.widths],
            "injectors": injectors,
            "chambers": [{"lambda": self.air / (ratio * m) if m > 0 else None} for m in chambers if self.air],
            "lambda": self.air * self.s.chambers / (ratio * total) if total > 0 and self.air else None,
        }

    def balance_of(self, tank, flows):
        """What comes by lift, what returns, what is drawn; and how long a full tank lasts when no lift comes."""
        lifts, lift, back, drawn = self.s.lift_lines(), 0.0, 0.0, 0.0
        for line in self.s.document["plan"]["lines"]:
            if tank in (line["from"], line["to"]):
                into = flows[line["name"]] if line["to"] == tank else -flows[line["name"]]
                drawn -= min(into, 0)
                if line["name"] in lifts:
                    lift += max(into, 0)
                else:
                    back += max(into, 0)
        net = drawn - back
        lasts = self.s.surge[tank] / net if net > 1e-9 * (lift + back + drawn) else None
        return {"lift": lift, "returned": back, "drawn": drawn, "overflow": max(0.0, lift - net), "lasts": lasts}


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
