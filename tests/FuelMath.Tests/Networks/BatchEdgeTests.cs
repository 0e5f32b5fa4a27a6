using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Points and counts of a batch at their ends, rows of numbers, and what a buffer or a state has not got.</summary>
public sealed class BatchEdgeTests
{
    /// <summary>100 L/h of the supply for each 200 kPa, over two parts; points 0 to 4 have 100 to 500 kPa, point 3 asks for too much.</summary>
    private static NetworkBatch Batch { get; } =
        new NetworkBatch(
            Fuel(
                Fixed("supply", 300),
                Fixed("end", 0),
                Junction("middle"),
                Linear("first", "supply", "middle", 100),
                Linear("second", "middle", "end", 100)
            ),
            5
        )
            .WithPressure("supply", Enumerable.Range(1, 5).Select(i => Gauge(100 * i)))
            .WithDraw("middle", Enumerable.Range(0, 5).Select(i => LitersPerHour(i == 3 ? 5000 : 0)));

    private static NetworkBatch.Result Result { get; } = Batch.Solve(null, CancellationToken.None);

    [Theory]
    [InlineData(-1)]
    [InlineData(5)]
    public void Point_OutsideTheBatch_IsRefused(int point)
    {
        string facts = FormattableString.Invariant($"0, 4, {point}");
        NetworkState start = Batch.Network.Solve();
        NetworkBatch.Result warm = Batch.Solve(start, null, CancellationToken.None);

        Words.Refused<ArgumentOutOfRangeException>(nameof(point), facts, () => Batch.StateAt(point));
        Words.Refused<ArgumentOutOfRangeException>(nameof(point), facts, () => Batch.StateAt(point, start));
        Words.Refused<ArgumentOutOfRangeException>(nameof(point), facts, () => Result.RefusalAt(point));
        Words.Refused<ArgumentOutOfRangeException>(nameof(point), facts, () => Result.FlowIn("first", point));
        Words.Refused<ArgumentOutOfRangeException>(nameof(point), facts, () => Result.PressureAt("end", point));
        Words.Refused<ArgumentOutOfRangeException>(nameof(point), facts, () => Result.IterationsAt(point));
        Words.Refused<ArgumentOutOfRangeException>(nameof(point), facts, () => warm.ToState(point));
    }

    /// <summary>The first and the last point are points; one without a state is refused as such, or gives nothing.</summary>
    [Theory]
    [InlineData(0, 50)]
    [InlineData(2, 150)]
    [InlineData(4, 250)]
    public void Point_OfTheBatch_HasItsNumbers(int point, double litersPerHour)
    {
        Assert.Null(Result.RefusalAt(point));
        Assert.True(Result.TryFlowIn("second", point, out VolumeFlow flow));
        Assert.Equal(Result.FlowIn("second", point), flow);
        Close.Within(1e-8, litersPerHour, flow.LitersPerHour);
        Assert.True(Result.TryPressureAt("middle", point, out GaugePressure pressure));
        Close.Within(1e-8, litersPerHour, pressure.AboveAmbient.Kilopascals);
        Assert.Equal(Gauge(100 * (point + 1)), Result.PressureAt("supply", point));
        Assert.Equal(Result.IterationsAt(point), Result.ToState(point).Iterations);
        Assert.Equal(Result.FlowIn("second", point), Result.ToState(point).FlowIn("second"));
        Close.Within(1e-8, litersPerHour, Batch.StateAt(point).LitersPerHourIn("second"));
    }

    [Fact]
    public void Point_WithoutAState_GivesNothing()
    {
        Assert.Equal((4, 5), (Result.SolvedCount, Result.Count));
        Assert.IsType<NoSolutionException>(Result.RefusalAt(3));
        Assert.False(Result.TryFlowIn("second", 3, out VolumeFlow flow));
        Assert.False(Result.TryPressureAt("supply", 3, out GaugePressure pressure));
        Assert.Equal((0, default), (flow.LitersPerHour, pressure));
        Assert.Throws<InvalidOperationException>(() => Result.ToState(3));
        Assert.Equal(
            RefusalCode.StateRefused,
            Refusal.Of(Assert.Throws<InvalidOperationException>(() => Result.IterationsAt(3)))!.Code
        );
    }

