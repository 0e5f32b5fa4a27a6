using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Networks;

/// <summary>What comes into a surge tank and what goes, and how long it lasts.</summary>
/// <remarks>
/// Steady flows are taken: while a tank drains its pumps go on as they did. Immutable and safe to share between threads.
/// Equality is by reference.
/// </remarks>
public sealed class SurgeTankBalance
{
    private const double NoDifference = 1e-9;
    private readonly double volume;
    private readonly double lift;
    private readonly double returned;
    private readonly double drawn;

    internal SurgeTankBalance(double volume, double lift, double returned, double drawn)
    {
        (this.volume, this.lift) = (volume, lift);
        (this.returned, this.drawn) = (returned, drawn);
    }

    /// <summary>What the lift pump brings, in m³/s.</summary>
    public VolumeFlow LiftFlow => SiUnits.VolumeFlow(lift);

    /// <summary>What comes back from what the tank feeds, in m³/s.</summary>
    public VolumeFlow ReturnFlow => SiUnits.VolumeFlow(returned);

    /// <summary>What is drawn from the tank, in m³/s.</summary>
    public VolumeFlow DrawnFlow => SiUnits.VolumeFlow(drawn);

    /// <summary>Whether a full tank overflows.</summary>
    public bool Overflows => Net(lift) > 0;

    /// <summary>What overflows when it is full, in m³/s; none when nothing does.</summary>
    public VolumeFlow OverflowFlow => SiUnits.VolumeFlow(Math.Max(0, Net(lift)));

    /// <summary>Whether it drains while the lift pump works.</summary>
    public bool DrainsWithLift => Net(lift) < 0;

    /// <summary>Whether it drains while the lift pump sucks air.</summary>
    public bool DrainsWithoutLift => Net(0) < 0;

    /// <summary>How long a full tank lasts while the lift pump works.</summary>
    /// <returns>The time, in s.</returns>
    /// <exception cref="InvalidOperationException">It does not drain.</exception>
    public Duration LastsWithLift() => Lasts(Net(lift));

    /// <summary>How long a full tank lasts while the lift pump sucks air.</summary>
    /// <returns>The time, in s.</returns>
    /// <exception cref="InvalidOperationException">It does not drain.</exception>
    public Duration LastsWithoutLift() => Lasts(Net(0));

    /// <summary>What the tank gains, m3/s; less than a solver leaves is none.</summary>
    private double Net(double lifted)
    {
        double net = lifted + returned - drawn;
        return Math.Abs(net) <= NoDifference * (lifted + returned + drawn) ? 0 : net;
    }

    private Duration Lasts(double net) =>
        net < 0
            ? SiUnits.Duration(volume / -net)
            : throw new InvalidOperationException("The surge tank does not drain, so that it lasts without end.");
}
