using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// q = min(commanded, C sqrt(dp)), nothing backwards, as a rising law: (q/C)^2, very steep above the commanded flow and
/// below zero. A command of zero is closed.
/// </summary>
internal struct CappedLaw<T> : ILinkLaw<CappedLaw<T>, T>
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
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public static T Set(ref CappedLaw<T> law, ReadOnlySpan<T> settings, T flow)
    {
        law.Set(settings[0], settings[1]);

        // A warm start begins at the new command: below it the law is so flat that Newton's method would overshoot.
        return T.Select(T.Less(law.first, law.commanded), flow, law.first);
    }

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var draw = (CappedSettings)settings;
        densityRatio = T.Of(1);
        Set(T.Of(draw.Coefficient), T.Of(draw.Commanded));
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around)
    {
        offset = around.HeadFrom - around.HeadTo;
        var draw = (CappedSettings)settings;
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
    public static T Trespass(ref CappedLaw<T> law, T flow) => T.Max(T.Max(-flow, flow - law.commanded), T.Of(0));

    /// <inheritdoc />
    public static T Condition(ref CappedLaw<T> law, T flow, T up, T down, T noFlow)
    {
        T shut = T.Of((int)Network.LineCondition.Shut);
        T open = T.Select(T.Less(noFlow, flow), T.Of((int)Network.LineCondition.HeldOpen), shut);
        T delivers = T.Select(T.Less(flow, law.commanded), open, T.Of((int)Network.LineCondition.Commanded));
        return T.Select(T.Less(T.Of(0), law.commanded), delivers, shut);
    }

    internal readonly T Commanded => commanded;
}
