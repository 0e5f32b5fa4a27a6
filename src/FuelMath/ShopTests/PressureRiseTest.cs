using MathNet.Numerics.Integration;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>
/// The pressure-rise test: the pump starts with the engine stopped, and the rail pressure rises and settles.
/// </summary>
/// <remarks>
/// The time follows from the compliance of the closed line (fuel, walls, trapped gas) and the pump's flow at each
/// pressure. Within tens of milliseconds the compression of gas and fuel is adiabatic and the compliance lower; within
/// seconds it is isothermal. Both times are given. Losses on the way to the rail and the run-up of the pump are
/// neglected, so the adiabatic time is a lower bound, but the isothermal one is not an upper bound.
/// </remarks>
/// <seealso href="../guide/shoptests.html">Shop tests: what should it read?</seealso>
public sealed class PressureRiseTest
{
    private const int Order = 32;

    private readonly FuelSystem system;
    private readonly PumpCurve[] curves;
    private readonly double shortest;
    private readonly double isothermal;

    private PressureRiseTest(FuelSystem system, SystemState state, string node, ClosedVolume line, PumpCurve[] curves)
    {
        this.system = system;
        this.curves = curves;
        State = state;
        Node = node;
        Line = line;
        shortest = Seconds(line.GasAtAmbient.InSi(), keepsHeat: true);
        isothermal = Seconds(line.GasAtAmbient.InSi(), keepsHeat: false);
    }

    /// <summary>The state in which it settles.</summary>
    public SystemState State { get; }

    /// <summary>The node of the gauge.</summary>
    public string Node { get; }

    /// <summary>The line that the pump pressurizes.</summary>
    public ClosedVolume Line { get; }

    /// <summary>The expected final pressure.</summary>
    public GaugePressure ExpectedPressure => State.PressureAt(Node);

    /// <summary>
    /// The adiabatic time from zero pressure, line full, to nine tenths of that, in s: the lower bound.
    /// </summary>
    public Duration ShortestTime => SiUnits.Duration(shortest);

    /// <summary>The isothermal time, in s.</summary>
    public Duration IsothermalTime => SiUnits.Duration(isothermal);

    private double Target => 0.9 * ExpectedPressure.Si;

