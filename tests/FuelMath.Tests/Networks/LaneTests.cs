using FuelMath.Formulas;

namespace FuelMath.Tests.Networks;

/// <summary>One network, read in one number, in lanes, and in wide lanes.</summary>
public sealed class LaneTests
{
    private static readonly NetworkPlan Plan = TwoRails.Network.Plan;

    /// <summary>Manifold pressure (Pa) and commanded flow of each injector group (m3/s), from fuel cut to held open.</summary>
    private static readonly (double Manifold, double Commanded)[] Points =
    [
        (-60e3, 0),
        (-60e3, 5e-8),
        (0, 1e-6),
        (50e3, 4e-6),
        (100e3, 8e-6),
        (150e3, 2e-5),
        (20e3, 2.2e-6),
        (0, 1e-4),
    ];

    [Fact]
    public void Solve_InWideLanes_EqualsEachPointSolvedAmongItsOwnKind()
    {
        double[][] together = InLanes<WideLane>(Points);

        for (int i = 0; i < Points.Length; i++)
        {
            double[][] alone = InLanes<WideLane>([.. Enumerable.Repeat(Points[i], Points.Length)]);
            Assert.Equal(alone[0], together[i]);
        }
    }

    [Fact]
    public void Solve_InLanesOfEitherWidth_GivesTheSameBits() =>
        Assert.Equal(InLanes<WideLane>(Points), InLanes<Lane>(Points));

    /// <summary>The lanes' logarithm may differ in the last place from that of one number, and nothing else does.</summary>
    [Fact]
    public void Solve_InLanes_EqualsOneNumber()
    {
        double[][] lanes = InLanes<Lane>(Points);
        for (int i = 0; i < Points.Length; i++)
        {
            double[] one = InReal(Points[i], warm: false);
            Assert.All(
                one.Zip(lanes[i]),
                pair => Close.WithinOf(Scale(pair.First, one), 1e-11, pair.First, pair.Second)
            );
        }
    }

    /// <summary>A step below 1e-7 of the greatest flow is the last one, and Newton squares it.</summary>
    [Fact]
    public void Solve_Warm_EqualsCold()
    {
        for (int i = 0; i < Points.Length; i++)
        {
            double[] cold = InReal(Points[i], warm: false);
            double[] warm = InReal(Points[i], warm: true);
            Assert.All(cold.Zip(warm), pair => Close.WithinOf(Scale(pair.First, cold), 1e-9, pair.First, pair.Second));
        }
    }

    [Fact]
    public void Solve_WarmInLanes_EqualsCold()
    {
        using NetworkWork<Lane> work = Plan.Rent<Lane>();
        for (int first = 0; first + Lane.Count <= Points.Length; first += Lane.Count)
        {
            Set(work, Points.AsSpan(first, Lane.Count));
            Assert.True(Lane.All(work.Solve(warm: first > 0)));
            double[][] warm = Read(work);
            for (int i = 0; i < Lane.Count; i++)
            {
                double[] cold = InReal(Points[first + i], warm: false);
                Assert.All(
                    cold.Zip(warm[i]),
                    pair => Close.WithinOf(Scale(pair.First, cold), 1e-9, pair.First, pair.Second)
                );
            }
        }
    }

    /// <summary>Pressures, then flows, of each point.</summary>
    private static double[][] InLanes<T>(ReadOnlySpan<(double, double)> points)
        where T : struct, ILane<T>
    {
        List<double[]> results = [];
        using NetworkWork<T> work = Plan.Rent<T>();
        for (int first = 0; first < points.Length; first += T.Count)
        {
            Set(work, points.Slice(first, T.Count));
            Assert.True(T.All(work.Solve(warm: false) & work.Sound()));
            results.AddRange(Read(work));
        }

        return [.. results];
    }

    private static void Set<T>(NetworkWork<T> work, ReadOnlySpan<(double Manifold, double Commanded)> points)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[2 * T.Count];
        for (int i = 0; i < T.Count; i++)
        {
            (numbers[i], numbers[T.Count + i]) = points[i];
        }

        T manifold = T.Load(numbers);
        work.SetPressure(Plan.Node("manifold"), manifold);
        work.Set(Plan.Link("regulator"), [manifold]);
        foreach (string injector in TwoRails.Injectors)
        {
            work.Set(Plan.Link(injector), [T.Of(1.8e-8), T.Load(numbers[T.Count..])]);
        }
    }

    private static double[][] Read<T>(NetworkWork<T> work)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        var results = new double[T.Count][];
        for (int i = 0; i < T.Count; i++)
        {
            results[i] = new double[Plan.Unknown + Plan.Links.Length];
        }

        for (int n = 0; n < results[0].Length; n++)
        {
            T.Store(n < Plan.Unknown ? work.PressureAt(n) : work.Flow[n - Plan.Unknown], numbers);
            for (int i = 0; i < T.Count; i++)
            {
                results[i][n] = numbers[i];
            }
        }

        return results;
    }

    private static double[] InReal((double Manifold, double Commanded) point, bool warm)
    {
        using NetworkWork<Real> work = Plan.Rent<Real>();
        if (warm)
        {
            Assert.True(Real.All(work.Solve(warm: false)));
        }

        work.SetPressure(Plan.Node("manifold"), new Real(point.Manifold));
        work.Set(Plan.Link("regulator"), [new Real(point.Manifold)]);
        foreach (string injector in TwoRails.Injectors)
        {
            work.Set(Plan.Link(injector), [new Real(1.8e-8), new Real(point.Commanded)]);
        }

        Assert.True(Real.All(work.Solve(warm) & work.Sound()));
        return
        [
            .. Enumerable.Range(0, Plan.Unknown).Select(i => work.PressureAt(i).Value),
            .. work.Flow.Select(q => q.Value),
        ];
    }

    /// <summary>Pressures are compared by the greatest pressure, flows by the greatest flow.</summary>
    private static double Scale(double value, double[] all) =>
        all.Take(Plan.Unknown).Contains(value)
            ? all.Take(Plan.Unknown).Max(Math.Abs)
            : all.Skip(Plan.Unknown).Max(Math.Abs);
}
