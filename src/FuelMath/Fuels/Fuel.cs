using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A liquid that an engine burns or a bench pumps: its composition and its properties against temperature.</summary>
/// <remarks>
/// Take one from <see cref="StandardFuels"/>, mix some with <see cref="FuelBlend"/> or <see cref="PremixRatio"/>, or
/// describe your own. Each property has its own temperature range and is refused outside it.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed partial class Fuel
{
    private readonly double? lowerHeatingValue;

    /// <summary>Describes a fuel.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="composition">What it is made of.</param>
    /// <param name="density">Its density.</param>
    /// <param name="viscosity">Its viscosity.</param>
    /// <param name="vaporPressure">Its vapor pressure, or why that is not known.</param>
    /// <param name="source">Where the composition comes from.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public Fuel(
        string name,
        ElementalComposition composition,
        LiquidDensity density,
        LiquidViscosity viscosity,
        LiquidVaporPressure vaporPressure,
        DataSource source
    )
        : this(name, composition, density, viscosity, vaporPressure, null, source, [], []) { }

    internal Fuel(
        string name,
        ElementalComposition composition,
        LiquidDensity density,
        LiquidViscosity viscosity,
        LiquidVaporPressure vaporPressure,
        SpecificEnergy? lowerHeatingValue,
        DataSource source,
        IEnumerable<string> estimates,
        IEnumerable<string> cautions
    )
        : this(
            name,
            composition,
            density,
            viscosity,
            vaporPressure,
            lowerHeatingValue,
            [source ?? throw new ArgumentNullException(nameof(source))],
            estimates,
            cautions
        ) { }

    internal Fuel(
        string name,
        ElementalComposition composition,
        LiquidDensity density,
        LiquidViscosity viscosity,
        LiquidVaporPressure vaporPressure,
        SpecificEnergy? lowerHeatingValue,
        IEnumerable<DataSource> sources,
        IEnumerable<string> estimates,
        IEnumerable<string> cautions
    )
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(density);
        ArgumentNullException.ThrowIfNull(viscosity);
        ArgumentNullException.ThrowIfNull(vaporPressure);
        ArgumentNullException.ThrowIfNull(estimates);
        ArgumentNullException.ThrowIfNull(cautions);
        Name = Guard.Name(name);
        Composition = composition;
        Density = LiquidProperty.Of(density, name);
        Viscosity = LiquidProperty.Of(viscosity, name);
        VaporPressure = LiquidProperty.Of(vaporPressure, name);
        HeatCapacity = LiquidHeatCapacity.Unknown("nobody gave it.");
        BulkModulus = LiquidBulkModulus.Unknown("nobody gave it.");
        if (lowerHeatingValue is { } value)
        {
            this.lowerHeatingValue = Guard.Positive(value, value.InSi(), nameof(lowerHeatingValue), Name);
        }

        OwnSources = [.. sources.Distinct()];
        OwnEstimates = [.. Lists.NoNulls(estimates).Distinct()];
        Sources =
        [
            .. OwnSources.Concat(density.Sources).Concat(viscosity.Sources).Concat(vaporPressure.Sources).Distinct(),
        ];
        Estimates =
        [
            .. OwnEstimates
                .Concat(density.Estimates)
                .Concat(viscosity.Estimates)
                .Concat(vaporPressure.Estimates)
                .Distinct(),
        ];
        Cautions = [.. Lists.NoNulls(cautions).Distinct()];
    }

    /// <summary>The fuel's name.</summary>
    public string Name { get; }

    /// <summary>What it is made of.</summary>
    public ElementalComposition Composition { get; }

    /// <summary>Its density against temperature.</summary>
    public LiquidDensity Density { get; }

    /// <summary>Its dynamic viscosity against temperature.</summary>
    public LiquidViscosity Viscosity { get; }

    /// <summary>Its vapor pressure against temperature, or why that is not known.</summary>
    public LiquidVaporPressure VaporPressure { get; }

    /// <summary>Its isobaric heat capacity against temperature, or why that is not known.</summary>
    public LiquidHeatCapacity HeatCapacity
    {
        get;
        internal init => field = LiquidProperty.Of(value, Name);
    }

    /// <summary>Its isothermal bulk modulus against temperature, or why that is not known.</summary>
    public LiquidBulkModulus BulkModulus
    {
        get;
        internal init => field = LiquidProperty.Of(value, Name);
    }

    /// <summary>Heat that a mass of fuel gives off when the water in the exhaust stays vapor; null where it is not known.</summary>
    public SpecificEnergy? LowerHeatingValue => lowerHeatingValue is { } joules ? SiUnits.SpecificEnergy(joules) : null;

    /// <summary>The lower heating value where a result needs it, J/kg.</summary>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    internal double HeatSi =>
        lowerHeatingValue
        ?? throw new UnknownPropertyException(
            $"The lower heating value of '{Name:part}'",
            "",
            nameof(LowerHeatingValue)
        );

    /// <summary>The class of E85 that it is sold as; null for other fuels, and where nobody told.</summary>
    public E85Class? EthanolClass => (Recipe as E85Recipe)?.Class;

    /// <summary>How the fuel was composed, for writing it to a document; null when it was described by its properties.</summary>
    internal FuelRecipe? Recipe { get; init; }

    /// <summary>The parts with a known vapor pressure; empty where one is unknown.</summary>
    internal ImmutableArray<VaporPart> Volatiles { get; init; } = [];

    /// <summary>The stoichiometric air-fuel ratio by mass with <see cref="AirModel.StandardDry"/>.</summary>
    public AirFuelRatio StoichiometricRatio => StoichiometricRatioWith(AirModel.StandardDry);

    /// <summary>Mass fraction of oil, as in a premix; zero otherwise.</summary>
    public Ratio OilFraction => SiUnits.Ratio(Oil.MassFraction);

    /// <summary><see cref="StoichiometricRatio"/> if none of its oil burns: the actual ratio of a premix lies between the two.</summary>
    /// <remarks>Null where the fuel is pure oil, of which nothing then burns.</remarks>
    public AirFuelRatio? StoichiometricRatioIfOilUnburned =>
        StoichiometricWithoutOilSi > 0 ? AirFuelRatio.FromMassRatio(StoichiometricWithoutOilSi) : null;

    internal bool HoldsOil => Oil.MassFraction > 0;

    /// <summary>The oil in it.</summary>
    internal OilShare Oil { get; init; }

    /// <summary>Air per unit of mass if no oil burns; zero for pure oil.</summary>
    internal double StoichiometricWithoutOilSi => Oil.AirWithout(Composition.OxygenDemandSi);

    /// <summary>Where its figures come from.</summary>
    public ImmutableArray<DataSource> Sources { get; }

    /// <summary>Sentences that say what about it is an estimate; empty when nothing is.</summary>
    public ImmutableArray<string> Estimates { get; }

    /// <summary>Hazards, in sentences.</summary>
    public ImmutableArray<string> Cautions { get; }

    /// <summary>Sources of composition and heating value alone.</summary>
    internal ImmutableArray<DataSource> OwnSources { get; }

    /// <summary>Estimates of composition and heating value alone.</summary>
    internal ImmutableArray<string> OwnEstimates { get; }

    /// <summary>The stoichiometric air-fuel ratio by mass with a chosen air model.</summary>
    /// <param name="air">The air model.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public AirFuelRatio StoichiometricRatioWith(AirModel air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return AirFuelRatio.FromMassRatio(Composition.OxygenDemandSi / air.OxygenFraction);
    }

    /// <summary>A copy that counts as the oil of a premix.</summary>
    internal Fuel AsOil() =>
        Copy(Name, VaporPressure, HeatCapacity, BulkModulus, new(1, Composition.OxygenDemandSi), Recipe);

    /// <summary>The density at a temperature.</summary>
    /// <param name="temperature">Inside the range of <see cref="Density"/>.</param>
    /// <returns>The density, in kg/m³.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    public Density DensityAt(Temperature temperature) => Density.At(temperature);

    /// <summary>The dynamic viscosity at a temperature.</summary>
    /// <param name="temperature">Inside the range of <see cref="Viscosity"/>.</param>
    /// <returns>The viscosity, in Pa s.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">A property of the fuel is not known; the message says which.</exception>
    public DynamicViscosity ViscosityAt(Temperature temperature) => Viscosity.At(temperature);

    /// <summary>The true vapor pressure at a temperature.</summary>
    /// <param name="temperature">Inside the range of <see cref="VaporPressure"/>.</param>
    /// <returns>The absolute pressure at which the fuel boils.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">The vapor pressure is not known; the message says why.</exception>
    public AbsolutePressure VaporPressureAt(Temperature temperature) => VaporPressure.At(temperature);

    /// <summary>The working of the stoichiometric ratio: formula, inserted values, result, source.</summary>
    /// <param name="air">The air model.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is null.</exception>
    public Working StoichiometricWorkingWith(AirModel air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Traced demand = Combustion.OxygenDemand(
            Traced.Input(FuelSymbols.Carbon, Composition.CarbonFraction),
            Traced.Input(FuelSymbols.Hydrogen, Composition.HydrogenFraction),
            Traced.Input(FuelSymbols.Sulfur, Composition.SulfurFraction),
            Traced.Input(FuelSymbols.Oxygen, Composition.OxygenFraction)
        );
        return Traced
            .Step(
                demand / Traced.Input(FuelSymbols.AirOxygen, air.OxygenFraction),
                Symbols.StoichiometricRatio,
                Combustion.StoichiometricAirFuelRatioSource
            )
            .ToWorking();
    }

    /// <summary>Gives the fuel's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    private Fuel Copy(
        string name,
        LiquidVaporPressure vaporPressure,
        LiquidHeatCapacity heatCapacity,
        LiquidBulkModulus bulkModulus,
        OilShare oil,
        FuelRecipe? recipe
    ) =>
        new(name, Composition, Density, Viscosity, vaporPressure, LowerHeatingValue, OwnSources, OwnEstimates, Cautions)
        {
            HeatCapacity = heatCapacity,
            BulkModulus = bulkModulus,
            Oil = oil,
            Recipe = recipe,
            Volatiles = ReferenceEquals(vaporPressure, VaporPressure) ? Volatiles : [],
        };
}
