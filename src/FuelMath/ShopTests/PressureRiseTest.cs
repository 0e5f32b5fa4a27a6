using FuelMath.Findings;
using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Pumps;
using FuelMath.Quantities;
using FuelMath.Regulators;
using FuelMath.Scalars;
using FuelMath.Systems;
using FuelMath.Tightness;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>The pressure-rise test: the pump starts, the engine stands, and the rail pressure rises and settles.</summary>
/// <remarks>
/// How fast it rises is told by what the closed line yields (fuel, walls, trapped gas) against the pump's flow at each
/// pressure; losses on the way to the rail and the time that the pump takes to reach its speed are left out, so that the
/// expected time is a shortest one. Immutable; equality is by reference.
/// </remarks>
public sealed class PressureRiseTest
{
    private const int Order = 32;

    private readonly PumpCurve curve;
    private readonly double expectedSeconds;

    private PressureRiseTest(SystemState state, string node, ClosedVolume line, PumpCurve curve)
    {
        this.curve = curve;
        State = state;
        Node = node;
        Line = line;
        expectedSeconds = Seconds(line.Gas, Target);
    }

    /// <summary>The state in which it settles.</summary>
    public SystemState State { get; }

    /// <summary>Where the gauge is.</summary>
    public string Node { get; }

    /// <summary>What the pump presses up.</summary>
    public ClosedVolume Line { get; }

    /// <summary>Where the gauge should settle.</summary>
    public GaugePressure ExpectedPressure => State.PressureAt(Node);

    /// <summary>From no pressure, line full, to nine tenths of that; in s.</summary>
    public Duration ExpectedTime => SiUnits.Duration(expectedSeconds);

    private double Target => 0.9 * ExpectedPressure.Si;

    /// <summary>Predicts the test.</summary>
    /// <param name="system">A system with one pump.</param>
    /// <param name="point">The conditions; injectors are taken as shut, whatever its command.</param>
    /// <param name="node">The node where the gauge is.</param>
    /// <param name="line">What the pump presses up, from its check valve to the regulator.</param>
    /// <returns>The prediction.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such node, the system has not one pump, or nothing builds pressure there.</exception>
    /// <exception cref="NoSolutionException">The system has no such state; the message says why.</exception>
    /// <exception cref="OutsideTableException">The pump's data do not reach down to no pressure.</exception>
    public static PressureRiseTest Of(FuelSystem system, OperatingPoint point, string node, ClosedVolume line)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(line);
        FuelLine[] pumps = [.. system.Plan.Lines.Where(l => l.Pump is not null)];
        if (pumps.Length != 1)
        {
            throw new ArgumentException($"Must have one pump; '{system.Name}' has {pumps.Length}.", nameof(system));
        }

