using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The measured curves of a pump over the voltage at its motor, and those interpolated between them.</summary>
internal sealed class PumpVoltages
{
    private const string OneCurve =
        "It was measured at one voltage only, which a circuit never keeps exactly: give its curve at another voltage, too, "
        + "measured, or as an estimate made by "
        + $"{nameof(PumpEstimate)}.{nameof(PumpEstimate.AtVoltage)}, which every result that rests on it then names.";

    private readonly string name;
    private readonly DataSource source;
    private readonly ImmutableArray<PumpCurve> curves;
    private readonly double[] volts;
    private readonly PumpInterval[] intervals;

    /// <summary>Checks that the voltages rise, and that neighbors are consistent.</summary>
    /// <exception cref="ArgumentException">They do not.</exception>
    internal PumpVoltages(string name, ImmutableArray<PumpCurve> curves, DataSource source, string parameter)
    {
        (this.name, this.curves, this.source) = (name, curves, source);
        volts = [.. curves.Select(c => c.Voltage.InSi())];
        Guard.StrictlyRising(volts, "Voltage", parameter, name);
        intervals = [.. curves.Zip(curves.Skip(1), (low, high) => new PumpInterval(low, high, parameter, name))];
    }

    /// <summary>The same of a pump of another name.</summary>
    internal PumpVoltages(string name, ImmutableArray<PumpCurve> curves, PumpVoltages other)
    {
        (this.name, this.curves, source) = (name, curves, other.source);
        (volts, intervals) = (other.volts, other.intervals);
    }

    /// <summary>The measured curve at a measured voltage, else one between the two neighbors.</summary>
    /// <exception cref="OutsideTableException">The voltage lies outside the measured ones.</exception>
    internal PumpCurve CurveAt(ElectricPotential atMotor)
    {
        (int at, bool measured) = Place(atMotor);
        return measured ? curves[at] : intervals[at - 1].CurveAt(atMotor.InSi(), source).Of(name);
    }

    /// <summary>The two curves that a voltage at the motor lies strictly between; null at a measured voltage.</summary>
    /// <exception cref="OutsideTableException">It lies outside the measured voltages.</exception>
    internal PumpInterval? Between(ElectricPotential atMotor) =>
        Place(atMotor) is (int above, false) ? intervals[above - 1] : null;

    /// <summary>The curve measured at a voltage, or else the first one at a higher voltage.</summary>
    private (int Index, bool Measured) Place(ElectricPotential atMotor)
    {
        double at = atMotor.InSi();
        int above = volts.Length;
        for (int i = volts.Length - 1; i >= 0; i--)
        {
            if (Math.Abs(at - volts[i]) <= Guard.EdgeTolerance * volts[i])
            {
                return (i, true);
            }

            above = at < volts[i] ? i : above;
        }

        if (above == 0 || above == volts.Length)
        {
            throw new OutsideTableException(
                $"Pump '{name:part}'",
                $"voltage ({Amount.Of(atMotor).Unit})",
                atMotor.NumberIn(atMotor.Unit),
                curves[0].Voltage.NumberIn(atMotor.Unit),
                curves[^1].Voltage.NumberIn(atMotor.Unit),
                volts.Length > 1 ? "" : OneCurve,
                nameof(atMotor)
            );
        }

        return (above, false);
    }
}
