using UnitsNet;

namespace FuelMath;

/// <summary>Checks of measured points from a caller.</summary>
internal static class PropertyPoints
{
    /// <summary>Temperatures in K, rising, and as many values, each greater than zero.</summary>
    internal static (double[] Kelvins, double[] Values) Read<T>(
        string what,
        IEnumerable<Temperature> temperatures,
        IEnumerable<T> values,
        Func<T, double> toSi,
        string paramName
    )
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(temperatures);
        ArgumentNullException.ThrowIfNull(values, paramName);
        double[] kelvins = [.. temperatures.Select(t => Guard.Positive(t, t.InSi(), nameof(temperatures)))];
        double[] numbers = [.. values.Select(toSi)];
        if (kelvins.Length != numbers.Length)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"{what:subject} needs as many values as temperatures; {kelvins.Length:exactly} temperatures and {numbers.Length:value} values given.",
                paramName
            );
        }

        Guard.AtLeast(2, kelvins.Length, what, nameof(temperatures));
        Guard.StrictlyRising(kelvins, "Temperature", nameof(temperatures));
        return (kelvins, numbers);
    }
}
