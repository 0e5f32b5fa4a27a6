using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>An opening whose flow follows a power of pressure.</summary>
internal struct PowerLaw<T> : ILinkLaw<PowerLaw<T>, T>
    where T : struct, IScalar<T>
{
    private double exponent;
    private T reference;
    private T loss;
    private T measuredWith;
    private T density;
    private T usual;

    /// <summary>The law has a small slope at no flow: a steeper least slope would slow Newton's method down.</summary>
    public static double LeastSlope => 1e-7;

    /// <inheritdoc />
    public readonly T FirstFlow => reference;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var opening = (PowerSettings)settings;
        exponent = opening.Exponent;
        (reference, loss, measuredWith) = (T.Of(opening.Flow), T.Of(opening.Loss), T.Of(opening.Density));
        usual = loss / reference;
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around) => density = around.Density;

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory) =>
        new(Orifice.PowerLawPressureLoss<Dual<T>>(flow, reference, loss, measuredWith, density, exponent));
}
