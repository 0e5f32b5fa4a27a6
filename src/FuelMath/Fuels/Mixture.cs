using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A mixture of air and a fuel in all common measures; for a known fuel each follows from any other.</summary>
/// <seealso href="../guide/mixtures.html">Mixtures of air and fuel</seealso>
public sealed class Mixture
{
    private readonly double stoichiometric;
    private readonly double ratio;

    private Mixture(Fuel fuel, AirModel air, double stoichiometric, double ratio, string paramName)
    {
        Guard.InRange(ratio, 1 / Guard.Largest, Guard.Largest, paramName);
        Fuel = fuel;
        Air = air;
        this.stoichiometric = stoichiometric;
        this.ratio = ratio;
    }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>The air model, on which the air-fuel ratio depends and lambda does not.</summary>
    public AirModel Air { get; }

    /// <summary>Air present over the air that the fuel needs.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Lambda Lambda => AirFuelRatio.ToLambda(AirFuelRatio.FromMassRatio(stoichiometric));

    /// <summary>Mass of air over mass of fuel.</summary>
    public AirFuelRatio AirFuelRatio => AirFuelRatio.FromMassRatio(ratio);

    /// <summary>Fuel over the fuel that the air could burn; rich above one.</summary>
    public Ratio EquivalenceRatio =>
        SiUnits.Ratio(Combustion.EquivalenceRatio(new Real(ratio), new Real(stoichiometric)).Value);

    /// <summary>Mass of fuel over mass of mixture.</summary>
    public Ratio FuelFraction => SiUnits.Ratio(Combustion.FuelFraction(new Real(ratio)).Value);

    /// <summary>A mixture by its lambda.</summary>
    /// <param name="fuel">The fuel.</param>
    /// <param name="air">The air model.</param>
    /// <param name="lambda">Lambda.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentNullException">The fuel or the air model is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lambda"/> is the default value, or the air-fuel ratio is not from 1e-150 to 1e150.</exception>
    public static Mixture FromLambda(Fuel fuel, AirModel air, Lambda lambda)
    {
        double needed = Needed(fuel, air);
        return new(fuel, air, needed, Guard.Positive(lambda.Si, nameof(lambda)) * needed, nameof(lambda));
    }

    /// <summary>A mixture by its air-fuel ratio.</summary>
    /// <param name="fuel">The fuel.</param>
    /// <param name="air">The air model.</param>
    /// <param name="ratio">Mass of air over mass of fuel.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentNullException">The fuel or the air model is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ratio"/> is not from 1e-150 to 1e150.</exception>
    public static Mixture FromAirFuelRatio(Fuel fuel, AirModel air, AirFuelRatio ratio) =>
        new(fuel, air, Needed(fuel, air), Guard.Positive(ratio.Si, nameof(ratio)), nameof(ratio));

    /// <summary>A mixture by its equivalence ratio.</summary>
    /// <param name="fuel">The fuel.</param>
    /// <param name="air">The air model.</param>
    /// <param name="equivalenceRatio">Fuel over the fuel that the air could burn; greater than zero.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentNullException">The fuel or the air model is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The equivalence ratio is not greater than zero, or the air-fuel ratio is not from 1e-150 to 1e150.</exception>
    public static Mixture FromEquivalenceRatio(Fuel fuel, AirModel air, Ratio equivalenceRatio)
    {
        double needed = Needed(fuel, air);
        double given = Guard.Positive(equivalenceRatio, equivalenceRatio.InSi());
        return new(fuel, air, needed, needed / given, nameof(equivalenceRatio));
    }

    /// <summary>A mixture by its fuel fraction.</summary>
    /// <param name="fuel">The fuel.</param>
    /// <param name="air">The air model.</param>
    /// <param name="fuelFraction">Mass of fuel over mass of mixture, from 0.1 % to 99.9 %.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentNullException">The fuel or the air model is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is outside its range.</exception>
    public static Mixture FromFuelFraction(Fuel fuel, AirModel air, Ratio fuelFraction)
    {
        double needed = Needed(fuel, air);
        double given = Guard.InRange(fuelFraction, fuelFraction.InSi(), 0.001, 0.999, SiUnits.Ratio);
        return new(
            fuel,
            air,
            needed,
            Combustion.AirFuelRatioFromFuelFraction(new Real(given)).Value,
            nameof(fuelFraction)
        );
    }

    /// <summary>The mixture from the reading of an instrument with a fixed scale.</summary>
    /// <param name="fuel">The fuel that burns.</param>
    /// <param name="air">The air model.</param>
    /// <param name="display">The instrument's scale.</param>
    /// <param name="reading">What it shows.</param>
    /// <returns>The mixture: lambda is the instrument's, the air-fuel ratio that of the fuel.</returns>
    /// <remarks>
    /// An instrument computes lambda for an assumed ratio of hydrogen to carbon; its small error with another fuel is
    /// not corrected here.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The fuel, the air model or the display is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reading"/> is the default value, or the air-fuel ratio is not from 1e-150 to 1e150.</exception>
    public static Mixture FromDisplay(Fuel fuel, AirModel air, AirFuelDisplay display, AirFuelRatio reading)
    {
        ArgumentNullException.ThrowIfNull(display);
        double needed = Needed(fuel, air);
        Real ratio = Combustion.AirFuelRatioFromScale(
            new Real(Guard.Positive(reading.Si, nameof(reading))),
            new Real(display.ReadingAtStoichiometric.Si),
            new Real(needed)
        );
        return new(fuel, air, needed, ratio.Value, nameof(reading));
    }

    /// <summary>What an instrument shows for this mixture.</summary>
    /// <param name="display">The instrument's scale.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="display"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public AirFuelRatio ReadingOn(AirFuelDisplay display)
    {
        ArgumentNullException.ThrowIfNull(display);
        return display.ReadingOf(Lambda);
    }

    /// <summary>The mixture of the same lambda with another fuel and the same air model.</summary>
    /// <param name="fuel">The other fuel.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fuel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Mixture With(Fuel fuel) => FromLambda(fuel, Air, Lambda);

    /// <summary>
    /// How the equivalence ratio follows from the air-fuel ratio: formula, inserted values, result, source.
    /// </summary>
    /// <returns>The working.</returns>
    public Working ToWorking() =>
        Combustion
            .EquivalenceRatio(
                Traced.Input(Symbols.AirFuelRatio, ratio),
                Traced.Input(Symbols.StoichiometricRatio, stoichiometric)
            )
            .ToWorking();

    /// <summary>How the air-fuel ratio follows from a reading: formula, inserted values, result, source.</summary>
    /// <param name="display">The instrument's scale.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="display"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Working ReadingWorking(AirFuelDisplay display)
    {
        ArgumentNullException.ThrowIfNull(display);
        return Combustion
            .AirFuelRatioFromScale(
                Traced.Input(FuelSymbols.Reading, ReadingOn(display).Si),
                Traced.Input(FuelSymbols.Scale, display.ReadingAtStoichiometric.Si),
                Traced.Input(Symbols.StoichiometricRatio, stoichiometric)
            )
            .ToWorking();
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Fuel}: {Lambda}");

    private static double Needed(Fuel fuel, AirModel air)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        return fuel.StoichiometricRatioWith(air).Si;
    }
}
