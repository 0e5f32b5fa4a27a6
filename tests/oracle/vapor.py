"""Vapor pressures of fuels for recalculate.py and systems_findings.py, from the works that docs/sources.md cites. SI units."""

import math

from fluid import fuels, si

PSI = 6894.757293168361
REID = 37.7777777777778 + 273.15  # 100 degF, the temperature of a Reid vapor pressure
COLDEST = (40 - 32) / 1.8 + 273.15  # 40 degF, the low end of what is known of a gasoline
CLASSES = {1: (5.5, 9), 2: (7, 9.5), 3: (8.5, 12), 4: (9.5, 15)}  # psi, [ASTM-D5798] table 1


def vapor_pressure(document, name, t):
    """[EPA-AP42] gasoline from its Reid vapor pressure; alcohols after Wagner [Poling-2001]; gasoline with ethanol after Wilson,
    constants of [ChemSep-IPD], gasoline of 92 g/mol [EPA-AP42]. A little oil changes nothing. None where it is not known."""
    fuel = name if isinstance(name, dict) else next((f for f in document["fuels"] if f["name"] == name), name)
    if isinstance(fuel, str) and fuel in WAGNER:
        return of_alcohol(fuel, t)
    if fuel == "pump gasoline":
        fuel = {"kind": "gasoline", "reidVaporPressure": "60 kPa absolute"}
    if fuel["kind"] == "premix":
        return vapor_pressure(document, fuel["fuel"], t)
    if fuel["kind"] == "gasoline":
        return of_gasoline(si(fuel["reidVaporPressure"]), t)
    mixed = of_blend(document, parts_of(fuel), si(fuel.get("mixedAt", "15 degC")), t)
    if mixed is None or fuel["kind"] != "E85" or "class" not in fuel:
        return mixed
    # As the class allows at most, the curve of the mixture multiplied, or as mixed where that is more. docs/guide/fuels.md
    return mixed * max(1.0, CLASSES[fuel["class"]][1] * PSI / as_mixed(document, fuel))


def as_mixed(document, fuel):
    """The vapor pressure of a fuel sold as E85 by what it is mixed of, at the temperature of the classes."""
    return of_blend(document, parts_of(fuel), 288.15, REID)


def parts_of(fuel):
    if fuel["kind"] == "E85":
        share = si(fuel["ethanol"])
        return [(1 - share, fuel["gasoline"]), (share, "ethanol")]
    return [(si(p["fraction"]), p["fuel"]) for p in fuel["parts"]]


def of_blend(document, parts, at, t):
    if any(f in WAGNER and f != "ethanol" for _, f in parts if isinstance(f, str)):
        return None
    known = fuels(document | {"fuels": [f for _, f in parts if isinstance(f, dict)]})
    by = {("ethanol" if f == "ethanol" else "gasoline"): (v, f) for v, f in parts}
    moles = {k: v * known[f if isinstance(f, str) else f["name"]].density(at) / (46.069 if k == "ethanol" else 92.0) for k, (v, f) in by.items()}
    x = moles["ethanol"] / sum(moles.values())
    y = 1 - x
    one, two = math.exp(0.691974 - 1013.459 / t), math.exp(-0.691974 - 165.729 / t)
    a, b = x + one * y, y + two * x
    gap = one / a - two / b
    ethanol, gasoline = of_alcohol("ethanol", t), vapor_pressure(document, by["gasoline"][1], t)
    if ethanol is None or gasoline is None:
        return None
    return x * math.exp(y * gap) / a * ethanol + y * math.exp(-x * gap) / b * gasoline


# Constants a, b, c, d, critical temperature and pressure. [Poling-2001]
WAGNER = {
    "ethanol": (-8.68587, 1.17831, -4.8762, 1.588, 513.92, 6132e3),
    "methanol": (-8.63571, 1.17982, -2.479, -1.024, 512.64, 8092e3),
}


def of_alcohol(name, t):
    if not -40 <= t - 273.15 <= 120:
        return None
    a, b, c, d, critical, pressure = WAGNER[name]
    tau = 1 - t / critical
    return pressure * math.exp((a * tau + b * tau**1.5 + c * tau**2.5 + d * tau**5) * critical / t)


def of_gasoline(reid, t):
    if not COLDEST - 1e-9 <= t <= 120 + 273.15:
        return None
    s = math.sqrt(3)
    r = math.log(reid / PSI)
    a = 15.64 - 1.854 * s - (0.8742 - 0.3280 * s) * r
    b = 8742 - 1042 * s - (1049 - 179.4 * s) * r
    return PSI * math.exp(a - b / (1.8 * t))
