using System.Globalization;
using FuelMath.Internal;
using FuelMath.Sources;
using FuelMath.Tables;
using UnitsNet;

namespace FuelMath.Fuels;

/// <summary>A property of a liquid against temperature, inside a stated range; outside it refuses.</summary>
internal sealed class TemperatureLaw
{
    private readonly Func<double, double> law;

    /// <summary>Sets down a law.</summary>
    /// <param name="property">What it gives, for messages.</param>
    /// <param name="lowest">In K.</param>
    /// <param name="highest">In K.</param>
    /// <param name="law">From K to the property in SI units.</param>
    /// <param name="sources">Where it comes from.</param>
    /// <param name="estimates">What of it is an estimate, in sentences.</param>
    internal TemperatureLaw(
        string property,
        double lowest,
        double highest,
        Func<double, double> law,
        IEnumerable<DataSource> sources,
        IEnumerable<string> estimates
    )
    {
        Property = property;
        Lowest = lowest;
        Highest = highest;
        this.law = law;
        Sources = [.. sources.Distinct()];
        Estimates = [.. estimates.Distinct()];
    }

    internal string Property { get; }

    internal double Lowest { get; }

    internal double Highest { get; }

    internal IReadOnlyList<DataSource> Sources { get; }

    internal IReadOnlyList<string> Estimates { get; }

    /// <summary>
    /// A law through measured points: a monotone cubic in the logarithm of the property over the inverse of the
    /// temperature, in which viscosity and vapor pressure are nearly straight, or in the property over the temperature.
    /// </summary>
    internal static TemperatureLaw Through(
        string property,
        double[] kelvins,
        double[] values,
        bool straightInLogarithm,
        DataSource source
    )
    {
        double[] x = straightInLogarithm ? [.. kelvins.Select(t => -1000 / t)] : kelvins;
        double[] y = straightInLogarithm ? [.. values.Select(v => Math.Log(v))] : values;
        Curve curve = new(property, straightInLogarithm ? "-1000/T in 1/K" : "T in K", x, y, OutsideRange.Refuse);
        return new(
            property,
            kelvins[0],
            kelvins[^1],
            straightInLogarithm ? t => Math.Exp(curve.At(-1000 / t)) : curve.At,
            [source],
            []
        );
    }

    internal double At(Temperature temperature)
    {
        double kelvins = temperature.InSi();
        double slack = Guard.EdgeTolerance * (Highest - Lowest);
        return kelvins >= Lowest - slack && kelvins <= Highest + slack
            ? law(Math.Clamp(kelvins, Lowest, Highest))
            : throw Outside(temperature);
    }

    /// <summary>The value at a temperature that is known to lie inside.</summary>
    internal double AtKelvins(double kelvins) => law(Math.Clamp(kelvins, Lowest, Highest));

    /// <summary>The same law with one more estimate to its name.</summary>
    internal TemperatureLaw With(string estimate) =>
        new(Property, Lowest, Highest, law, Sources, Estimates.Append(estimate));

    private OutsideTableException Outside(Temperature temperature) =>
        new(
            Property,
            $"temperature in {Temperature.GetAbbreviation(temperature.Unit, CultureInfo.InvariantCulture)}",
            temperature.NumberIn(temperature.Unit),
            SiUnits.Temperature(Lowest).NumberIn(temperature.Unit),
            SiUnits.Temperature(Highest).NumberIn(temperature.Unit)
        );
}
