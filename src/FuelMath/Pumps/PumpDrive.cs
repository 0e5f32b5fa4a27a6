using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The supply of a pump's motor: its circuit directly, a pulse-width modulated supply, or a speed controller.
/// </summary>
/// <remarks>
/// <para>
/// A pulse-width modulated supply acts by its mean: a duty of 70 % at 13.5 V runs the motor like 9.45 V and draws 70 %
/// of its current from the circuit, without loss. A controlled speed changes the curve by the affinity laws, whatever
/// the voltage, and draws the power needed. A real controller loses a few percent. Source: [Common-practice] the mean
/// of a chopped supply; [White-2003] section 11.3 (similarity rules).
/// </para>
/// <para>Both are estimates unless the pump was measured that way, and results say so.</para>
/// </remarks>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public sealed class PumpDrive
{
    private const double LeastSpeed = 0.3;

    private readonly double duty = 1;
    private readonly double speed = 1;
    private readonly double least;
    private readonly double greatest;

    private PumpDrive() => (Duty, Speed) = (SiUnits.Ratio(1), SiUnits.Ratio(1));

    private PumpDrive(double duty, Ratio given)
        : this() => (this.duty, Duty) = (duty, given);

    private PumpDrive(double speed, Ratio given, ElectricPotential least, ElectricPotential greatest)
        : this()
    {
        (this.speed, Speed) = (speed, given);
        (this.least, this.greatest) = (least.InSi(), greatest.InSi());
        (LeastSupply, GreatestSupply) = (least, greatest);
    }

    /// <summary>No controller: the motor gets the voltage at the pump's terminals.</summary>
    public static PumpDrive Direct { get; } = new();

    /// <summary>The fraction of time that the motor is connected; one without modulation.</summary>
    public Ratio Duty { get; }

    /// <summary>Speed over the speed of the curve; one where it is not controlled.</summary>
    public Ratio Speed { get; }

    /// <summary>The least voltage at which the speed is held; null without speed control.</summary>
    public ElectricPotential? LeastSupply { get; }

    /// <summary>The greatest voltage at which the speed is held; null without speed control.</summary>
    public ElectricPotential? GreatestSupply { get; }

    /// <summary>Whether the speed is held, whatever the voltage.</summary>
    public bool ControlsSpeed => LeastSupply is not null;

    /// <summary>A pulse-width modulated supply.</summary>
    /// <param name="duty">The fraction of time that the motor is connected; 5 % to 100 %.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duty"/> is not from 5 % to 100 %.</exception>
    public static PumpDrive ByDuty(Ratio duty) => new(Guard.InRange(duty, duty.InSi(), 0.05, 1, SiUnits.Ratio), duty);

    /// <summary>A controller that holds a speed.</summary>
    /// <param name="speed">Speed over the speed that the pump's one curve was measured at; 30 % to 100 %.</param>
    /// <param name="leastSupply">The least voltage at which it holds that speed; greater than zero.</param>
    /// <param name="greatestSupply">The greatest one; greater than the least.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="speed"/> is not from 30 % to 100 %, <paramref name="leastSupply"/> is not greater than zero, or
    /// <paramref name="greatestSupply"/> is not greater than <paramref name="leastSupply"/>.
    /// </exception>
    public static PumpDrive BySpeed(Ratio speed, ElectricPotential leastSupply, ElectricPotential greatestSupply)
    {
        double n = Guard.InRange(speed, speed.InSi(), LeastSpeed, 1, SiUnits.Ratio);
        double low = Guard.Positive(leastSupply, leastSupply.InSi());
        return Guard.Positive(greatestSupply, greatestSupply.InSi()) > low
            ? new(n, speed, leastSupply, greatestSupply)
            : throw Guard.OutOfRange(greatestSupply, $"greater than the least, {leastSupply:above}");
    }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{(ControlsSpeed ? Speed : Duty)} {(ControlsSpeed ? "of full speed" : "duty")}");

    internal ElectricPotential Least(ElectricPotential ofCurves) =>
        ControlsSpeed ? SiUnits.ElectricPotential(least) : SiUnits.ElectricPotential(ofCurves.InSi() / duty);

    internal ElectricPotential Greatest(ElectricPotential ofCurves) =>
        ControlsSpeed ? SiUnits.ElectricPotential(greatest) : SiUnits.ElectricPotential(ofCurves.InSi() / duty);

    /// <summary>The curve at a supply voltage, with the current that the controller draws.</summary>
    internal PumpCurve Fed(
        string pump,
        double volts,
        Func<ElectricPotential, PumpCurve> measured,
        PumpCurve atFullSpeed
    )
    {
        ElectricPotential supply = SiUnits.ElectricPotential(volts);
        if (!ControlsSpeed)
        {
            PumpCurve motor = measured(SiUnits.ElectricPotential(duty * volts));
            string basis = string.Create(
                CultureInfo.InvariantCulture,
                $"{pump} at a duty of {100 * duty:0.#} %: a chopped supply taken by its mean"
            );
            return PumpEstimate.Relabeled(motor, supply, duty, basis);
        }

        PumpCurve turned = PumpEstimate.AtSpeed(atFullSpeed, Speed);
        string held = string.Create(
            CultureInfo.InvariantCulture,
            $"{pump} at {100 * speed:0.#} % of its speed: affinity laws and a controller without loss"
        );
        return PumpEstimate.Relabeled(turned, supply, atFullSpeed.Voltage.InSi() / volts, held);
    }
}
