using FuelMath.Bench;

namespace FuelMath.Tests.Bench;

/// <summary>The search for a placement and where it starts, against all placements of small sets.</summary>
public sealed class PlacementSearchTests
{
    private const int Unlimited = 1_000_000;

    private static readonly Case[] Cases = [.. Enumerable.Range(0, 150).Select(seed => new Case(seed))];

    /// <summary>
    /// None of all placements is better, and the bound says so; what the search calls the imbalance is the worst over the points of
    /// (largest - smallest) / mean.
    /// </summary>
    [Fact]
    public void Run_OnAnyCase_FindsTheBestOfAll() =>
        Assert.All(
            Cases.Where(c => c.Placements.Length > 0),
            given =>
            {
                PlacementSearch search = given.Search(Unlimited);
                search.Run();

                double best = given.Placements.Min(given.Imbalance);
                Close.WithinOf(1, 1e-11, best, search.BestValue);
                Assert.Contains(given.Placements, p => p.SequenceEqual(search.Best));
                Close.WithinOf(1, 1e-13, given.Imbalance(search.Best), search.BestValue);
                Assert.Equal(search.BestValue, search.LowerBound);
                Assert.All(
                    given.Placements.Take(20),
                    p => Close.WithinOf(1, 1e-13, given.Imbalance(p), search.Value(p))
                );
            }
        );

    /// <summary>
    /// A search may take as many steps as it needs, and no more; with one less it stops, never says that it knows, and its bound lies
    /// below every placement.
    /// </summary>
    [Fact]
    public void Run_WithJustTheStepsItNeeds_Proves() =>
        Assert.All(
            Cases.Where(c => c.Placements.Length > 0),
            given =>
            {
                PlacementSearch whole = given.Search(Unlimited);
                whole.Run();
                if (whole.Steps == 0 || whole.BestValue == 0)
                {
                    // Nothing lies below zero, searched or not.
                    return;
                }

                PlacementSearch just = given.Search(whole.Steps);
                just.Run();
                Assert.Equal(
                    (whole.Steps, whole.BestValue, whole.BestValue),
                    (just.Steps, just.BestValue, just.LowerBound)
                );

                PlacementSearch less = given.Search(whole.Steps - 1);
                less.Run();
                Assert.Equal(whole.Steps - 1, less.Steps);
                Assert.True(less.LowerBound < less.BestValue);
                Assert.True(less.LowerBound <= whole.BestValue);
                Assert.True(less.BestValue >= whole.BestValue);
            }
        );

    /// <summary>
    /// Without a step to take nothing is known but that an imbalance is not negative; after that the bound is the share of the first
    /// imbalance that was searched in vain: a quarter, a half, three quarters, nine tenths.
    /// </summary>
    [Fact]
    public void LowerBound_OfAStoppedSearch_IsTheLastTargetInVain()
    {
        int[] met = new int[5];
        foreach (Case given in Cases.Where(c => c.Placements.Length > 0))
        {
            PlacementSearch whole = given.Search(Unlimited);
            double start = whole.BestValue;
            whole.Run();
            if (start == 0)
            {
                continue;
            }

            for (int steps = 1; steps < whole.Steps; steps++)
            {
                PlacementSearch stopped = given.Search(steps);
                stopped.Run();
                double share = stopped.LowerBound / start;
                int target = Array.FindIndex([0, 0.25, 0.5, 0.75, 0.9], t => Math.Abs(share - t) < 1e-12);
                // An improvement on the way takes the place of the target.
                Assert.True(target >= 0 || stopped.BestValue < start, $"{share} after {steps} steps");
                if (target >= 0)
                {
                    met[target]++;
                }
            }
        }

        Assert.All(met, count => Assert.True(count > 0, string.Join(", ", met)));
    }

    /// <summary>
    /// A start is found wherever there is a placement at all; the order given is kept where it is allowed, and is known to be.
    /// </summary>
    [Fact]
    public void Start_OnAnyCase_IsAPlacement() =>
        Assert.All(
            Cases,
            given =>
            {
                int[]? start = PlacementStart.Find(given.Allowed, given.Chambers);
                int[] order = [.. Enumerable.Range(0, given.Seats)];
                bool isAllowed = given.Placements.Any(p => p.SequenceEqual(order));

                Assert.Equal(isAllowed, PlacementStart.IsGivenAllowed(given.Allowed, given.Chambers));
                Assert.Equal(given.Placements.Length == 0, start is null);
                if (start is not null)
                {
                    Assert.Contains(given.Placements, p => p.SequenceEqual(start));
                }

                if (isAllowed)
                {
                    Assert.Equal(order, start);
                }
            }
        );

