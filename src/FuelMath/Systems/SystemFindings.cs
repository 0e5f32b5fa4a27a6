using System.Collections.Immutable;
using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Regulators;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Systems;

/// <summary>Holds a solved state against the limits of its system, and says what to act on.</summary>
internal sealed class SystemFindings
{
    private static readonly DataSource ByDefinition = new("Definition", "what the part is for");

    private readonly FuelSystem system;
    private readonly OperatingPoint point;
    private readonly SystemParts parts;
    private readonly double[] pressures;
    private readonly double[] flows;
    private readonly List<Finding> found = [];

    private SystemFindings(
        FuelSystem system,
        OperatingPoint point,
        SystemParts parts,
        double[] pressures,
        double[] flows
    )
    {
        this.system = system;
        this.point = point;
        this.parts = parts;
        this.pressures = pressures;
        this.flows = flows;
    }

    private DataSource Source => system.Limits.Source;

    /// <summary>All findings, the gravest first.</summary>
    internal static ImmutableArray<Finding> Of(
        FuelSystem system,
        OperatingPoint point,
        SystemParts parts,
        double[] pressures,
        double[] flows
    )
    {
        var findings = new SystemFindings(system, point, parts, pressures, flows);
        findings.LookAtInjectors();
        findings.LookAtMixture();
        findings.LookAtRegulators();
        findings.LookAtPumps();
        findings.LookAtHoses();
        findings.LookAtVapor();
        return [.. findings.found.OrderByDescending(f => f.Severity)];
    }

    private void LookAtInjectors()
    {
        for (int s = 0; s < parts.Stages.Length; s++)
        {
            StageResult stage = parts.Stages[s];
            if (stage.IsShut || point.Command.Kind == FuelCommandKind.AllOpen)
            {
                continue;
            }

            double duty = stage.DutyCycle.InSi();
            double limit = system.Limits.DutyCycle.InSi();
            if (stage.IsHeldOpen)
            {
                Add(
                    Severity.Danger,
                    $"The {stage.Name} injectors have no time left to close",
                    Show.Percent(duty),
                    Show.Percent(limit),
                    "Fit larger injectors, raise the rail pressure within what every part allows, or lower the demand: the mixture can no longer be metered."
                );
            }
            else if (duty > limit)
            {
                Add(
                    Severity.Warning,
                    $"Duty cycle of the {stage.Name} injectors is high",
                    Show.Percent(duty),
                    Show.Percent(limit),
                    "Keep a reserve for heat, low voltage and ageing: larger injectors, or more of the secondaries."
                );
            }

            if (parts.Injectors.FirstOrDefault(i => i.Stage == stage.Name && !i.Pulse.IsRepeatable) is { } wandering)
            {
                Add(
                    Severity.Warning,
                    $"The {stage.Name} injectors are asked for a pulse shorter than they repeat",
                    $"{Show.Milliseconds(wandering.Pulse.EffectiveWidth.InSi())} after dead time",
                    Show.Milliseconds(wandering.Seat.Injector.SmallestRepeatableWidth.InSi()),
                    "The mixture will wander. Use smaller injectors for this range or a longer, less frequent pulse.",
                    wandering.Seat.Injector.Rating.Source
                );
            }

            LookAtDifferentialPressure(system.Stages[s]);
        }

        LookAtInjectorVoltage();
    }

    private void LookAtDifferentialPressure(InjectorStage stage)
    {
        double believed = stage.Belief.DifferentialPressure.InSi();
        double limit = system.Limits.PressureDeviation.InSi();
        InjectorResult? worst = parts
            .Injectors.Where(i => i.Stage == stage.Name)
            .MaxBy(i => Math.Abs(i.DifferentialPressure.InSi() - believed));
        if (worst is null)
        {
            return;
        }

        double off = (worst.DifferentialPressure.InSi() / believed) - 1;
        if (Math.Abs(off) > limit)
        {
            Add(
                off < -0.15 ? Severity.Danger : Severity.Warning,
                $"Injector differential pressure at '{worst.Seat.Node}' is not what the controller was told",
                $"{Show.Bar(worst.DifferentialPressure.InSi())} ({Show.Percent(off)} of {Show.Bar(believed)})",
                $"within {Show.Percent(limit)}",
                off < 0
                    ? "Less fuel passes at the same pulse width: find the pressure loss, or give the controller a measured pressure."
                    : "More fuel passes at the same pulse width: find what lifts the pressure, or give the controller a measured pressure."
            );
        }
    }

