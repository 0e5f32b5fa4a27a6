using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Pumps;
using FuelMath.Quantities;
using FuelMath.Systems;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>The timed bucket: the return is led into a container while the pumps run and the engine stands.</summary>
/// <remarks>
/// Caution: fuel in the open. Outside, no sparks, extinguisher at hand, a bonded metal container that holds more than the
/// test gives, and someone at the switch. Immutable; equality is by reference.
/// </remarks>
public sealed class BucketTest
{
    /// <summary>The least share of its flow that a worn pump is searched at.</summary>
    private const double LeastShare = 0.05;

    /// <summary>Rounds of voltage and current: each shrinks the miss to the share of the source's voltage that is lost.</summary>
    private const int Rounds = 20;

    private readonly FuelSystem system;
    private readonly OperatingPoint point;

    private BucketTest(FuelSystem system, OperatingPoint point, SystemState state, Duration time)
    {
        this.system = system;
        this.point = point;
        State = state;
        Time = time;
    }

    /// <summary>The state that the test runs in.</summary>
    public SystemState State { get; }

    /// <summary>How long the fuel is caught.</summary>
    public Duration Time { get; }

    /// <summary>Flow into the bucket, in m³/s.</summary>
    public VolumeFlow ExpectedFlow => SiUnits.VolumeFlow(Returned(State));

    /// <summary>What is in it at the end, in m³.</summary>
    public Volume ExpectedVolume => SiUnits.Volume(Returned(State) * Time.InSi());

    /// <summary>Voltage at the pumps that the prediction rests on; measure it there during the test.</summary>
    public ElectricPotential PumpVoltage => State.Pumps.MinBy(p => p.Voltage.InSi())!.Voltage;

    /// <summary>Predicts the test.</summary>
    /// <param name="system">A system with a pump and a return.</param>
    /// <param name="point">The conditions of the test; injectors are taken as shut, whatever its command.</param>
    /// <param name="time">How long the fuel is caught; greater than zero.</param>
    /// <returns>The prediction.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The system has no pump or no bypass regulator, so that nothing returns.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is not greater than zero.</exception>
    /// <exception cref="NoSolutionException">The system has no such state; the message says why.</exception>
    public static BucketTest Of(FuelSystem system, OperatingPoint point, Duration time)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(point);
        Guard.Positive(time, time.InSi(), nameof(time));
        if (system.Plan.Lines.All(l => l.Pump is null) || system.Plan.Lines.All(l => l.Regulator is null))
        {
            throw new ArgumentException(
                $"Must have a pump and a bypass regulator, whose return is caught; '{system.Name}' has not.",
                nameof(system)
            );
        }

