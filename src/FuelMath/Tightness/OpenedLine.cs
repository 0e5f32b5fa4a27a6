using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>The fuel that comes out when a line is opened: sprayed by pressure, then drained by gravity.</summary>
/// <remarks>
/// Caution: relieve the pressure first; it stays after switch-off. Catch the fuel in a closed, bonded container, keep
/// sparks away, and disconnect the battery. Fuel siphoned from the tank is not included: close the tank off.
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public sealed class OpenedLine
{
    private OpenedLine(double sprayed, double drained)
    {
        Sprayed = SiUnits.Volume(sprayed);
        Drained = SiUnits.Volume(drained);
        Captured = SiUnits.Volume(sprayed + drained);
    }

    /// <summary>The volume that leaves by pressure, at once.</summary>
    public Volume Sprayed { get; }

    /// <summary>The volume that drains by gravity afterwards.</summary>
    public Volume Drained { get; }

    /// <summary>Both: the least volume of the container.</summary>
    public Volume Captured { get; }

    /// <summary>Computes the volumes.</summary>
    /// <param name="volume">The closed volume.</param>
    /// <param name="pressure">Gauge pressure in it; not negative.</param>
    /// <param name="draining">Fraction of the fuel that lies above the opening and drains; from 0 % to 100 %.</param>
    /// <returns>The volumes.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="volume"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static OpenedLine Of(ClosedVolume volume, GaugePressure pressure, Ratio draining)
    {
        ArgumentNullException.ThrowIfNull(volume);
        Guard.NotNegative(pressure.AboveAmbient, pressure.Si, nameof(pressure));
        double share = Guard.InRange(draining, draining.InSi(), 0, 1, SiUnits.Ratio);
        return new(volume.ReleasedBetween(pressure, default).InSi(), share * volume.Liquid);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Sprayed} sprayed, {Drained} drained");
}
