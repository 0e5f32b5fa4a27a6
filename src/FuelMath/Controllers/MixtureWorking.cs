using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The working of the lambda of one chamber.</summary>
internal static class MixtureWorking
{
    /// <summary>
    /// From the believed air to the width, and from the width to the lambda; uncorrected, for one stage.
    /// </summary>
    internal static Working Of(FittedInjectors set, MixturePoint point, int chamber)
    {
        FittedInjectors.Stage stage = set.Stages[0];
        Injector fitted = stage.Fitted[chamber];
        UnitsNet.Pressure pressure = point.Injectors.DifferentialPressures[0];
        Traced width = Width(set, point);
        Traced effective = Pulse.EffectiveWidth(
            width,
            Traced.Input(Symbols.DeadTime, fitted.DeadTime.SiAt(point.Injectors.Voltage, pressure))
        );
        Traced mass = Pulse.Mass(
            BeliefSymbols.StaticFlow(fitted.Rating, pressure, set.Fuel.DensityAt(point.Injectors.FuelTemperature)),
            effective,
            Traced.Input(BeliefSymbols.ShortPulse, fitted.Correction.SiAt(effective.Value))
        );
        return Combustion
            .Lambda(
                Traced.Input(BeliefSymbols.Air, point.AirSi(chamber)),
                Traced.Step(mass * stage.PulsesPerCycle, Symbols.FuelMass, BeliefSymbols.Shares),
                Traced.Input(BeliefSymbols.Stoichiometric, set.Fuel.StoichiometricRatio.Si)
            )
            .ToWorking();
    }

    /// <summary>The width that the controller commands for its only stage, from its believed air.</summary>
    internal static Traced Width(FittedInjectors set, MixturePoint point)
    {
        FittedInjectors.Stage stage = set.Stages[0];
        ControllerBelief belief = stage.Belief;
        UnitsNet.Pressure believed = point.BelievedPressure(0, belief);
        double air = Enumerable.Range(0, set.ChamberCount).Average(point.AirSi) * point.BelievedAirRatio.InSi();
        Traced wanted = EngineAir.FuelMass(
            Traced.Input(BeliefSymbols.BelievedAir, air),
            Traced.Input(BeliefSymbols.BelievedStoichiometric, belief.Fuel.StoichiometricRatio.Si),
            Traced.Input(BeliefSymbols.Intended, point.Target.Si)
        );
        return PulseTiming.PulseWidth(
            Traced.Step(wanted / stage.PulsesPerCycle, Symbols.PulseMass, BeliefSymbols.Shares),
            BeliefSymbols.StaticFlow(belief.Injector.Rating, believed, belief.Fuel.DensityAt(belief.FuelTemperature)),
            Traced.Input(BeliefSymbols.BelievedDeadTime, belief.Injector.DeadTime.SiAt(point.AtController, believed))
        );
    }
}