    /// <summary>Improved as long as an exchange of two, or of one with a spare one, helps: at the end none does.</summary>
    [Fact]
    public void Improve_OnAnyCase_LeavesNoExchangeThatHelps() =>
        Assert.All(
            Cases.Where(c => c.Placements.Length > 0),
            given =>
            {
                int[] first = given.Placements[^1];
                int[] placed = [.. first];
                PlacementStart.Improve(placed, given.Allowed, given.Imbalance);
                double reached = given.Imbalance(placed);

                Assert.Contains(given.Placements, p => p.SequenceEqual(placed));
                Assert.True(reached <= given.Imbalance(first));
                Assert.All(
                    given.Placements.Where(p => IsExchange(p, placed)),
                    other => Assert.True(given.Imbalance(other) >= reached * (1 - 1e-9))
                );
            }
        );

    /// <summary>By hand: 1 and 4 against 2 and 3 are even, and so is each with the spare 5 left out.</summary>
    [Fact]
    public void Improve_ByHand_ExchangesAlsoWithASpareOne()
    {
        double[] flows = [1, 3, 2, 4, 100];
        int[] seats = [0, 2, 1, 4];
        bool[,] all =
        {
            { true, true, true, true, true },
            { true, true, true, true, true },
        };

        PlacementStart.Improve(seats, all, p => Math.Abs(flows[p[0]] + flows[p[1]] - flows[p[2]] - flows[p[3]]));

        Assert.Equal(5, flows[seats[0]] + flows[seats[1]]);
        Assert.Equal(5, flows[seats[2]] + flows[seats[3]]);
    }

    /// <summary>What differs is two seats that exchanged their injectors, or one whose injector is a spare one.</summary>
    private static bool IsExchange(int[] one, int[] other)
    {
        int[] differ = [.. Enumerable.Range(0, one.Length).Where(i => one[i] != other[i])];
        return differ.Length == 1
            || (differ.Length == 2 && one[differ[0]] == other[differ[1]] && one[differ[1]] == other[differ[0]]);
    }

    /// <summary>Two or three chambers of one or two stages, in numbers that are often alike.</summary>
    private sealed class Case
    {
        private readonly double[,,] mass;
        private readonly double[] air;
        private readonly int points;
        private readonly int stages;

        internal Case(int seed)
        {
            var random = new Random(seed);
            (Chambers, stages, points) = (random.Next(2, 4), random.Next(1, 3), random.Next(1, 3));
            int injectors = Seats + random.Next(0, 2);
            mass = new double[points, stages, injectors];
            Allowed = new bool[stages, injectors];
            int kinds = random.Next(0, 2) == 0 ? 4 : 64;
            bool restricted = random.Next(0, 3) == 0;
            for (int i = 0; i < injectors; i++)
            {
                int kind = random.Next(0, kinds);
                for (int s = 0; s < stages; s++)
                {
                    Allowed[s, i] = !restricted || random.Next(0, 3) > 0;
                    for (int k = 0; k < points; k++)
                    {
                        mass[k, s, i] = 4 + (((kind * (1 + (2 * k) + (4 * s))) % 64) / 64.0);
                    }
                }
            }

            // Mean one, in halves of hundredths.
            air =
                random.Next(0, 2) == 0 ? [.. Enumerable.Repeat(1.0, Chambers)]
                : Chambers == 2 ? [0.96875, 1.03125]
                : [0.96875, 1, 1.03125];
            Placements = [.. Fill([])];
        }

        internal int Chambers { get; }

        internal int Seats => Chambers * stages;

        internal bool[,] Allowed { get; }

        /// <summary>Every way to fill all seats.</summary>
        internal int[][] Placements { get; }

        internal PlacementSearch Search(int mostSteps) =>
            new(
                new PlacementGroups(mass, Allowed, "candidates"),
                air,
                PlacementStart.Find(Allowed, Chambers)!,
                mostSteps
            );

        internal double Imbalance(int[] placed) =>
            Enumerable
                .Range(0, points)
                .Max(k =>
                {
                    double[] fuel =
                    [
                        .. air.Select(
                            (_, c) => Enumerable.Range(0, stages).Sum(s => mass[k, s, placed[(c * stages) + s]])
                        ),
                    ];
                    double[] each = [.. fuel.Zip(air, (f, a) => f / a)];
                    return (each.Max() - each.Min()) / fuel.Average();
                });

        private IEnumerable<int[]> Fill(int[] begun) =>
            begun.Length == Seats
                ? [begun]
                : Enumerable
                    .Range(0, mass.GetLength(2))
                    .Where(i => Allowed[begun.Length % stages, i] && !begun.Contains(i))
                    .SelectMany(i => Fill([.. begun, i]));
    }
}
