"""A whole fuel system by other means than the library's: pressures are the only unknowns of the path (each part says what it
passes at the pressures of its ends, found by search), voltages and pulse widths are repeated around it. See systems.py."""

import math

from fluid import Cubic, Outside, bilinear, fuels, si, straight

G = 9.80665
AIR = 287.05287  # J/(kg K), [ISO-2533]


def root(f, low, high, steps=200):
    """Where f rises through zero between low and high, or the end nearer to it: by the inverse parabola through the last three
    places while that is safe, else by halves. Chandrupatla's way, from memory."""
    b, fb = low, f(low)
    if fb >= 0:
        return low
    a, fa = high, f(high)
    if fa <= 0:
        return high
    t = 0.5
    for _ in range(steps):
        x = a + t * (b - a)
        fx = f(x)
        if (fx > 0) == (fa > 0):
            c, fc = a, fa
        else:
            c, fc, b, fb = b, fb, a, fa
        a, fa = x, fx
        best = a if abs(fa) < abs(fb) else b
        least = 1e-15 * abs(best) / abs(b - a) if b != a else 1
        if fx == 0 or least > 0.25:
            return best
        xi, phi = (a - b) / (c - b), (fa - fb) / (fc - fb)
        t = 0.5
        if phi * phi < xi and (1 - phi) ** 2 < 1 - xi:
            t = fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
        t = min(max(t, 2 * least), 1 - 2 * least)
    return a if abs(fa) < abs(fb) else b


# ---------------------------------------------------------------- parts: flow from (inlet, outlet), heights counted in


def friction(reynolds, rough):
    """64/Re to 2000, Colebrook and White's from 4000, straight between. [White-2003] equation 6.10; [Colebrook-1939]"""
    if reynolds <= 2000:
        return 64 / max(reynolds, 1e-12)
    if reynolds < 4000:
        t = (reynolds - 2000) / 2000
        return 0.032 * (1 - t) + friction(4000, rough) * t
    x = 6.0
    for _ in range(50):
        y = -2 * math.log10(rough / 3.7 + 2.51 * x / reynolds)
        if abs(y - x) < 1e-15 * y:
            break
        x = y
    return 1 / x**2


def hose(part, rho, mu):
    bore, length, k = si(part["bore"]), si(part["length"]), part["lossCoefficient"]
    area, rough = math.pi / 4 * bore**2, si(part["roughness"]) / bore

    def loss(q):
        v = q / area
        return (friction(rho * v * bore / mu, rough) * length / bore + k) * rho * v * v / 2

    return passage(loss, 10 * area)


def passage(loss, most):
    """The flow at which a loss that rises is met, both ways."""

    def flow(inlet, outlet, _):
        d = inlet - outlet
        return 0.0 if d == 0 else math.copysign(root(lambda q: loss(q) - abs(d), 0, most), d)

    return flow


def fitting(part, rho, _):
    area = math.pi / 4 * si(part["bore"]) ** 2
    scale = area * math.sqrt(2 / (rho * part["lossCoefficient"]))
    return lambda inlet, outlet, _: math.copysign(scale * math.sqrt(abs(inlet - outlet)), inlet - outlet)


def jet(part, rho, _):
    scale = si(part["flow"]) * math.sqrt(si(part["density"]) / rho / si(part["differentialPressure"]))
    return lambda inlet, outlet, _: math.copysign(scale * math.sqrt(abs(inlet - outlet)), inlet - outlet)


def strainer(part, rho, mu):
    """Plain woven wire: [Armour-Cannon-1968]."""
    w, d, area = si(part["opening"]), si(part["wireDiameter"]), si(part["area"])
    n = 1 / (w + d)
    longer = math.sqrt(1 + (n * d) ** 2)
    porosity, surface = 1 - math.pi * n * d * longer / 4, math.pi * n * longer
    a = 2 * d / porosity**2 * 8.61 * mu * surface**2 / area
    b = 2 * d / porosity**2 * 0.52 * rho / w / area**2
    return lambda inlet, outlet, _: math.copysign(two_terms(a, b, abs(inlet - outlet)), inlet - outlet)


