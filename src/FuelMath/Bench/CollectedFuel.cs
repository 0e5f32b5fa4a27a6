using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// The amount that a bench collected, as a volume in a graduated glass or a mass on a scale, with the resolution of the
/// instrument.
/// </summary>
/// <remarks>The default value means nothing collected; readings refuse it.</remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public readonly struct CollectedFuel
{
    private readonly double amount;
    private readonly double resolution;

    private CollectedFuel(double amount, double resolution) => (this.amount, this.resolution) = (amount, resolution);

    /// <summary>Whether a volume was read; otherwise a mass.</summary>
    public bool IsByVolume => Volume.HasValue;

    /// <summary>The volume in the unit of the reading; null when a mass was read.</summary>
    public Volume? Volume { get; private init; }

    /// <summary>The resolution of the graduated glass; null when a mass was read.</summary>
    public Volume? VolumeResolution { get; private init; }

    /// <summary>The mass in the unit of the reading; null when a volume was read.</summary>
    public Mass? Mass { get; private init; }

    /// <summary>The resolution of the scale; null when a volume was read.</summary>
    public Mass? MassResolution { get; private init; }

    /// <summary>The resolution of the instrument as a fraction of the amount collected.</summary>
    public Ratio ResolutionShare => SiUnits.Ratio(resolution / amount);

    /// <summary>
    /// The standard deviation from the resolution, as a fraction of the amount collected: the step over the square root
    /// of twelve. Source: [JCGM-100] section F.2.2.1.
    /// </summary>
    internal double RoundingShare => resolution / amount / Math.Sqrt(12);

    internal bool IsNothing => amount == 0;

    /// <summary>A collected volume.</summary>
    /// <param name="collected">The volume; greater than zero.</param>
    /// <param name="resolution">The smallest step that can be read; greater than zero, at most the volume.</param>
    /// <returns>What was collected.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static CollectedFuel FromVolume(Volume collected, Volume resolution)
    {
        double amount = Guard.Positive(collected, collected.InSi());
        return new(amount, Guard.PositiveUpTo(resolution, resolution.InSi(), amount, SiUnits.Volume))
        {
            Volume = collected,
            VolumeResolution = resolution,
        };
    }

    /// <summary>A collected mass.</summary>
    /// <param name="collected">The mass; greater than zero.</param>
    /// <param name="resolution">The smallest step that can be read; greater than zero, at most the mass.</param>
    /// <returns>What was collected.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static CollectedFuel FromMass(Mass collected, Mass resolution)
    {
        double amount = Guard.Positive(collected, collected.InSi());
        return new(amount, Guard.PositiveUpTo(resolution, resolution.InSi(), amount, SiUnits.Mass))
        {
            Mass = collected,
            MassResolution = resolution,
        };
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{(IsByVolume ? Volume : (object?)Mass)}");

    internal double MassSi(double density) => IsByVolume ? amount * density : amount;

    internal double VolumeSi(double density) => IsByVolume ? amount : amount / density;
}
