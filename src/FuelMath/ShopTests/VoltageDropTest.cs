using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>The voltage-drop test: a meter across each piece of wiring while the current flows.</summary>
/// <remarks>
/// Caution: probe, do not bridge; a battery drives hundreds of amperes through a slipped lead. Without current there is
/// no drop to measure.
/// </remarks>
/// <seealso href="../guide/shoptests.html">Shop tests: what should it read?</seealso>
public sealed partial class VoltageDropTest
{
    /// <summary>The largest multiple of its current assumed for a pump.</summary>
    private const double MostCurrent = 5;

    /// <summary>The largest resistance tried, relative to that of the whole load.</summary>
    private const double MostOfLoad = 3;

    private readonly FuelSystem system;

    private VoltageDropTest(FuelSystem system, SystemState state, ImmutableArray<TestPoint> steps)
    {
        this.system = system;
        State = state;
        Steps = steps;
    }

    /// <summary>The state during the test.</summary>
    public SystemState State { get; }

    /// <summary>
    /// Where to measure: supply, ground and contacts of the circuit that pumps share and of each pump's own, or every branch of
    /// the mesh.
    /// </summary>
    public ImmutableArray<TestPoint> Steps { get; }

    /// <summary>Predicts the test at an operating point.</summary>
    /// <param name="system">The system.</param>
    /// <param name="point">The conditions.</param>
    /// <returns>The prediction.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="NoSolutionException">The system has no such state; the message says why.</exception>
    /// <exception cref="OutsideTableException">A value lies outside the data.</exception>
    /// <exception cref="ArgumentException">The point does not fit the system; the message says why.</exception>
    /// <exception cref="UnknownPropertyException">A property of the fuel is not known; the message says which.</exception>
    public static VoltageDropTest Of(FuelSystem system, OperatingPoint point)
    {
        ArgumentNullException.ThrowIfNull(system);
        SystemState state = system.Solve(point);
        if (state.Wiring is { } wiring)
        {
            return new(
                system,
                state,
                [
                    .. wiring.Mesh.Branches.Select(b => new TestPoint(
                        b.Name,
                        b.Resistance.InSi(),
                        wiring.CurrentThrough(b.Name).InSi(),
                        0
                    )),
                ]
            );
        }

        // The shared circuit is left out where every pump has one of its own.
        bool isShared = system.Power.Feeds.Length < system.Network.Lines.Count(l => l.Part.IsPump);
        return new(
            system,
            state,
            [
                .. isShared ? StepsOf(state, 0, "pump supply wires", "pump ground wires", "pump contacts") : [],
                .. system.Power.Feeds.SelectMany(
                    (f, i) =>
                        StepsOf(
                            state,
                            i + 1,
                            $"supply wires of '{f.Line}'",
                            $"ground wires of '{f.Line}'",
                            $"contacts of '{f.Line}'"
                        )
                ),
            ]
        );

        TestPoint[] StepsOf(SystemState found, int feed, string supply, string ground, string contacts)
        {
            Circuit circuit = ((PowerSupply.TwoCircuits)system.Power).CircuitOf(feed);
            double amperes = AmperesOf(system, found, feed);
            return
            [
                new(supply, circuit.Supply.Sum(c => c.Resistance.InSi()), amperes, feed),
                new(ground, circuit.Ground.Sum(c => c.Resistance.InSi()), amperes, feed),
                new(contacts + ", all together", circuit.Contacts.InSi(), amperes, feed),
            ];
        }
    }

    /// <summary>
    /// Compares a reading of voltage alone, which can't distinguish more resistance from more current.
    /// </summary>
    /// <param name="place">One of the steps.</param>
    /// <param name="measuredDrop">The reading of the meter; finite.</param>
    /// <param name="tolerance">The deviation that still counts as agreement, as a share; greater than zero.</param>
    /// <returns>
    /// The comparison. For each cause the system is solved again with that resistance or pump current, so that the
    /// current is consistent with the pump's voltage; causes beyond the pump's data are not named.
    /// </returns>
    /// <exception cref="ArgumentException">There is no such step, or no drop is expected there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ShopComparison Compare(string place, ElectricPotential measuredDrop, Ratio tolerance)
    {
        TestPoint step = Step(place);
        double volts = Guard.Finite(measuredDrop, measuredDrop.InSi());
        return Comparison(step, volts, tolerance, Causes(step, volts));
    }