        SystemState state = system.Solve(point.WithCommand(FuelCommand.Cut));
        GaugePressure settled = state.PressureAt(node);
        return settled.Si > 0
            ? new(state, node, line, pumps[0].Pump!.CurveAt(state.Pumps[0].Voltage))
            : throw new ArgumentException($"No pressure builds at '{node}': it settles at {settled}.", nameof(node));
    }

    /// <summary>Compares where the gauge settled.</summary>
    /// <param name="measured">Gauge pressure once it stood still.</param>
    /// <param name="tolerance">The deviation that still counts as agreement, as a share; greater than zero.</param>
    /// <returns>The comparison, with what would explain a difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero.</exception>
    public ShopComparison ComparePressure(GaugePressure measured, Ratio tolerance)
    {
        double allowed = Guard.Positive(tolerance, tolerance.InSi(), nameof(tolerance));
        double expected = ExpectedPressure.Si;
        double deviation = (measured.Si / expected) - 1;
        return new(
            Show.Bar(expected),
            Show.Bar(measured.Si),
            deviation,
            allowed,
            PressureCauses(measured.Si - expected, Math.Abs(deviation))
        );
    }

    /// <summary>Compares how long the rise took.</summary>
    /// <param name="measured">From no pressure, line full, to nine tenths of the expected pressure; greater than zero.</param>
    /// <param name="tolerance">The deviation that still counts as agreement, as a share; greater than zero.</param>
    /// <returns>The comparison, with what would explain a difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ShopComparison CompareTime(Duration measured, Ratio tolerance)
    {
        double seconds = Guard.Positive(measured, measured.InSi(), nameof(measured));
        double allowed = Guard.Positive(tolerance, tolerance.InSi(), nameof(tolerance));
        double expected = expectedSeconds;
        double deviation = (seconds / expected) - 1;
        return new(Seconds(expected), Seconds(seconds), deviation, allowed, TimeCauses(seconds, expected));
    }

    private IEnumerable<ShopCause> PressureCauses(double change, double departure)
    {
        string amount = $"{Show.Bar(Math.Abs(change))} {(change < 0 ? "below" : "above")} what was expected";
        if (State.Regulators.Any(r => r.IsReducing || r.State == RegulatorState.Regulating))
        {
            yield return new(
                change < 0
                    ? "A regulator set too low or that does not close"
                    : "A regulator set too high, or a reference port under pressure",
                amount,
                departure,
                "Pull the reference hose: nothing may change with the engine standing."
            );
        }

        if (change < 0)
        {
            double volts = State.Pumps[0].Voltage.InSi();
            yield return new(
                "A pump that does not bring the pressure that the regulator holds",
                $"less than it should at {Show.Volts(volts)} and {Show.Bar(State.Pumps[0].PressureRise.InSi())}",
                departure,
                "Nothing comes out of a return: see the bucket test."
            );
        }
        else if (State.Regulators.Any(r => !r.IsReducing))
        {
            yield return new(
                "A return that is choked",
                amount,
                departure,
                "Open the return into a container: the pressure falls to what was expected."
            );
        }
    }

    private IEnumerable<ShopCause> TimeCauses(double seconds, double expected)
    {
        // The pump's flow and the gas each scale the time on their own: solved exactly, since time is a straight line in the gas.
        double without = Seconds(0, Target);
        double perGas = Seconds(1, Target) - without;
        double gas = (seconds - without) / perGas;
        if (gas >= 0)
        {
            double nominal = Line.Gas;
            yield return new(
                gas > nominal ? "More gas in the line" : "Less gas in the line than stated",
                $"{CubicCentimeters(gas / Line.Outside)} at ambient pressure instead of {CubicCentimeters(nominal / Line.Outside)}",
                nominal > 0 ? Math.Abs((gas / nominal) - 1) : (seconds / expected) - 1,
                "Bleed the rail and test again: the time comes back."
            );
        }

        double share = expected / seconds;
        yield return new(
            share < 1 ? "A pump that brings less" : "A pump that brings more than stated",
            $"{Show.Percent(share)} of its flow",
            Math.Abs(share - 1),
            "Measure voltage at the pump and catch its flow: see the bucket test."
        );
    }

    /// <summary>The integral of compliance over the pump's flow. For a gas of some pressure times volume.</summary>
    private double Seconds(double gas, double gauge) =>
        GaussLegendreRule.Integrate(
            p =>
            {
                double absolute = p + Line.Outside;
                Real compliance = PressureDecay.Compliance(
                    new Real(Line.Liquid),
                    new Real(Line.Modulus),
                    new Real(Line.Swells),
                    new Real(gas / absolute),
                    new Real(absolute)
                );
                return compliance.Value / curve.FlowAt(SiUnits.Pressure(p)).InSi();
            },
            0,
            gauge,
            Order
        );

    private static string Seconds(double value) =>
        Guard.Show(SiUnits.Duration(Math.Round(value, 3)), UnitsNet.Units.DurationUnit.Second);

    private static string CubicCentimeters(double cubicMeters) =>
        Guard.Show(SiUnits.Volume(Math.Round(cubicMeters, 9)), UnitsNet.Units.VolumeUnit.CubicCentimeter);
}
