using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Workbooks;

/// <summary>A stage whose pulse width the controller computes from its belief, without a sensor.</summary>
internal sealed class ToldStage
{
    /// <summary>The number of rows that it adds to those of any stage.</summary>
    internal const int Rows = 4;

    private readonly InjectorStage stage;
    private readonly MixtureRows mixture;
    private readonly Pressure across;
    private readonly Injector.PulseResult pulse;
    private readonly double pulsesPerChamber;

    private ToldStage(
        InjectorStage stage,
        MixtureRows mixture,
        Pressure across,
        Injector.PulseResult pulse,
        double pulsesPerChamber
    )
    {
        (this.stage, this.mixture) = (stage, mixture);
        (this.across, this.pulse, this.pulsesPerChamber) = (across, pulse, pulsesPerChamber);
    }

    private ControllerBelief Belief => stage.Belief!;

    /// <summary>The stage by the controller's belief; null where its width is not computed or zero.</summary>
    internal static ToldStage? Of(
        FuelSystem system,
        SystemState state,
        SystemState.StageResult result,
        MixtureRows mixture
    )
    {
        InjectorStage stage = system.Stages.First(s => s.Name == result.Name);
        if (mixture.Reckoned is null || result.IsShut || result.IsHeldOpen)
        {
            return null;
        }

        AbsolutePressure discharge =
            stage.Discharge == InjectorStage.DischargePlace.Manifold
                ? state.Point.Air.Manifold
                : state.Point.Air.Ambient;
        SystemState.InjectorResult[] own = [.. state.Injectors.Where(i => i.Stage == stage.Name)];
        Pressure across =
            stage.Belief!.DifferentialPressureAt(discharge, state.Point.Air.Ambient)
            ?? Pressure.FromPascals(own.Average(i => i.DifferentialPressure.Si()));
        Injector.PulseResult pulse = stage.Belief!.Injector.Deliver(
            result.PulseWidth,
            result.Period,
            across,
            stage.Belief!.Fuel.DensityAt(stage.Belief!.FuelTemperature),
            state.SourceVoltage
        );
        return pulse.IsHeldOpen || pulse.EffectiveWidth.Si() <= 0
            ? null
            : new(stage, mixture, across, pulse, (double)own.Length * stage.PulsesPerCycle / system.Engine.Chambers);
    }

    /// <summary>Writes the calculation of the width.</summary>
    /// <returns>The cell of the width.</returns>
    internal string Write(StateRows rows, SpreadsheetText discharge)
    {
        SpreadsheetText share = rows.Solved(
            "share of the fuel reckoned that this stage is to deliver",
            pulse.Mass.Si() * pulsesPerChamber / mixture.ReckonedSi,
            SheetUnit.Percent,
            "the controller's staging at this point"
        );
        SpreadsheetText difference = Difference(rows, discharge);
        FlowRating rating = Belief.Injector.Rating;
        double density = Belief.Fuel.DensityAt(Belief.FuelTemperature).Si();
        SpreadsheetText flow = rows.Live(
            "static flow as told",
            InjectorRows.StaticFlow(
                rating,
                SpreadsheetText.Of(rating.StaticMassFlow.Si()),
                SpreadsheetText.Of(rating.DifferentialPressure.Si()),
                SpreadsheetText.Of(rating.FluidDensity.Si()),
                difference,
                SpreadsheetText.Of(density)
            ),
            SheetUnit.GramsPerSecond,
            $"{Belief.Injector.Name}, in {Belief.Fuel.Name}"
        );
        SpreadsheetText dead = rows.Solved(
            "dead time as told",
            pulse.DeadTime.Si(),
            SheetUnit.Milliseconds,
            "from its table, at the supply's voltage"
        );
        SpreadsheetText correction = rows.Solved(
            "short-pulse correction as told",
            Belief.Injector.Correction.At(pulse.EffectiveWidth).Si(),
            SheetUnit.Milliseconds,
            "from its table"
        );
        SpreadsheetText mass = mixture.Reckoned!.Value * share / pulsesPerChamber;
        return rows.Result(
            "pulse width",
            PulseTiming.PulseWidth(mass, flow, dead) - correction,
            SheetUnit.Milliseconds,
            "mass of a pulse over static flow, and dead time less correction, as told"
        );
    }

    private SpreadsheetText Difference(StateRows rows, SpreadsheetText discharge)
    {
        const string What = "pressure across the injectors as told";
        return Belief.RailReference switch
        {
            RailPressure.Reference.Manifold => rows.Given(
                What,
                across.Si(),
                SheetUnit.Difference,
                "the controller's setting"
            ),
            RailPressure.Reference.Fixed when stage.Discharge == InjectorStage.DischargePlace.Manifold => rows.Live(
                What,
                Belief.DifferentialPressure.Si() - discharge,
                SheetUnit.Difference,
                "a rail that it takes for fixed, less what the injectors spray against"
            ),
            RailPressure.Reference.Fixed => rows.Given(
                What,
                across.Si(),
                SheetUnit.Difference,
                "a rail that it takes for fixed"
            ),
            _ => rows.Solved(What, across.Si(), SheetUnit.Difference, "as its sensor reads"),
        };
    }
}
