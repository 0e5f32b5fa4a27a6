using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A property of a liquid against temperature, inside a stated range and refused outside it.</summary>
internal sealed class TemperatureLaw
{
    private readonly PropertyLaw law;
    private readonly string? fuel;

    /// <summary>Creates a law.</summary>
    /// <param name="property">The name of the property, for messages.</param>
    /// <param name="lowest">In K.</param>
    /// <param name="highest">In K.</param>
    /// <param name="law">From K to the property in SI units.</param>
    /// <param name="sources">Where it comes from.</param>
    /// <param name="estimates">Sentences that say what of it is an estimate.</param>
    /// <param name="fuel">The fuel that it belongs to, for messages; null before it belongs to one.</param>
    internal TemperatureLaw(
        string property,
        double lowest,
        double highest,
        PropertyLaw law,
        IEnumerable<DataSource> sources,
        IEnumerable<string> estimates,
        string? fuel = null
    )
    {
        this.fuel = fuel;
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
    /// temperature, in which viscosity and vapor pressure are nearly linear, or in the property over the temperature.
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
        return new(property, kelvins[0], kelvins[^1], new CurveLaw(curve, straightInLogarithm), [source], []);
    }

    internal double At(Temperature temperature) => AtKelvins(Inside(temperature));

    /// <summary>The value at a temperature that is known to lie inside.</summary>
    internal double AtKelvins(double kelvins)
    {
        double inside = Math.Clamp(kelvins, Lowest, Highest);
        law.Check(inside);
        return law.At(new Real(inside)).Value;
    }

    /// <summary>The value at a temperature in any scalar, for use in another law.</summary>
    internal T Read<T>(T kelvins)
        where T : struct, IScalar<T> => law.At(kelvins);

    /// <summary>
    /// The relative error bound of the value at a temperature; zero where the law is not an estimate.
    /// </summary>
    internal double ErrorAt(Temperature temperature) => law.ErrorAt(Inside(temperature));

    /// <summary>The same at a temperature that is known to lie inside.</summary>
    internal double ErrorAtKelvins(double kelvins) => law.ErrorAt(Math.Clamp(kelvins, Lowest, Highest));

    /// <summary>The working of the value at a temperature.</summary>
    internal Working WorkingAt(Temperature temperature)
    {
        double kelvins = Inside(temperature);
        law.Check(kelvins);
        return law.At(Traced.Input(Symbols.AbsoluteTemperature, kelvins)).ToWorking();
    }

    /// <summary>Refuses a temperature at which the law does not hold.</summary>
    internal void Check(double kelvins) => law.Check(kelvins);

    /// <summary>The same law with one more sentence in its estimates.</summary>
    internal TemperatureLaw With(string estimate) =>
        new(Property, Lowest, Highest, law, Sources, Estimates.Append(estimate), fuel);

    /// <summary>The same law of a fuel, which its refusals name.</summary>
    internal TemperatureLaw Of(string fuel) => new(Property, Lowest, Highest, law, Sources, Estimates, fuel);

    private double Inside(Temperature temperature) =>
        Guard.InTable(
            new TableLabel(Property, " of fuel", fuel),
            "temperature",
            temperature,
            temperature.InSi(),
            Lowest,
            Highest,
            SiUnits.Temperature
        );
}
