using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A hard line by outside diameter and wall: its bore, working pressure and swelling.</summary>
/// <remarks>
/// <para>
/// A tube is named by its outside diameter, so the bore is that minus two walls. Stress and swelling are those of a
/// wall of any thickness (Lamé); for a wall thinner than a tenth of the bore they agree with the thin-wall formulas.
/// Flares, bends, scratches, fatigue and corrosion are not included: allow for them in the allowed stress.
/// </para>
/// <para>Caution: relieve the pressure before opening a line; pressurized fuel sprays and ignites.</para>
/// <para>Source: [Timoshenko-1956] thick-walled cylinder.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/HoseExamples.cs" region="Tube" />
/// </example>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public sealed partial class Tube
{
    private readonly double outside;
    private readonly double bore;

    /// <summary>Describes a tube.</summary>
    /// <param name="name">Its name in messages; not blank.</param>
    /// <param name="outsideDiameter">Outside diameter; greater than zero.</param>
    /// <param name="wall">Thickness of the wall; greater than zero and less than half the outside diameter.</param>
    /// <param name="material">The material.</param>
    /// <param name="source">Where the measures come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException">Material or source is null.</exception>
    public Tube(string name, Length outsideDiameter, Length wall, WallMaterial material, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(material);
        ArgumentNullException.ThrowIfNull(source);
        outside = Guard.Positive(outsideDiameter, outsideDiameter.InSi(), part: name);
        double thickness = Guard.Positive(wall, wall.InSi(), part: name);
        bore = outside - (2 * thickness);
        if (!(bore > 0))
        {
            throw Guard.OutOfRange(
                wall,
                $"less than half the outside diameter, {SiUnits.Length(outside / 2):below}",
                part: name
            );
        }

        (OutsideDiameter, Wall, Material, Source) = (outsideDiameter, wall, material, source);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter { get; }

    /// <summary>Thickness of the wall.</summary>
    public Length Wall { get; }

    /// <summary>The material.</summary>
    public WallMaterial Material { get; }

    /// <summary>Where the measures come from.</summary>
    public DataSource Source { get; }

    /// <summary>Inside diameter: the outside one minus two walls, in m.</summary>
    public Length Bore => SiUnits.Length(bore);

    /// <summary>The gauge pressure at which the inside of the wall carries the allowed stress.</summary>
    public GaugePressure WorkingPressure =>
        new(
            TubeElasticity
                .ThickWallPressure(new Real(bore), new Real(outside), new Real(Material.AllowedStress.InSi()))
                .Value
        );

    /// <summary>The hoop stress at the inside of the wall, where it is greatest.</summary>
    /// <param name="pressure">Gauge pressure inside.</param>
    /// <returns>The stress, in Pa; tension is positive.</returns>
    public Pressure HoopStressAt(GaugePressure pressure) =>
        SiUnits.Pressure(
            TubeElasticity.HoopStress(new Real(pressure.Si), new Real(bore), new Real(outside), new Real(bore)).Value
        );

    /// <summary>
    /// The added volume of a length under pressure, relative to ambient pressure, with closed, free ends.
    /// </summary>
    /// <param name="length">The length; greater than zero.</param>
    /// <param name="pressure">Gauge pressure inside; at most <see cref="WorkingPressure"/>, not negative.</param>
    /// <returns>The added volume, in m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Volume VolumeGainAt(Length length, GaugePressure pressure)
    {
        double meters = Guard.Positive(length, length.InSi(), part: Name);
        double limit = WorkingPressure.Si;
        return pressure.Si >= 0 && pressure.Si <= limit * (1 + Guard.EdgeTolerance)
            ? SiUnits.Volume(Math.PI / 4 * bore * bore * meters * Compliance * pressure.Si)
            : throw Guard.Outside(
                pressure,
                RefusalCode.OutOfRange,
                $"Must be from {Amount.Bar(0):least} to {Amount.Bar(limit):most}; it was {Amount.Bar(pressure.Si):value}.",
                part: Name
            );
    }

    /// <summary>Relative increase of its volume per unit of pressure with closed, free ends, in 1/Pa.</summary>
    public Compressibility Swelling => SiUnits.Compressibility(Compliance);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {OutsideDiameter:mm} by {Wall:mm}");

    private double Compliance =>
        TubeElasticity
            .ThickWallSwelling(
                new Real(bore),
                new Real(outside),
                new Real(Material.ElasticModulus.InSi()),
                new Real(Material.PoissonRatio.InSi())
            )
            .Value;
}
