using FuelMath.Bench;

namespace FuelMath.Tests.Bench;

/// <summary>
/// What a step of the search leaves and tries, against its definition: small cases in numbers that binary fractions hold, so that
/// values often lie just at an end.
/// </summary>
public sealed class PlacementChoiceTests
{
    private const int Chambers = 3;

    private static readonly Case[] Cases = [.. Enumerable.Range(0, 300).Select(seed => new Case(seed))];

    /// <summary>A placement whose chambers all lie within one window, in the range given, is never excluded.</summary>
    [Fact]
    public void Left_OfAnyStep_HoldsEveryPlacementWithinAWindow() => Assert.All(Cases, HoldsEveryPlacement);

    private static void HoldsEveryPlacement(Case given)
    {
        (PlacementChoice choice, (double From, double To)[] reach) = given.Choose(given.Reach);

        foreach (int[] placement in given.Completions().Where(p => given.LiesInOneWindow(p)))
        {
            Assert.True(choice.IsPossible);
            Assert.All(placement.Where(g => g >= 0), g => Assert.Contains(g, choice.Left));
            for (int k = 0; k < given.Points; k++)
            {
                Assert.All(given.Values(placement, k), v => Assert.InRange(v, reach[k].From, reach[k].To));
            }
        }
    }

    /// <summary>
    /// Once a further look changes nothing: the groups left are those that fit an empty chamber, each empty chamber has one, and so has
    /// each injector that must go; the range ends no farther than a window's width from what each of them can reach.
    /// </summary>
    [Fact]
    public void Left_OnceSettled_IsAllThatFits() => Assert.All(Cases, IsAllThatFits);

    private static void IsAllThatFits(Case given)
    {
        (PlacementChoice choice, (double From, double To)[] reach) = given.Choose(given.Reach);
        if (!choice.IsPossible || !given.IsSettled(reach))
        {
            return;
        }

        int[] empty = [.. Enumerable.Range(0, Chambers).Where(c => !given.IsFilled(c))];
        int[] free = [.. given.Free().Where(g => empty.Any(c => given.Fits(g, c, reach)))];
        Assert.Equal(free, choice.Left);
        for (int k = 0; k < given.Points; k++)
        {
            List<double[]> each = [.. empty.Select(c => given.ReachableIn(c, free, reach, k))];
            if (given.AllMustGo)
            {
                each.AddRange(given.Unused().Select(i => given.ReachableWith(i, empty, free, reach, k)));
            }

            Assert.All(each, values => Assert.NotEmpty(values));
            (double least, double most) = (each.Min(v => v.Max()), each.Max(v => v.Min()));
            (double from, double to) = reach[k];
            Assert.True(from <= to);
            Assert.InRange(from, most - given.Widths[k], least);
            Assert.InRange(to, most, least + given.Widths[k]);
        }
    }

    /// <summary>Tried next is what has the fewest groups left, the first of several; those nearest to the middle of the range first.</summary>
    [Fact]
    public void Pick_OnceSettled_TakesTheFewest() => Assert.All(Cases, TakesTheFewest);

    private static void TakesTheFewest(Case given)
    {
        (PlacementChoice choice, (double From, double To)[] reach) = given.Choose(given.Reach);
        if (!choice.IsPossible || !given.IsSettled(reach))
        {
            return;
        }

        int[] first = [.. Enumerable.Range(0, Chambers).Where(given.IsFirstAlike)];
        int[] single = [.. first.Where(c => !given.AllMustGo || !given.HasAlike(c))];
        int[] unused = given.AllMustGo ? given.Unused() : [];
        (int Chamber, int Group)[] ways =
        [
            .. from c in first from g in choice.Left where given.Fits(g, c, reach) select (c, g),
        ];
        int[] counts = [.. single.Select(c => ways.Count(w => w.Chamber == c))];
        int[] goes = [.. unused.Select(i => ways.Count(w => given.Holds(w.Group, i)))];
        bool byInjector = goes.Length > 0 && (counts.Length == 0 || goes.Min() < counts.Min());
        IEnumerable<(int Chamber, int Group)> expected = byInjector
            ? ways.Where(w => given.Holds(w.Group, unused[Array.IndexOf(goes, goes.Min())]))
            : ways.Where(w => w.Chamber == single[Array.IndexOf(counts, counts.Min())]);
        double middle = (reach[0].From + reach[0].To) / 2;

        Assert.Equal(
            expected
                .Where(w => !given.HasTwinBefore(w.Group))
                .Where(w => given.AllMustGo || given.Least(w.Group) > given.LastAlike(w.Chamber))
                .OrderBy(w => Math.Abs(given.Value(w.Group, w.Chamber, 0) - middle)),
            choice.Pick()
        );
    }

