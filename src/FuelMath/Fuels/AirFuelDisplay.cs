using System.Globalization;

namespace FuelMath;

/// <summary>
/// An instrument that shows an air-fuel ratio: it measures lambda and multiplies it by a fixed ratio, whatever the
/// fuel.
/// </summary>
/// <remarks>
/// A "gasoline scale" shows 14.7 at lambda 1 with every fuel, so that its reading with another fuel is not the ratio of
/// air to fuel. Read it back to lambda first; <see cref="Mixture.FromDisplay"/> does.
/// </remarks>
/// <seealso href="../guide/mixtures.html">Mixtures of air and fuel</seealso>
public sealed class AirFuelDisplay
{
    /// <summary>Creates a display from its reading at lambda 1.</summary>
    /// <param name="readingAtStoichiometric">The ratio on the display, from 1 to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not from 1 to 40.</exception>
    public AirFuelDisplay(AirFuelRatio readingAtStoichiometric)
    {
        Guard.InRange(readingAtStoichiometric.Si, 1, 40, nameof(readingAtStoichiometric));
        ReadingAtStoichiometric = readingAtStoichiometric;
    }

    /// <summary>The usual scale, 14.7 at lambda 1. Source: [Common-practice] scale of instruments.</summary>
    public static AirFuelDisplay GasolineScale { get; } = new(AirFuelRatio.FromMassRatio(14.7));

    /// <summary>What the instrument shows at lambda 1.</summary>
    public AirFuelRatio ReadingAtStoichiometric { get; }

    /// <summary>The lambda behind a reading.</summary>
    /// <param name="reading">What the display shows.</param>
    /// <returns>Lambda, whatever the fuel.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reading"/> is the default value.</exception>
    public Lambda LambdaOf(AirFuelRatio reading) =>
        AirFuelRatio.FromMassRatio(reading.Si).ToLambda(ReadingAtStoichiometric);

    /// <summary>What the display shows at a lambda.</summary>
    /// <param name="lambda">Lambda.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lambda"/> is the default value.</exception>
    public AirFuelRatio ReadingOf(Lambda lambda) => lambda.ToAirFuelRatio(ReadingAtStoichiometric);

    /// <summary>Formats the scale, for example <c>14.7 at lambda 1</c>, invariant culture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{ReadingAtStoichiometric.Si:0.###} at lambda 1");
}
