using FuelMath.Formulas;
using FuelMath.Tests.Formulas;

namespace FuelMath.Tests.Scalars;

/// <summary>Each operation of both lanes, element by element, against the same operation of a real number.</summary>
public sealed class LaneTests
{
    private static readonly double[] Special =
    [
        0,
        -0.0,
        1,
        -1,
        double.Epsilon,
        2.2250738585072014e-308,
        double.MaxValue,
        double.PositiveInfinity,
        double.NegativeInfinity,
        double.NaN,
    ];

    private static readonly Dictionary<string, IBinary> SameBits = new()
    {
        ["a + b"] = new Plus(),
        ["a - b"] = new Minus(),
        ["a * b"] = new Times(),
        ["a / b"] = new Over(),
        ["constants"] = new Constants(),
        ["-a"] = new Negative(),
        ["sqrt"] = new Root(),
        ["abs"] = new Size(),
        ["min"] = new Smaller(),
        ["max"] = new Larger(),
        ["the greatest size"] = new GreaterSize(),
        ["select"] = new Selection(),
    };

    public static TheoryData<string> Names() => [.. SameBits.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Operation_AnyNumbers_HasTheBitsOfReal(string name) =>
        FormulaArbitraries.ForAll(
            2 * WideLane.Count,
            u =>
            {
                double[] a = [.. u[..WideLane.Count].Select(Spread)];
                double[] b = [.. u[WideLane.Count..].Select(Spread)];
                Agree(SameBits[name], a, b);
            }
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void Operation_SpecialNumbers_HasTheBitsOfReal(string name)
    {
        foreach (double a in Special)
        {
            foreach (double b in Special)
            {
                Agree(
                    SameBits[name],
                    [.. Enumerable.Repeat(a, WideLane.Count)],
                    [.. Enumerable.Repeat(b, WideLane.Count)]
                );
            }
        }
    }

    [Fact]
    public void All_OneElementSaysNo_IsNo()
    {
        double[] numbers = [.. Enumerable.Range(0, WideLane.Count).Select(i => (double)i)];
        double last = Lane.Count - 1;

        Assert.True(Lane.All(Lane.Less(new Lane(numbers), Lane.Of(last + 0.5))));
        Assert.False(Lane.All(Lane.Less(new Lane(numbers), Lane.Of(last - 0.5))));
        Assert.True(WideLane.All(WideLane.Less(WideLane.Load(numbers), WideLane.Of(7.5))));
        Assert.False(WideLane.All(WideLane.Less(WideLane.Load(numbers), WideLane.Of(6.5))));
        Assert.False(Lane.All(default));
    }

    [Fact]
    public void Copy_ThereAndBack_IsTheSame()
    {
        double[] numbers = [.. Enumerable.Range(1, Lane.Count).Select(i => i / 3.0)];
        double[] back = new double[Lane.Count];

        new Lane(numbers).CopyTo(back);

        Assert.Equal(numbers, back);
        Assert.Equal(numbers[1], new Lane(numbers)[1]);
        Assert.Equal(new Lane(numbers), new Lane(new Lane(numbers).Values));
        Assert.ThrowsAny<ArgumentException>(() => new Lane(numbers.AsSpan(1)));
        Assert.ThrowsAny<ArgumentException>(() => new Lane(numbers).CopyTo(back.AsSpan(1)));
    }

    /// <summary>As the docs say: one unit in the last place. Close to 1 as well, where a logarithm loses its digits.</summary>
    [Fact]
    public void Log_OrdinaryNumbers_IsWithinOneUnitInTheLastPlace() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
            {
                double anywhere = Math.Exp(1400 * (u[0] - 0.5));
                double nearOne = 1 + ((u[1] - 0.5) * Math.Exp(-30 * u[2]));
                foreach (double x in new[] { anywhere, nearOne })
                {
                    Assert.InRange(Apart(Math.Log(x), Lane.Log(Lane.Of(x))[0]), 0, 1);
                    Assert.Equal(Lane.Log(Lane.Of(x))[0], WideLane.Log(WideLane.Of(x))[7]);
                }
            }
        );

    [Fact]
    public void Log_SpecialNumbers_IsTheMachines()
    {
        foreach (double x in Special)
        {
            Assert.Equal(Math.Log(x), Lane.Log(Lane.Of(x))[0], 1e-12);
            Assert.Equal(Math.Log(x), WideLane.Log(WideLane.Of(x))[0], 1e-12);
        }
    }

    /// <summary>One element that is not a number leaves its neighbors as they were, to the bit.</summary>
    [Fact]
    public void Log_BadNeighbor_ChangesNothingElsewhere() =>
        FormulaArbitraries.ForAll(
            WideLane.Count,
            u =>
            {
                double[] good = [.. u.Select(f => 0.001 + f)];
                double[] bad = [.. good];
                bad[1] = double.NaN;
                Lane alone = Lane.Log(new Lane(good));
                Lane beside = Lane.Log(new Lane(bad));
                WideLane wideAlone = WideLane.Log(WideLane.Load(good));
                WideLane wideBeside = WideLane.Log(WideLane.Load(bad));

                Assert.Equal(alone[0], beside[0]);
                Assert.Equal(wideAlone[5], wideBeside[5]);
                Assert.True(double.IsNaN(beside[1]) && double.IsNaN(wideBeside[1]));
            }
        );

    [Fact]
    public void ExpAndPow_OrdinaryNumbers_AreAsNearAsTheDocsSay() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                (double x, double exponent) = (200 * (u[0] - 0.5), 6 * (u[1] - 0.5));
                double positive = Math.Exp(x / 4);
                double allowed = 4 + (2 * Math.Abs(exponent * x / 4));

                Assert.InRange(Apart(Math.Exp(x), Lane.Exp(Lane.Of(x))[0]), 0, 2);
                Assert.InRange(Apart(Math.Exp(x), WideLane.Exp(WideLane.Of(x))[0]), 0, 2);
                Assert.True(Apart(Math.Pow(positive, exponent), Lane.Pow(Lane.Of(positive), exponent)[0]) <= allowed);
                Assert.True(
                    Apart(Math.Pow(positive, exponent), WideLane.Pow(WideLane.Of(positive), exponent)[0]) <= allowed
                );
            }
        );

    private interface IBinary
    {
        T Of<T>(T a, T b)
            where T : struct, IScalar<T>;
    }

    private static double Spread(double u) => u == 0 ? 0 : (u - 0.5) * Math.Exp(60 * (u - 0.5));

    private static void Agree(IBinary operation, double[] a, double[] b)
    {
        Lane lane = operation.Of(new Lane(a), new Lane(b));
        WideLane wide = operation.Of(WideLane.Load(a), WideLane.Load(b));
        for (int i = 0; i < a.Length; i++)
        {
            double expected = operation.Of(new Real(a[i]), new Real(b[i])).Value;
            Assert.Equal(Bits(expected), Bits(wide[i]));
            if (i < Lane.Count)
            {
                Assert.Equal(Bits(expected), Bits(lane[i]));
            }
        }
    }

    /// <summary>Not-a-number has many patterns and all of them mean the same.</summary>
    private static long Bits(double x) => BitConverter.DoubleToInt64Bits(double.IsNaN(x) ? double.NaN : x);

    private static long Apart(double a, double b) =>
        a == b ? 0 : Math.Abs(BitConverter.DoubleToInt64Bits(a) - BitConverter.DoubleToInt64Bits(b));

    private sealed class Plus : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => a + b;
    }

    private sealed class Minus : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => a - b;
    }

    private sealed class Times : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => a * b;
    }

    private sealed class Over : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => a / b;
    }

    private sealed class Constants : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => ((1.1 + a) * 2.2) - (3.3 / (b - 4.4)) + ((5.5 - a) / 6.6) + (7.7 * b) + 8.8;
    }

    private sealed class Negative : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => -a;
    }

    private sealed class Root : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => T.Sqrt(a);
    }

    private sealed class Size : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => T.Abs(a);
    }

    private sealed class Smaller : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => T.Min(a, b);
    }

    private sealed class Larger : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => T.Max(a, b);
    }

    private sealed class GreaterSize : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> => T.MaxSize(T.Abs(a), b);
    }

    private sealed class Selection : IBinary
    {
        public T Of<T>(T a, T b)
            where T : struct, IScalar<T> =>
            T.Select(T.Less(a, b) & T.Less(T.Of(0), b), a, T.Select(T.Less(b, a) | T.Less(a, T.Of(-1)), b, T.Of(3)));
    }
}