    /// <summary>The two tests above look at most cases, with and without injectors to spare.</summary>
    [Fact]
    public void Cases_MostAreSettled()
    {
        Case[] settled =
        [
            .. Cases.Where(c =>
            {
                (PlacementChoice choice, (double, double)[] reach) = c.Choose(c.Reach);
                return choice.IsPossible && c.IsSettled(reach);
            }),
        ];

        Assert.True(settled.Count(c => c.AllMustGo) > 40, $"{settled.Count(c => c.AllMustGo)} where all must go");
        Assert.True(settled.Count(c => !c.AllMustGo) > 40, $"{settled.Count(c => !c.AllMustGo)} with some to spare");
        Assert.True(Cases.Count(c => c.Completions().Any(c.LiesInOneWindow)) > 40);
    }

    /// <summary>Three chambers, of which some are filled, of one stage or two, with an injector to spare or none.</summary>
    private sealed class Case
    {
        private readonly int stages;
        private readonly double[] air;
        private readonly int[] first = [.. Enumerable.Repeat(-1, Chambers)];
        private readonly bool[] used;
        private readonly PlacementGroups groups;
        private readonly PlacementChambers chambers;
        private readonly double[] filledLow;
        private readonly double[] filledHigh;

        internal Case(int seed)
        {
            var random = new Random(seed);
            stages = random.Next(0, 4) == 0 ? 1 : 2;
            int injectors = (Chambers * stages) + random.Next(0, 2);
            AllMustGo = injectors == Chambers * stages;
            Points = random.Next(1, 3);
            double[,,] mass = new double[Points, stages, injectors];
            for (int i = 0; i < injectors; i++)
            {
                int kind = random.Next(0, 8);
                for (int k = 0; k < Points; k++)
                {
                    mass[k, 0, i] = 2 + (kind / 2.0);
                    if (stages == 2)
                    {
                        mass[k, 1, i] = 1 + (((kind * (k + 3)) % 8) / 4.0);
                    }
                }
            }

            bool[,] allowed = new bool[stages, injectors];
            for (int i = 0; i < injectors; i++)
            {
                bool both = random.Next(0, 4) > 0;
                allowed[0, i] = stages == 1 || both || i % 2 == 0;
                if (stages == 2)
                {
                    allowed[1, i] = both || i % 2 == 1;
                }
            }

            air = [.. Enumerable.Range(0, Chambers).Select(_ => random.Next(0, 3) == 0 ? 2.0 : 1.0)];
            groups = new(mass, allowed, "candidates");
            chambers = new(air);
            used = new bool[injectors];
            (filledLow, filledHigh) = (new double[Points], new double[Points]);
            Array.Fill(filledLow, double.PositiveInfinity);
            Array.Fill(filledHigh, double.NegativeInfinity);
            Widths = [.. Enumerable.Range(0, Points).Select(_ => random.Next(2, 16) / 8.0)];
            for (int filled = random.Next(0, 2); filled > 0; filled--)
            {
                int group = random.Next(0, groups.Count);
                int chamber = random.Next(0, Chambers);
                foreach (int i in groups.Members(group))
                {
                    used[i] = true;
                }

                first[chamber] = groups.Least(group);
                chambers.Fill(chamber, first[chamber]);
                for (int k = 0; k < Points; k++)
                {
                    filledLow[k] = filledHigh[k] = groups.Fuel(group, k) / air[chamber];
                }
            }

            int around = random.Next(0, groups.Count);
            double by = air[random.Next(0, Chambers)];
            Reach =
            [
                .. Enumerable
                    .Range(0, Points)
                    .Select(k =>
                    {
                        double middle = chambers.IsFilled(0) ? filledLow[k] : groups.Fuel(around, k) / by;
                        double reach = Widths[k] + (random.Next(0, 5) / 8.0);
                        return (middle - reach, middle + reach);
                    }),
            ];
        }

