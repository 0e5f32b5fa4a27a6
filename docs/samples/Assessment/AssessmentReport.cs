using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>Prints what stands behind the verdict: points, path, flow of each part, margins, injectors on the bench.</summary>
internal sealed class AssessmentReport(
    FuelSystem system,
    IReadOnlyList<SolvedPoint> points,
    MeasuredSet? measured,
    TextWriter to
)
{
    internal void Print()
    {
        PrintNumbers();
        Cautions();
    }

    internal void PrintNumbers()
    {
        to.Heading($"Appendix: {system.Name}");
        to.WriteLine($"  Data: {system.Source}");
        to.WriteLine(
            $"  Fuel: {system.Fuel.Name}, stoichiometric air-fuel ratio {system.Fuel.StoichiometricRatio} by mass"
        );
        to.WriteLine(
            "  A lean cylinder destroys an engine and leaking gasoline burns people: read the findings and the cautions."
        );
        OperatingPoints();
        Path();
        Margins();
        SurgeTanks();
        Switches();
        if (measured is not null)
        {
            new MeasuredReport(system, measured, to).Print();
        }
    }

    private void OperatingPoints()
    {
        to.Heading("Operating points");
        var table = new Table(
            "point",
            "speed rpm",
            "manifold kPa abs",
            "fuel degC",
            "supply V",
            "pump V",
            "rail bar gauge",
            "injector dp bar",
            "width ms",
            "duty %",
            "asked for",
            "lambda"
        );
        foreach (SolvedPoint solved in points)
        {
            if (solved.State is not { } state)
            {
                continue;
            }

            SystemState.StageResult busiest = state.Stages.MaxBy(s => s.DutyCycle.DecimalFractions)!;
            SystemState.InjectorResult injector = state.Injectors.MinBy(i => i.DifferentialPressure.Pascals)!;
            table.Add(
                solved.Point.Name,
                Say.Number(solved.Point.Speed.RevolutionsPerMinute, "0"),
                Say.Kilopascals(solved.Point.Air.Manifold),
                Say.Number(solved.Point.Fuel.DegreesCelsius, "0"),
                Say.Volts(solved.Point.Supply),
                state.Pumps.IsEmpty ? "-" : string.Join(" ", state.Pumps.Select(p => Say.Volts(p.Voltage))),
                Say.Bar(state.PressureAt(injector.Seat.Node)),
                Say.Bar(injector.DifferentialPressure),
                string.Join(" / ", state.Stages.Select(s => s.IsShut ? "shut" : Say.Milliseconds(s.PulseWidth))),
                string.Join(" / ", state.Stages.Select(s => s.IsShut ? "-" : Say.Percent(s.DutyCycle))),
                Asked(solved.Point.Command),
                Say.Mixture(state.Lambda, state.LambdaIfOilUnburned)
            );
        }

        table.Print(to);
        if (system.Fuel.OilFraction.DecimalFractions > 0)
        {
            to.WriteLine(
                "  Premix: the first lambda holds if all oil burns, the second if none does; the truth lies between."
            );
        }

        to.WriteLine(
            "  Lowest injector differential pressure (dp) of all injectors. Two numbers: primaries / secondaries."
        );
        to.WriteLine(
            "  Held: a sensor corrects the mean mixture. Open: nobody corrects; lambda is what the controller's belief makes of it."
        );
        if (system.Engine.TrappingEfficiency.DecimalFractions < 1)
        {
            Trapped();
        }
    }

    /// <summary>A two-stroke loses air through the exhaust: what burns is richer by as much fuel as stays behind.</summary>
    private void Trapped()
    {
        to.WriteLine(
            $"  Two-stroke: {Say.Percent(system.Engine.TrappingEfficiency)} % of the air is trapped. Lambda above is delivered air over delivered fuel, as a sensor in the"
        );
        to.WriteLine(
            "  exhaust sees it. What burns lies between it (fuel lost with the air) and, were all fuel trapped:"
        );
        to.WriteLine(
            "    "
                + string.Join(
                    "; ",
                    points
                        .Where(p => p.State?.Lambda is not null)
                        .Select(p =>
                            $"{p.Point.Name} {system.Engine.TrappedLambda(p.State!.Lambda!.Value, Ratio.FromDecimalFractions(1))}"
                        )
                )
        );
    }

    private void Path()
    {
        var solved = points.Where(p => p.State is not null).ToList();
        to.Heading("Pressure along the path, bar gauge");
        var table = new Table(["node", .. solved.Select(p => p.Point.Name)]);
        foreach (Network.Node node in system.Network.Nodes)
        {
            table.Add([
                node.Name,
                .. solved.Select(p =>
                    p.State!.Network.CutOffNodes.Contains(node.Name)
                        ? "cut off"
                        : Say.Bar(p.State.PressureAt(node.Name))
                ),
            ]);
        }

        table.Print(to);
        if (system.Network.Nodes.Select(n => n.Elevation.Meters).Distinct().Count() > 1)
        {
            to.WriteLine(
                "  Nodes stand at different heights: a lower one shows more than the one before it, a higher one less, down to below zero."
            );
        }

        to.Heading("Flow through each part, L/h");
        table = new Table(["part", .. solved.Select(p => p.Point.Name)]);
        foreach (Line line in system.Network.Lines)
        {
            table.Add([line.Name, .. solved.Select(p => Say.LitersPerHour(p.State!.FlowThrough(line.Name)))]);
        }

        table.Print(to);
    }

    private void Margins()
    {
        to.Heading("Margins");
        var table = new Table(
            "point",
            "fuel drawn L/h",
            "reserve L/h",
            "reserve %",
            "regulator",
            "pump L/h at bar rise",
            "pump A",
            "pulsing time/flow"
        );
        foreach (SolvedPoint solved in points)
        {
            if (solved.State is not { } state)
            {
                continue;
            }

            double drawn = state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
            double? reserve = state.PumpReserve?.LitersPerHour;
            table.Add(
                solved.Point.Name,
                Say.Number(drawn, "0.0"),
                reserve is { } left ? Say.Number(left, "0.0") : "-",
                drawn > 0 && reserve is { } spare ? Say.Number(100 * spare / drawn, "0") : "-",
                string.Join(" ", state.Regulators.Select(r => Word(r.State))),
                string.Join(" ", state.Pumps.Select(p => $"{Say.LitersPerHour(p.Flow)} at {Say.Bar(p.PressureRise)}")),
                string.Join(" ", state.Pumps.Select(p => Say.Number(p.Current.Amperes, "0.0"))),
                string.Join(" / ", state.Stages.Select(s => s.IsShut ? "-" : PulsingWords(s)))
            );
        }

        table.Print(to);
        to.WriteLine(
            "  Reserve: what the pumps could still give at the pressure that must hold, and as a share of what is drawn. Pump: flow at its rise."
        );
        to.WriteLine(
            "  Pulsing: factor on losses with the square of the flow, averaged over time and over flow, in a line that carries the stage"
        );
        to.WriteLine(
            "  alone and follows at once; <= where the firing order is not known. Damping lowers it, a line that resonates may exceed it."
        );
    }

    private void SurgeTanks()
    {
        var table = new Table(
            "point",
            "surge tank",
            "lifted L/h",
            "returned L/h",
            "drawn L/h",
            "overflow L/h",
            "lasts"
        );
        (string Point, SurgeTank.FuelBalance Tank)[] all =
        [
            .. points.SelectMany(p => p.State is { } s ? s.SurgeTanks.Select(t => (p.Point.Name, t)) : []),
        ];
        if (all.Length == 0)
        {
            return;
        }

        foreach ((string point, SurgeTank.FuelBalance tank) in all)
        {
            table.Add(
                point,
                tank.Node,
                Say.LitersPerHour(tank.LiftFlow),
                Say.LitersPerHour(tank.ReturnFlow),
                Say.LitersPerHour(tank.DrawnFlow),
                Say.LitersPerHour(tank.OverflowFlow),
                tank.DrainsWithLift ? $"{Say.Number(tank.LastsWithLift().Seconds, "0")} s"
                    : tank.DrainsWithoutLift
                        ? $"{Say.Number(tank.LastsWithoutLift().Seconds, "0")} s if the lift pump sucks air"
                    : "without end"
            );
        }

        to.Heading("Surge tanks");
        table.Print(to);
    }

    private void Switches()
    {
        if (system.Network.Lines.All(l => l.Switch is null))
        {
            return;
        }

        to.Heading("Pumps on a switch");
        foreach (SolvedPoint solved in points.Where(p => p.State is not null))
        {
            to.WriteLine($"  {solved.Point.Name}: {string.Join(" ", solved.State!.Remarks)}");
        }
    }

    private static string PulsingWords(SystemState.StageResult stage) =>
        (stage.FiringGroups is null ? "<= " : "")
        + Say.Number(stage.QuadraticLossFactor.DecimalFractions, "0.00")
        + "/"
        + Say.Number(stage.FlowWeightedLossFactor.DecimalFractions, "0.00");

    private void Cautions()
    {
        to.Heading("Cautions");
        foreach (string caution in SampleCautions.All(system))
        {
            to.WriteLine($"  - {caution}");
        }
    }

    private static string Asked(FuelCommand command) =>
        command.Kind switch
        {
            FuelCommand.CommandKind.HoldLambda => $"{Say.Mixture(command.Lambda)} held",
            FuelCommand.CommandKind.OpenLoop => $"{Say.Mixture(command.Lambda)} open",
            FuelCommand.CommandKind.PulseWidths => "widths",
            FuelCommand.CommandKind.AllOpen => "all open",
            _ => "cut",
        };

    private static string Word(RegulatorCondition state) =>
        state switch
        {
            RegulatorCondition.Seated => "seated",
            RegulatorCondition.Regulating => "regulating",
            _ => "fully open",
        };
}