    private void LookAtInjectorVoltage()
    {
        InjectorResult? lowest = parts.Injectors.Where(i => !i.IsShut).MinBy(i => i.Voltage.InSi());
        double limit = system.Limits.VoltageDrop.InSi();
        if (lowest is not null && point.Supply.InSi() - lowest.Voltage.InSi() is var drop && drop > limit)
        {
            Add(
                Severity.Warning,
                "Voltage drop to the injectors is high",
                Show.Volts(drop),
                Show.Volts(limit),
                "Their dead time grows while the controller compensates for the voltage it measures: check supply, ground and contacts under load."
            );
        }
    }

    private void LookAtMixture()
    {
        if (parts.Target is not { } target)
        {
            return;
        }

        double limit = system.Limits.MixtureDeviation.InSi();
        if (parts.Lambda is { } lambda && Math.Abs((lambda.Si / target.Si) - 1) is var off && off > limit)
        {
            bool lean = lambda > target;
            Add(
                lean ? Severity.Danger : Severity.Warning,
                lean ? "The mixture is leaner than asked for" : "The mixture is richer than asked for",
                $"lambda {Show.Lambda(lambda.Si)}",
                $"{Show.Lambda(target.Si)} within {Show.Percent(limit)}",
                lean
                    ? "Do not load the engine: a lean mixture destroys it. Correct the characterization, the pressure or the injector size first."
                    : "Correct the characterization or the pressure before tuning anything else."
            );
        }

        foreach (ChamberMixture chamber in parts.Chambers)
        {
            if (
                chamber.Lambda is { } one
                && parts.Lambda is { } mean
                && (one.Si / mean.Si) - 1 is var lean
                && lean > limit
            )
            {
                Add(
                    Severity.Danger,
                    $"Chamber {chamber.Chamber} runs leaner than the others",
                    $"lambda {Show.Lambda(one.Si)}, {Show.Percent(lean)} above the mean",
                    Show.Percent(limit),
                    "One sensor sees the mean and hides it. Clean, exchange or individually correct that injector before any load."
                );
            }
        }
    }

    private void LookAtRegulators()
    {
        foreach (RegulatorResult regulator in parts.Regulators)
        {
            if (regulator.State == RegulatorState.Seated)
            {
                Add(
                    Severity.Danger,
                    $"Regulator '{regulator.Line}' is shut: the pump does not supply what is drawn",
                    $"inlet {Show.Bar(regulator.Inlet.Si)} gauge",
                    "regulating",
                    "Rail pressure has fallen below its set point: more pump, less restriction, more voltage at the pump, or less demand.",
                    ByDefinition
                );
            }
            else if (regulator.State == RegulatorState.FullyOpen)
            {
                Add(
                    Severity.Warning,
                    $"Regulator '{regulator.Line}' is fully open: the return path lifts the rail pressure",
                    $"inlet {Show.Bar(regulator.Inlet.Si)} gauge",
                    "regulating",
                    "Widen the return line or pump less: the rail pressure is no longer set by the regulator.",
                    ByDefinition
                );
            }
        }
    }

