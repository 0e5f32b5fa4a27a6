using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// The assignment of injectors to chambers and stages from static flows alone, for benches that give no dead times.
/// </summary>
/// <remarks>
/// <para>
/// Makes the chambers' fuel per air as even as possible for long pulses; at short pulses the unknown dead times may
/// matter more (<see cref="Placement"/> includes them). The search and its proof are those of <see cref="Placement"/>.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/EverydayExamples.cs" region="PlaceFlows" />
/// </example>
/// <seealso href="../start/questions.html">Everyday questions</seealso>
public sealed class FlowPlacement
{
    private static readonly DataSource Alone = new("Definition", "static flows alone: no dead time is looked at");
    private readonly Placement placement;
    private readonly double[] trims;

    /// <summary>Finds the placement.</summary>
    /// <param name="flows">
    /// Name and static flow of each, all read under the same conditions; at least one for each seat. Copied.
    /// </param>
    /// <param name="air">The air of each chamber, as shares of any whole; greater than zero, two or more. Copied.</param>
    /// <param name="stages">Number of injectors for each chamber, each a stage of its own; 1 to 8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There are too few injectors, or a name occurs twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public FlowPlacement(IEnumerable<KeyValuePair<string, VolumeFlow>> flows, IEnumerable<Ratio> air, int stages)
    {
        ArgumentNullException.ThrowIfNull(flows);
        ArgumentNullException.ThrowIfNull(air);
        Stages = Guard.InRange(stages, 1, 8);
        KeyValuePair<string, VolumeFlow>[] all = [.. flows];
        Guard.DifferentNames(all.Select(f => f.Key), nameof(flows));
        Ratio[] shares = [.. air];
        placement = new(
            all.Select(f => Only(f.Key, f.Value)),
            shares,
            [
                new Placement.Point(
                    "long pulses",
                    Enumerable.Repeat(Duration.FromMilliseconds(10), stages),
                    Duration.FromMilliseconds(20),
                    Pressure.FromBars(3),
                    StandardFuels.NHeptane.DensityAt(Temperature.FromDegreesCelsius(20)),
                    ElectricPotential.FromVolts(14)
                ),
            ]
        );
        Dictionary<string, double> flowOf = all.ToDictionary(f => f.Key, f => f.Value.InSi());
        double[] fuel = [.. Enumerable.Range(1, Chambers).Select(chamber => At(chamber).Sum(name => flowOf[name]))];
        double mean = fuel.Sum() / shares.Sum(share => share.InSi());
        trims = [.. fuel.Zip(shares, (flow, share) => mean * share.InSi() / flow)];
    }

    /// <summary>Number of injectors for each chamber.</summary>
    public int Stages { get; }

    /// <summary>Number of chambers.</summary>
    public int Chambers => placement.Chambers;

    /// <summary>The remaining imbalance: (largest - smallest) fuel per air over the mean.</summary>
    public Ratio Imbalance => placement.Imbalance;

    /// <summary>The same for the injectors in the order given; null where more are given than there are seats.</summary>
    public Ratio? AsGiven => placement.AsGiven;

    /// <summary>Whether it is proven that no placement is better.</summary>
    public bool IsProvenBest => placement.IsProvenBest;

    /// <summary>Whether the order has no effect: one stage, equal air, and no injector to spare.</summary>
    public bool EveryOrderIsEqual => placement.EveryOrderIsEqual;

    /// <summary>The injectors of a chamber, by name, stage by stage.</summary>
    /// <param name="chamber">The chamber, from 1.</param>
    /// <returns>Their names.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    public ImmutableArray<string> At(int chamber) =>
        [.. Enumerable.Range(1, Stages).Select(stage => placement.At(chamber, stage).Name)];

    /// <summary>The factor for a chamber's fuel that removes the imbalance which the placement leaves.</summary>
    /// <param name="chamber">The chamber, from 1.</param>
    /// <returns>Mean fuel per air of all chambers over that of this one; above 100 % where it gets too little.</returns>
    /// <remarks>Source: [Definition] flows alone, for long pulses; the trims of a predicted mixture count dead times too.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    public Ratio TrimFor(int chamber) => SiUnits.Ratio(trims[Guard.InRange(chamber, 1, Chambers) - 1]);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"imbalance {Imbalance} over {Chambers} chambers");

    /// <summary>
    /// An injector of which only the flow matters: at one long pulse for all, they differ in nothing else.
    /// </summary>
    private static Injector Only(string name, VolumeFlow flow) =>
        new(
            name,
            FlowRating.FromVolume(
                flow,
                Pressure.FromBars(3),
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(20),
                Alone
            ),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Duration.Zero, Duration.Zero],
                OutsideRange.HoldEnds,
                Alone
            ),
            ShortPulseCorrection.None,
            Duration.Zero,
            Duration.Zero,
            ElectricResistance.FromOhms(12)
        );
}
