"""How much more a loss costs when its flow comes in pulses, counted from the edges of the pulses and by no formula.

    python3 tests/oracle/pulsing.py [patterns] [seed]

Standard library only. A line loses pressure by the square of its flow. Its flow is the sum of pulses. The first part counts
equal injectors in evenly staggered groups, the second tries to break the bound: random flows, open shares, phases, and shapes
that never rise above static flow, against the same masses all at once at static flow. What came out: docs/guide/studies.md.
"""

import random
import sys


def factors(pieces, period):
    """Means of the flow squared and cubed over powers of the mean; pieces are (start, length, flow), which may wrap."""
    edges = {0.0, period}
    spans = []
    for start, length, flow in pieces:
        start %= period
        end = start + length
        for low, high in [(start, min(end, period)), (0.0, end - period)]:
            if high > low:
                spans.append((low, high, flow))
                edges.update((low, high))
    marks = sorted(edges)
    one = two = three = 0.0
    for low, high in zip(marks, marks[1:]):
        middle = (low + high) / 2
        flow = sum(f for a, b, f in spans if a <= middle < b)
        one += flow * (high - low)
        two += flow**2 * (high - low)
        three += flow**3 * (high - low)
    mean = one / period
    return two / period / mean**2, three / period / mean**3


def staggered(injectors, groups, share):
    return factors([((i % groups) / groups, share, 1.0) for i in range(injectors)], 1.0)


def table():
    print("four equal injectors: mean over time, mean as fuel meets it")
    print("open share | all at once | two groups | four in turn")
    for percent in (5, 10, 25, 40, 50, 60, 75, 80, 90, 100):
        cells = []
        for groups in (1, 2, 4):
            time, flow = staggered(4, groups, percent / 100)
            cells.append(f"{time:.3f}, {flow:.3f}")
        print(f"{percent} % | " + " | ".join(cells))


def shape(dice, flow, share):
    """A pulse of the same mass that never flows more than static: a few steps, one after another."""
    steps = [dice.uniform(0.05, 1.0) for _ in range(dice.randint(1, 4))]
    parts = [dice.random() + 0.01 for _ in steps]
    whole = sum(parts)
    lengths = [share * p / whole / s for p, s in zip(parts, steps)]
    if sum(lengths) > 1:
        return [(0.0, share, flow)]
    at, pieces = 0.0, []
    for step, length in zip(steps, lengths):
        pieces.append((at, length, flow * step))
        at += length
    return pieces


def bound(patterns, seed):
    dice = random.Random(seed)
    worst_time = worst_flow = 0.0
    for _ in range(patterns):
        count = dice.randint(1, 8)
        flows = [dice.uniform(0.3, 2.0) for _ in range(count)]
        shares = [dice.uniform(0.01, 1.0) for _ in range(count)]
        # Half of the patterns lie near the bound, where a mistake would show.
        spread = dice.choice((1.0, 0.02))
        pieces = []
        for flow, share in zip(flows, shares):
            phase = spread * dice.random()
            own = shape(dice, flow, share) if dice.random() < spread else [(0.0, share, flow)]
            pieces += [(phase + start, length, height) for start, length, height in own]
        time, flow = factors(pieces, 1.0)
        most_time, most_flow = factors([(0.0, s, f) for f, s in zip(flows, shares)], 1.0)
        worst_time = max(worst_time, time / most_time)
        worst_flow = max(worst_flow, flow / most_flow)
    print(f"{patterns} random patterns, seed {seed}: at most {worst_time:.9f} and {worst_flow:.9f} of all at once")
    return max(worst_time, worst_flow) <= 1 + 1e-9


if __name__ == "__main__":
    table()
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 20000
    sys.exit(0 if bound(count, int(sys.argv[2]) if len(sys.argv) > 2 else 1) else 1)