    private void LookAtPumps()
    {
        double drawn = parts.Injectors.Sum(i => i.MeanFlow.InSi());
        double bypassed = parts.Regulators.Sum(r => r.BypassedFlow.InSi());
        double limit = system.Limits.PumpReserve.InSi();
        if (parts.Regulators.Length > 0 && drawn > 0 && bypassed > 0 && bypassed < limit * drawn)
        {
            Add(
                Severity.Warning,
                "Little flow is left over for the regulator",
                $"{Show.LitersPerHour(bypassed)} bypassed beside {Show.LitersPerHour(drawn)} drawn",
                $"at least {Show.Percent(limit)} of the flow drawn",
                "A worn pump, a loaded filter or a tired battery will let rail pressure fall here first."
            );
        }

        double allowed = system.Limits.VoltageDrop.InSi();
        foreach (PumpMatch pump in parts.Pumps)
        {
            if (pump.IsStalled)
            {
                Add(
                    Severity.Danger,
                    $"Pump '{pump.Line}' delivers nothing against this pressure",
                    $"at {Show.Volts(pump.Voltage.InSi())}",
                    "a flow",
                    "Find what blocks the path; a pump that runs dead-headed heats its fuel.",
                    ByDefinition
                );
            }

            double drop = point.Supply.InSi() - pump.Voltage.InSi();
            if (drop > allowed)
            {
                Add(
                    Severity.Warning,
                    $"Voltage drop to pump '{pump.Line}' is high",
                    Show.Volts(drop),
                    Show.Volts(allowed),
                    "Thicker or shorter conductors, a relay near the pump, clean grounds; fuse at the battery as the wire demands."
                );
            }
        }
    }

    private void LookAtHoses()
    {
        var suction = system
            .Plan.Lines.Where(l => l.Pump is not null)
            .Select(l => l.From)
            .ToHashSet(StringComparer.Ordinal);
        for (int i = 0; i < system.Plan.Lines.Length; i++)
        {
            FuelLine line = system.Plan.Lines[i];
            if (line.Hose is not { } hose)
            {
                continue;
            }

            bool ahead = suction.Contains(line.To);
            double speed = hose.VelocityAt(SiUnits.VolumeFlow(Math.Abs(flows[i]))).InSi();
            double limit = (ahead ? system.Limits.SuctionVelocity : system.Limits.FeedVelocity).InSi();
            if (speed > limit)
            {
                Add(
                    ahead ? Severity.Warning : Severity.Note,
                    $"Fuel runs fast in hose '{line.Name}'",
                    Show.MetersPerSecond(speed),
                    Show.MetersPerSecond(limit),
                    ahead
                        ? "A larger suction hose: pressure lost ahead of a pump makes vapor."
                        : "Pressure losses grow with its square; a larger bore costs little."
                );
            }
        }
    }

    private void LookAtVapor()
    {
        if (!system.Fuel.HasVaporPressure)
        {
            Add(
                Severity.Note,
                $"No vapor pressure is known for '{system.Fuel.Name}'",
                "unknown",
                "none",
                "Hot-fuel behavior is not checked. Measure the blend, or keep the fuel cool and the pump inlet flooded.",
                ByDefinition
            );
            return;
        }

        double vapor;
        try
        {
            vapor = system.Fuel.VaporPressureAt(point.Fuel).Si;
        }
        catch (ArgumentOutOfRangeException outside)
        {
            Add(
                Severity.Note,
                "Vapor margin is not checked at this fuel temperature",
                $"{point.Fuel.InSi() - 273.15:0} degC",
                "the range of the vapor-pressure data",
                outside.Message.Split(Environment.NewLine)[0],
                ByDefinition
            );
            return;
        }

        double least = double.PositiveInfinity;
        string where = "";
        for (int i = 0; i < pressures.Length; i++)
        {
            double margin = pressures[i] + point.Ambient.Si - vapor;
            if (margin < least)
            {
                (least, where) = (margin, system.Plan.Nodes[i].Name);
            }
        }

        double limit = system.Limits.VaporMarginDifference.InSi();
        if (least < limit)
        {
            Add(
                least <= 0 ? Severity.Danger : Severity.Warning,
                $"Fuel is near boiling at '{where}'",
                $"{Show.Bar(least)} above vapor pressure",
                Show.Bar(limit),
                "Cool the fuel, flood the pump inlet, shorten and widen the suction side, or use a less volatile fuel."
            );
        }
    }

    private void Add(Severity severity, string what, string value, string limit, string action) =>
        Add(severity, what, value, limit, action, Source);

    private void Add(Severity severity, string what, string value, string limit, string action, DataSource source) =>
        found.Add(new Finding(severity, what, value, limit, source, action));
}
