using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The inflow and outflow of a surge tank, and how long it lasts.</summary>
/// <remarks>
/// In the network the tank is a node of fixed pressure: filling and draining affect each other only through its volume, which
/// changes by inflow less outflow. It overflows to the main tank when inflow exceeds outflow, and drains otherwise, for
/// example while the lift pump draws air. Flows are assumed steady while it drains. Source: [Definition] conservation of
/// volume.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed partial class SurgeTankBalance
{
    private const double NoDifference = 1e-9;

    /// <summary>
    /// The fraction of a full tank that may be used. Source: [Common-practice] a quarter is left.
    /// </summary>
    private const double MostShare = 0.75;

    private static readonly DataSource Balance = new("Definition", "conservation of volume");

    private readonly string node;
    private readonly double volume;
    private readonly double lift;
    private readonly double returned;
    private readonly double drawn;

    private SurgeTankBalance(
        string node,
        ImmutableArray<string> liftPumps,
        double volume,
        double lift,
        double returned,
        double drawn
    )
    {
        (this.node, LiftPumps, this.volume, this.lift) = (node, liftPumps, volume, lift);
        (this.returned, this.drawn) = (returned, drawn);
    }

    /// <summary>The node of the tank.</summary>
    public string Node => node;

    /// <summary>The lines of the pumps that lift fuel into it.</summary>
    public ImmutableArray<string> LiftPumps { get; }

    /// <summary>The flow of the lift pump, in m³/s.</summary>
    public VolumeFlow LiftFlow => SiUnits.VolumeFlow(lift);

    /// <summary>The return flow from the circuit that the tank feeds, in m³/s.</summary>
    public VolumeFlow ReturnFlow => SiUnits.VolumeFlow(returned);

    /// <summary>The flow drawn from the tank, in m³/s.</summary>
    public VolumeFlow DrawnFlow => SiUnits.VolumeFlow(drawn);

    /// <summary>Whether a full tank overflows.</summary>
    public bool Overflows => Net(lift) > 0;

    /// <summary>The overflow of the full tank, in m³/s; zero when none.</summary>
    public VolumeFlow OverflowFlow => SiUnits.VolumeFlow(Math.Max(0, Net(lift)));

    /// <summary>Whether it drains while the lift pump works.</summary>
    public bool DrainsWithLift => Net(lift) < 0;

    /// <summary>Whether it drains while the lift pump draws air.</summary>
    public bool DrainsWithoutLift => Net(0) < 0;

    /// <summary>How long a full tank lasts while the lift pump works.</summary>
    /// <returns>The time, in s.</returns>
    /// <exception cref="InvalidOperationException">It does not drain.</exception>
    public Duration LastsWithLift() => Lasts(Net(lift));

    /// <summary>How long a full tank lasts while the lift pump draws air.</summary>
    /// <returns>The time, in s.</returns>
    /// <exception cref="InvalidOperationException">It does not drain.</exception>
    public Duration LastsWithoutLift() => Lasts(Net(0));

    /// <summary>The findings if this state lasts indefinitely: a danger where the tank drains.</summary>
    /// <returns>Empty where it does not drain while the lift pump works.</returns>
    public ImmutableArray<Finding> Check() => DrainsWithLift ? [Drains(Severity.Danger, null)] : [];

    /// <summary>The findings if this state lasts no longer than a time.</summary>
    /// <param name="longest">The longest time in this state before the tank fills again; greater than zero.</param>
    /// <returns>
    /// A danger where the tank is empty before that, a warning where less than a quarter is left, a note where it
    /// drains more slowly; empty where it does not drain.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is not greater than zero.</exception>
    public ImmutableArray<Finding> Check(Duration longest)
    {
        double time = Guard.Positive(longest, longest.InSi());
        if (!DrainsWithLift)
        {
            return [];
        }

        double lasts = LastsWithLift().InSi();
        return
        [
            Drains(
                lasts <= time ? Severity.Danger
                    : time > MostShare * lasts ? Severity.Warning
                    : Severity.Note,
                time
            ),
        ];
    }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{Node}: in {LiftFlow:L/h} and {ReturnFlow:L/h}, out {DrawnFlow:L/h}");

    private Finding Drains(Severity severity, double? time)
    {
        double lasts = LastsWithLift().InSi();
        string brought =
            $"{Show.LitersPerHour(drawn)} drawn, {Show.LitersPerHour(lift)} lifted and {Show.LitersPerHour(returned)} returned";
        return Finding.Of(
            FindingCode.SurgeTankDrains,
            severity,
            node,
            $"Surge tank '{node}' drains: more is drawn than comes",
            Shown.Seconds(lasts).As(n => $"empty after {n}: {brought}"),
            time is { } asked ? Shown.Seconds(asked).As(n => $"lasts {n}") : "does not drain",
            Balance,
            "More lift pump, less restriction to the tank, or less demand: when it is empty its pump sucks air, and the mixture turns lean under load."
        );
    }

    /// <summary>The net inflow of the tank, m³/s; zero within the solver's tolerance.</summary>
    private double Net(double lifted)
    {
        double net = lifted + returned - drawn;
        return Math.Abs(net) <= NoDifference * (lifted + returned + drawn) ? 0 : net;
    }

    private Duration Lasts(double net) =>
        net < 0
            ? SiUnits.Duration(volume / -net)
            : throw new RefusedOperationException(
                RefusalCode.NeverEmpty,
                "The surge tank does not drain, so that it lasts without end."
            );
}
