using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <content>How its answers are made, step by step.</content>
public sealed partial class FlowRating
{
    /// <summary>
    /// The working of the static mass flow at other conditions: formula, inserted values, result, source.
    /// </summary>
    /// <param name="differentialPressure">Inlet less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <returns>
    /// The working; inputs are shown in their own units. <see cref="WorkingUnits.In"/> sets that of the result.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Working MassFlowWorkingAt(Pressure differentialPressure, Density density) =>
        TracedMassFlow(differentialPressure, density).ToWorking();

    /// <summary>
    /// The working of the static volume flow at other conditions: formula, inserted values, result, source.
    /// </summary>
    /// <param name="differentialPressure">Inlet less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <returns>
    /// The working; inputs are shown in their own units. <see cref="WorkingUnits.In"/> sets that of the result.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Working VolumeFlowWorkingAt(Pressure differentialPressure, Density density)
    {
        double pascals = Differential(differentialPressure);
        double kilograms = Guard.Positive(density, density.InSi(), part: Label);
        if (Exponent is not null)
        {
            return Traced
                .Step(
                    TracedMassFlow(differentialPressure, density)
                        / ReaderUnits.Input(Symbols.Density, density, kilograms),
                    Symbols.VolumeFlow,
                    ByDefinition
                )
                .ToWorking();
        }

        Traced rated = IsByVolume
            ? GivenFlow(Symbols.ReferenceVolumeFlow, volumeFlow)
            : Traced.Step(
                GivenFlow(Symbols.ReferenceMassFlow, massFlow) / GivenDensity,
                Symbols.ReferenceVolumeFlow,
                ByDefinition
            );
        return Orifice
            .CarriedVolumeFlow(
                rated,
                GivenPressure,
                GivenDensity,
                ReaderUnits.Input(Symbols.DifferentialPressure, differentialPressure, pascals),
                ReaderUnits.Input(Symbols.Density, density, kilograms)
            )
            .ToWorking();
    }

    /// <summary>The static mass flow with its formula, for workings; refused where <see cref="MassFlowAt"/> refuses.</summary>
    internal Traced TracedMassFlow(Pressure differentialPressure, Density density)
    {
        _ = MassFlowSiAt(differentialPressure, density);
        return TracedMassFlow(
            ReaderUnits.Input(Symbols.DifferentialPressure, differentialPressure, differentialPressure.InSi()),
            ReaderUnits.Input(Symbols.Density, density, density.InSi())
        );
    }

    /// <summary>The same at a pressure and a density with their own workings.</summary>
    internal Traced TracedMassFlow(Traced differentialPressure, Traced density)
    {
        Traced rated = IsByVolume
            ? Traced.Step(
                GivenFlow(Symbols.ReferenceVolumeFlow, volumeFlow) * GivenDensity,
                Symbols.ReferenceMassFlow,
                ByDefinition
            )
            : GivenFlow(Symbols.ReferenceMassFlow, massFlow);
        return MassFlow(rated, GivenPressure, GivenDensity, differentialPressure, density);
    }

    private static DataSource ByDefinition { get; } = new("Definition", "density: mass over volume");

    private Traced GivenPressure =>
        ReaderUnits.Input(Symbols.ReferenceDifferentialPressure, DifferentialPressure, reference);

    private Traced GivenDensity => Traced.Input(Symbols.ReferenceDensity, referenceDensity);

    private Traced GivenFlow(Symbol symbol, double si) =>
        given is null ? Traced.Input(symbol, si) : ReaderUnits.Input(symbol, given, si);
}
