using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// The comparison of a bench's slots from the same injectors read in several slots: separates the effect of the slots
/// from the flow of the injectors.
/// </summary>
/// <remarks>
/// <para>
/// Least squares on the logarithms of the flows, converted to the rating first: each is an injector's flow times a
/// slot's factor, and the factors have the mean one. Not every injector needs to sit in every slot, but a chain of
/// shared readings must connect them all; otherwise the unconnected names are refused. A bench that reads high in all
/// slots is not found this way. The scatter is at least the resolution of the instrument over the square root of twelve
/// ([JCGM-100]).
/// </para>
/// <para>Source: [Scheffe-1959] section 4.4, two-way layout.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BenchExamples.cs" region="Slots" />
/// </example>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class SlotComparison
{
    private static readonly DataSource Rule = new("Scheffe-1959", "test of columns in a two-way layout");

    private readonly AdditiveLayout layout;

    /// <summary>Compares slots.</summary>
    /// <param name="readings">More readings than the number of injectors plus slots minus one. Copied.</param>
    /// <param name="rating">The conditions to which flows are converted.</param>
    /// <param name="confidence">Confidence level of the test for a difference between slots; 50 % to 99.99 %.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// There are too few injectors or slots, or the readings do not connect them.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    /// <exception cref="NoSolutionException">There are no more readings than fitted effects.</exception>
    public SlotComparison(IEnumerable<SlotReading> readings, FlowRating rating, Ratio confidence)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(rating);
        _ = Student.TwoSided(1, confidence);
        (Readings, Rating, Confidence) = ([.. Lists.NoNulls(readings)], rating, confidence);
        layout = new AdditiveLayout(
            Readings.Select(r => r.Injector),
            Readings.Select(r => r.Slot),
            Readings.Select(r => Math.Log(BenchedInjector.FlowsSi([r.Reading], rating)[0]))
        ).WithLeastDeviation(Averages.RootMeanSquare(Readings.Select(r => r.Reading.Collected.RoundingShare)));
        (SlotTest, InjectorTest) = (layout.ColumnTest(), layout.RowTest());
        Findings = AreSlotsAlike ? [] : [Differ()];
    }

    /// <summary>The readings.</summary>
    public ImmutableArray<SlotReading> Readings { get; }

    /// <summary>The conditions to which flows are converted.</summary>
    public FlowRating Rating { get; }

    /// <summary>Confidence level of the test for a difference between slots.</summary>
    public Ratio Confidence { get; }

    /// <summary>The injectors, in the order of their first reading.</summary>
    public ImmutableArray<string> Injectors => layout.Rows;

    /// <summary>The slots, in the order of their first reading.</summary>
    public ImmutableArray<string> Slots => layout.Columns;

    /// <summary>The test of whether slots differ by more than the scatter, after allowing for injectors.</summary>
    public FTest SlotTest { get; }

    /// <summary>The test of whether injectors differ by more than the scatter, after allowing for slots.</summary>
    public FTest InjectorTest { get; }

    /// <summary>Whether the test finds no difference between slots.</summary>
    public bool AreSlotsAlike => SlotTest.PValue.InSi() >= 1 - Confidence.InSi();

    /// <summary>
    /// Residual standard deviation of a reading about the product of injector and slot, relative to the reading.
    /// </summary>
    public Ratio Repeatability => SiUnits.Ratio(layout.ErrorStandardDeviation());

    /// <summary>The findings: slots that differ.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The reading of a slot relative to the mean of the slots.</summary>
    /// <param name="slot">The slot.</param>
    /// <returns>The factor; divide a reading by it.</returns>
    /// <exception cref="ArgumentException">There is no such slot.</exception>
    public Ratio SlotFactor(string slot) => SiUnits.Ratio(Math.Exp(Effect(slot)));

    /// <summary>The standard error of the factor of a slot.</summary>
    /// <param name="slot">The slot.</param>
    /// <returns>The standard error, relative to the mean of the slots.</returns>
    /// <exception cref="ArgumentException">There is no such slot.</exception>
    public Ratio SlotFactorStandardError(string slot) =>
        SiUnits.Ratio(Math.Exp(Effect(slot)) * layout.ColumnEffectStandardError(slot));

    /// <summary>The flow of an injector corrected for the slots, under the conditions of the rating.</summary>
    /// <param name="injector">The injector.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentException">There is no such injector.</exception>
    public VolumeFlow InjectorFlow(string injector) =>
        SiUnits.VolumeFlow(Math.Exp(layout.Mean + layout.RowEffect(Checked(Injectors, injector, nameof(injector)))));

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{Injectors.Length} injectors in {Slots.Length} slots: {(AreSlotsAlike ? "alike" : "not alike")}");

    private double Effect(string slot) => layout.ColumnEffect(Checked(Slots, slot, nameof(slot)));

    private Finding Differ()
    {
        string high = Slots.MaxBy(layout.ColumnEffect)!;
        string low = Slots.MinBy(layout.ColumnEffect)!;
        return new(
            FindingCode.SlotsDiffer,
            Severity.Warning,
            high,
            $"Slots of the bench differ: '{high}' reads most, '{low}' least",
            FormattableString.Invariant(
                $"{100 * (Math.Exp(Effect(high) - Effect(low)) - 1):0.##} %, probability {SlotTest.PValue.InSi():0.####}"
            ),
            FormattableString.Invariant($"probability at least {1 - Confidence.InSi():0.####}"),
            Rule,
            "Divide each reading by the factor of its slot, or read every injector in one slot."
        );
    }

    private static string Checked(ImmutableArray<string> names, string name, string paramName) =>
        names.Contains(name) ? name : throw Guard.NoName(name, names, paramName);
}
