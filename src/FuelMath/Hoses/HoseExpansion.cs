using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The swelling of a hose under pressure, from measured points: its part of a line's compliance.</summary>
/// <remarks>
/// <para>
/// No public tables of the expansion of fuel hose were found, and it depends on braid, age and temperature: the caller
/// supplies the points. From zero pressure up a monotone curve is used; above the greatest point it is refused.
/// </para>
/// </remarks>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public sealed partial class HoseExpansion
{
    private readonly Curve squareMeters;

    /// <summary>Creates the expansion curve of a kind of hose.</summary>
    /// <param name="name">Its name in messages; not blank.</param>
    /// <param name="points">One or more points, pressure and expansion rising from point to point. Copied.</param>
    /// <param name="source">Where the points come from.</param>
    /// <exception cref="ArgumentNullException">Points or source are null.</exception>
    /// <exception cref="ArgumentException">The name is blank or the points do not have the stated shape.</exception>
    public HoseExpansion(string name, IEnumerable<Point> points, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(source);
        (Points, Source) = ([.. points], source);
        Guard.AtLeast(1, Points.Length, "A hose expansion", nameof(points), Name);
        double[] pressures = [0, .. Points.Select(p => p.Pressure.Si)];
        double[] gains = [0, .. Points.Select(p => p.Gain.InSi() / p.OfLength.InSi())];
        Guard.StrictlyRising(pressures, "Pressure", nameof(points), Name);
        Guard.StrictlyRising(gains, "Expansion", nameof(points), Name);
        squareMeters = new Curve($"Expansion of '{name}'", "pressure (Pa)", pressures, gains, OutsideRange.Refuse);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The points, pressure ascending.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Where the points come from.</summary>
    public DataSource Source { get; }

    /// <summary>The added volume of a length at a pressure, relative to ambient pressure.</summary>
    /// <param name="length">The length; greater than zero.</param>
    /// <param name="pressure">Gauge pressure inside, from zero to the greatest measured.</param>
    /// <returns>The added volume, in m³.</returns>
    /// <exception cref="OutsideTableException">The pressure lies outside the points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is not greater than zero.</exception>
    public Volume VolumeGainAt(Length length, GaugePressure pressure) =>
        SiUnits.Volume(Guard.Positive(length, length.InSi(), part: Name) * squareMeters.At(Place(pressure)));

    /// <summary>Relative increase of volume for each unit of pressure, at a pressure: the slope of the curve there.</summary>
    /// <param name="hose">The hose, whose volume at ambient pressure is the reference.</param>
    /// <param name="pressure">Gauge pressure inside, from zero to the greatest measured.</param>
    /// <returns>The swelling, in 1/Pa; times <see cref="Hose.EnclosedVolume"/> it is the hose's compliance.</returns>
    /// <exception cref="OutsideTableException">The pressure lies outside the points.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="hose"/> is null.</exception>
    public Compressibility SwellingAt(Hose hose, GaugePressure pressure)
    {
        ArgumentNullException.ThrowIfNull(hose);
        double slope = squareMeters.Slope(Place(pressure));
        return SiUnits.Compressibility(slope * hose.Length.InSi() / hose.EnclosedVolume.InSi());
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Points.Length} points");

    private double Place(GaugePressure pressure) =>
        Guard.PressureInTable(
            new TableLabel("Expansion", " of", Name),
            "pressure",
            pressure,
            pressure.Si,
            squareMeters.First,
            squareMeters.Last,
            pascals => new GaugePressure(pascals)
        );
}