    /// <summary>Predicts the test.</summary>
    /// <param name="system">A system with one pump that feeds the rails, or several in parallel; lift pumps do not count.</param>
    /// <param name="point">
    /// The conditions. The engine stands: injectors shut and ambient pressure in the manifold, whatever speed, manifold
    /// pressure and command the point has.
    /// </param>
    /// <param name="node">The node of the gauge.</param>
    /// <param name="line">The line that the pump pressurizes, from its check valve to the regulator.</param>
    /// <returns>The prediction.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// There is no such node, no pump feeds a rail, some are in series, or nothing builds pressure there.
    /// </exception>
    /// <exception cref="NoSolutionException">The system has no such state; the message says why.</exception>
    /// <exception cref="OutsideTableException">The pump's data do not reach down to zero pressure rise.</exception>
    /// <exception cref="UnknownPropertyException">A property of the fuel is not known; the message says which.</exception>
    public static PressureRiseTest Of(FuelSystem system, OperatingPoint point, string node, ClosedVolume line)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(line);
        SystemState state = system.Solve(Altered.Standing(point));
        SystemState.PumpResult[] pumps = system.Layout.RailPumpsIn(state);
        Line[] lines = [.. pumps.Select(p => system.Network.Lines.First(l => l.Name == p.Line))];
        if (pumps.Length == 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.PumpNeeded,
                $"Must have a pump that feeds a rail; '{system.Name:part}' has none.",
                nameof(system)
            );
        }

        if (lines.Any(l => lines.Any(other => other.To == l.From)))
        {
            throw new RefusedArgumentException(
                RefusalCode.PumpsInSeries,
                $"Must have one pump that feeds a rail, or several in parallel; '{system.Name:part}' has some in series.",
                nameof(system)
            );
        }

        GaugePressure settled = state.PressureAt(node);
        Density density = system.Fuel.DensityAt(point.Fuel);
        return settled.Si > 0
            ? new(
                system,
                state,
                node,
                line,
                [.. pumps.Select((p, i) => ((Pump)lines[i].Part).CurveAt(p.Voltage, density))]
            )
            : throw new RefusedArgumentException(
                RefusalCode.NoPressure,
                $"No pressure builds at '{node:node}': it settles at {settled:value}.",
                nameof(node)
            );
    }

    /// <summary>Compares the settled pressure.</summary>
    /// <param name="measured">The settled gauge pressure.</param>
    /// <param name="tolerance">The deviation that still counts as agreement, as a share; greater than zero.</param>
    /// <returns>The comparison, with what would explain a difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero.</exception>
    public ShopComparison ComparePressure(GaugePressure measured, Ratio tolerance)
    {
        double allowed = Guard.Positive(tolerance, tolerance.InSi());
        double expected = ExpectedPressure.Si;
        double deviation = (measured.Si / expected) - 1;
        return new(
            Show.Bar(expected),
            Show.Bar(measured.Si),
            deviation,
            Math.Abs(deviation) <= allowed,
            PressureCauses(measured.Si - expected, Math.Abs(deviation))
        );
    }

    /// <summary>Compares the time of the rise.</summary>
    /// <param name="measured">
    /// Time from zero pressure, line full, to nine tenths of the expected pressure; greater than zero.
    /// </param>
    /// <param name="tolerance">The deviation that still counts as agreement, as a share; greater than zero.</param>
    /// <returns>
    /// The comparison, with the causes that would explain a difference: it agrees from the shortest to the isothermal
    /// time, and within the tolerance of either.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ShopComparison CompareTime(Duration measured, Ratio tolerance)
    {
        double seconds = Guard.Positive(measured, measured.InSi());
        double allowed = Guard.Positive(tolerance, tolerance.InSi());
        double deviation =
            seconds < shortest ? (seconds / shortest) - 1
            : seconds > isothermal ? (seconds / isothermal) - 1
            : 0;
        return new(
            $"{Seconds(shortest)} to {Seconds(isothermal)}",
            Seconds(seconds),
            deviation,
            Math.Abs(deviation) <= allowed,
            TimeCauses(seconds)
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Node}: {ExpectedPressure}");

    private IEnumerable<ShopComparison.Cause> PressureCauses(double change, double departure)
    {
        string amount = $"{Show.Bar(Math.Abs(change))} {(change < 0 ? "below" : "above")} what was expected";
        SystemState.RegulatorResult[] holding =
        [
            .. State.Regulators.Where(r => r.IsReducing || r.State == RegulatorCondition.Regulating),
        ];
        if (holding.Length > 0)
        {
            bool hose = holding.Any(r => HasHose(r.Line));
            yield return Cause(
                ShopComparison.CauseKind.SetPoint,
                change < 0 ? "A regulator set too low or that does not close"
                    : hose ? "A regulator set too high, or a reference hose under pressure"
                    : "A regulator set too high",
                amount,
                departure,
                hose
                    ? "Pull the reference hose: nothing may change with the engine standing, and no fuel may stand in it."
                    : "Check the gauge against a second one, then the regulator's screw and seat."
            );
        }

        if (change < 0)
        {
            SystemState.PumpResult pump = system.Layout.RailPumpsIn(State)[0];
            double volts = pump.Voltage.InSi();
            yield return Cause(
                ShopComparison.CauseKind.PumpFlow,
                "A pump that does not bring the pressure that the regulator holds",
                $"less than it should at {Show.Volts(volts)} and {Show.Bar(pump.PressureRise.InSi())}",
                departure,
                "Nothing comes out of a return: see the bucket test."
            );
        }
        else if (State.Regulators.Any(r => !r.IsReducing))
        {
            yield return Cause(
                ShopComparison.CauseKind.ReturnRestriction,
                "A return that is choked",
                amount,
                departure,
                "Open the return into a container: the pressure falls to what was expected."
            );
        }
    }

    /// <summary>Whether a regulator's spring side is connected by a hose.</summary>
    private bool HasHose(string line) =>
        system.Network.Lines.First(l => l.Name == line).Part is IRegulator { Reference: RegulatorReference.Manifold };

    private IEnumerable<ShopComparison.Cause> TimeCauses(double seconds)
    {
        // Time is linear in the amount of gas, so each thermal model gives the gas that would explain it.
        double nominal = Line.GasAtAmbient.InSi();
        double least = GasFor(seconds, keepsHeat: false);
        double most = GasFor(seconds, keepsHeat: true);
        bool slow = seconds > isothermal;
        if ((slow ? least : most) >= 0)
        {
            yield return Cause(
                ShopComparison.CauseKind.TrappedGas,
                slow ? "More gas in the line" : "Less gas in the line than stated",
                $"{CubicCentimeters(Math.Max(least, 0))} to {CubicCentimeters(most)} at ambient pressure instead of {CubicCentimeters(nominal)}",
                nominal > 0 ? Math.Abs(((slow ? least : most) / nominal) - 1) : (seconds / isothermal) - 1,
                "Bleed the rail and test again: the time comes back."
            );
        }

        (double low, double high) = (shortest / seconds, isothermal / seconds);
        yield return Cause(
            ShopComparison.CauseKind.PumpFlow,
            slow ? "A pump that brings less, or is slow to reach its speed" : "A pump that brings more than stated",
            $"{Show.Percent(low)} to {Show.Percent(high)} of its flow",
            Math.Abs((slow ? high : low) - 1),
            "Measure voltage at the pump and catch its flow: see the bucket test."
        );
    }

    private static ShopComparison.Cause Cause(
        ShopComparison.CauseKind kind,
        string what,
        string needed,
        double departure,
        string howToTell
    ) => new(kind, what, needed, departure, howToTell, null, null);

    /// <summary>The gas, m³ at ambient pressure, that would explain a time.</summary>
    private double GasFor(double seconds, bool keepsHeat)
    {
        double without = Seconds(0, keepsHeat);
        return (seconds - without) / (Seconds(1, keepsHeat) - without);
    }

    /// <summary>The integral of compliance over the pump's flow, for a volume of gas at ambient pressure.</summary>
    private double Seconds(double gasAtAmbient, bool keepsHeat) =>
        GaussLegendreRule.Integrate(
            p => QuickCompression.Compliance(Line, gasAtAmbient, p, keepsHeat) / FlowAt(p),
            0,
            Target,
            Order
        );

    /// <summary>What all pumps bring at a pressure, m³/s; one that it exceeds is shut.</summary>
    private double FlowAt(double pressure) =>
        curves.Sum(c =>
            curves.Length > 1 && pressure > c.GreatestPressureRise.InSi()
                ? 0
                : c.FlowAt(SiUnits.Pressure(pressure)).InSi()
        );

    private static string Seconds(double value) =>
        Guard.Show(SiUnits.Duration(Math.Round(value, 3)), UnitsNet.Units.DurationUnit.Second);

    private static string CubicCentimeters(double cubicMeters) =>
        Guard.Show(SiUnits.Volume(Math.Round(cubicMeters, 9)), UnitsNet.Units.VolumeUnit.CubicCentimeter);
}