        internal int Points { get; }

        internal bool AllMustGo { get; }

        internal double[] Widths { get; }

        internal (double From, double To)[] Reach { get; }

        internal (PlacementChoice Choice, (double From, double To)[] Reach) Choose((double From, double To)[] given)
        {
            (double, double)[] narrowed = [.. given];
            int[] all = [.. Enumerable.Range(0, groups.Count)];
            return (new(groups, chambers, used, AllMustGo, narrowed, Widths, all), narrowed);
        }

        internal bool IsSettled((double From, double To)[] reach) => Choose(reach).Reach.SequenceEqual(reach);

        internal bool IsFilled(int chamber) => first[chamber] >= 0;

        internal bool HasAlike(int chamber) =>
            Enumerable.Range(0, Chambers).Any(c => c != chamber && !IsFilled(c) && air[c] == air[chamber]);

        internal bool IsFirstAlike(int chamber) =>
            !IsFilled(chamber) && !Enumerable.Range(0, chamber).Any(c => !IsFilled(c) && air[c] == air[chamber]);

        internal int LastAlike(int chamber) =>
            Enumerable.Range(0, chamber).Where(c => air[c] == air[chamber]).Select(c => first[c]).LastOrDefault(-1);

        internal int[] Unused() => [.. Enumerable.Range(0, used.Length).Where(i => !used[i])];

        internal IEnumerable<int> Free() =>
            Enumerable.Range(0, groups.Count).Where(g => !groups.Members(g).ToArray().Any(i => used[i]));

        internal bool Holds(int group, int injector) => groups.Members(group).ToArray().Contains(injector);

        internal int Least(int group) => groups.Members(group).ToArray().Min();

        internal bool HasTwinBefore(int group) => groups.HasTwinBefore(group, used);

        internal double Value(int group, int chamber, int point) => groups.Fuel(group, point) / air[chamber];

        internal bool Fits(int group, int chamber, (double From, double To)[] reach) =>
            Enumerable
                .Range(0, Points)
                .All(k => reach[k].From <= Value(group, chamber, k) && Value(group, chamber, k) <= reach[k].To);

        /// <summary>What an empty chamber can still get at a point.</summary>
        internal double[] ReachableIn(int chamber, int[] free, (double, double)[] reach, int point) =>
            [.. free.Where(g => Fits(g, chamber, reach)).Select(g => Value(g, chamber, point))];

        /// <summary>What a chamber with this injector can still get at a point.</summary>
        internal double[] ReachableWith(int injector, int[] empty, int[] free, (double, double)[] reach, int point) =>
            [
                .. empty.SelectMany(c =>
                    free.Where(g => Holds(g, injector) && Fits(g, c, reach)).Select(g => Value(g, c, point))
                ),
            ];

        /// <summary>Every way to fill the empty chambers: a group for each, none for those that are filled.</summary>
        internal IEnumerable<int[]> Completions() => Completions([]);

        internal IEnumerable<double> Values(int[] placement, int point) =>
            Enumerable.Range(0, Chambers).Where(c => placement[c] >= 0).Select(c => Value(placement[c], c, point));

        internal bool LiesInOneWindow(int[] placement) =>
            Enumerable
                .Range(0, Points)
                .All(k =>
                {
                    double[] values = [.. Values(placement, k)];
                    return values.Max() - values.Min() <= Widths[k]
                        && values.All(v => Reach[k].From <= v && v <= Reach[k].To);
                });

        private IEnumerable<int[]> Completions(int[] begun)
        {
            if (begun.Length == Chambers)
            {
                return [begun];
            }

            if (IsFilled(begun.Length))
            {
                return Completions([.. begun, -1]);
            }

            HashSet<int> taken = [.. begun.Where(g => g >= 0).SelectMany(g => groups.Members(g).ToArray())];
            return Free()
                .Where(g => !groups.Members(g).ToArray().Any(taken.Contains))
                .SelectMany(g => Completions([.. begun, g]));
        }
    }
}
