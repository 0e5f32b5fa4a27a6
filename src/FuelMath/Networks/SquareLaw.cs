using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>opening + a q + b q|q|: filter, fitting, orifice as the inverse of q = C sqrt(dp), check valve.</summary>
internal struct SquareLaw<T> : ILinkLaw<SquareLaw<T>, T>
    where T : struct, IScalar<T>
{
    private T offset;
    private T linear;
    private T square;
    private T first;
    private T usual;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public void Load(LawSettings settings) { }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around)
    {
        var made = (SquareSettings)settings;

        // The two terms of the law at unit flow, so that each is written once.
        T none = T.Of(0);
        T one = T.Of(1);
        linear = PorousMedium.PressureLoss(T.Of(made.LinearPerViscosity), none, around.Viscosity, around.Density, one);
        square = PorousMedium.PressureLoss(none, T.Of(made.SquarePerDensity), around.Viscosity, around.Density, one);
        T weight = made.IntoSpace ? around.HeadFrom - around.HeadTo : none;
        offset = made.Opening + weight;
        first = 2 * made.Scale / (linear + T.Sqrt((linear * linear) + (4 * made.Scale * square)));
        usual = made.Scale / first;
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory) =>
        new(offset + ((linear * flow) + (square * (flow * Dual<T>.Abs(flow)))));
}
