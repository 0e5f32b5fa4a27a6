using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The injectors that one controller output width drives: the primaries, or the secondaries.</summary>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed partial class InjectorStage
{
    /// <summary>Creates a stage.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="discharge">Where its injectors spray into.</param>
    /// <param name="pulsesPerCycle">Pulses in one working cycle of a chamber, 1 to 8: 1 when sequential, 2 in batch on a four-stroke.</param>
    /// <param name="seats">The injectors in their places, at least one.</param>
    /// <remarks>
    /// What the controller was told is needed where it computes pulse widths by itself, uncorrected
    /// (<see cref="FuelCommand.OpenLoop"/>), and for its tables: see <see cref="WithBelief"/>.
    /// </remarks>
    /// <exception cref="ArgumentException">The name is blank or there is no seat.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pulsesPerCycle"/> is not from 1 to 8.</exception>
    public InjectorStage(string name, DischargePlace discharge, int pulsesPerCycle, IEnumerable<Seat> seats)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(seats);
        Discharge = discharge;
        PulsesPerCycle = Guard.InRange(pulsesPerCycle, 1, 8, part: name);
        Seats = [.. Lists.NoNulls(seats)];
        if (Seats.IsEmpty)
        {
            throw Guard.Empty(nameof(seats), name);
        }
    }

    private InjectorStage(InjectorStage other, IEnumerable<Seat> seats)
        : this(other.Name, other.Discharge, other.PulsesPerCycle, seats) =>
        (Belief, FiringGroups, Staging) = (other.Belief, other.FiringGroups, other.Staging);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Where its injectors spray into.</summary>
    public DischargePlace Discharge { get; }

    /// <summary>Pulses in one working cycle of a chamber.</summary>
    public int PulsesPerCycle { get; }

    /// <summary>What the controller was told; null where nobody said.</summary>
    public ControllerBelief? Belief { get; private init; }

    /// <summary>The injectors in their places.</summary>
    public ImmutableArray<Seat> Seats { get; }

    /// <summary>When it joins the stage before it; null for primaries.</summary>
    public StageSchedule.Transition? Staging { get; private init; }

    /// <summary>The pressure that its injectors spray against, counted from ambient, Pa.</summary>
    internal double DischargeGaugeSi(OperatingPoint point) =>
        Discharge == DischargePlace.Manifold ? point.Air.Manifold.Si - point.Air.Ambient.Si : 0;

    /// <summary>
    /// How many groups of its injectors open one after the other, evenly spaced over the time between two pulses of one: 1
    /// when all open at once, as many as injectors when each opens by itself; null when it is not known.
    /// </summary>
    public int? FiringGroups { get; private init; }

    /// <summary>The same stage, told how its injectors take turns. It decides how much pulsing raises losses, and how many coils draw on the supply while one opens.</summary>
    /// <param name="groups">
    /// Groups that open one after the other, evenly spaced: 1 when all open at once, up to the number of seats. Group by
    /// group the seats are dealt out in their order: with two groups the first, third and fifth open together. Divides the
    /// number of seats.
    /// </param>
    /// <returns>A new stage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of groups does not divide the number of seats.</exception>
    public InjectorStage WithFiringGroups(int groups) =>
        Guard.InRange(groups, 1, Seats.Length, part: Name) is var count && Seats.Length % count == 0
            ? new(this, Seats) { FiringGroups = groups }
            : throw Guard.Outside(
                groups,
                RefusalCode.UnevenGroups,
                $"Must divide the {Seats.Length:seats} seats of stage '{Name:part}' into equal groups; it was {groups:value}.",
                part: Name
            );

    /// <summary>The same stage, with what its controller was told.</summary>
    /// <param name="belief">What it was told.</param>
    /// <returns>A new stage.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="belief"/> is null.</exception>
    public InjectorStage WithBelief(ControllerBelief belief)
    {
        ArgumentNullException.ThrowIfNull(belief);
        return new(this, Seats) { Belief = belief };
    }

    /// <summary>The same stage as secondaries: when they join the primaries.</summary>
    /// <param name="staging">How the two share the fuel.</param>
    /// <returns>A new stage.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="staging"/> is null.</exception>
    public InjectorStage WithStaging(StageSchedule.Transition staging)
    {
        ArgumentNullException.ThrowIfNull(staging);
        return new(this, Seats) { Staging = staging };
    }

    /// <summary>The same stage with other injectors fitted; the belief stays.</summary>
    /// <param name="injectors">One for each seat, in the order of <see cref="Seats"/>.</param>
    /// <returns>A new stage.</returns>
    /// <exception cref="ArgumentException">The number of injectors is not the number of seats.</exception>
    public InjectorStage WithInjectors(IEnumerable<Injector> injectors)
    {
        ArgumentNullException.ThrowIfNull(injectors);
        Injector[] fitted = Lists.NoNulls(injectors);
        return fitted.Length == Seats.Length
            ? new(this, Seats.Zip(fitted, (seat, injector) => seat.WithInjector(injector)))
            : throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Stage '{Name:part}' has {Seats.Length:exactly} seats; {fitted.Length:value} injectors given.",
                nameof(injectors)
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Seats.Length} injectors");
}
