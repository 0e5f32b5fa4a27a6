using System.Collections.Immutable;

namespace FuelMath.ShopTests;

/// <summary>All places of a system where a falling pressure may have its cause, narrowed by isolating steps.</summary>
/// <remarks>
/// Caution: relieve the pressure before clamping or opening anything, use only clamps made for the hose, and remove an
/// injector over a closed container.
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public sealed partial class LeakSuspects
{
    private LeakSuspects(ImmutableArray<Suspect> all) => All = all;

    /// <summary>The remaining suspects.</summary>
    public ImmutableArray<Suspect> All { get; }

    /// <summary>Whether only one kind is left.</summary>
    public bool IsOneKind => All.Select(s => s.Kind).Distinct().Count() == 1;

    /// <summary>All suspects of a system at rest, with the pump stopped and the line under pressure.</summary>
    /// <param name="system">The system.</param>
    /// <returns>The suspects; a gauge alone does not rank them.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="system"/> is null.</exception>
    public static LeakSuspects Of(FuelSystem system)
    {
        ArgumentNullException.ThrowIfNull(system);
        var found = ImmutableArray.CreateBuilder<Suspect>();
        HashSet<string> shut = ShutIn(system);
        string[] outlets =
        [
            .. system.Network.Lines.Where(l => l.Part.LeakPlaces.HasFlag(LeakPlaces.CheckValve)).Select(l => l.To),
        ];
        foreach (Line line in system.Network.Lines)
        {
            // A line that begins at a pump's outlet may lie on either side of the clamp.
            ClampSide side =
                line.Part.LeakPlaces.HasFlag(LeakPlaces.CheckValve) ? ClampSide.Pump
                : outlets.Contains(line.From) || outlets.Contains(line.To) ? ClampSide.Both
                : ClampSide.Gauge;
            if (!shut.Contains(line.From) && !shut.Contains(line.To))
            {
                // Suction and return hoses hold no pressure, nor does what fills a surge tank.
                continue;
            }

            found.AddRange(Inside(line, side));
            found.Add(
                new(
                    SuspectKind.Outside,
                    line.Name,
                    $"Dry '{line.Name}' and its joints, wait, and look and feel with paper: fuel outside is found by eye, not by gauge.",
                    side
                )
            );
        }

        found.AddRange(
            system.Stages.SelectMany(stage =>
                stage.Seats.Select(
                    (seat, i) =>
                        new Suspect(
                            SuspectKind.InjectorSeat,
                            $"{stage.Name} injector {i + 1} of chamber {seat.Chamber}",
                            "Lift the rail with its injectors over dry paper or a closed glass and watch the tips under pressure."
                        )
                )
            )
        );
        return new(found.ToImmutable());
    }

    /// <summary>
    /// The nodes whose pressure a gauge at the injectors shows: those connected to injectors and pump outlets without passing a
    /// tank, a pump, a bypass or a relief valve. What a pump sends to a tank openly, as into a surge tank, holds no pressure.
    /// </summary>
    private static HashSet<string> ShutIn(FuelSystem system)
    {
        var tanks = system.Network.Nodes.Where(n => n.IsFixed).Select(n => n.Name).ToHashSet(StringComparer.Ordinal);
        Line[] open = [.. system.Network.Lines.Where(l => !l.Part.ShutsIn)];
        HashSet<string> shut = Reached(system.Stages.SelectMany(s => s.Seats).Select(s => s.Node), open, tanks);
        foreach (Line line in system.Network.Lines.Where(l => l.Part.LeakPlaces.HasFlag(LeakPlaces.CheckValve)))
        {
            HashSet<string> behind = Reached([line.To], open, tanks);
            if (!behind.Overlaps(tanks))
            {
                shut.UnionWith(behind);
            }
        }

        shut.ExceptWith(tanks);
        return shut;
    }

    /// <summary>The nodes that open lines lead to, and no farther where one is a tank.</summary>
    private static HashSet<string> Reached(IEnumerable<string> from, Line[] open, HashSet<string> tanks)
    {
        var reached = from.ToHashSet(StringComparer.Ordinal);
        bool IsPassed(string node) => reached.Contains(node) && !tanks.Contains(node);
        int before;
        do
        {
            before = reached.Count;
            foreach (Line line in open.Where(l => IsPassed(l.From) || IsPassed(l.To)))
            {
                reached.UnionWith([line.From, line.To]);
            }
        } while (reached.Count > before);

        return reached;
    }

    /// <summary>The places inside a part, in the order of their kinds.</summary>
    private static IEnumerable<Suspect> Inside(Line line, ClampSide side)
    {
        LeakPlaces places = line.Part.LeakPlaces;
        if (places.HasFlag(LeakPlaces.CheckValve))
        {
            yield return new(
                SuspectKind.CheckValve,
                line.Name,
                $"Shut a valve or clamp right after {(line.Law.IsPump ? "pump" : "check valve")} '{line.Name}' once pressure is up: what lies between the two is shut off with it.",
                side
            );
        }

        if (places.HasFlag(LeakPlaces.BypassSeat))
        {
            yield return new(
                SuspectKind.RegulatorSeat,
                line.Name,
                $"Shut the return right after regulator '{line.Name}' once the pump has stopped, never while it runs.",
                side
            );
        }

        if (places.HasFlag(LeakPlaces.Diaphragm))
        {
            yield return Diaphragm(line, side);
        }

        if (places.HasFlag(LeakPlaces.ReliefSeat))
        {
            yield return new(
                SuspectKind.ReliefSeat,
                line.Name,
                $"Shut the way back from relief valve '{line.Name}' once the pump has stopped, never while it runs.",
                side
            );
        }
    }

    private static Suspect Diaphragm(Line line, ClampSide side) =>
        new(
            SuspectKind.RegulatorDiaphragm,
            line.Name,
            (line.Part as IRegulator)?.Reference switch
            {
                RegulatorReference.Manifold =>
                    $"Pull the reference hose off regulator '{line.Name}': a drop of fuel in it is the proof.",
                RegulatorReference.Tank =>
                    $"Take regulator '{line.Name}' out of the tank, shut its outlets and look at its vent under pressure: it leaks where nobody sees it.",
                _ =>
                    $"Look at the vent of regulator '{line.Name}', which has no hose: fuel there is the proof, and it is outside.",
            },
            side
        );

    /// <summary>The suspects left after a kind of suspect was isolated and the test repeated.</summary>
    /// <remarks>
    /// A clamp right after the pump isolates the check valve together with every joint, hose and relief valve between
    /// pump and clamp: if the pressure then holds, all of these remain.
    /// </remarks>
    /// <param name="isolated">The kind that was isolated.</param>
    /// <param name="outcome">The behavior of the gauge.</param>
    /// <returns>The suspects that still fit.</returns>
    /// <exception cref="ArgumentException">
    /// That kind is not among them, or the step says that something else leaks and nothing else is left.
    /// </exception>
    public LeakSuspects After(SuspectKind isolated, Outcome outcome)
    {
        if (All.All(s => s.Kind != isolated))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be one of: {All.Select(s => s.Kind.ToString()).Distinct():allowed}; it was {isolated:given}.",
                nameof(isolated)
            );
        }

        ImmutableArray<Suspect> left = outcome switch
        {
            Outcome.FallsAsBefore => [.. All.Where(s => !IsShutOff(s, isolated, ClampSide.Pump))],
            Outcome.StandsStill =>
            [
                .. All.Where(s => IsShutOff(s, isolated, ClampSide.Pump) || IsShutOff(s, isolated, ClampSide.Both)),
            ],
            _ => All,
        };
        if (left.IsEmpty || (outcome == Outcome.FallsMoreSlowly && IsOneKind))
        {
            throw new RefusedArgumentException(
                RefusalCode.Contradiction,
                $"Nothing but {isolated:given} was left, and it was shut off: a gauge that still falls contradicts an earlier step.",
                nameof(outcome)
            );
        }

        return new(left);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{All.Length} suspects");

    /// <summary>
    /// Whether a step isolates a place: its own kind, and for a check valve all that lies before the clamp.
    /// </summary>
    private static bool IsShutOff(Suspect suspect, SuspectKind isolated, ClampSide side) =>
        suspect.Kind == isolated || (isolated == SuspectKind.CheckValve && suspect.Side == side);
}
