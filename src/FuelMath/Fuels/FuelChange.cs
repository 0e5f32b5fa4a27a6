using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>What a change of fuel requires of injectors and pump, relative to the previous fuel.</summary>
/// <remarks>
/// Two comparisons, which differ: at equal lambda the same air burns, and the engine gives about the same power or a
/// little more; at equal power the heat is the same, at the same efficiency.
/// </remarks>
/// <seealso href="../guide/fuel-change.html">Another fuel</seealso>
public sealed partial class FuelChange
{
    private readonly double baselineRatio;
    private readonly double ratio;
    private readonly double baselineDensity;
    private readonly double density;

    /// <summary>Compares two fuels.</summary>
    /// <param name="baseline">The fuel before.</param>
    /// <param name="fuel">The fuel after.</param>
    /// <param name="temperature">The temperature of both at the injectors.</param>
    /// <exception cref="ArgumentNullException">A fuel is null.</exception>
    /// <exception cref="OutsideTableException">A density is not known at the temperature.</exception>
    public FuelChange(Fuel baseline, Fuel fuel, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(baseline);
        ArgumentNullException.ThrowIfNull(fuel);
        Baseline = baseline;
        Fuel = fuel;
        Temperature = temperature;
        baselineRatio = baseline.StoichiometricRatio.Si;
        ratio = fuel.StoichiometricRatio.Si;
        baselineDensity = baseline.Density.Law.At(temperature);
        density = fuel.Density.Law.At(temperature);
    }

    /// <summary>The fuel before.</summary>
    public Fuel Baseline { get; }

    /// <summary>The fuel after.</summary>
    public Fuel Fuel { get; }

    /// <summary>The temperature of both.</summary>
    public Temperature Temperature { get; }

    /// <summary>Mass of the fuel over that of the baseline at equal lambda.</summary>
    public Ratio MassRatioAtEqualLambda => SiUnits.Ratio(MassAtLambda);

    /// <summary>Volume of the fuel over that of the baseline at equal lambda: what the pump has to deliver.</summary>
    public Ratio VolumeRatioAtEqualLambda => SiUnits.Ratio(VolumeOf(MassAtLambda));

    /// <summary>Time that an injector is open, dead time left out, over that with the baseline at equal lambda.</summary>
    public Ratio OpenTimeRatioAtEqualLambda => SiUnits.Ratio(TimeOf(MassAtLambda));

    /// <summary>Mass of the fuel over that of the baseline at equal power and efficiency; null where a lower heating value is not known.</summary>
    public Ratio? MassRatioAtEqualPower => MassAtPower is { } mass ? SiUnits.Ratio(mass) : null;

    /// <summary>Volume of the fuel over that of the baseline at equal power and efficiency; null where a lower heating value is not known.</summary>
    public Ratio? VolumeRatioAtEqualPower => MassAtPower is { } mass ? SiUnits.Ratio(VolumeOf(mass)) : null;

    /// <summary>Time that an injector is open, dead time left out, over that with the baseline at equal power; null where a lower heating value is not known.</summary>
    public Ratio? OpenTimeRatioAtEqualPower => MassAtPower is { } mass ? SiUnits.Ratio(TimeOf(mass)) : null;

    private double MassAtLambda =>
        FuelChangeRatios.MassRatioAtEqualLambda(new Real(baselineRatio), new Real(ratio)).Value;

    private double? MassAtPower =>
        Baseline.LowerHeatingValue is { } before && Fuel.LowerHeatingValue is { } after
            ? FuelChangeRatios.MassRatioAtEqualPower(new Real(before.InSi()), new Real(after.InSi())).Value
            : null;

    /// <summary>An injector after the change, at equal lambda and at the same differential pressure.</summary>
    /// <param name="pulseWidth">Its pulse width with the baseline, dead time included.</param>
    /// <param name="deadTime">Its dead time; not above the pulse width.</param>
    /// <param name="period">The time between pulses; not below the pulse width.</param>
    /// <returns>The pulse width it needs, and whether the period has room for it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public InjectorHeadroom InjectorAtEqualLambda(Duration pulseWidth, Duration deadTime, Duration period) =>
        new(pulseWidth, deadTime, period, TimeOf(MassAtLambda));

    /// <summary>The pump after the change, at equal lambda.</summary>
    /// <param name="demand">What the engine drew of the baseline.</param>
    /// <param name="available">What the pump delivers at the pressure and voltage in use.</param>
    /// <returns>What the engine draws of the fuel, and what is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A flow is not greater than zero.</exception>
    public PumpHeadroom PumpAtEqualLambda(VolumeFlow demand, VolumeFlow available) =>
        new(demand, available, VolumeOf(MassAtLambda));

    /// <summary>
    /// Vapor pressure of the fuel over that of the baseline in the cold: the lower, the harder the start.
    /// </summary>
    /// <param name="temperature">The temperature of a cold start, where both vapor pressures are known.</param>
    /// <returns>The ratio of the pressures.</returns>
    /// <remarks>
    /// A comparison, not a prediction: whether an engine starts also depends on its enrichment, and a pure alcohol
    /// needs more vapor than gasoline because it needs more fuel.
    /// </remarks>
    /// <exception cref="UnknownPropertyException">A vapor pressure is not known; the message says why.</exception>
    /// <exception cref="OutsideTableException">A vapor pressure is not known at this temperature.</exception>
    public Ratio VaporPressureRatioAt(Temperature temperature) =>
        SiUnits.Ratio(Fuel.VaporPressureAt(temperature).Si / Baseline.VaporPressureAt(temperature).Si);

    /// <summary>The working of the volume ratio at equal lambda: formula, inserted values, result, source.</summary>
    /// <returns>The working.</returns>
    public Working WorkingAtEqualLambda() =>
        VolumeWorking(
            FuelChangeRatios.MassRatioAtEqualLambda(
                Traced.Input(FuelSymbols.BaselineRatio, baselineRatio),
                Traced.Input(FuelSymbols.FuelRatio, ratio)
            )
        );

    /// <summary>The working of the volume ratio at equal power: formula, inserted values, result, source.</summary>
    /// <returns>The working.</returns>
    /// <exception cref="UnknownPropertyException">A lower heating value is not known.</exception>
    public Working WorkingAtEqualPower() =>
        VolumeWorking(
            FuelChangeRatios.MassRatioAtEqualPower(
                Traced.Input(FuelSymbols.BaselineHeat, Baseline.HeatSi),
                Traced.Input(FuelSymbols.FuelHeat, Fuel.HeatSi)
            )
        );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Baseline} to {Fuel}");

    private Working VolumeWorking(Traced massRatio) =>
        FuelChangeRatios
            .VolumeRatio(
                massRatio,
                Traced.Input(FuelSymbols.BaselineDensity, baselineDensity),
                Traced.Input(FuelSymbols.FuelDensity, density)
            )
            .ToWorking();

    private double VolumeOf(double massRatio) =>
        FuelChangeRatios.VolumeRatio(new Real(massRatio), new Real(baselineDensity), new Real(density)).Value;

    private double TimeOf(double massRatio) =>
        FuelChangeRatios.OpenTimeRatio(new Real(massRatio), new Real(baselineDensity), new Real(density)).Value;
}