    /// <summary>Compares a reading of voltage with a measured current: the resistance follows.</summary>
    /// <param name="place">One of the steps.</param>
    /// <param name="measuredDrop">The reading of the meter; finite.</param>
    /// <param name="measuredCurrent">The current through it, in the same direction; not zero.</param>
    /// <param name="tolerance">The deviation that still counts as agreement, as a share; greater than zero.</param>
    /// <returns>The comparison, at the measured current.</returns>
    /// <exception cref="ArgumentException">There is no such step, or no drop is expected there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ShopComparison CompareAt(
        string place,
        ElectricPotential measuredDrop,
        ElectricCurrent measuredCurrent,
        Ratio tolerance
    )
    {
        TestPoint step = Step(place);
        double volts = Guard.Finite(measuredDrop, measuredDrop.InSi());
        double amperes = Guard.Finite(measuredCurrent, measuredCurrent.InSi());
        return amperes == 0
            ? throw Guard.Outside(
                measuredCurrent,
                RefusalCode.NoCurrent,
                $"Must be other than zero; it was {measuredCurrent:value}."
            )
            : Comparison(
                new(step.Place, step.Ohms, amperes, step.Feed),
                volts,
                tolerance,
                [
                    new(
                        ShopComparison.CauseKind.WireResistance,
                        ResistanceName(volts / amperes > step.Ohms),
                        $"{Milliohms(volts / amperes)} instead of {Milliohms(step.Ohms)}",
                        Math.Abs((volts / amperes / step.Ohms) - 1),
                        "Halve the way with a third lead until one contact or wire is found.",
                        null,
                        0
                    ),
                ]
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Steps.Length} places");

    private IEnumerable<ShopComparison.Cause> Causes(TestPoint step, double volts)
    {
        bool more = volts / step.Amperes > step.Ohms;
        double load = State.Point.Supply.InSi() / Math.Abs(step.Amperes);
        double Departure(double ohms, SystemState s) => (ohms * AmperesAt(s, step)) - volts;

        double sign = more ? 1 : -1;
        var resistance = new ShopFault(
            more ? MostOfLoad * load : step.Ohms * (1 - 1e-9),
            a => (WithResistance(step, sign * a), State.Point)
        );
        if (resistance.Explaining(State, (a, s) => Departure(step.Ohms + (sign * a), s)) is { } found)
        {
            double ohms = step.Ohms + (sign * found.Amount);
            yield return new(
                ShopComparison.CauseKind.WireResistance,
                ResistanceName(more),
                $"{Milliohms(ohms)} instead of {Milliohms(step.Ohms)}, with {Amperes(AmperesAt(found.State, step))} instead of {Amperes(step.Amperes)}",
                Math.Abs((ohms / step.Ohms) - 1),
                "Measure the current at the same time, and compare again with it.",
                found.State,
                null
            );
        }

        bool IsFed(Line line) => State.Wiring is not null || system.Power.FeedOf(line.Name) == step.Feed;
        var current = new ShopFault(
            more ? MostCurrent - 1 : 0.99,
            a => (Altered.WithPumpCurrent(system, 1 + (sign * a), IsFed), State.Point)
        );
        if (current.Explaining(State, (_, s) => Departure(step.Ohms, s)) is { } drawn)
        {
            double amperes = AmperesAt(drawn.State, step);
            yield return new(
                ShopComparison.CauseKind.PumpCurrent,
                more ? "More current than expected" : "Less current than expected",
                $"{Amperes(amperes)} instead of {Amperes(step.Amperes)}",
                Math.Abs((amperes / step.Amperes) - 1),
                "Measure the current at the same time; a pump that binds or is dead-headed draws more.",
                drawn.State,
                null
            );
        }
    }

    private FuelSystem WithResistance(TestPoint step, double more) =>
        State.Wiring is null
            ? Altered.WithPumpResistance(system, step.Feed, more)
            : Altered.WithBranchResistance(system, step.Place, more);

    private double AmperesAt(SystemState state, TestPoint step) =>
        state.Wiring is { } wiring ? wiring.CurrentThrough(step.Place).InSi() : AmperesOf(system, state, step.Feed);

    /// <summary>What the pumps of a circuit draw.</summary>
    private static double AmperesOf(FuelSystem system, SystemState state, int feed) =>
        state.Pumps.Where(p => system.Power.FeedOf(p.Line) == feed).Sum(p => p.Current.InSi());

    private static string ResistanceName(bool more) =>
        more ? "A contact or wire of more resistance" : "Less resistance than described";

    private static ShopComparison Comparison(
        TestPoint step,
        double volts,
        Ratio tolerance,
        IEnumerable<ShopComparison.Cause> causes
    )
    {
        double expected = step.Ohms * step.Amperes;
        double deviation = (volts / expected) - 1;
        bool agrees = Math.Abs(deviation) <= Guard.Positive(tolerance, tolerance.InSi());
        return new(Millivolts(expected), Millivolts(volts), deviation, agrees, causes);
    }

    private TestPoint Step(string place)
    {
        TestPoint step =
            Steps.FirstOrDefault(s => s.Place == place)
            ?? throw Guard.NoName(place, Steps.Select(s => s.Place), nameof(place));
        return step.Ohms * step.Amperes != 0
            ? step
            : throw new RefusedArgumentException(
                RefusalCode.NoDropExpected,
                $"No drop is expected across '{place:part}', so that nothing can be compared.",
                nameof(place)
            );
    }

    private static string Amperes(double value) =>
        Guard.Show(SiUnits.ElectricCurrent(Math.Round(value, 2)), UnitsNet.Units.ElectricCurrentUnit.Ampere);

    private static string Milliohms(double ohms) =>
        Guard.Show(SiUnits.ElectricResistance(Math.Round(ohms, 5)), UnitsNet.Units.ElectricResistanceUnit.Milliohm);

    private static string Millivolts(double volts) =>
        Guard.Show(SiUnits.ElectricPotential(Math.Round(volts, 4)), UnitsNet.Units.ElectricPotentialUnit.Millivolt);
}
