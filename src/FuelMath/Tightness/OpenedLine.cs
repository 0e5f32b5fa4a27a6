using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>What comes out when a line is opened: what the pressure sprays, and what then runs out.</summary>
/// <remarks>
/// Caution: relieve the pressure first; it stays after switch-off. Catch the fuel in a closed, bonded container, keep
/// sparks away, and disconnect the battery. A siphon from the tank is not counted: shut it off.
/// </remarks>
public sealed class OpenedLine
{
    private OpenedLine(double sprayed, double drained)
    {
        Sprayed = SiUnits.Volume(sprayed);
        Drained = SiUnits.Volume(drained);
        Captured = SiUnits.Volume(sprayed + drained);
    }

    /// <summary>What leaves by its pressure, at once.</summary>
    public Volume Sprayed { get; }

    /// <summary>What runs out by its weight afterwards.</summary>
    public Volume Drained { get; }

    /// <summary>Both: what the container must hold.</summary>
    public Volume Captured { get; }

    /// <summary>Works out what comes out.</summary>
    /// <param name="volume">The closed volume.</param>
    /// <param name="pressure">Gauge pressure in it; not negative.</param>
    /// <param name="draining">Share of the fuel that lies above the opening and runs out; from 0 % to 100 %.</param>
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
}
