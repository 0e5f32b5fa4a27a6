"""Fuels and tables for systems.py, from the works that docs/sources.md cites. SI units; temperatures in kelvins."""

import math

ATOM = {"C": 12.011, "H": 1.008, "O": 15.999}  # [IUPAC-2021]
# Dry air of the standard atmosphere: 20.9476 % of oxygen by volume, 28.9644 g/mol. [ISO-2533]
OXYGEN_IN_AIR = 0.209476 * 2 * ATOM["O"] / 28.9644

UNITS = {
    "Pa": 1, "kPa": 1e3, "bar": 1e5, "m": 1, "mm": 1e-3, "mm2": 1e-6, "cm3": 1e-6, "L": 1e-3, "L/h": 1e-3 / 3600, "cm3/min": 1e-6 / 60,
    "g/s": 1e-3, "kg/m3": 1, "m/s": 1, "m/s2": 1, "mPa s": 1e-3, "mm2/s": 1e-6, "V": 1, "A": 1, "ohm": 1, "mohm": 1e-3, "ms": 1e-3, "s": 1,
    "%": 0.01, "rpm": 1 / 60,
}


def si(text):
    """A quantity of a document, in SI. Speeds are in turns a second."""
    number, unit = text.split(" ", 1)
    unit = unit.replace(" gauge", "").replace(" absolute", "")
    return float(number) + 273.15 if unit == "degC" else float(number) * UNITS[unit]


class Cubic:
    """The shape-preserving cubic: slopes of [Fritsch-Butland-1984], ends of [Moler-2004] section 3.4, in Hermite's form; or given slopes."""

    def __init__(self, x, y, m=None):
        self.x, self.y, self.m = list(x), list(y), m
        if m is not None:
            return
        h = [b - a for a, b in zip(x, x[1:])]
        d = [(b - a) / w for a, b, w in zip(y, y[1:], h)]
        if len(x) == 2:
            self.m = [d[0], d[0]]
            return
        inner = []
        for k in range(1, len(x) - 1):
            before, after = d[k - 1], d[k]
            first, second = 2 * h[k] + h[k - 1], h[k] + 2 * h[k - 1]
            inner.append((first + second) / (first / before + second / after) if before * after > 0 else 0.0)
        self.m = [self.end(h[0], h[1], d[0], d[1]), *inner, self.end(h[-1], h[-2], d[-1], d[-2])]

    @staticmethod
    def end(h0, h1, d0, d1):
        slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1)
        if slope * d0 <= 0:
            return 0.0
        return 3 * d0 if d0 * d1 <= 0 and abs(slope) > 3 * abs(d0) else slope

    def __call__(self, at):
        """Between the points; straight on beyond them."""
        x, y, m = self.x, self.y, self.m
        if at <= x[0]:
            return y[0] + m[0] * (at - x[0])
        if at >= x[-1]:
            return y[-1] + m[-1] * (at - x[-1])
        k = max(i for i in range(len(x) - 1) if x[i] <= at)
        h = x[k + 1] - x[k]
        t = (at - x[k]) / h
        u = 1 - t
        return u * u * (1 + 2 * t) * y[k] + t * u * u * h * m[k] + t * t * (3 - 2 * t) * y[k + 1] - t * t * u * h * m[k + 1]


    def slope(self, at):
        """Between the points, ends included."""
        x, y, m = self.x, self.y, self.m
        k = max((i for i in range(len(x) - 1) if x[i] <= at), default=0)
        h = x[k + 1] - x[k]
        t = (at - x[k]) / h
        u = 1 - t
        return 6 * t * u * (y[k + 1] - y[k]) / h + u * (1 - 3 * t) * m[k] + t * (3 * t - 2) * m[k + 1]


class Refused(Exception):
    """No answer may be given: for these reasons, each a code of docs/guide/refusals.md with the part or node that it is about."""

    def __init__(self, text, code, where):
        super().__init__(text)
        self.reasons = [(code, where)]


class Outside(Refused):
    """The data of a part do not reach there."""

    def __init__(self, text, part):
        super().__init__(text, "OutsideData", part)


def place(axis, at, what):
    slack = 1e-9 * (axis[-1] - axis[0])
    if len(axis) > 1 and not axis[0] - slack <= at <= axis[-1] + slack:
        raise Outside(f"{what}: {at:.6g} outside {axis[0]:.6g} to {axis[-1]:.6g}", what)
    k = max([i for i in range(len(axis) - 1) if axis[i] <= at], default=0)
    return k, (at - axis[k]) / (axis[k + 1] - axis[k])


