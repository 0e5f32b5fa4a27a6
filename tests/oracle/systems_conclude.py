"""Findings and verdicts of the library beside those of systems_findings.py. Python 3, standard library only.

    python3 tests/oracle/systems.py write FOLDER
    python3 tests/oracle/systems_limits.py FOLDER
    dotnet run -c Release --project benchmarks/FuelMath.Benchmarks -- states FOLDER
    python3 tests/oracle/systems_conclude.py FOLDER > tests/oracle/findings.md

A finding is held by its code and part: severity, whether it says what could not be judged, and value. It ends with 1 when one
is missing or too many, when anything of it differs, when a point has another verdict, or when the library refuses a point for a
reason that is none of those found here, by code and part or node."""

import collections
import glob
import json
import os
import sys

from fluid import Refused
from systems_findings import REFUSED, findings, verdict, without_the_sensor
from systems_solve import System

TOLERANCE = 1e-7
GRAVEST = lambda f: -("Note", "Warning", "Danger").index(f["severity"])
SHARES = ("MixtureLean", "MixtureRich", "ChamberLean", "PremixMixture", "PressureNotAsTold", "RailReferenceNotAsTold")


def each(folder):
    """System and point by name, the library's conclusions, ours, and why there is no state in ours."""
    for states in sorted(glob.glob(os.path.join(folder, "*-states.json"))):
        stem = states[: -len("-states.json")]
        with open(stem + ".json", encoding="utf-8") as a, open(stem + "-points.json", encoding="utf-8") as b, open(states, encoding="utf-8") as c:
            system, points, found = System(json.load(a)), json.load(b)["points"], json.load(c)
        name = os.path.basename(stem)
        for point, theirs in zip(points, found, strict=True):
            why = []
            try:
                mine = findings(system, point, system.solve(point))
            except Refused as refusal:
                mine, why = [REFUSED], refusal.reasons
            mine += without_the_sensor(system, point, mine)
            yield f"{name}: {point['name']}", theirs, mine, why
        print(name, file=sys.stderr, flush=True)


def key(finding):
    return finding["code"], None if finding["code"] == "StateRefused" else finding["part"]


def compare(folder):
    points, held, verdicts, refused, off, alone = 0, 0, collections.Counter(), collections.Counter(), [], []
    counts = collections.defaultdict(collections.Counter)
    for where, theirs, mine, why in each(folder):
        if (mine[:1] == [REFUSED]) != ("refused" in theirs):
            alone.append(f"{where} ({'here' if 'refused' in theirs else 'in the library'})")
            continue
        if why:
            reason = theirs["code"], theirs["part"] if theirs["code"] == "OutsideData" else theirs["node"]
            refused[reason[0]] += 1
            if reason not in why:
                off.append((f"refused: library {reason[0]}", f"{where}: library {reason[1]}, here {why}"))
        points += 1
        named = {key(f) for f in theirs["findings"]}
        mine = [f for f in mine if not f.get("either") or key(f) in named]
        conclusion = verdict(mine)
        verdicts[conclusion] += 1
        if conclusion != theirs["verdict"]:
            off.append((f"verdict: library {theirs['verdict']}, here {conclusion}", where))
        for code in {f["code"] for f in mine}:
            counts[code]["points"] += 1
        a, b = collections.defaultdict(list), collections.defaultdict(list)
        for f in theirs["findings"]:
            a[key(f)].append(f)
        for f in mine:
            b[key(f)].append(f)
            counts[f["code"]][f["severity"]] += 1
        for k in sorted({*a, *b}, key=str):
            # The gravest first, and what a failed sensor leaves after what stands with it.
            a[k].sort(key=GRAVEST)
            b[k].sort(key=GRAVEST)
            if len(a[k]) != len(b[k]):
                off.append((f"{k[0]}: library {len(a[k])}, here {len(b[k])}", f"{where}: {k[1]} {[(f['value'], f['severity']) for f in a[k] + b[k]]}"))
                continue
            for f, g in zip(a[k], b[k]):
                held += 1
                if (f["severity"], f["notKnown"]) != (g["severity"], g["notKnown"]):
                    off.append((f"{k[0]}: library {f['severity']}, here {g['severity']}", f"{where}: {k[1]} {f['value']} {g['value']}"))
                if (f["value"] is None) != (g["value"] is None):
                    off.append((f"{k[0]}: value", f"{where}: {k[1]} library {f['value']}, here {g['value']}"))
                elif f["value"] is not None:
                    counts[k[0]]["values"] += 1
                    # Of what it is a share of, or of its limit, so that a value near zero is not held to its own digits.
                    scale = max(abs(g["value"]), abs(f["limit"] or 0), 1 if k[0] in SHARES else 0)
                    if abs(f["value"] - g["value"]) > g.get("within", TOLERANCE * scale):
                        off.append((f"{k[0]}: value", f"{where}: {k[1]} library {f['value']}, here {g['value']}"))
    report(points, held, verdicts, refused, counts, off, alone)
    return 1 if off else 0


def report(points, held, verdicts, refused, counts, off, alone):
    print("# Findings and verdicts against an independent model\n")
    print("Made by `systems_conclude.py`; how, its head says.\n")
    print("| code | points with it | points without | notes | warnings | dangers | values |\n|---|---|---|---|---|---|---|")
    for code, row in sorted(counts.items()):
        print(f"| {code} | {row['points']} | {points - row['points']} | {row['Note']} | {row['Warning']} | {row['Danger']} | {row['values']} |")
    print("\n| verdict | points |\n|---|---|")
    for kind, count in sorted(verdicts.items()):
        print(f"| {kind} | {count} |")
    print("\n| no state in either, because | points |\n|---|---|")
    for code, count in sorted(refused.items()):
        print(f"| {code} | {count} |")
    print(f"\n{points} points, {held} findings, {len(off)} differences.")
    if alone:
        print(f"\nLeft out are {len(alone)} points that only one of the two has a state for: {'; '.join(alone)}.")
    kinds = collections.Counter(kind for kind, _ in off)
    shown = collections.Counter()
    for kind, where in off:
        shown[kind] += 1
        if shown[kind] <= 6:
            print(f"\n- {kind} ({kinds[kind]} such): {where}")


if __name__ == "__main__":
    sys.exit(__doc__ if len(sys.argv) != 2 else compare(sys.argv[1]))
