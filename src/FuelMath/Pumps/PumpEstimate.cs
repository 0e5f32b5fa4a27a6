using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Curves that were not measured, made from one that was. Each says that it is an estimate and of what kind.</summary>
/// <remarks>
/// The affinity laws hold for pumps that sling the fuel (centrifugal, turbine). One that pushes it (gerotor, roller, vane)
/// gives flow with speed, less a leak that goes with pressure: there they promise too little flow at low speed and too much
/// at high speed, the more the higher the pressure. On the curves of the bundled systems, held against each other over
/// steps of 14 % to 25 % in voltage, flow came out 19 % too low to 27 % too high, and current 31 % too low to 36 % too high.
/// These curves are invented: <see cref="PumpEstimateCheck"/> tells the size for a pump with two curves of its own. Measure
/// before relying on any.
/// </remarks>
public static class PumpEstimate
{
    private const double Least = 0.3;
    private const double Greatest = 1.5;
    private const double LeastDensity = 0.5;
    private const double GreatestDensity = 2;

    /// <summary>The curve at another speed, by the affinity laws; the voltage is said to stay.</summary>
    /// <param name="curve">The measured curve.</param>
    /// <param name="speed">Other speed over that of the curve; 30 % to 150 %.</param>
    /// <returns>The curve: flow with speed, rise with its square, power with its cube.</returns>
    /// <remarks>Source: [White-2003] section 11.3 (similarity rules).</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside what is allowed.</exception>
    public static PumpCurve AtSpeed(PumpCurve curve, Ratio speed)
    {
        ArgumentNullException.ThrowIfNull(curve);
        double n = Guard.InRange(speed, speed.InSi(), Least, Greatest, SiUnits.Ratio);
        return Scaled(
            curve,
            n,
            curve.Voltage,
            string.Create(CultureInfo.InvariantCulture, $"affinity laws from the curve to {100 * n:0.#} % of its speed")
        );
    }

    /// <summary>The curve at a voltage without data: speed taken to go with voltage, the rest by the affinity laws.</summary>
    /// <param name="curve">The measured curve.</param>
    /// <param name="voltage">Another voltage at the terminals; 70 % to 130 % of that of the curve.</param>
    /// <returns>The curve.</returns>
    /// <remarks>
    /// A motor under load turns slower than its voltage says, and a pump that pushes leaks as much at any speed: the two
    /// errors have opposite signs, and which one wins depends on the pump. <see cref="PumpEstimateCheck"/> measures the sum.
    /// Source: [Common-practice] speed with voltage; [White-2003] section 11.3 (similarity rules).
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside what is allowed.</exception>
    public static PumpCurve AtVoltage(PumpCurve curve, ElectricPotential voltage)
    {
        ArgumentNullException.ThrowIfNull(curve);
        double known = curve.Voltage.InSi();
        double volts = Guard.InRange(voltage, voltage.InSi(), 0.7 * known, 1.3 * known, SiUnits.ElectricPotential);
        return Scaled(
            curve,
            volts / known,
            voltage,
            string.Create(
                CultureInfo.InvariantCulture,
                $"curve at {volts:0.##} V scaled from {known:0.##} V: speed with voltage, affinity laws; flow may be some 30 % off and current 40 %"
            )
        );
    }

    /// <summary>The curve of a rotodynamic pump in a fluid of another density, at the same speed.</summary>
    /// <param name="curve">The measured curve.</param>
    /// <param name="densityRatio">Density of the other fluid over that of the test; 50 % to 200 %.</param>
    /// <returns>The curve: at each flow, rise and current with the density.</returns>
    /// <remarks>
    /// Only for a pump that slings the fluid; one of positive displacement keeps its curve. That the speed stays is an
    /// assumption: under more load a motor turns slower, so that in a denser fluid the pump gives rather less than this, and
    /// in a lighter one rather more. Current is taken to go with torque. Source: [White-2003] section 11.3 (head and power coefficients).
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside what is allowed.</exception>
    public static PumpCurve InFluid(PumpCurve curve, Ratio densityRatio)
    {
        ArgumentNullException.ThrowIfNull(curve);
        double ratio = Guard.InRange(densityRatio, densityRatio.InSi(), LeastDensity, GreatestDensity, SiUnits.Ratio);
        Real r = new(ratio);
        return new(
            [
                .. curve.Points.Select(p => new PumpPoint(
                    SiUnits.Pressure(PumpScaling.PressureRiseInFluid(new Real(p.PressureRise.InSi()), r).Value),
                    p.Flow,
                    SiUnits.ElectricCurrent(PumpScaling.PressureRiseInFluid(new Real(p.Current.InSi()), r).Value)
                )),
            ],
            curve.Voltage,
            curve.Source,
            curve.BasisWith(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"curve in a fluid of {100 * ratio:0.#} % of the density of the test: head and speed taken to stay"
                )
            )
        );
    }

    /// <summary>The same flows at a supply that differs from the motor's, with a share of the current.</summary>
    internal static PumpCurve Relabeled(PumpCurve curve, ElectricPotential supply, double currentShare, string basis) =>
        new(
            [
                .. curve.Points.Select(p => new PumpPoint(
                    p.PressureRise,
                    p.Flow,
                    SiUnits.ElectricCurrent(currentShare * p.Current.InSi())
                )),
            ],
            supply,
            curve.Source,
            curve.BasisWith(basis)
        );

    private static PumpCurve Scaled(PumpCurve curve, double ratio, ElectricPotential voltage, string basis)
    {
        Real n = new(ratio);
        double perVolt = curve.Voltage.InSi() / voltage.InSi();
        return new(
            [
                .. curve.Points.Select(p => new PumpPoint(
                    SiUnits.Pressure(PumpScaling.PressureRise(new Real(p.PressureRise.InSi()), n).Value),
                    SiUnits.VolumeFlow(PumpScaling.Flow(new Real(p.Flow.InSi()), n).Value),
                    SiUnits.ElectricCurrent(perVolt * PumpScaling.Power(new Real(p.Current.InSi()), n).Value)
                )),
            ],
            voltage,
            curve.Source,
            curve.BasisWith(basis)
        );
    }
}