def relief(part, rho, _):
    """Shut up to its opening, then a loss with the square of flow, which goes with density; nothing backwards."""
    loss = si(part["addedLoss"]) / si(part["density"]) * rho / si(part["flow"]) ** 2
    return lambda inlet, outlet, _: math.sqrt(max(0.0, inlet - outlet - si(part["opening"])) / loss)


def two_terms(a, b, x):
    """The flow at which a q + b q q is x."""
    return 2 * x / (a + math.sqrt(a * a + 4 * b * x))


def filter_(part, rho, mu):
    """Both terms by least squares with neither below zero [Lawson-1974], each carried by its property [Forchheimer-1901]."""
    q = [si(p["flow"]) for p in part["points"]]
    d = [si(p["pressureLoss"]) for p in part["points"]]
    s = lambda n: sum(x**n for x in q)
    t = lambda n: sum(x**n * y for x, y in zip(q, d))
    det = s(2) * s(4) - s(3) ** 2
    a, b = (t(1) * s(4) - t(2) * s(3)) / det, (s(2) * t(2) - s(3) * t(1)) / det
    if a < 0:
        a, b = 0, t(2) / s(4)
    elif b < 0:
        a, b = t(1) / s(2), 0
    a, b = a * mu / si(part["viscosity"]), b * rho / si(part["density"])

    def flow(inlet, outlet, _):
        return math.copysign(two_terms(a, b, abs(inlet - outlet)), inlet - outlet)

    return flow


def regulator(part, rho, reducing):
    """Balance of forces with a slope over flow, or open to its stop: it passes the lesser of the two, nothing backwards."""
    flow_key = "flow" if reducing else "bypassedFlow"
    seat, area = si(part["seat"]), si(part["diaphragm"])
    share = seat / (area - seat)
    first, second = part["setPoint"], part["secondReading"]
    p1, p2 = si(first["differentialPressure"]), si(second["differentialPressure"])
    if reducing:
        p2 += share * (si(second["supply"]) - si(first["supply"]))
    q1, q2 = si(first[flow_key]), si(second[flow_key])
    slope = (p2 - p1) / (q2 - q1)
    still = p1 - slope * q1 + (share * si(first["supply"]) if reducing else 0)
    open_ = part["fullyOpen"]
    stop = si(open_["pressureLoss"]) / si(open_["density"]) / si(open_["flow"]) ** 2 * rho

    def both(inlet, outlet, at):
        # The diaphragm feels the pressures at its ports; what passes an open valve feels the column between them too.
        held, other = (outlet, inlet) if reducing else (inlet, outlet)
        reference = at[part["reference"]]
        wants = (held - (still + reference * (1 + share) - other * share)) / slope
        return wants, math.sqrt(max(inlet - outlet + at["column"], 0) / stop)

    def flow(inlet, outlet, at):
        return max(0.0, min(both(inlet, outlet, at)))

    def state(inlet, outlet, at):
        wants, stops = both(inlet, outlet, at)
        return "seated" if min(wants, stops) <= 0 else "fully open" if stops <= wants else "regulating"

    flow.state = state
    return flow


