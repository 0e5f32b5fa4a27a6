using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The rating of a kind and size of hose: working pressure by temperature, and least bend radius.</summary>
/// <remarks>
/// <para>
/// Working pressures, derating and bend radii are in standards that are sold and in makers' data: the library holds
/// none; the caller supplies them with their source. The rating is linear between temperatures and refused outside
/// them.
/// </para>
/// <para>
/// Caution: a hose that is too hot, bent too tightly or over its pressure bursts, and pressurized fuel sprays and
/// ignites.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/HoseExamples.cs" region="Rating" />
/// </example>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public sealed partial class HoseRating
{
    private readonly double[] kelvins;
    private readonly double[] pascals;

    /// <summary>Creates a rating.</summary>
    /// <param name="name">The kind and size of hose; not blank.</param>
    /// <param name="points">
    /// Two or more points, temperature rising; the working pressure does not rise with it. Copied.
    /// </param>
    /// <param name="leastBendRadius">The least bend radius of its center line; greater than zero.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentNullException">Points or source are null.</exception>
    /// <exception cref="ArgumentException">The name is blank or the points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bend radius is not greater than zero.</exception>
    public HoseRating(string name, IEnumerable<Point> points, Length leastBendRadius, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(source);
        Guard.Positive(leastBendRadius, leastBendRadius.InSi(), part: Name);
        (Points, LeastBendRadius, Source) = ([.. points], leastBendRadius, source);
        Guard.AtLeast(2, Points.Length, "A hose rating", nameof(points), Name);
        kelvins = [.. Points.Select(p => p.Temperature.InSi())];
        pascals = [.. Points.Select(p => p.WorkingPressure.Si)];
        Guard.StrictlyRising(kelvins, "Temperature", nameof(points), Name);
        for (int i = 1; i < pascals.Length; i++)
        {
            if (pascals[i] > pascals[i - 1])
            {
                throw new RefusedArgumentException(
                    RefusalCode.MustNotRise,
                    $"Working pressure must not rise with temperature; it goes from {Amount.Bar(pascals[i - 1]):most} to {Amount.Bar(pascals[i]):value}.",
                    nameof(points),
                    Name
                );
            }
        }
    }

    /// <summary>The kind and size of hose.</summary>
    public string Name { get; }

    /// <summary>The points, temperature ascending.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>The least bend radius of its center line.</summary>
    public Length LeastBendRadius { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>The working pressure at a temperature: the greatest gauge pressure for continuous use.</summary>
    /// <param name="temperature">Temperature of the hose, within the points.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="OutsideTableException">The temperature lies outside the points.</exception>
    public GaugePressure WorkingPressureAt(Temperature temperature)
    {
        double at = Guard.InTable(
            new TableLabel("Rating", " of", Name),
            "temperature",
            temperature,
            temperature.InSi(),
            kelvins[0],
            kelvins[^1],
            SiUnits.Temperature
        );
        int i = Math.Max(1, Array.FindIndex(kelvins, k => k >= at));
        double part = (at - kelvins[i - 1]) / (kelvins[i] - kelvins[i - 1]);
        return new(pascals[i - 1] + (part * (pascals[i] - pascals[i - 1])));
    }

    /// <summary>Checks a hose of this kind and size against the rating.</summary>
    /// <param name="hose">The hose.</param>
    /// <param name="pressure">The greatest gauge pressure in it, surges included.</param>
    /// <param name="temperature">Its temperature, within the points.</param>
    /// <returns>The findings; empty when nothing is beyond the rating.</returns>
    /// <exception cref="OutsideTableException">The temperature lies outside the points.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="hose"/> is null.</exception>
    public ImmutableArray<Finding> Check(Hose hose, GaugePressure pressure, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(hose);
        List<Finding> found = [];
        GaugePressure allowed = WorkingPressureAt(temperature);
        if (pressure > allowed)
        {
            found.Add(
                Finding.Of(
                    FindingCode.HoseOverPressure,
                    Severity.Danger,
                    hose.Name,
                    $"Hose '{hose.Name}' is above its working pressure at this temperature",
                    Shown.Bar(pressure.Si),
                    Shown.Bar(allowed.Si),
                    Source,
                    "Use a hose that is rated for it, keep it cooler, or lower the pressure."
                )
            );
        }

        if (hose.CoilDiameter is { } coil && coil.InSi() / 2 < LeastBendRadius.InSi() * (1 - Guard.EdgeTolerance))
        {
            found.Add(
                new Finding(
                    FindingCode.HoseBentTight,
                    Severity.Warning,
                    hose.Name,
                    $"Hose '{hose.Name}' is bent too tight",
                    Guard.Show(SiUnits.Length(coil.InSi() / 2), LeastBendRadius.Unit),
                    Guard.Show(LeastBendRadius, LeastBendRadius.Unit),
                    Source,
                    "Route it wider, or use an elbow: a kinked hose closes and its liner cracks."
                ).WithQuantities(SiUnits.Length(coil.InSi() / 2), LeastBendRadius)
            );
        }

        return [.. found];
    }

    /// <inheritdoc />
    public override string ToString() => Name;
}
