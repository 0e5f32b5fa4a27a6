"""Whether a narrow suction hose leaves a state at all: by halving the one flow of the path. Python 3, standard library only.

    python3 tests/oracle/below_vacuum.py

For the systems `suction-hose` of systems_limits.py with one line from tank to injectors, at each point. A flow through the pumps
gives the pressure ahead of them by the hose, that behind them by their curves, and so on along the path. The two sides that must
agree are printed at both ends of a span of flows: ahead of the crossing the pumps give more than is taken, behind it less. At the
flow that would leave nothing, no pressure at all, ahead of the pumps they still give more than is taken: then no smaller flow is
a state, and a greater one would need less pressure than none. systems_solve.py and the library must refuse just those points."""

import math

from fluid import si
from systems_limits import bores
from systems_model import friction
from systems_solve import Solve, System


def halve(f, low, high):
    """Where f falls through zero; f(low) > 0 > f(high)."""
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if f(middle) > 0 else (low, middle)
    return (low + high) / 2


class Chain:
    def __init__(self, system, point):
        self.at = at = Solve(system, point, set())
        self.lines = {line["name"]: (line, law, pump) for line, law, pump in at.lines}
        self.pumps = [(line, pump) for line, _, pump in at.lines if pump]
        self.ambient = si(point["ambient"])
        self.tank = at.pressure["tank"]
        command = at.command
        asked = at.air * system.chambers / (system.fuel.stoichiometric * command["lambda"]) / at.cycle / at.rho if "lambda" in command else 0.0
        self.drawn = asked  # m3/s

    def column(self, line):
        return self.at.rho * (self.at.head[line["from"]] - self.at.head[line["to"]])

    def loss(self, name, flow):
        """Of a hose or a filter at a flow, less what its column gives."""
        line = self.lines[name][0]
        if "filter" in line:
            lost = halve(lambda d: flow - self.lines[name][1](d, 0.0, None), 0.0, 1e6)
        else:
            part = line["hose"]
            bore, area = si(part["bore"]), math.pi / 4 * si(part["bore"]) ** 2
            along = friction(self.at.rho * flow / area * bore / self.at.mu, si(part["roughness"]) / bore) * si(part["length"]) / bore
            lost = (along + part["lossCoefficient"]) * self.at.rho * (flow / area) ** 2 / 2
        return lost - self.column(line)

    def inlet(self, flow):
        return self.tank - self.loss("suction hose", flow)

    def rise(self, flow):
        """What the pumps add at a flow, at the voltage that their current leaves them."""
        line = self.pumps[0][0]

        def given(rise):
            volts = self.at.supply
            for _ in range(12):
                for _, pump in self.pumps:
                    pump.set(volts)
                volts = self.at.supply - self.at.s.wires[0] * sum(pump.amperes(rise) for _, pump in self.pumps)
            return sum(pump.at(rise / pump.factor) for _, pump in self.pumps)

        most = max(pump.curves[-1][1][-1][0] for _, pump in self.pumps)
        return halve(lambda rise: given(rise) - flow, 0.0, 3 * most) + self.column(line)

    def sides(self, flow):
        """What the pumps leave, and what the rest of the path asks for."""
        outlet = self.inlet(flow) + self.rise(flow)
        if "bleed" in self.lines:
            line, law, _ = self.lines["bleed"]
            return "flow, L/h", flow * 3.6e6, (law(max(outlet - self.tank + self.column(line), 0.0), 0.0, None) + self.drawn) * 3.6e6
        rail = outlet - sum(self.loss(n, flow) for n in ("filter", "feed hose", "branch"))
        left = flow - self.drawn
        end = rail - self.loss("outlet", left) if left > 0 else rail
        back = self.tank + self.loss("return hose", max(left, 0.0))
        line, law, _ = self.lines["regulator"]
        passes = lambda p: law(p, back, {**self.at.references, "column": self.column(line)})
        holds = halve(lambda p: left - passes(p), 0.0, 1e7) if left > 0 else 0.0
        return "pressure ahead of the regulator, kPa", end / 1e3, holds / 1e3

    def report(self, name):
        more = lambda flow: (lambda what, given, asked: given - asked if "pressure" in what else asked - given)(*self.sides(flow))
        crossing = halve(more, 1e-9, 1e-3)
        most = halve(lambda flow: self.inlet(flow) + self.ambient, 1e-9, 1e-3)
        print(f"{name}: ambient {self.ambient / 1e3:.3f} kPa, {self.drawn * 3.6e6:.3f} L/h drawn")
        for label, flow in (("a hundredth less", 0.99 * crossing), ("where both agree", crossing), ("a hundredth more", 1.01 * crossing),
                            ("at no pressure at all ahead of the pumps", most)):
            what, left, right = self.sides(flow)
            print(f"    {flow * 3.6e6:9.4f} L/h, {label}: {what} {left:.6f} beside {right:.6f}; ahead of the pumps "
                  f"{(self.inlet(flow) + self.ambient) / 1e3:.4f} kPa absolute")
        there = self.inlet(crossing) + self.ambient >= 0
        print(f"    {'a state' if there else 'no state'}")
        return there


def main():
    for name, document, points in bores("suction hose", (2, 8)):
        if name in ("suction-hose-2-0", "suction-hose-2-1", "suction-hose-8-0"):
            system = System(document)
            for point in points:
                Chain(system, point).report(f"{name}, {point['name']}")


if __name__ == "__main__":
    main()
