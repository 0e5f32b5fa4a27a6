using System.Collections.Immutable;
using FuelMath.Systems;

namespace FuelMath.Tightness;

/// <summary>Every place of a system that a falling pressure may point at, narrowed by isolating steps.</summary>
/// <remarks>
/// Caution: relieve the pressure before anything is clamped or opened, let only clamps touch a hose that are made for it,
/// and pull an injector over a closed container. Immutable; equality is by reference.
/// </remarks>
public sealed class LeakSuspects
{
    private LeakSuspects(ImmutableArray<LeakSuspect> all) => All = all;

    /// <summary>Those that are left.</summary>
    public ImmutableArray<LeakSuspect> All { get; }

    /// <summary>Whether the readings have told one kind from the others.</summary>
    public bool IsOneKind => All.Select(s => s.Kind).Distinct().Count() == 1;

    /// <summary>All suspects of a system at rest, pump stopped and pressure shut in.</summary>
    /// <param name="system">The system.</param>
    /// <returns>The suspects; a gauge alone puts none before the other.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="system"/> is null.</exception>
    public static LeakSuspects Of(FuelSystem system)
    {
        ArgumentNullException.ThrowIfNull(system);
        var found = ImmutableArray.CreateBuilder<LeakSuspect>();
        foreach (FuelLine line in system.Plan.Lines)
        {
            if (line.Pump is not null)
            {
                found.Add(
                    new(
                        LeakSuspectKind.CheckValve,
                        line.Name,
                        $"Shut a valve or clamp right after pump '{line.Name}' once pressure is up."
                    )
                );
            }
            else if (line.Regulator is not null)
            {
                found.Add(
                    new(
                        LeakSuspectKind.RegulatorSeat,
                        line.Name,
                        $"Shut the return right after regulator '{line.Name}' once the pump has stopped, never while it runs."
                    )
                );
                found.Add(Diaphragm(line));
            }
            else if (line.ReducingRegulator is not null)
            {
                // Its seat that leaks lifts the rail instead of letting it fall.
                found.Add(Diaphragm(line));
            }
            else if (line.Relief is not null)
            {
                found.Add(
                    new(
                        LeakSuspectKind.ReliefSeat,
                        line.Name,
                        $"Shut the way back from relief valve '{line.Name}' once the pump has stopped, never while it runs."
                    )
                );
            }
        }

        found.AddRange(
            system.Stages.SelectMany(stage =>
                stage.Seats.Select(
                    (seat, i) =>
                        new LeakSuspect(
                            LeakSuspectKind.InjectorSeat,
                            $"{stage.Name} injector {i + 1} of chamber {seat.Chamber}",
                            "Lift the rail with its injectors over dry paper or a closed glass and watch the tips under pressure."
                        )
                )
            )
        );
        found.Add(
            new(
                LeakSuspectKind.Outside,
                string.Join(", ", system.Plan.Lines.Select(l => l.Name)),
                "Dry every joint, wait, and look and feel with paper: fuel outside is found by eye, not by gauge."
            )
        );
        return new(found.ToImmutable());
    }

    private static LeakSuspect Diaphragm(FuelLine line) =>
        new(
            LeakSuspectKind.RegulatorDiaphragm,
            line.Name,
            $"Pull the reference hose off regulator '{line.Name}': a drop of fuel in it is the proof."
        );

    /// <summary>What is left after a kind of suspect was shut off and the test repeated.</summary>
    /// <param name="isolated">The kind that was shut off.</param>
    /// <param name="outcome">What the gauge did then.</param>
    /// <returns>The suspects that still fit.</returns>
    /// <exception cref="ArgumentException">
    /// That kind is not among them, or the step says that something else leaks and nothing else is left.
    /// </exception>
    public LeakSuspects After(LeakSuspectKind isolated, IsolationOutcome outcome)
    {
        if (All.All(s => s.Kind != isolated))
        {
            throw new ArgumentException(
                $"Must be one of: {string.Join(", ", All.Select(s => s.Kind).Distinct())}; it was {isolated}.",
                nameof(isolated)
            );
        }

        if (outcome != IsolationOutcome.StandsStill && IsOneKind)
        {
            throw new ArgumentException(
                $"Nothing but {isolated} was left, and it was shut off: a gauge that still falls contradicts an earlier step.",
                nameof(outcome)
            );
        }

        return outcome switch
        {
            IsolationOutcome.FallsAsBefore => new([.. All.Where(s => s.Kind != isolated)]),
            IsolationOutcome.StandsStill => new([.. All.Where(s => s.Kind == isolated)]),
            _ => this,
        };
    }
}
