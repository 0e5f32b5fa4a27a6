using System.Collections.Immutable;
using FuelMath.Beliefs;
using FuelMath.Injectors;
using FuelMath.Internal;

namespace FuelMath.Systems;

/// <summary>The injectors that one controller output width drives: the primaries, or the secondaries.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class InjectorStage
{
    /// <summary>Sets down a stage.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="discharge">Where its injectors spray into.</param>
    /// <param name="pulsesPerCycle">Pulses in one working cycle of a chamber, 1 to 8: 1 when sequential, 2 in batch on a four-stroke.</param>
    /// <param name="belief">What the controller was told.</param>
    /// <param name="seats">The injectors in their places, at least one.</param>
    /// <exception cref="ArgumentException">The name is blank or there is no seat.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pulsesPerCycle"/> is not from 1 to 8.</exception>
    public InjectorStage(
        string name,
        InjectorDischarge discharge,
        int pulsesPerCycle,
        ControllerBelief belief,
        IEnumerable<InjectorSeat> seats
    )
    {
        Name = Guard.Name(name, nameof(name));
        ArgumentNullException.ThrowIfNull(belief);
        ArgumentNullException.ThrowIfNull(seats);
        Discharge = discharge;
        PulsesPerCycle = Guard.InRange(pulsesPerCycle, 1, 8, nameof(pulsesPerCycle));
        Belief = belief;
        Seats = [.. seats];
        if (Seats.IsEmpty)
        {
            throw new ArgumentException($"Stage '{name}' needs at least one injector; none given.", nameof(seats));
        }
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Where its injectors spray into.</summary>
    public InjectorDischarge Discharge { get; }

    /// <summary>Pulses in one working cycle of a chamber.</summary>
    public int PulsesPerCycle { get; }

    /// <summary>What the controller was told.</summary>
    public ControllerBelief Belief { get; }

    /// <summary>The injectors in their places.</summary>
    public ImmutableArray<InjectorSeat> Seats { get; }

    /// <summary>The pressure that its injectors spray against, counted from ambient, Pa.</summary>
    internal double DischargeGaugeSi(OperatingPoint point) =>
        Discharge == InjectorDischarge.Manifold ? point.Manifold.Si - point.Ambient.Si : 0;

    /// <summary>The same stage with other injectors fitted; the belief stays.</summary>
    /// <param name="injectors">One for each seat, in the order of <see cref="Seats"/>.</param>
    /// <returns>A new stage.</returns>
    /// <exception cref="ArgumentException">The number of injectors is not the number of seats.</exception>
    public InjectorStage WithInjectors(IEnumerable<Injector> injectors)
    {
        ArgumentNullException.ThrowIfNull(injectors);
        Injector[] fitted = [.. injectors];
        return fitted.Length == Seats.Length
            ? new(
                Name,
                Discharge,
                PulsesPerCycle,
                Belief,
                Seats.Zip(fitted, (seat, injector) => seat.WithInjector(injector))
            )
            : throw new ArgumentException(
                $"Stage '{Name}' has {Seats.Length} seats; {fitted.Length} injectors given.",
                nameof(injectors)
            );
    }
}
