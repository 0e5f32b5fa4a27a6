using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>The air and the wanted fuel of a chamber; below the injectors, lambda of each chamber and of all.</summary>
internal sealed class MixtureRows
{
    private readonly StateRows rows;
    private readonly SystemState state;
    private readonly SpreadsheetText air;
    private readonly SpreadsheetText stoichiometric;

    internal MixtureRows(
        StateRows rows,
        FuelSystem system,
        SystemState state,
        SpreadsheetText speed,
        SpreadsheetText manifold,
        SpreadsheetText charge
    )
    {
        (this.rows, this.state) = (rows, state);
        OperatingPoint point = state.Point;
        rows.Head("Air and fuel of a chamber in one working cycle");
        double cycles = system.Engine.CyclesPerSecond(point.Speed).Si();
        Turns = cycles > 0;
        if (!Turns)
        {
            return;
        }

        RevolutionsPerCycle = point.Speed.Si() / (2 * Math.PI) / cycles;
        Cycle = rows.Live(
            "time of a working cycle",
            RevolutionsPerCycle * (2 * Math.PI) / speed,
            SheetUnit.Milliseconds,
            "revolutions of a cycle over engine speed"
        );
        SpreadsheetText airDensity = rows.Live(
            "air density in the manifold",
            EngineAir.AirDensity(manifold, charge),
            SheetUnit.Density,
            "equation of state [ISO-2533]"
        );
        SpreadsheetText displacement = rows.Given(
            "displacement of a chamber",
            system.Engine.ChamberDisplacement.Si(),
            SheetUnit.CubicCentimeters,
            system.Engine.Name
        );
        SpreadsheetText efficiency = rows.Solved(
            "volumetric efficiency",
            system.Engine.VolumetricEfficiency.At(point.Speed, point.Air.Manifold).Si(),
            SheetUnit.Percent,
            "from the engine's table at this point"
        );
        double moist = system.Engine.AirMassPerChamberCycle(point.Speed, point.Air.Manifold, point.Air.Charge).Si();
        SpreadsheetText dry = rows.Solved(
            "share of the charge that is dry air",
            state.Chambers.Length > 0 ? state.Chambers[0].Air.Si() / moist : 1,
            SheetUnit.Percent,
            point.Air.Humidity is null ? "no humidity was given" : "after humidity"
        );
        SpreadsheetText charged = EngineAir.AirMassPerEvent(displacement, efficiency, airDensity);
        air = rows.Live(
            "air in a chamber",
            charged * dry,
            SheetUnit.Milligrams,
            "displacement, volumetric efficiency, density [Heywood-1988]"
        );
        stoichiometric = rows.Solved(
            "stoichiometric air-fuel ratio",
            system.Fuel.StoichiometricRatio.ToMassRatio(),
            SheetUnit.None,
            $"{system.Fuel.Name}, from its composition"
        );
        if (state.TargetLambda is not { } target)
        {
            return;
        }

        SpreadsheetText lambda = rows.Given("lambda asked for", target.ToRatio(), SheetUnit.None, "the command");
        if (point.Command.Kind == FuelCommand.CommandKind.HoldLambda)
        {
            Wanted = rows.Live(
                "fuel wanted for all chambers",
                EngineAir.FuelMass(air, stoichiometric, lambda) * system.Engine.Chambers,
                SheetUnit.Milligrams,
                "air over lambda and ratio"
            );
            return;
        }

        double told = system.Stages[0].Belief!.Fuel.StoichiometricRatio.ToMassRatio();
        ReckonedSi = moist / (told * target.ToRatio());
        Reckoned = rows.Live(
            "fuel of a chamber as the controller reckons",
            EngineAir.FuelMass(charged, SpreadsheetText.Of(told), lambda),
            SheetUnit.Milligrams,
            string.Create(
                CultureInfo.InvariantCulture,
                $"it knows of no humidity and was told {system.Stages[0].Belief!.Fuel.Name}, {told:0.###}"
            )
        );
    }

    internal bool Turns { get; }

    internal double RevolutionsPerCycle { get; }

    /// <summary>The time of a working cycle, s.</summary>
    internal SpreadsheetText Cycle { get; }

    /// <summary>The wanted fuel of all chambers in a cycle, kg; null for other commands.</summary>
    internal SpreadsheetText? Wanted { get; }

    /// <summary>
    /// The fuel of one chamber in a cycle as computed by a controller without a sensor, kg; null for other commands.
    /// </summary>
    internal SpreadsheetText? Reckoned { get; }

    /// <summary>The same in the solved state, kg.</summary>
    internal double ReckonedSi { get; }

    /// <summary>Writes lambda of each chamber and of all.</summary>
    /// <returns>The cell of the mean; null where there is none.</returns>
    internal string? Write(InjectorRows injectors)
    {
        if (state.Lambda is not { } mean)
        {
            return null;
        }

        rows.Head("Mixture");
        SpreadsheetText fuel = SpreadsheetText.Of(0);
        foreach (PredictedMixture.ChamberMixture chamber in state.Chambers)
        {
            SpreadsheetText own = injectors.FuelOf(chamber.Chamber);
            fuel += own;
            if (chamber.Lambda is { } solved)
            {
                rows.Result(
                    string.Create(CultureInfo.InvariantCulture, $"lambda of chamber {chamber.Chamber}"),
                    Combustion.Lambda(air, own, stoichiometric),
                    SheetUnit.None,
                    string.Create(CultureInfo.InvariantCulture, $"in the solved state {solved.ToRatio():0.0000}")
                );
            }
        }

        return rows.Result(
            "lambda of all chambers together",
            Combustion.Lambda(air * state.Chambers.Length, fuel, stoichiometric),
            SheetUnit.None,
            string.Create(CultureInfo.InvariantCulture, $"in the solved state {mean.ToRatio():0.0000}")
        );
    }
}
