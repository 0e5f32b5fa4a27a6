using UnitsNet;

namespace FuelMath;

/// <summary>Hose as it is bought, before it is cut to length.</summary>
/// <seealso href="../guide/lines.html">Lines</seealso>
public sealed class HoseStock
{
    /// <summary>Describes a hose stock.</summary>
    /// <param name="name">The name by which it is bought; not blank.</param>
    /// <param name="bore">Inside diameter; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; from zero (smooth) to 5 % of the bore.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public HoseStock(string name, Length bore, Length roughness)
    {
        Name = Guard.Name(name);
        double inside = Guard.Positive(bore, bore.InSi(), part: Name);
        Guard.InRange(
            roughness,
            roughness.InSi(),
            0,
            Hose.GreatestRelativeRoughness * inside,
            SiUnits.Length,
            part: Name
        );
        (Bore, Roughness) = (bore, roughness);
    }

    /// <summary>The name by which it is bought.</summary>
    public string Name { get; }

    /// <summary>Inside diameter.</summary>
    public Length Bore { get; }

    /// <summary>Roughness of the wall.</summary>
    public Length Roughness { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}, {Bore:mm}");
}
