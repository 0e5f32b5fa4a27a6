using System.Collections.Frozen;
using System.Collections.Immutable;

namespace FuelMath.Formulas;

/// <summary>Every formula of this library, each described once.</summary>
/// <remarks>
/// What is built on it (checked calls, workings, columns, spreadsheets, exercises, docs) follows when a formula is added.
/// Filled on first use; safe to share between threads.
/// </remarks>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public static class FormulaCatalog
{
    private static readonly FrozenDictionary<string, FormulaInfo> ByName;

    static FormulaCatalog()
    {
        All =
        [
            .. AlcoholTableEntries.All,
            .. AtmosphereModelEntries.All,
            .. BendLossEntries.All,
            .. BypassValveEntries.All,
            .. CombustionEntries.All,
            .. CombustionMixingEntries.All,
            .. WireResistanceEntries.All,
            .. CurvedCorrelationEntries.All,
            .. CurvedFrictionEntries.All,
            .. DisplacementEntries.All,
            .. EngineAirEntries.All,
            .. FiltrationEntries.All,
            .. FrictionEntries.All,
            .. FrictionFactorEntries.All,
            .. FuelChangeRatiosEntries.All,
            .. HeatingValueEntries.All,
            .. HydrostaticsEntries.All,
            .. LiquidElasticityEntries.All,
            .. MinorLossEntries.All,
            .. MixtureErrorEntries.All,
            .. OrificeEntries.All,
            .. PetroleumViscosityEntries.All,
            .. PorousMediumEntries.All,
            .. PremixBalanceEntries.All,
            .. PressureDecayEntries.All,
            .. PressureFallTimeEntries.All,
            .. PressureRiseEntries.All,
            .. PulseEntries.All,
            .. PulseTimingEntries.All,
            .. PumpPowerEntries.All,
            .. PumpScalingEntries.All,
            .. ReducingValveEntries.All,
            .. SaturatedLiquidEntries.All,
            .. SealFitEntries.All,
            .. SuctionEntries.All,
            .. TankBalanceEntries.All,
            .. TankHeatingEntries.All,
            .. TeeLossEntries.All,
            .. ThermalExpansionEntries.All,
            .. TubeElasticityEntries.All,
            .. VaporPressureEntries.All,
        ];
        ByName = All.ToFrozenDictionary(f => f.Name, StringComparer.Ordinal);
    }

    /// <summary>Every formula, class by class.</summary>
    public static ImmutableArray<FormulaInfo> All { get; }

    /// <summary>Finds a formula by its name.</summary>
    /// <param name="name">Class and method, for example <c>Friction.PressureLoss</c>.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No formula has this name.</exception>
    public static FormulaInfo Named(string name) =>
        Find(name)
        ?? throw new RefusedArgumentException(
            RefusalCode.NotOneOf,
            $"Must be the name of a listed formula; it was {Echo.Quote(name):given}.",
            nameof(name)
        );

    /// <summary>Finds a formula by its name, where it may be none.</summary>
    /// <param name="name">Class and method, for example <c>Friction.PressureLoss</c>.</param>
    /// <returns>The formula; null when no formula has this name.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public static FormulaInfo? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return ByName.GetValueOrDefault(name);
    }

    /// <summary>Gives the whole catalog as JSON, as the package holds it in <c>catalog.json</c>.</summary>
    /// <returns>
    /// Names, ranges in SI units, units with their conversion (SI is (number + offset) * numerator / denominator), bounds,
    /// constants, sources and examples.
    /// </returns>
    public static string ToJson() => FormulaCatalogJson.Write(All);

    /// <summary>Gives the formulas of a topic.</summary>
    /// <param name="topic">The topic.</param>
    /// <returns>Its formulas, in the order of <see cref="All"/>.</returns>
    public static ImmutableArray<FormulaInfo> About(FormulaInfo.FormulaTopic topic) =>
        [.. All.Where(f => f.Topic == topic)];
}
