using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// q = min(commanded, C sqrt(dp)), nothing backwards, as a rising law: (q/C)^2, very steep above the commanded flow and
/// below zero. A command of zero is closed.
/// </summary>
internal struct CappedLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private T given;
    private T densityRatio;
    private T square;
    private T commanded;
    private T offset;
    private T first;
    private T usual;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public T Set(ReadOnlySpan<T> settings, T flow)
    {
        Set(settings[0], settings[1]);

        // A warm start begins at the new command: below it the law is so flat that Newton's method would overshoot.
        return T.Select(T.Less(first, commanded), flow, first);
    }

    /// <inheritdoc />
    public void Load(LawSettings part)
    {
        var draw = (CappedSettings)part;
        densityRatio = T.Of(1);
        Set(T.Of(draw.Coefficient), T.Of(draw.Commanded));
    }

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around)
    {
        offset = around.HeadFrom - around.HeadTo;
        var draw = (CappedSettings)part;
        densityRatio = draw.MeasuredDensity > 0 ? around.Density / draw.MeasuredDensity : T.Of(1);
        Set(given, commanded);
    }

    /// <param name="coefficient">C, m³/s per root of Pa; greater than zero.</param>
    /// <param name="wanted">The commanded flow, m³/s; not negative.</param>
    internal void Set(T coefficient, T wanted)
    {
        given = coefficient;
        square = densityRatio / (coefficient * coefficient);
        T heldOpen = T.Sqrt(PartMath.UsualInjectorPressure / square);
        commanded = wanted;
        first = T.Min(heldOpen, wanted);
        usual = PartMath.UsualInjectorPressure / heldOpen;
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        // At the commanded flow itself the law is already steep, so that a closed injector starts closed.
        Dual<T> none = Dual<T>.Of(0);
        Dual<T> outside = Dual<T>.Select(
            Dual<T>.Less(flow, commanded),
            Dual<T>.Min(flow, none),
            flow - (Dual<T>)commanded
        );
        return new(offset + (square * (flow * Dual<T>.Abs(flow))) + (reverse * outside));
    }

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(T.Max(-flow, flow - commanded), T.Of(0));

    internal readonly T Commanded => commanded;
}
