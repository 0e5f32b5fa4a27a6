using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// True vapor pressure of a liquid against temperature, inside a stated range, or the reason why it is not known.
/// </summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class LiquidVaporPressure : LiquidProperty
{
    /// <summary>Lowest temperature of the printed table for gasolines, 40 °F, in °C.</summary>
    internal const double LowestReidCelsius = 40.0 / 9;

    /// <summary>Highest temperature of the printed table for gasolines, 100 °F, in °C.</summary>
    internal const double HighestReidCelsius = 340.0 / 9;

    /// <summary>Highest temperature to which the equation for gasolines may be extrapolated, in °C.</summary>
    internal const double HighestCarriedReidCelsius = 120;

    /// <summary>The lowest Reid vapor pressure of the table, 6 psi, in Pa.</summary>
    internal const double LeastReid = 6 * 6_894.757293168;

    /// <summary>The highest Reid vapor pressure of the table, 15 psi, in Pa.</summary>
    internal const double MostReid = 15 * 6_894.757293168;

    private const string Called = "The vapor pressure";

    internal LiquidVaporPressure(TemperatureLaw law)
        : base(Called, law) { }

    private LiquidVaporPressure(string reason, bool negligible)
        : base(Called, reason) => IsNegligible = negligible;

    /// <summary>
    /// Whether it is so low that the liquid adds no vapor to a blend, as with an oil; its value is then unknown.
    /// </summary>
    public bool IsNegligible { get; }

    /// <summary>Where the pressures come from, in a few words: the works, and whether they are an estimate.</summary>
    internal string Origin =>
        IsKnown
            ? string.Join(", ", Sources.Select(s => s.Key).Distinct()) + (Estimates.IsEmpty ? "" : "; an estimate")
            : $"not known: {ReasonUnknown}";

    /// <summary>The points it goes through; null when it was not made from points.</summary>
    internal GivenPoints<AbsolutePressure>? Points { get; init; }

    /// <summary>A vapor pressure that is not known, and why.</summary>
    /// <param name="reason">A sentence; not blank.</param>
    /// <returns>A vapor pressure that refuses every temperature with the reason.</returns>
    /// <exception cref="ArgumentException">The reason is blank.</exception>
    public static LiquidVaporPressure Unknown(string reason) => new(Guard.Name(reason), false);

    /// <summary>A vapor pressure that is negligible and not published, as with an oil.</summary>
    /// <param name="reason">A sentence; not blank.</param>
    /// <returns>A vapor pressure that refuses every temperature with the reason, and adds none to a blend.</returns>
    /// <exception cref="ArgumentException">The reason is blank.</exception>
    public static LiquidVaporPressure Negligible(string reason) => new(Guard.Name(reason), true);

    /// <summary>
    /// Vapor pressure of a gasoline without alcohol from its Reid vapor pressure, inside the printed table, from 40 °F to
    /// 100 °F (4.4 °C to 37.8 °C). Source: [EPA-AP42] chapter 7.1, equation for refined stocks with a slope of 3.
    /// </summary>
    /// <param name="reid">Reid vapor pressure, from 6 psi to 15 psi, absolute.</param>
    /// <returns>The vapor pressure against temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Reid vapor pressure is outside the range.</exception>
    public static LiquidVaporPressure FromReid(AbsolutePressure reid) => FromReid(reid, HighestReidCelsius, []);

    /// <summary>
    /// As <see cref="FromReid(AbsolutePressure)"/>, extrapolated from 37.8 °C to 120 °C for hot fuel and labeled as an
    /// estimate there. It is too low: an ideal mixture of hydrocarbons with the same pressure at 37.8 °C has 2.8 % more
    /// at 60 °C, 4.9 % at 80 °C and 6.8 % at 100 °C; above that nothing was compared. <see cref="LiquidProperty.ErrorAt"/> bounds
    /// these. Source: [EPA-AP42] chapter 7.1, equation for refined stocks with a slope of 3.
    /// </summary>
    /// <param name="reid">Reid vapor pressure, from 6 psi to 15 psi, absolute.</param>
    /// <returns>The vapor pressure against temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Reid vapor pressure is outside the range.</exception>
    public static LiquidVaporPressure FromReidCarriedOn(AbsolutePressure reid) =>
        FromReid(
            reid,
            HighestCarriedReidCelsius,
            [
                "Vapor pressure above 37.8 °C: the equation for gasolines, carried on beyond its table; it reads up to 3 % low at "
                    + "60 °C, 5 % at 80 °C and 7 % at 100 °C.",
            ]
        );

    /// <summary>Vapor pressure through measured points: a monotone curve of ln p over 1/T.</summary>
    /// <param name="temperatures">Two or more, rising.</param>
    /// <param name="pressures">One for each temperature, rising.</param>
    /// <param name="source">Where they come from.</param>
    /// <returns>The vapor pressure against temperature, between the first and the last point.</returns>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is not greater than zero.</exception>
    public static LiquidVaporPressure FromPoints(
        IEnumerable<Temperature> temperatures,
        IEnumerable<AbsolutePressure> pressures,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(temperatures);
        ArgumentNullException.ThrowIfNull(pressures);
        ArgumentNullException.ThrowIfNull(source);
        GivenPoints<AbsolutePressure> points = new(temperatures, pressures, source);
        (double[] kelvins, double[] values) = PropertyPoints.Read(
            "A vapor pressure against temperature",
            points.Temperatures,
            points.Values,
            p => Guard.Positive(p.AboveVacuum, p.Si, nameof(pressures)),
            nameof(pressures)
        );
        Guard.StrictlyRising(values, "Vapor pressure", nameof(pressures));
        return new(TemperatureLaw.Through("Vapor pressure", kelvins, values, true, source)) { Points = points };
    }

    /// <summary>The vapor pressure at a temperature.</summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The pressure above vacuum at which the liquid boils.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">The vapor pressure is not known.</exception>
    public AbsolutePressure At(Temperature temperature) => new(Law.At(temperature));

    /// <summary>The same, raised at every temperature by the factor that meets the most that a class of E85 allows at 37.8 °C.</summary>
    internal LiquidVaporPressure RaisedTo(E85Class ethanolClass)
    {
        if (!IsKnown)
        {
            return this;
        }

        TemperatureLaw law = Law;
        double own = law.At(E85Class.At);
        double factor = ethanolClass.HighestVaporPressure.Si / own;
        return factor <= 1
            ? this
            : new(
                new TemperatureLaw(
                    law.Property,
                    law.Lowest,
                    law.Highest,
                    new BlendLaws.ClassVapor(law, factor),
                    law.Sources.Append(E85Class.Source),
                    law.Estimates.Append(
                        $"Vapor pressure of E85 class {ethanolClass.Number}: as mixed {new AbsolutePressure(own)} at 37.8 °C; taken up to the most that the class allows, {ethanolClass.HighestVaporPressure}, by one factor at every temperature. Measure yours where it counts."
                    )
                )
            );
    }

    private static LiquidVaporPressure FromReid(
        AbsolutePressure reid,
        double highestCelsius,
        IEnumerable<string> estimates
    )
    {
        if (!Guard.IsWithin(reid.Si, LeastReid, MostReid))
        {
            throw Guard.Outside(
                reid,
                RefusalCode.OutOfRange,
                $"Must be from {new AbsolutePressure(LeastReid):least} to {new AbsolutePressure(MostReid):most}; it was {reid:value}."
            );
        }

        double pascals = reid.Si;
        return new(
            new TemperatureLaw(
                "Vapor pressure",
                SiUnits.KelvinsFromCelsius(LowestReidCelsius),
                SiUnits.KelvinsFromCelsius(highestCelsius),
                new PetroleumLaws.ReidVaporPressure(pascals),
                [new DataSource("EPA-AP42", "chapter 7.1, equation for refined stocks")],
                estimates
            )
        );
    }
}