def straight(axis, values, at, what):
    k, t = place(axis, at, what)
    return values[k] * (1 - t) + values[k + 1] * t


def bilinear(rows, columns, values, row, column, what):
    across = values if len(columns) == 1 else None
    if across is not None:
        return straight(rows, [v[0] for v in values], row, what)
    return straight(rows, [straight(columns, v, column, what) for v in values], row, what)


# ---------------------------------------------------------------- liquids


def handbook(molar_mass, c1, c2, c3, c4):
    """[Perry-2008] table 2-32: density of the saturated liquid."""
    return lambda t: molar_mass * 1e3 * c1 / c2 ** (1 + (1 - t / c3) ** c4)


def anchored(law, points):
    """The handbook's law, brought to the densities of an equation of state at some temperatures."""
    kelvins = [c + 273.15 for c, _ in points]
    factor = Cubic(kelvins, [d / law(k) for k, (_, d) in zip(kelvins, points)])
    return lambda t: law(t) * factor(min(max(t, kelvins[0]), kelvins[-1]))


def absolute_ethanol(t):
    """[OIML-R22] general formula for a mass fraction of one: its sums over that fraction are left."""
    c = t - 293.15
    a = [998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998,
         -547846.1354, 223446.0334, -39032.85426]
    b = [-0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11]
    mixed = [
        [0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045, -12101.64659068747,
         22486.46550400788, -26055.62982188164, 18523.73922069467, -7420.201433430137, 1285.617841998974],
        [-0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014, 109.635566657757,
         -142.2753946421155, 108.043594285623, -44.14153236817392, 7.442971530188783],
        [-0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922, -2.895696483903638,
         4.810060584300675, -4.672147440794683, 2.458043105903461, -0.5411227621436812],
        [4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06],
        [-2.788074354782409e-08, 1.345612883493354e-08],
    ]
    powers = range(1, 7)
    return sum(a) + sum(v * c**k for v, k in zip(b, powers)) + sum(sum(v) * c**k for v, k in zip(mixed, powers))


def vogel(c1, c2, c3, c4, c5):
    """[Perry-2008]: viscosity of the saturated liquid."""
    return lambda t: math.exp(c1 + c2 / t + c3 * math.log(t) + c4 * t**c5)


def petroleum(at15, coefficient):
    """[ASTM-D1250]: density from that at 15 degC."""

    def density(t):
        growth = coefficient * (t - 288.15)
        return at15 * math.exp(-growth * (1 + 0.8 * growth))

    return density


def oil_viscosity(at40, at100):
    """[ASTM-D341]: the double logarithm is straight over the logarithm of temperature. m2/s."""
    double = lambda nu: math.log10(math.log10(nu * 1e6 + 0.7))
    slope = (double(at100) - double(at40)) / math.log10(373.15 / 313.15)
    return lambda t: (10 ** 10 ** (double(at40) + slope * math.log10(t / 313.15)) - 0.7) * 1e-6


def gasoline_viscosity(at15):
    """The curve through the chart of [HI-EDB]; its constants are the library's reading of that chart, taken as data. m2/s."""
    above = min(max(at15 / 999.016, 0.68), 0.748) - 0.716

    def nu(t):
        warmth = 1 / t - 1 / 288.706
        return 0.64e-6 * math.exp(above * (10.32 + 31.9 * above) + warmth * (1080 + 3.4e5 * warmth))

    return nu


class Fuel:
    """Density and dynamic viscosity over temperature, and mass fractions of carbon, hydrogen, oxygen."""

    def __init__(self, density, viscosity, carbon, hydrogen, oxygen):
        self.density, self.viscosity = density, viscosity
        mass = {"C": carbon * ATOM["C"], "H": hydrogen * ATOM["H"], "O": oxygen * ATOM["O"]}
        self.elements = {e: m / sum(mass.values()) for e, m in mass.items()}

    @property
    def stoichiometric(self):
        """Oxygen taken up less that in the fuel, over that in air. [Heywood-1988] section 3.4."""
        w = self.elements
        taken = 2 * ATOM["O"] / ATOM["C"] * w["C"] + ATOM["O"] / (2 * ATOM["H"]) * w["H"] - w["O"]
        return taken / OXYGEN_IN_AIR


