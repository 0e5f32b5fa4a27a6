using FuelMath.Bench;

namespace FuelMath.Tests.Bench;

/// <summary>The kernels of the search for a placement, each against its definition, walked plainly.</summary>
public sealed class PlacementKernelTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 40)];

    /// <summary>A group is an injector for each stage, each another one, that may go there; its fuel is what they deliver together.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Groups_OfAnyInjectors_AreAllWaysToFillAChamber(int seed)
    {
        Case given = new(seed);
        PlacementGroups groups = given.Groups();
        int[][] expected = [.. given.Ways()];

        Assert.Equal(expected.Length, groups.Count);
        Assert.Equal((given.Points, given.Stages, given.Injectors), (groups.Points, groups.Stages, groups.Injectors));
        for (int g = 0; g < groups.Count; g++)
        {
            int[] members = groups.Members(g).ToArray();
            Assert.Equal(expected[g], members);
            Assert.Equal(members.Min(), groups.Least(g));
            Assert.Equal(!members.Any(i => given.Used[i]), groups.IsFree(g, given.Used));
            for (int i = 0; i < given.Injectors; i++)
            {
                Assert.Equal(members.Contains(i), groups.Holds(g, i));
            }

            for (int k = 0; k < given.Points; k++)
            {
                Close.WithinOf(1, 1e-15, members.Select((i, s) => given.Mass[k, s, i]).Sum(), groups.Fuel(g, k));
            }
        }
    }

    /// <summary>
    /// Of groups with injectors that deliver alike, stage by stage, only the first in the order of numbers has no twin before it;
    /// one whose injector is in use elsewhere is no twin.
    /// </summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void HasTwinBefore_OfAnyGroup_IsThatAnEarlierOneIsAlike(int seed)
    {
        Case given = new(seed);
        PlacementGroups groups = given.Groups();
        int[][] ways = [.. given.Ways()];
        for (int g = 0; g < ways.Length; g++)
        {
            if (!groups.IsFree(g, given.Used))
            {
                continue;
            }

            // Ways come in the order of their numbers, so that those before are earlier.
            bool expected = ways.Take(g)
                .Any(w =>
                    !w.Any(i => given.Used[i]) && w.Zip(ways[g]).All(pair => given.Alike(pair.First, pair.Second))
                );

            Assert.Equal(expected, groups.HasTwinBefore(g, given.Used));
        }
    }

    /// <summary>
    /// The least and the most fuel: of each stage by itself, the injectors left that deliver least and most; infinite where too few may
    /// go there.
    /// </summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Range_WithInjectorsToSpare_IsThatOfEachStage(int seed)
    {
        Case given = new(seed);
        PlacementGroups groups = given.Groups();
        for (int chambers = 0; chambers <= given.Injectors; chambers++)
        {
            for (int k = 0; k < given.Points; k++)
            {
                (double least, double most) = (0, 0);
                for (int s = 0; s < given.Stages; s++)
                {
                    double[] left =
                    [
                        .. Enumerable
                            .Range(0, given.Injectors)
                            .Where(i => given.Allowed[s, i] && !given.Used[i])
                            .Select(i => given.Mass[k, s, i])
                            .Order(),
                    ];
                    bool enough = left.Length >= chambers;
                    least += enough ? left.Take(chambers).Sum() : double.PositiveInfinity;
                    most += enough ? left.TakeLast(chambers).Sum() : double.PositiveInfinity;
                }

                (double From, double To) found = groups.Range(k, chambers, given.Used, false);
                // Quarters add up without rounding.
                Assert.Equal((least, most), found);
            }
        }
    }

    /// <summary>Where every injector left must go, to either of two stages: the least and the most of all ways to split them.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Range_WhereAllMustGo_IsThatOfAllSplits(int seed)
    {
        var random = new Random(seed);
        int chambers = random.Next(1, 4);
        double[,,] mass = new double[2, 2, 8];
        Fill(mass, () => 1 + random.NextDouble());
        bool[,] allowed = new bool[2, 8];
        Fill(allowed, () => true);
        bool[] used = [.. Enumerable.Range(0, 8).Select(_ => false)];
        foreach (int i in Enumerable.Range(0, 8).OrderBy(_ => random.Next()).Take(8 - (2 * chambers)))
        {
            used[i] = true;
        }

        int[] left = [.. Enumerable.Range(0, 8).Where(i => !used[i])];
        var groups = new PlacementGroups(mass, allowed, "candidates");
        for (int k = 0; k < 2; k++)
        {
            int point = k;
            double[] splits =
            [
                .. Enumerable
                    .Range(0, 1 << left.Length)
                    .Where(bits => System.Numerics.BitOperations.PopCount((uint)bits) == chambers)
                    .Select(bits => left.Select((i, n) => mass[point, (bits >> n) & 1 ^ 1, i]).Sum()),
            ];

            (double least, double most) = groups.Range(k, chambers, used, true);
            Close.WithinOf(1, 1e-14, splits.Min(), least);
            Close.WithinOf(1, 1e-14, splits.Max(), most);
        }
    }

    /// <summary>With one stage, or where not every injector may go to both, all that must go is no more than what each stage can get.</summary>
    [Fact]
    public void Range_WhereAllMustGoButNotEverywhere_IsThatOfEachStage()
    {
        double[,,] mass =
        {
            {
                { 1, 2, 4, 8 },
                { 10, 20, 40, 80 },
            },
        };
        bool[,] allowed =
        {
            { true, true, true, true },
            { true, true, true, false },
        };
        var groups = new PlacementGroups(mass, allowed, "candidates");

        // The first stage from 1 + 2 to 4 + 8; the second, without the last injector, from 10 + 20 to 20 + 40.
        Assert.Equal((33, 72), groups.Range(0, 2, new bool[4], true));
    }

    /// <summary>Empty or not, alike or not: chambers are filled and emptied at random, and each question is asked of a plain list.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Chambers_FilledAndEmptied_AreWhatAListSays(int seed)
    {
        var random = new Random(seed);
        double[] air = [.. Enumerable.Range(0, 6).Select(_ => 1 + (0.1 * random.Next(0, 3)))];
        var chambers = new PlacementChambers(air);
        int[] first = [.. Enumerable.Repeat(-1, 6)];
        bool[] filled = new bool[6];
        Assert.Equal(6, chambers.Count);
        for (int step = 0; step < 40; step++)
        {
            int at = random.Next(0, 6);
            filled[at] = !filled[at];
            if (filled[at])
            {
                first[at] = random.Next(0, 12);
                chambers.Fill(at, first[at]);
            }
            else
            {
                chambers.Empty(at);
            }

            for (int c = 0; c < 6; c++)
            {
                int here = c;
                int[] alike = [.. Enumerable.Range(0, 6).Where(o => air[o] == air[here] && o != here)];
                Assert.Equal(air[c], chambers.Air(c));
                Assert.Equal(filled[c], chambers.IsFilled(c));
                Assert.Equal(!filled[c] && !alike.Any(o => o < here && !filled[o]), chambers.IsFirstAlike(c));
                Assert.Equal(alike.Any(o => !filled[o]), chambers.HasAlike(c));
                if (!alike.Any(o => o < here && !filled[o]))
                {
                    Assert.Equal(
                        alike.Where(o => o < here).Select(o => first[o]).LastOrDefault(-1),
                        chambers.LastAlike(c)
                    );
                }
            }
        }
    }

    private static void Fill<T>(T[,] of, Func<T> value)
    {
        for (int i = 0; i < of.GetLength(0); i++)
        {
            for (int j = 0; j < of.GetLength(1); j++)
            {
                of[i, j] = value();
            }
        }
    }

    private static void Fill<T>(T[,,] of, Func<T> value)
    {
        for (int i = 0; i < of.GetLength(0); i++)
        {
            for (int j = 0; j < of.GetLength(1); j++)
            {
                for (int k = 0; k < of.GetLength(2); k++)
                {
                    of[i, j, k] = value();
                }
            }
        }
    }

    /// <summary>Few injectors, of which some deliver alike at all points or at some, some may go to some stages only, and some are in use.</summary>
    private sealed class Case
    {
        internal Case(int seed)
        {
            var random = new Random(seed);
            (Points, Stages, Injectors) = (random.Next(1, 4), random.Next(1, 4), random.Next(3, 7));
            Mass = new double[Points, Stages, Injectors];
            Allowed = new bool[Stages, Injectors];
            Used = [.. Enumerable.Range(0, Injectors).Select(_ => random.Next(0, 4) == 0)];
            double[,,] kinds = new double[Points, Stages, 2];
            Fill(kinds, () => 1 + (0.25 * random.Next(0, 2)));
            bool restricted = random.Next(0, 2) == 0;
            for (int i = 0; i < Injectors; i++)
            {
                int kind = random.Next(0, 2);
                for (int s = 0; s < Stages; s++)
                {
                    Allowed[s, i] = !restricted || random.Next(0, 4) > 0;
                    for (int k = 0; k < Points; k++)
                    {
                        Mass[k, s, i] = kinds[k, s, kind];
                    }
                }
            }
        }

        internal int Points { get; }

        internal int Stages { get; }

        internal int Injectors { get; }

        internal double[,,] Mass { get; }

        internal bool[,] Allowed { get; }

        internal bool[] Used { get; }

        internal PlacementGroups Groups() => new(Mass, Allowed, "candidates");

        /// <summary>Every way to fill a chamber, in the order of the numbers.</summary>
        internal IEnumerable<int[]> Ways() => Ways([]);

        internal bool Alike(int one, int other) =>
            Enumerable
                .Range(0, Stages)
                .All(s =>
                    Allowed[s, one] == Allowed[s, other]
                    && Enumerable.Range(0, Points).All(k => Mass[k, s, one] == Mass[k, s, other])
                );

        private IEnumerable<int[]> Ways(int[] begun) =>
            begun.Length == Stages
                ? [begun]
                : Enumerable
                    .Range(0, Injectors)
                    .Where(i => Allowed[begun.Length, i] && !begun.Contains(i))
                    .SelectMany(i => Ways([.. begun, i]));
    }
}
