using UnitsNet;

namespace FuelMath;

/// <summary>The pressure that a regulator holds in the rail, and the pressure across an injector.</summary>
/// <remarks>
/// When referenced to the discharge pressure of the injectors, the difference across them is constant. A fixed rail is
/// constant relative to ambient pressure: boost reduces the difference, and vacuum in the manifold increases it.
/// </remarks>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed partial class RailPressure
{
    private readonly double pascals;

    private RailPressure(bool isReferenced, double pascals) => (IsReferenced, this.pascals) = (isReferenced, pascals);

    /// <summary>Whether the regulator is referenced to the discharge pressure of the injectors.</summary>
    public bool IsReferenced { get; }

    /// <summary>
    /// The pressure difference that it holds: to the discharge pressure when referenced, else to ambient pressure; in
    /// Pa.
    /// </summary>
    public Pressure HeldDifference => SiUnits.Pressure(pascals);

    /// <summary>A regulator referenced to the manifold, or wherever the injectors discharge.</summary>
    /// <param name="differentialPressure">The pressure that it holds across the injectors; greater than zero.</param>
    /// <returns>The rail.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not greater than zero.</exception>
    public static RailPressure Referenced(Pressure differentialPressure) =>
        new(true, Guard.Positive(differentialPressure, differentialPressure.InSi()));

    /// <summary>A regulator referenced to ambient pressure.</summary>
    /// <param name="rail">Gauge pressure of the rail; greater than zero.</param>
    /// <returns>The rail.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not greater than zero.</exception>
    public static RailPressure Fixed(GaugePressure rail) =>
        new(false, Guard.Positive(rail.AboveAmbient, rail.Si, nameof(rail)));

    /// <summary>Rail less discharge pressure.</summary>
    /// <param name="discharge">Absolute pressure into which the injectors discharge.</param>
    /// <param name="ambient">Absolute ambient pressure.</param>
    /// <returns>The difference, in Pa; greater than zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A fixed rail does not exceed the discharge pressure.</exception>
    public Pressure DifferentialPressureAt(AbsolutePressure discharge, AbsolutePressure ambient) =>
        SiUnits.Pressure(SiAt(discharge, ambient));

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{HeldDifference} {(IsReferenced ? "over manifold" : "over ambient")}");

    internal double SiAt(AbsolutePressure discharge, AbsolutePressure ambient)
    {
        double difference = IsReferenced ? pascals : pascals + ambient.Si - discharge.Si;
        return difference > 0
            ? difference
            : throw Guard.Outside(
                discharge,
                RefusalCode.NoFuelPasses,
                $"Must be below the rail, which is fixed at {new AbsolutePressure(SiUnits.Pressure(pascals + ambient.Si)):below}; it was {discharge:value}: no fuel flows."
            );
    }
}
