namespace FuelMath;

/// <summary>What there is to say of the path: what its parts say of themselves, and what no part knows.</summary>
internal sealed class PathFindings(SolvedSystem solved)
{
    internal void Find()
    {
        LookAtReserve();
        LookAtVoltages();
        for (int i = 0; i < solved.System.Network.Lines.Length; i++)
        {
            Line line = solved.System.Network.Lines[i];
            foreach (Finding finding in line.Part.FindingsAt(solved.StateOf(i)))
            {
                solved.Add(finding);
            }

            LookAtEstimates(line);
            foreach (Finding finding in line.Origin?.Check() ?? [])
            {
                solved.Add(finding);
            }
        }

        foreach (SurgeTankBalance tank in solved.Parts.SurgeTanks)
        {
            LookAt(tank);
        }
    }

    /// <summary>A surge tank that drains, or that its lift pump hardly keeps full.</summary>
    private void LookAt(SurgeTankBalance tank)
    {
        foreach (Finding drains in tank.Check())
        {
            solved.Add(drains);
        }

        double lost = tank.DrawnFlow.InSi() - tank.ReturnFlow.InSi();
        double limit = solved.System.Limits.PumpReserve.InSi();
        double spare = tank.LiftFlow.InSi() - lost;
        if (lost > 0 && !tank.DrainsWithLift && spare < limit * lost)
        {
            solved.Add(
                FindingCode.PumpReserveLow,
                Severity.Warning,
                tank.Node,
                $"What is lifted into surge tank '{tank.Node}' is little more than it loses",
                Shown.LitersPerHour(spare).As(n => $"{n} overflow beside {Show.LitersPerHour(lost)} that it loses"),
                Shown.LitersPerHour(limit * lost).As(n => $"at least {n}, {Show.Percent(limit)} of what it loses"),
                "A worn lift pump, a loaded strainer or a low battery will let the tank drain here first: its pump then sucks air."
            );
        }
    }

    /// <summary>Whether a regulator can't hold its pressure: a finding of its own, and no question of reserve.</summary>
    private bool IsStarved =>
        AtTheRails.Regulators.Any(r =>
            r.State == (r.IsReducing ? RegulatorCondition.FullyOpen : RegulatorCondition.Seated)
        );

    private SystemParts AtTheRails => PumpReserve.AtTheRails(solved.System, solved.Parts);

    private void LookAtReserve()
    {
        double drawn = solved.Parts.Demand;
        double limit = solved.System.Limits.PumpReserve.InSi();
        if (solved.Parts.Reserve is { } reserve && drawn > 0 && !IsStarved && reserve < limit * drawn)
        {
            solved.Add(
                FindingCode.PumpReserveLow,
                Severity.Warning,
                "pumps",
                "The pumps can give little more at the pressure that must hold",
                Shown.LitersPerHour(reserve).As(n => $"{n} left beside {Show.LitersPerHour(drawn)} drawn"),
                Shown.LitersPerHour(limit * drawn).As(n => $"at least {n}, {Show.Percent(limit)} of the flow drawn"),
                "A worn pump, a loaded filter or a tired battery will let rail pressure fall here first."
            );
        }

        bool mixed = PumpReserve.IsMixed(AtTheRails, drawn);
        if (solved.Parts.Reserve is null && drawn > 0 && (mixed || !AtTheRails.Pumps.IsEmpty))
        {
            solved.Add(
                Finding
                    .Of(
                        FindingCode.PumpReserveNotKnown,
                        Severity.Note,
                        "pumps",
                        mixed
                            ? "What the pumps could still give is not known: some are in series, others in parallel, or fuel circulates between them"
                            : "What the pumps could still give is not known: without a regulator, nothing but what the controller was told says which pressure must hold",
                        Shown.LitersPerHour(drawn).As(n => $"{n} drawn"),
                        Shown
                            .LitersPerHour(limit * drawn)
                            .As(n => $"at least {n}, {Show.Percent(limit)} of the flow drawn"),
                        PartState.ByDefinition,
                        "Solve a point that draws more, and see whether the pressure still holds there."
                    )
                    .AsNotKnown()
            );
        }
    }

    private void LookAtVoltages()
    {
        double allowed = solved.System.Limits.VoltageDrop.InSi();
        foreach (SystemState.PumpResult pump in solved.Parts.Pumps)
        {
            double drop = solved.Parts.SourceVolts - pump.Voltage.InSi();
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

    /// <summary>A coefficient that rests on assumptions is said, not hidden.</summary>
    private void LookAtEstimates(Line line)
    {
        if (!line.Part.Estimated.IsEmpty)
        {
            solved.Add(
                FindingCode.LossEstimated,
                Severity.Note,
                line.Name,
                $"Loss coefficients on line '{line.Name}' are estimates",
                string.Join(", ", line.Part.Estimated),
                "none",
                "Measure the pressure across the line when it matters.",
                PartState.ByDefinition
            );
        }
    }
}
