using FuelMath.Formulas;

namespace FuelMath;

/// <summary>An opening by one reading and a power: see <see cref="Formulas.Orifice.PowerLawPressureLoss"/>.</summary>
internal sealed class PowerSettings(double flow, double loss, double density, double exponent) : LawSettings
{
    /// <summary>m³/s.</summary>
    internal readonly double Flow = flow;

    /// <summary>At that flow, Pa.</summary>
    internal readonly double Loss = loss;

    /// <summary>kg/m³.</summary>
    internal readonly double Density = density;

    /// <summary>The power of pressure that flow goes with.</summary>
    internal readonly double Exponent = exponent;

    /// <inheritdoc />
    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, PowerLaw<T>>(ends, parts);
}