class Pump:
    """Values and slopes linear in voltage at each rise that either neighbor was measured at; cubics through what comes out."""

    def __init__(self, part, rho, test_density):
        self.curves = [
            (si(c["voltage"]), [tuple(si(p[k]) for k in ("pressureRise", "flow", "current")) for p in c["points"]])
            for c in part["curves"]
        ]
        self.name, self.ratio, self.principle = part["name"], rho / test_density, part.get("principle")
        # Displacement keeps its curve; a rotodynamic pump's rise goes with density; where nobody knows, the lesser.
        self.factor = {"rotodynamic": self.ratio, "displacement": 1}.get(self.principle, min(1, self.ratio))
        self.leak = 0.0  # of its check valve, while a state is searched: see Solve.path
        self.set(self.curves[0][0])

    def set(self, volts):
        volts = min(max(volts, self.curves[0][0]), self.curves[-1][0])
        for (low, a), (high, b) in zip(self.curves, self.curves[1:]):
            if volts in (low, high):
                c = a if volts == low else b
                self.rises = [p[0] for p in c]
                self.over_flow, self.current = self.cubics(c)
                return
            if low < volts < high:
                t = (volts - low) / (high - low)
                first, last = max(a[0][0], b[0][0]), min(a[-1][0], b[-1][0])
                common = sorted({first, last, *(p[0] for p in a + b if first <= p[0] <= last)})
                # Where the lower curve ends at no flow, the rest of the upper one moves toward that end.
                above = [p[0] for p in b if p[0] > last] if a[-1][1] == 0 and a[-1][0] == last else []
                low_rises, high_rises = common + [last] * len(above), common + above
                (rise_a, amps_a), (rise_b, amps_b) = self.cubics(a), self.cubics(b)
                at_a, at_b = [self.measured(a, r) for r in low_rises], [self.measured(b, r) for r in high_rises]
                mix = lambda one, two: [x * (1 - t) + y * t for x, y in zip(one, two)]
                n = len(common)
                rises, flows = mix(low_rises, high_rises), mix(at_a, at_b)
                self.rises = rises
                upper = [rise_b.slope(q) for q in at_b]
                steep = mix([rise_a.slope(q) for q in at_a[:n]] + upper[n:], upper)
                for k in range(len(rises) - 1):
                    chord = (rises[k + 1] - rises[k]) / (flows[k + 1] - flows[k])
                    if self.turns(steep[k] / chord, steep[k + 1] / chord):
                        steep[k], steep[k + 1] = max(steep[k], 3 * chord), max(steep[k + 1], 3 * chord)
                self.over_flow = Cubic(flows[::-1], rises[::-1], steep[::-1])
                amps = mix([amps_a(r) for r in low_rises], [amps_b(r) for r in high_rises])
                upper = [amps_b.slope(r) for r in high_rises]
                self.current = Cubic(rises, amps, mix([amps_a.slope(r) for r in common] + upper[n:], upper))
                return

    @staticmethod
    def turns(first, last):
        """Whether a cubic with these slopes over that of its chord turns: its derivative changes sign inside."""
        # p' = first (1-t)(1-3t) + 6 t (1-t) + last t (3t-2), a parabola; its least value between the ends.
        a, b = 3 * first + 3 * last - 6, 6 - 4 * first - 2 * last
        if a <= 0:
            return False
        t = -b / (2 * a)
        return 0 < t < 1 and first + t * (b + t * a) < -1e-9

    @staticmethod
    def cubics(points):
        return (Cubic([p[1] for p in points][::-1], [p[0] for p in points][::-1]),
                Cubic([p[0] for p in points], [p[2] for p in points]))

    @staticmethod
    def measured(points, rise):
        for p in points:
            if p[0] == rise:
                return p[1]
        curve = Cubic([p[1] for p in points][::-1], [p[0] for p in points][::-1])
        return root(lambda q: rise - curve(q), points[-1][1], points[0][1])

    def flow(self, inlet, outlet, _):
        rise = (outlet - inlet) / self.factor
        return self.at(rise) - self.leak * max(0.0, rise - self.over_flow(0))

    def at(self, rise):
        """The flow of the curve at the voltage that was set."""
        c = self.over_flow
        if rise >= c(0):
            return 0.0
        return root(lambda q: rise - c(q), 0.0, 3 * c.x[-1])

    def amperes(self, rise):
        return self.factor * self.current(min(max(rise / self.factor, self.rises[0]), self.rises[-1]))

    def judge(self, volts, rise):
        if not self.curves[0][0] * (1 - 1e-9) <= volts <= self.curves[-1][0] * (1 + 1e-9):
            raise Outside(f"pump voltage {volts:.4g}", self.name)
        ends = self.over_flow.x[0] == 0  # against more than that it is stalled, docs/guide/pumps.md
        if rise / self.factor < self.rises[0] or rise / self.factor > self.rises[-1] and not ends:
            raise Outside(f"rise {rise:.5g} Pa", self.name)


