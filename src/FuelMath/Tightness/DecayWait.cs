using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>How long to wait to see a leak with a gauge, and what drift of temperature would hide it.</summary>
public sealed class DecayWait
{
    private DecayWait(Duration time, GaugePressure reading, TemperatureDelta hidingDrift)
    {
        Time = time;
        Reading = reading;
        HidingDrift = hidingDrift;
    }

    /// <summary>The wait, in s.</summary>
    public Duration Time { get; }

    /// <summary>What the gauge shows by then.</summary>
    public GaugePressure Reading { get; }

    /// <summary>The warming over the wait that would make up for the leak, so that the gauge stands still.</summary>
    public TemperatureDelta HidingDrift { get; }

    /// <summary>Works out a wait.</summary>
    /// <param name="volume">The closed volume.</param>
    /// <param name="start">Gauge pressure at the start.</param>
    /// <param name="leak">The leak that must be seen.</param>
    /// <param name="resolutionDifference">The smallest step of the gauge; greater than zero.</param>
    /// <param name="steps">By how many steps it must have moved, at least 2: the first may be rounding.</param>
    /// <returns>The wait.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="NoSolutionException">The pressure never falls so far; the message says where it stops.</exception>
    public static DecayWait ToSee(
        ClosedVolume volume,
        GaugePressure start,
        LeakPath leak,
        Pressure resolutionDifference,
        int steps
    )
    {
        ArgumentNullException.ThrowIfNull(volume);
        ArgumentNullException.ThrowIfNull(leak);
        double step = Guard.Positive(resolutionDifference, resolutionDifference.InSi());
        var reading = new GaugePressure(start.Si - (step * Guard.InRange(steps, 2, 1000)));
        Duration time = leak.TimeToFall(volume, start, reading);
        double lost = volume.ReleasedBetween(start, reading).InSi();
        double gasGrowth = volume.Gas / (start.Si + volume.Outside) / volume.Kelvins;
        return new(time, reading, SiUnits.TemperatureDelta(lost / ((volume.Liquid * volume.Expansion) + gasGrowth)));
    }
}
