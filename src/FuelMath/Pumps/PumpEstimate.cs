using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Estimates of curves that were not measured, from one that was. Each is marked as an estimate with its basis.
/// </summary>
/// <remarks>
/// The affinity laws hold for rotodynamic pumps (centrifugal, turbine). The flow of a displacement pump (gerotor,
/// roller, vane) is proportional to speed, minus a leak in proportion to pressure: for it the laws give too little flow
/// at low speed and too much at high speed, the more so the higher the pressure. On the curves of the bundled systems,
/// compared with each other over steps of 14 % to 25 % in voltage, flow came out 19 % too low to 27 % too high, and
/// current 31 % too low to 36 % too high. These curves are invented: <see cref="PumpEstimate.Comparison"/> gives the error
/// for a pump with two curves of its own. Measure before relying on an estimate.
/// </remarks>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public static partial class PumpEstimate
{
    private const double Least = 0.3;
    private const double Greatest = 1.5;
    private const double LeastDensity = 0.5;
    private const double GreatestDensity = 2;

    /// <summary>The curve at another speed, by the affinity laws; its stated voltage is unchanged.</summary>
    /// <param name="curve">The measured curve.</param>
    /// <param name="speed">Other speed over that of the curve; 30 % to 150 %.</param>
    /// <returns>The curve: flow in proportion to speed, pressure rise to its square, power to its cube.</returns>
    /// <remarks>Source: [White-2003] section 11.3 (similarity rules).</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="speed"/> is not from 30 % to 150 %.</exception>
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

    /// <summary>
    /// The curve at a voltage without data: speed assumed proportional to voltage, the rest by the affinity laws.
    /// </summary>
    /// <param name="curve">The measured curve.</param>
    /// <param name="voltage">Another voltage at the terminals; 70 % to 130 % of that of the curve.</param>
    /// <returns>The curve.</returns>
    /// <remarks>
    /// A loaded motor turns slower than in proportion to its voltage, and the leak of a displacement pump does not
    /// depend on speed: the two errors have opposite signs, and the larger one depends on the pump.
    /// <see cref="Comparison"/> measures their sum. Source: [Common-practice] speed with voltage; [White-2003]
    /// section 11.3 (similarity rules).
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="voltage"/> is not from 70 % to 130 % of that of the curve.
    /// </exception>
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
    /// <returns>The curve: at each flow, pressure rise and current in proportion to density.</returns>
    /// <remarks>
    /// Only for a rotodynamic pump; a displacement pump keeps its curve. Constant speed is an assumption: a motor turns
    /// slower under more load, so in a denser fluid the pump delivers somewhat less than this, and in a lighter one
    /// somewhat more. Current is assumed proportional to torque. Source: [White-2003] section 11.3 (head and power
    /// coefficients).
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="densityRatio"/> is not from 50 % to 200 %.
    /// </exception>
    public static PumpCurve InFluid(PumpCurve curve, Ratio densityRatio)
    {
        ArgumentNullException.ThrowIfNull(curve);
        double ratio = Guard.InRange(densityRatio, densityRatio.InSi(), LeastDensity, GreatestDensity, SiUnits.Ratio);
        Real r = new(ratio);
        return new(
            [
                .. curve.Points.Select(p => new PumpCurve.Point(
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

    /// <summary>
    /// The same flows at a supply voltage that differs from the motor's, with a fraction of the current.
    /// </summary>
    internal static PumpCurve Relabeled(PumpCurve curve, ElectricPotential supply, double currentShare, string basis) =>
        new(
            [
                .. curve.Points.Select(p => new PumpCurve.Point(
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
                .. curve.Points.Select(p => new PumpCurve.Point(
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
