using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Regulators;

namespace FuelMath.Systems;

/// <summary>What there is to say of regulators, pumps and hoses.</summary>
internal sealed class PathFindings(SolvedSystem solved)
{
    internal void Look()
    {
        LookAtRegulators();
        LookAtReliefs();
        LookAtPumps();
        LookAtHoses();
        LookAtFittings();
        LookAtFilters();
    }

    private void LookAtRegulators()
    {
        foreach (RegulatorResult regulator in solved.Parts.Regulators)
        {
            if (regulator.IsReducing)
            {
                LookAtReducing(regulator);
            }
            else if (regulator.State == RegulatorState.Seated)
            {
                solved.Add(
                    FindingCode.RegulatorShut,
                    Severity.Danger,
                    regulator.Line,
                    $"Regulator '{regulator.Line}' is shut: the pump does not supply what is drawn",
                    $"inlet {Show.Bar(regulator.Inlet.Si)} gauge",
                    "regulating",
                    "Rail pressure has fallen below its set point: more pump, less restriction, more voltage at the pump, or less demand.",
                    SolvedSystem.ByDefinition
                );
            }
            else if (regulator.State == RegulatorState.FullyOpen)
            {
                solved.Add(
                    FindingCode.RegulatorFullyOpen,
                    Severity.Warning,
                    regulator.Line,
                    $"Regulator '{regulator.Line}' is fully open: the return path lifts the rail pressure",
                    $"inlet {Show.Bar(regulator.Inlet.Si)} gauge",
                    "regulating",
                    "Widen the return line or pump less: the rail pressure is no longer set by the regulator.",
                    SolvedSystem.ByDefinition
                );
            }
        }
    }

    /// <summary>Seated is satisfied and worth no word; starved is not.</summary>
    private void LookAtReducing(RegulatorResult regulator)
    {
        if (regulator.State == RegulatorState.FullyOpen)
        {
            solved.Add(
                FindingCode.RegulatorStarved,
                Severity.Danger,
                regulator.Line,
                $"Regulator '{regulator.Line}' is starved: its supply does not reach what it should hold",
                $"outlet {Show.Bar(regulator.Outlet.Si)} gauge from {Show.Bar(regulator.Inlet.Si)} gauge",
                "regulating",
                "Rail pressure has fallen below its set point: more pump, less restriction ahead of it, more voltage at the pump, or less demand.",
                SolvedSystem.ByDefinition
            );
        }
    }

    /// <summary>A valve that is there for the worst should be shut.</summary>
    private void LookAtReliefs()
    {
        for (int i = 0; i < solved.System.Plan.Lines.Length; i++)
        {
            if (solved.System.Plan.Lines[i] is { Relief: { } relief } line && solved.Flows[i] > 0)
            {
                solved.Add(
                    FindingCode.ReliefOpen,
                    Severity.Warning,
                    line.Name,
                    $"Relief valve '{line.Name}' is open",
                    Shown.LitersPerHour(solved.Flows[i]),
                    "shut",
                    "What passes it heats the fuel in a circle: find what lifts the pressure, and keep its way back clear.",
                    relief.Source
                );
            }
        }
    }

    /// <summary>Whether a regulator can't hold its pressure: a finding of its own, and no question of reserve.</summary>
    private bool IsStarved =>
        solved.Parts.Regulators.Any(r => r.State == (r.IsReducing ? RegulatorState.FullyOpen : RegulatorState.Seated));

    private void LookAtPumps()
    {
        double drawn = solved.Parts.Injectors.Sum(i => i.MeanFlow.InSi());
        double limit = solved.System.Limits.PumpReserve.InSi();
        if (solved.Parts.Reserve is { } reserve && drawn > 0 && !IsStarved && reserve < limit * drawn)
        {
            solved.Add(
                FindingCode.PumpReserveLow,
                Severity.Warning,
                "pumps",
                "The pumps can give little more at the pressure that must hold",
                Shown
                    .LitersPerHour(reserve)
                    .As($"{Show.LitersPerHour(reserve)} left beside {Show.LitersPerHour(drawn)} drawn"),
                Shown
                    .LitersPerHour(limit * drawn)
                    .As($"at least {Show.LitersPerHour(limit * drawn)}, {Show.Percent(limit)} of the flow drawn"),
                "A worn pump, a loaded filter or a tired battery will let rail pressure fall here first."
            );
        }

        double allowed = solved.System.Limits.VoltageDrop.InSi();
        foreach (PumpMatch pump in solved.Parts.Pumps)
        {
            if (pump.IsStalled)
            {
                solved.Add(
                    FindingCode.PumpStalled,
                    Severity.Danger,
                    pump.Line,
                    $"Pump '{pump.Line}' delivers nothing against this pressure",
                    $"at {Show.Volts(pump.Voltage.InSi())}",
                    "a flow",
                    "Find what blocks the path; a pump that runs dead-headed heats its fuel.",
                    SolvedSystem.ByDefinition
                );
            }

            double drop = solved.Point.Supply.InSi() - pump.Voltage.InSi();
            if (drop > allowed)
            {
                solved.Add(
                    FindingCode.PumpVoltageLow,
                    Severity.Warning,
                    pump.Line,
                    $"Voltage drop to pump '{pump.Line}' is high",
                    Shown.Volts(drop),
                    Shown.Volts(allowed),
                    "Thicker or shorter conductors, a relay near the pump, clean grounds; fuse at the battery as the wire demands."
                );
            }
        }
    }

