using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Where a caller's law is tried: at 20 flows of either sign from a hundredth to a hundred times the usual one, evenly in
/// their logarithm, in the four corners of fluids, alone and in lanes. The usual flow is 100 L/h.
/// </summary>
public sealed class CustomLawCheckTests
{
    private const double Usual = 0.1 / 3600;
    private const double First = 0.015848931924611134; // Ten to the power of 4/20 - 2.
    private const double Last = 100;

    /// <summary>A law that falls between two shares of the usual flow is found where a flow is tried there.</summary>
    [Theory]
    [InlineData(0.999 * Last, 1000, true)]
    [InlineData(1.001 * Last, 1000, false)]
    [InlineData(-1000, -0.999 * Last, true)]
    [InlineData(-1000, -1.001 * Last, false)]
    [InlineData(1e-9, 1.001 * First, true)]
    [InlineData(1e-9, 0.999 * First, false)]
    [InlineData(-1.001 * First, -1e-9, true)]
    [InlineData(-0.999 * First, -1e-9, false)]
    [InlineData(0.99, 1.01, true)]
    [InlineData(1.01, 1.57, false)]
    public void Constructor_ALawThatFallsSomewhere_IsRefusedWhereItIsTried(double from, double to, bool isFound) =>
        Found(isFound, "rise with flow", new FallsBetween(from * Usual, to * Usual));

    /// <summary>The flow that is named is the one where it falls: 10 000 L/h, or the first one above no flow.</summary>
    [Theory]
    [InlineData(0.999 * Last, 1000, "10000 L/h")]
    [InlineData(1e-9, 1.001 * First, "1.585 L/h")]
    public void Constructor_ALawThatFalls_SaysWhere(double from, double to, string flow) =>
        Words.Says(flow, Found(true, "rise with flow", new FallsBetween(from * Usual, to * Usual))!);

    /// <summary>In each corner of the fluids of a fuel path, and nowhere else.</summary>
    [Theory]
    [InlineData(600, 2e-4, true)]
    [InlineData(600, 5e-3, true)]
    [InlineData(1000, 2e-4, true)]
    [InlineData(1000, 5e-3, true)]
    [InlineData(700, 5e-3, false)]
    [InlineData(1000, 1e-3, false)]
    public void Constructor_ALawThatFallsInOneFluid_IsRefusedInACorner(double density, double viscosity, bool isFound)
    {
        ArgumentException? refusal = Found(isFound, "rise with flow", new FallsIn(density, viscosity));
        if (isFound)
        {
            Words.Says(FormattableString.Invariant($"{density} kg/m³, {viscosity} Pa s"), refusal!);
        }
    }

    /// <summary>Its slope must be finite, too: a root has none at no flow.</summary>
    [Fact]
    public void Constructor_ALawWithoutASlope_IsRefused() => Found(true, "be finite", new Root());

    /// <summary>In lanes of either width it must be what it is alone.</summary>
    [Fact]
    public void Constructor_ALawThatDiffersInLanes_IsRefused()
    {
        Found(true, "not branch", new OtherIn<Lane>());
        Found(true, "not branch", new OtherIn<WideLane>());
        Found(false, "", new OtherIn<Dual<Lane>>());
    }

    /// <summary>One that goes one way where no lane flows forward is found by lanes of both signs.</summary>
    [Fact]
    public void Constructor_ALawThatLooksAtTheSigns_IsRefused() => Found(true, "not branch", new BackwardTogether());

    /// <summary>One that differs in lanes at the greatest flow alone is found there.</summary>
    [Theory]
    [InlineData(0.999 * Last, true)]
    [InlineData(1.001 * Last, false)]
    public void Constructor_ALawThatDiffersAtTheGreatestFlow_IsRefused(double from, bool isFound) =>
        Found(isFound, "not branch", new OtherBeyond(from * Usual));

    /// <summary>A steep law is a law: no flow is tried at which it has no number.</summary>
    [Fact]
    public void Constructor_ASteepLaw_IsTaken() => Found(false, "", new FifthPower());

    private static ArgumentException? Found<TLaw>(bool isFound, string what, TLaw law)
        where TLaw : struct, IFlowLaw
    {
        CustomPart<TLaw> Make() => new("mine", law, VolumeFlow.FromCubicMetersPerSecond(Usual));
        if (!isFound)
        {
            Assert.Equal("mine", Make().Name);
            return null;
        }

        ArgumentException refusal = Assert.Throws<ArgumentException>(Make);
        Assert.Equal("law", refusal.ParamName);
        Assert.Contains(what, refusal.Message, StringComparison.Ordinal);
        return refusal;
    }

    private readonly struct FallsBetween(double from, double to) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> =>
            T.Select(T.Less(T.Of(from), at.Flow) & T.Less(at.Flow, T.Of(to)), -1e9 * at.Flow, 1e9 * at.Flow);
    }

    private readonly struct FallsIn(double density, double viscosity) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> =>
            T.Select(
                T.Less(T.Abs(at.Density - density), T.Of(1)) & T.Less(T.Abs(at.Viscosity - viscosity), T.Of(1e-5)),
                -1e9 * at.Flow,
                1e9 * at.Flow
            );
    }

    private readonly struct Root : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> =>
            T.Select(
                T.Less(at.Flow, T.Of(0)),
                -1e6 * T.Sqrt(T.Max(-at.Flow, T.Of(0))),
                1e6 * T.Sqrt(T.Max(at.Flow, T.Of(0)))
            );
    }

    private readonly struct OtherIn<TOther> : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => typeof(T) == typeof(TOther) ? 2e9 * at.Flow : 1e9 * at.Flow;
    }

    private readonly struct BackwardTogether : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => T.All(T.Less(at.Flow, T.Of(1e-3 * Usual))) ? 2e9 * at.Flow : 1e9 * at.Flow;
    }

    private readonly struct OtherBeyond(double flow) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> =>
            typeof(T) == typeof(Lane)
                ? T.Select(T.Less(T.Of(flow), at.Flow), 2e9 * at.Flow, 1e9 * at.Flow)
                : 1e9 * at.Flow;
    }

    private readonly struct FifthPower : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T>
        {
            T share = at.Flow / Usual;
            T square = share * share;
            return (1e9 * at.Flow) + (100 * square * square * share);
        }
    }
}
