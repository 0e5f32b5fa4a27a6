using UnitsNet;

namespace FuelMath;

/// <summary>One reading of a reducing regulator on the bench: what it held behind it while a flow was drawn.</summary>
/// <remarks>
/// Taken with the reference open to ambient pressure. The supply pressure belongs to the reading, because it presses on
/// the seat. The default value is refused where a reading is asked for.
/// </remarks>
public readonly struct ReducingReading
{
    /// <summary>Creates one reading.</summary>
    /// <param name="differentialPressure">Downstream less reference pressure; greater than zero.</param>
    /// <param name="flow">Volume flow through it; not negative.</param>
    /// <param name="supply">Gauge pressure ahead of it; above the one it held.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or outside what is allowed.</exception>
    public ReducingReading(Pressure differentialPressure, VolumeFlow flow, GaugePressure supply)
    {
        double held = Guard.Positive(differentialPressure, differentialPressure.InSi());
        Guard.NotNegative(flow, flow.InSi());
        if (!(supply.Si > held))
        {
            throw Guard.OutOfRange(
                supply.AboveAmbient.ToUnit(differentialPressure.Unit),
                $"above the pressure that it held, {Guard.Show(differentialPressure, differentialPressure.Unit)}",
                nameof(supply)
            );
        }

        (DifferentialPressure, Flow, Supply) = (differentialPressure, flow, supply);
    }

    /// <summary>Downstream less reference pressure.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>Volume flow through it.</summary>
    public VolumeFlow Flow { get; }

    /// <summary>Gauge pressure ahead of it.</summary>
    public GaugePressure Supply { get; }
}