        OperatingPoint standing = point.WithCommand(FuelCommand.Cut);
        return new(system, standing, system.Solve(standing), time);
    }

    /// <summary>Compares what was caught.</summary>
    /// <param name="measured">Volume in the bucket; not negative.</param>
    /// <param name="tolerance">The deviation that still counts as agreement, as a share; greater than zero.</param>
    /// <returns>The comparison, with what would explain a difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ShopComparison Compare(Volume measured, Ratio tolerance)
    {
        double caught = Guard.NotNegative(measured, measured.InSi(), nameof(measured)) / Time.InSi();
        double allowed = Guard.Positive(tolerance, tolerance.InSi(), nameof(tolerance));
        double expected = Returned(State);
        double deviation = (caught / expected) - 1;
        return new(
            Show.LitersPerHour(expected),
            Show.LitersPerHour(caught),
            deviation,
            allowed,
            Math.Abs(deviation) <= allowed ? [] : Causes(caught, expected)
        );
    }

    private IEnumerable<ShopCause> Causes(double caught, double expected)
    {
        double supply = point.Supply.InSi();
        double volts = PumpVoltage.InSi();
        double? FlowAt(double v) => Altered.Of(system, Altered.WithSupply(point, v), Returned);

        // Up to twice the voltage is searched; a pump's data end long before.
        double? other =
            caught < expected
                ? Altered.Search(FlowAt, caught, 0.2 * supply, supply)
                : Altered.Search(FlowAt, caught, supply, HighestSupply(FlowAt, supply));
        if (other is { } source)
        {
            double atPump = system.Solve(Altered.WithSupply(point, source)).Pumps.Min(p => p.Voltage.InSi());
            yield return new(
                caught < expected ? "Too little voltage at the pump" : "More voltage at the pump than stated",
                $"{Show.Volts(atPump)} instead of {Show.Volts(volts)}",
                Math.Abs(atPump - volts) / volts,
                "Measure at the pump's own terminals while the fuel runs."
            );
        }

        if (caught < expected)
        {
            if (
                Altered.Search(
                    s => Altered.Of(Altered.WithPumpShare(system, s), point, Returned),
                    caught,
                    LeastShare,
                    1
                ) is
                { } share
            )
            {
                yield return new(
                    "A worn pump, or one that draws air",
                    $"{Show.Percent(share)} of its flow",
                    1 - share,
                    "Voltage, current and rail pressure are right, and the flow is not."
                );
            }

            yield return new(
                "Fuel that runs back before the bucket: a check valve, a relief valve, an open joint in the tank",
                $"{Show.LitersPerHour(expected - caught)} of {Show.LitersPerHour(expected)}",
                1 - (caught / expected),
                "Pressure falls at once when the pump stops."
            );
        }

        foreach (ShopCause cause in PressureCauses(caught, expected))
        {
            yield return cause;
        }
    }

    /// <summary>The pressure at which the pumps, at their voltage, would deliver what was caught.</summary>
    private IEnumerable<ShopCause> PressureCauses(double caught, double expected)
    {
        if (State.Pumps.Length != 1)
        {
            yield break;
        }

        PumpMatch match = State.Pumps[0];
        Pump pump = system.Plan.Lines.First(l => l.Name == match.Line).Pump!;
        double rise = match.PressureRise.InSi();
        double delivered = match.Flow.InSi() + caught - expected;
        double most = pump.CurveAt(match.Voltage).GreatestPressureRise.InSi();

        // A pump delivers less against more pressure, so that the negative of its flow rises.
        double? found = Altered.Search(p => -FlowAgainst(pump, p), -delivered, 0, most);
        if (found is not { } needed)
        {
            yield break;
        }

        double change = needed - rise;
        double departure = Math.Abs(change) / rise;
        if (change > 0)
        {
            yield return new(
                "A restriction between tank and rail: strainer, filter, a pinched hose",
                $"{Show.Bar(change)} more loss than expected",
                departure,
                "Rail pressure is right while the pump's outlet is higher, or its inlet lower."
            );
            yield return new(
                "A regulator that is set too high, or a return that is choked",
                $"{Show.Bar(change)} above what was expected",
                departure,
                "Rail pressure is high by as much; with the return open to the air it falls if the return is at fault."
            );
        }
        else
        {
            yield return new(
                "A regulator that is set too low or does not close",
                $"{Show.Bar(-change)} below what was expected",
                departure,
                "Rail pressure is low by as much."
            );
        }
    }

    /// <summary>A pump's flow against a pressure, at the voltage that its current there leaves it; null outside its data.</summary>
    private double? FlowAgainst(Pump pump, double rise)
    {
        try
        {
            double volts = point.Supply.InSi();
            for (int round = 0; round < Rounds; round++)
            {
                ElectricCurrent current = pump.CurveAt(SiUnits.ElectricPotential(volts))
                    .CurrentAt(SiUnits.Pressure(rise));
                volts = system.Power.VoltsAt(point.Supply, current.InSi(), 0).Pumps;
            }

            return pump.CurveAt(SiUnits.ElectricPotential(volts)).FlowAt(SiUnits.Pressure(rise)).InSi();
        }
        catch (OutsideTableException)
        {
            return null;
        }
    }

    private static double HighestSupply(Func<double, double?> flowAt, double supply)
    {
        double highest = supply;
        for (double v = supply * 1.02; v <= 2 * supply && flowAt(v) is not null; v *= 1.02)
        {
            highest = v;
        }

        return highest;
    }

    private static double Returned(SystemState state) => state.Regulators.Sum(r => r.BypassedFlow.InSi());
}