    private void LookAtCollapse()
    {
        double density = solved.System.Fuel.DensityAt(solved.Point.Fuel).InSi();
        double viscosity = solved.System.Fuel.ViscosityAt(solved.Point.Fuel).InSi();
        for (int i = 0; i < solved.System.Plan.Lines.Length; i++)
        {
            if (
                solved.System.Plan.Lines[i] is { Filter: { CollapseDifferentialPressure: { } limit } filter } line
                && Math.Abs(filter.LossSi(solved.Flows[i], density, viscosity)) is { } loss
                && loss > limit.InSi()
            )
            {
                solved.Add(
                    FindingCode.FilterCollapse,
                    Severity.Danger,
                    line.Name,
                    $"Filter '{line.Name}' loses more than its element stands",
                    Shown.Bar(loss),
                    Shown.Bar(limit.InSi()),
                    "Change the element: a collapsed one sends its dirt to the injectors, all at once.",
                    filter.Source
                );
            }
        }
    }

    private void LookAtHoses()
    {
        for (int i = 0; i < solved.System.Plan.Lines.Length; i++)
        {
            FuelLine line = solved.System.Plan.Lines[i];
            if (line.Hose is not { } hose)
            {
                continue;
            }

            bool ahead = solved.System.Plan.IsAheadOfAPump(i);
            double speed = hose.VelocityAt(SiUnits.VolumeFlow(Math.Abs(solved.Flows[i]))).InSi();
            double limit = (ahead ? solved.System.Limits.SuctionVelocity : solved.System.Limits.FeedVelocity).InSi();
            if (speed > limit)
            {
                solved.Add(
                    FindingCode.HoseVelocityHigh,
                    ahead ? Severity.Warning : Severity.Note,
                    line.Name,
                    $"Fuel runs fast in hose '{line.Name}'",
                    Shown.MetersPerSecond(speed),
                    Shown.MetersPerSecond(limit),
                    ahead
                        ? "A larger suction hose: pressure lost ahead of a pump makes vapor."
                        : "Pressure losses grow with its square; a larger bore costs little."
                );
            }
        }
    }

    /// <summary>A coefficient that rests on assumptions is said, not hidden.</summary>
    private void LookAtFittings()
    {
        for (int i = 0; i < solved.System.Plan.Lines.Length; i++)
        {
            if (solved.System.Plan.EstimatedFittings(i) is { } guessed)
            {
                solved.Add(
                    FindingCode.LossEstimated,
                    Severity.Note,
                    solved.System.Plan.Lines[i].Name,
                    $"Loss coefficients on line '{solved.System.Plan.Lines[i].Name}' are estimates",
                    guessed,
                    "none",
                    "Measure the pressure across the line when it matters.",
                    SolvedSystem.ByDefinition
                );
            }
        }
    }

    /// <summary>Beyond the tested flow a filter's loss is its fitted law carried on: said, not hidden.</summary>
    private void LookAtFilters()
    {
        LookAtCollapse();
        for (int i = 0; i < solved.System.Plan.Lines.Length; i++)
        {
            FuelLine line = solved.System.Plan.Lines[i];
            if (
                line.Filter is { } filter
                && Math.Abs(solved.Flows[i]) > filter.GreatestFlow.InSi() * (1 + Guard.EdgeTolerance)
            )
            {
                solved.Add(
                    FindingCode.FilterBeyondTest,
                    Severity.Warning,
                    line.Name,
                    $"Filter '{line.Name}' carries more than it was tested for: its loss is extrapolated",
                    Shown.LitersPerHour(Math.Abs(solved.Flows[i])),
                    Shown.LitersPerHour(filter.GreatestFlow.InSi()),
                    "Ask its maker for points at this flow, or fit a larger one.",
                    filter.Source
                );
            }
        }
    }
}