    /// <summary>A result from a state solves its points from there again: to the same count of iterations, which is less.</summary>
    [Fact]
    public void ToState_OfAResultFromAState_StartsThere()
    {
        NetworkBatch batch = new NetworkBatch(TwoRails.Network, 3).WithPressure(
            "manifold",
            [Gauge(0), Gauge(1), Gauge(2)]
        );
        NetworkBatch.Result cold = batch.Solve(null, CancellationToken.None);
        NetworkBatch.Result warm = batch.Solve(TwoRails.Network.Solve(), null, CancellationToken.None);

        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(cold.IterationsAt(i), cold.ToState(i).Iterations);
            Assert.Equal(warm.IterationsAt(i), warm.ToState(i).Iterations);
            Assert.InRange(warm.IterationsAt(i), 1, cold.IterationsAt(i) - 1);
        }
    }

    /// <summary>One value a point, and from one to as many points as numbers of its rows fit into an array.</summary>
    [Fact]
    public void Count_OfValuesOrPoints_IsHeld()
    {
        Network network = Batch.Network;
        Words.Refused<ArgumentOutOfRangeException>("count", "0, 1", () => _ = new NetworkBatch(network, 0));
        Words.Refused<ArgumentOutOfRangeException>(
            "count",
            "100000001",
            () => _ = new NetworkBatch(network, 100_000_001)
        );
        Assert.Equal(100_000_000, new NetworkBatch(network, 100_000_000).Count);
        foreach (int count in new[] { 4, 6 })
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(() =>
                Batch.WithPressure("supply", Enumerable.Repeat(Gauge(1), count))
            );
            Assert.Equal(RefusalCode.Count, Refusal.Of(refusal)!.Code);
            Words.Says($"5, {count}", refusal);
        }
    }

    /// <summary>As many numbers as an array may have, 2 147 483 591, over the greater count of lines; 16 are kept free.</summary>
    [Fact]
    public void MostPoints_IsWhatFitsIntoARow()
    {
        Network two = Batch.Network;
        Network three = Fuel(
            Fixed("a", 1),
            Fixed("b", 0),
            Linear("1", "a", "b", 1),
            Linear("2", "a", "b", 1),
            Linear("3", "a", "b", 1)
        );

        Assert.Equal((2_147_483_591 / 2) - 16, BatchNumbers.MostPoints(two.Plan));
        Assert.Equal((2_147_483_591 / 3) - 16, BatchNumbers.MostPoints(three.Plan));
    }

    /// <summary>Rows don't overlap: each number is found where it was put. They lie an odd number of cache lines of 8 apart.</summary>
    [Theory]
    [InlineData(1, 8)]
    [InlineData(7, 8)]
    [InlineData(8, 8)]
    [InlineData(9, 24)]
    [InlineData(16, 24)]
    [InlineData(17, 24)]
    [InlineData(24, 24)]
    [InlineData(25, 40)]
    public void Rows_OfNumbers_DontOverlap(int count, int apart)
    {
        BatchNumbers numbers = new(TwoRails.Network.Plan, count);
        (int nodes, int links) = (TwoRails.Network.Plan.Unknown, TwoRails.Network.Plan.Links.Length);
        for (int i = 0; i < nodes; i++)
        {
            numbers.PressureRow(i).Fill(100 + i);
        }

        for (int e = 0; e < links; e++)
        {
            numbers.FlowRow(e).Fill(200 + e);
            numbers.ConditionRow(e).Fill((byte)e);
        }

        Assert.All(Enumerable.Range(0, nodes), i => Assert.Equal(count * (100.0 + i), Sum(numbers.PressureRow(i))));
        Assert.All(Enumerable.Range(0, links), e => Assert.Equal(count * (200.0 + e), Sum(numbers.FlowRow(e))));
        Assert.All(Enumerable.Range(0, links), e => Assert.True(numbers.ConditionRow(e).IndexOfAnyExcept((byte)e) < 0));
        Assert.Equal((count, count), (numbers.Iterations.Length, numbers.Refusal.Length));
        Assert.Equal(
            8 * apart,
            System.Runtime.CompilerServices.Unsafe.ByteOffset(ref numbers.FlowRow(0)[0], ref numbers.FlowRow(1)[0])
        );

        static double Sum(ReadOnlySpan<double> row)
        {
            double sum = 0;
            foreach (double number in row)
            {
                sum += number;
            }

            return sum;
        }
    }

    /// <summary>On one core a batch has the bits that it has on all, also where the last vector is not full.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(17)]
    public void RunOnOneCore_HasTheBitsOfAll(int count)
    {
        NetworkBatch batch = new NetworkBatch(TwoRails.Network, count).WithPressure(
            "manifold",
            Enumerable.Range(0, count).Select(i => Gauge(i))
        );
        BatchNumbers one = batch.Runner(null).RunOnOneCore(count);
        BatchNumbers all = batch.Runner(null).Run(count, null, CancellationToken.None);

        for (int e = 0; e < TwoRails.Network.Lines.Length; e++)
        {
            Assert.Equal(all.FlowRow(e).ToArray(), one.FlowRow(e).ToArray());
        }

        Assert.Equal(all.Iterations, one.Iterations);
        Assert.True(one.FlowRow(0)[0] > 0 && one.FlowRow(0)[count - 1] > 0);
    }

    [Fact]
    public void Text_OfWhatIsEmpty_SaysSo()
    {
        Network.Buffer buffer = new(Batch.Network);
        Assert.Equal("empty", buffer.ToString());
        Batch.Network.Solve(buffer);
        Assert.Equal("filled", buffer.ToString());
        Assert.Equal("no line", default(Network.LineHandle).ToString());
        Assert.Equal("", default(Network.LineHandle).Name);
        Assert.Equal("first", Batch.Network.FindLine("first").ToString());
        Assert.Equal("4 of 5 points solved", Result.ToString());
    }

    /// <summary>A node of fixed pressure has one; a junction's is sought.</summary>
    [Fact]
    public void GivenPressure_IsThatOfAFixedNode()
    {
        Assert.Equal(Gauge(-20), Fixed("a", -20).GivenPressure);
        Assert.Null(Junction("a").GivenPressure);
        Assert.Equal((true, false), (Fixed("a", 0).IsFixed, Junction("a").IsFixed));
        Assert.Equal(-101.325, Fixed("a", -101.325).GivenPressure!.Value.AboveAmbient.Kilopascals, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Fixed("a", -101.3251));
    }
}