def gasoline(at15):
    density = petroleum(at15, 346.4228 / at15**2 + 0.4388 / at15)
    nu = gasoline_viscosity(at15)
    return Fuel(density, lambda t: nu(t) * density(t), 1, 1.87, 0)


def blend(parts):
    """Of masses and fuels: volumes and masses add up; viscosity by the blending index of [Maples-2000]."""
    total = sum(m for m, _ in parts)
    parts = [(m / total, f) for m, f in parts]
    density = lambda t: 1 / sum(m / f.density(t) for m, f in parts)
    index = lambda nu: 14.534 * math.log(math.log(nu * 1e6 + 0.8)) + 10.975

    def viscosity(t):
        mean = sum(m * index(f.viscosity(t) / f.density(t)) for m, f in parts)
        return (math.exp(math.exp((mean - 10.975) / 14.534)) - 0.8) * 1e-6 * density(t)

    mixed = Fuel(density, viscosity, 1, 1, 0)
    mixed.elements = {e: sum(m * f.elements[e] for m, f in parts) for e in ATOM}
    return mixed


OIL_DENSITY = petroleum(870, 0.6278 / 870)
OIL_VISCOSITY = oil_viscosity(50e-6, 8e-6)
ETHANOL_HOT = anchored(
    handbook(46.069e-3, 1.6288, 0.27469, 514, 0.23178),
    [(40, absolute_ethanol(313.15)), (60, 754.054), (80, 734.838), (100, 713.828)],  # [Schroeder-2014]
)
KNOWN = {
    "pump gasoline": gasoline(745),
    "two-stroke oil": Fuel(OIL_DENSITY, lambda t: OIL_VISCOSITY(t) * OIL_DENSITY(t), 1, 1.9, 0),
    "ethanol": Fuel(
        lambda t: ETHANOL_HOT(t) if t > 313.15 else absolute_ethanol(t), vogel(7.875, 781.98, -3.0418, 0, 0), 2, 6, 1
    ),
    "methanol": Fuel(
        anchored(
            handbook(32.042e-3, 2.3267, 0.27073, 512.5, 0.24713),
            [(-20, 828.598), (0, 809.73), (20, 791.012), (40, 772.169), (60, 752.813), (80, 732.467), (100, 710.534)],
        ),  # [DeReuck-1993]
        vogel(-25.317, 1789.2, 2.069, 0, 0),
        1,
        4,
        1,
    ),
    "iso-octane": Fuel(
        anchored(
            handbook(114.232e-3, 0.59059, 0.27424, 543.8, 0.2847),
            [(-20, 724.44), (0, 708.324), (20, 692.016), (40, 675.407), (60, 658.372), (80, 640.756), (100, 622.362)],
        ),  # [Blackham-Lemmon-IC8]
        vogel(-12.928, 1137.5, 0.25725, -3.6929e-28, 10),
        8,
        18,
        0,
    ),
    "n-heptane": Fuel(
        anchored(
            handbook(100.205e-3, 0.61259, 0.26211, 540.2, 0.28141),
            [(-20, 717.092), (0, 700.53), (20, 683.815), (40, 666.822), (60, 649.414), (80, 631.429), (100, 612.664)],
        ),  # [Span-2003]
        vogel(-9.4622, 877.07, -0.23445, 1.4022e22, -10),
        7,
        16,
        0,
    ),
}


def fuels(document):
    found = dict(KNOWN)

    def read(item):
        if isinstance(item, str):
            return found[item]
        if item["kind"] == "gasoline":
            return gasoline(si(item["at15Celsius"]))
        if item["kind"] == "blend by volume":
            at = si(item["mixedAt"])
            parts = [(si(p["fraction"]), read(p["fuel"])) for p in item["parts"]]
            return blend([(v * f.density(at), f) for v, f in parts])
        if item["kind"] == "E85":
            at, share = 288.15, si(item["ethanol"])
            parts = [(1 - share, read(item["gasoline"])), (share, found["ethanol"])]
            return blend([(v * f.density(at), f) for v, f in parts])
        if item["kind"] == "premix":
            at, fuel, oil = si(item["mixedAt"]), read(item["fuel"]), read(item["oil"])
            return blend([(fuel.density(at), fuel), (si(item["oilPerFuel"]) * oil.density(at), oil)])
        raise ValueError(item["kind"])

    for item in document["fuels"]:
        found[item["name"]] = read(item)
    return found
