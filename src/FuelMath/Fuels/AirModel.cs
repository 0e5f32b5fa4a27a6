using UnitsNet;

namespace FuelMath;

/// <summary>The composition of air assumed for a stoichiometric ratio: its mass fraction of oxygen.</summary>
/// <remarks>
/// The models in use differ by 0.7 % in the ratio, so every ratio says which it used. All are dry air: water vapor in
/// the intake displaces air and is not part of the model.
/// </remarks>
/// <seealso href="../guide/mixtures.html">Mixtures of air and fuel</seealso>
public sealed class AirModel
{
    /// <summary>Creates a model.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="oxygenMassFraction">Mass of oxygen in a mass of air, above 0 % and up to 100 %.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is not above 0 % and up to 100 %.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public AirModel(string name, Ratio oxygenMassFraction, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Name = Guard.Name(name);
        OxygenFraction = Guard.PositiveUpTo(
            oxygenMassFraction,
            oxygenMassFraction.InSi(),
            1,
            SiUnits.Ratio,
            part: name
        );
        Source = source;
    }

    /// <summary>
    /// Dry air with argon and carbon dioxide, 20.9476 % oxygen by volume, 28.9644 g/mol; the default.
    /// Source: [ISO-2533] composition of dry air.
    /// </summary>
    public static AirModel StandardDry { get; } =
        new(
            "standard dry air",
            SiUnits.Ratio(0.209476 * 2 * ElementalComposition.OxygenMass / 28.9644e-3),
            new DataSource("ISO-2533", "composition of dry air")
        );

    /// <summary>
    /// Oxygen with 3.773 parts of all the rest, lumped: 28.962 g/mol at 20.95 % oxygen by volume.
    /// Source: [Heywood-1988] chapter 3.
    /// </summary>
    public static AirModel LumpedNitrogen { get; } =
        new(
            "oxygen with 3.773 parts of lumped nitrogen",
            SiUnits.Ratio(2 * ElementalComposition.OxygenMass / 138.24e-3),
            new DataSource("Heywood-1988", "chapter 3")
        );

    /// <summary>
    /// Oxygen with 3.76 parts of nitrogen and nothing else, the textbook air. Source: [Definition] O2 + 3.76 N2.
    /// </summary>
    public static AirModel OxygenAndNitrogen { get; } =
        new(
            "oxygen with 3.76 parts of nitrogen",
            SiUnits.Ratio(
                ElementalComposition.OxygenMass
                    / (ElementalComposition.OxygenMass + (3.76 * ElementalComposition.NitrogenMass))
            ),
            new DataSource("Definition", "O2 + 3.76 N2")
        );

    /// <summary>The model's name.</summary>
    public string Name { get; }

    /// <summary>Mass of oxygen in a mass of air.</summary>
    public Ratio OxygenMassFraction => SiUnits.Ratio(OxygenFraction);

    /// <summary>Where the model comes from.</summary>
    public DataSource Source { get; }

    internal double OxygenFraction { get; }

    /// <summary>Gives the model's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