class Injector:
    def __init__(self, document, known):
        self.name = document["name"]
        rating = document["rating"]
        rated = known[rating["fluid"]].density(si(rating["fluidTemperature"]))
        self.mass = si(rating["massFlow"]) if "massFlow" in rating else si(rating["volumeFlow"]) * rated
        self.pressure, self.density = si(rating["differentialPressure"]), rated
        table = document["deadTime"]
        self.volts = [si(v) for v in table["voltages"]]
        self.pressures = [si(p) for p in table["differentialPressures"]]
        self.dead = [[si(x) for x in row] for row in table["values"]]
        self.correction, self.linear, self.rises_from = (lambda w: 0.0), 0.0, 0.0
        if document["correction"] != "none":
            widths = [0.0, *(si(w) for w in document["correction"]["effectiveWidths"])]
            cubic = Cubic(widths, [0.0, *(si(c) for c in document["correction"]["corrections"])])
            self.linear = widths[-1]
            self.correction = lambda w: cubic(w) if w < self.linear else 0.0
            steps = [self.linear * k / 4000 for k in range(4001)]
            falls = [b for a, b in zip(steps, steps[1:]) if b + cubic(b) <= a + cubic(a)]
            self.rises_from = max(falls, default=0.0)
        self.least = max(si(document["smallestRepeatableWidth"]), self.rises_from)
        self.closing, self.coil = si(document["closingTime"]), si(document["coil"])

    def static(self, difference, density):
        """[White-2003] section 6.12."""
        return self.mass * math.sqrt(max(difference, 0) / self.pressure * density / self.density)

    def dead_time(self, volts, difference, held=True):
        if held:
            volts = min(max(volts, self.volts[0]), self.volts[-1])
            if len(self.pressures) > 1:
                difference = min(max(difference, self.pressures[0]), self.pressures[-1])
        return bilinear(self.volts, self.pressures, self.dead, volts, difference, self.name)

    def pulse(self, width, period, static, dead):
        """[SAE-J1832]; an injector without the time to close stays open."""
        if width <= 0:
            return 0.0
        if period - width < self.closing * (1 - 1e-9):
            return static * period
        effective = max(0.0, width - dead)
        return static * (effective + self.correction(effective))


def breathing(engine):
    table = engine.get("volumetricEfficiency") or engine["deliveryRatio"]
    if table["kind"] == "constant":
        return lambda n, p: si(table["value"])
    speeds = [si(s) for s in table["speeds"]]
    if table["kind"] == "over speed":
        return lambda n, p: straight(speeds, [si(v) for v in table["values"]], n, engine["name"])
    pressures = [si(p) for p in table["manifoldPressures"]]
    values = [[si(v) for v in row] for row in table["values"]]
    return lambda n, p: bilinear(speeds, pressures, values, n, p, engine["name"])


def wire_resistance(circuit):
    """[ASTM-B258] the gauge, [NBS-Handbook-100] copper."""
    total = si(circuit["contacts"])
    for piece in circuit["supply"] + circuit["ground"]:
        number, unit = piece["size"].split(" ")
        area = math.pi / 4 * (0.127e-3 * 92 ** ((36 - int(number)) / 39)) ** 2 if unit == "AWG" else float(number) * 1e-6
        area *= piece.get("wires", 1)
        total += 1.7241e-8 * (1 + 0.00393 * (si(piece["temperature"]) - 293.15)) * si(piece["length"]) / area
    return total


def coils_on(count, groups, width, period, window):
    """Mean number of coils that are on while one opens: groups start evenly staggered, and each shares some time with it."""
    if width <= 0:
        return 0.0
    on = min(width, period)
    window = min(max(window, 1e-9 * period), on)
    shared = 0.0
    for other in range(groups):
        for turn in (-1, 0) if other else (0,):
            start = period * other / groups + turn * period
            shared += max(0.0, min(window, start + on) - max(0.0, start))
    return count / groups * shared / window
