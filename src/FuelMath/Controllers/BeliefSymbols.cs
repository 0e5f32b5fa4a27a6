using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Symbols of the inputs of workings, and a static flow with its conversion.</summary>
internal static class BeliefSymbols
{
    internal static Symbol Air { get; } = new("ma", "kg", "air of one chamber in one cycle");

    internal static Symbol BelievedAir { get; } =
        new("mab", "kg", "air of one chamber in one cycle that the controller reckons with");

    internal static Symbol ShortPulse { get; } = new("c", "s", "short-pulse correction");

    internal static Symbol Stoichiometric { get; } = new("AFRst", "", "stoichiometric air-fuel ratio by mass");

    internal static Symbol BelievedStoichiometric { get; } =
        new("AFRb", "", "stoichiometric air-fuel ratio that was believed");

    internal static Symbol Intended { get; } = new("lambda0", "", "lambda intended");

    internal static Symbol BelievedDeadTime { get; } = new("tdb", "s", "dead time that was believed");

    internal static Symbol Power { get; } = new("P", "W", "power at the crankshaft");

    internal static Symbol Consumption { get; } = new("bsfc", "kg/J", "brake specific fuel consumption");

    /// <summary>The source of a division of mass or flow among injectors.</summary>
    internal static DataSource Shares { get; } = new("Definition", "equal shares of the injectors");

    internal static Symbol Duty { get; } = new("D", "", "duty cycle that is allowed");

    /// <summary>Static mass flow at a pressure and density; the square-root law is shown, another exponent's result is an input.</summary>
    internal static Traced StaticFlow(FlowRating rating, Pressure differentialPressure, Density density)
    {
        Traced carried = Orifice.CarriedMassFlow(
            Traced.Input(Symbols.ReferenceMassFlow, rating.MassFlowSi),
            Traced.Input(Symbols.ReferenceDifferentialPressure, rating.DifferentialPressureSi),
            Traced.Input(Symbols.ReferenceDensity, rating.DensitySi),
            Traced.Input(Symbols.DifferentialPressure, differentialPressure.InSi()),
            Traced.Input(Symbols.Density, density.InSi())
        );
        double flow = rating.MassFlowSiAt(differentialPressure, density);
        return Math.Abs(carried.Value - flow) <= 1e-12 * flow ? carried : Traced.Input(Symbols.MassFlow, flow);
    }
}
