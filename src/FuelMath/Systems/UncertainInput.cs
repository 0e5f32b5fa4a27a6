using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath;

/// <summary>An input of a fuel system that is not known exactly: what, by how much, in what shape, and who says so.</summary>
/// <remarks>
/// The description holds the best estimate; this is the scatter about it. Inputs are independent of each other; two of
/// one kind add up. Standard deviations are meant, whatever the shape: see <see cref="SpreadShape"/>.
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class UncertainInput
{
    /// <summary>A relative standard deviation beyond which nothing would be known of an input.</summary>
    private const double Most = 0.5;

    private readonly Action<InputShifts, double, int> apply;
    private readonly bool each;

    private UncertainInput(
        string kind,
        string name,
        IQuantity standardDeviation,
        SpreadShape shape,
        DataSource source,
        bool each,
        Action<InputShifts, double, int> apply
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        Kind = kind;
        Name = name;
        StandardDeviation = standardDeviation;
        Shape = Guard.Known(shape, part: name);
        Source = source;
        this.each = each;
        this.apply = apply;
    }

    /// <summary>The word that a document has for it.</summary>
    internal string Kind { get; }

    /// <summary>What is uncertain, in words.</summary>
    public string Name { get; }

    /// <summary>Its standard deviation: a share of its value, or a difference.</summary>
    public IQuantity StandardDeviation { get; }

    /// <summary>The shape of its scatter.</summary>
    public SpreadShape Shape { get; }

    /// <summary>Where the scatter comes from.</summary>
    public DataSource Source { get; }

    /// <summary>The static flow of all injectors alike: a rating or a test bench that is off.</summary>
    /// <param name="standardDeviation">As a share of the flow; greater than zero, at most 50 %.</param>
    /// <param name="shape">The shape of the scatter.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The deviation is out of range.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static UncertainInput InjectorFlow(Ratio standardDeviation, SpreadShape shape, DataSource source)
    {
        double u = Share(standardDeviation);
        return new(
            "injector flow",
            "flow of all injectors",
            standardDeviation,
            shape,
            source,
            false,
            (s, z, _) => ScaleAll(s, u * z)
        );
    }

    /// <summary>The static flow of each injector by itself: the spread within a set.</summary>
    /// <param name="standardDeviation">As a share of the flow; greater than zero, at most 50 %.</param>
    /// <param name="shape">The shape of the scatter.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The deviation is out of range.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static UncertainInput EachInjectorFlow(Ratio standardDeviation, SpreadShape shape, DataSource source)
    {
        double u = Share(standardDeviation);
        return new(
            "each injector flow",
            "flow of each injector",
            standardDeviation,
            shape,
            source,
            true,
            (s, z, i) => s.InjectorFlow[i] *= 1 + (u * z)
        );
    }

    /// <summary>The dead time of all injectors alike.</summary>
    /// <param name="standardDeviation">Greater than zero.</param>
    /// <param name="shape">The shape of the scatter.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The deviation is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static UncertainInput DeadTime(Duration standardDeviation, SpreadShape shape, DataSource source)
    {
        double u = Guard.Positive(standardDeviation, standardDeviation.InSi());
        return new("dead time", "dead time", standardDeviation, shape, source, false, (s, z, _) => s.DeadTime += u * z);
    }

    /// <summary>The flow of all pumps alike, at each pressure rise.</summary>
    /// <param name="standardDeviation">As a share of the flow; greater than zero, at most 50 %.</param>
    /// <param name="shape">The shape of the scatter.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The deviation is out of range.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static UncertainInput PumpFlow(Ratio standardDeviation, SpreadShape shape, DataSource source)
    {
        double u = Share(standardDeviation);
        return new(
            "pump flow",
            "flow of the pumps",
            standardDeviation,
            shape,
            source,
            false,
            (s, z, _) => s.PumpFlow *= 1 + (u * z)
        );
    }

    /// <summary>What all regulators hold.</summary>
    /// <param name="standardDifference">The standard deviation; greater than zero.</param>
    /// <param name="shape">The shape of the scatter.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The deviation is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static UncertainInput RegulatorSetPoint(Pressure standardDifference, SpreadShape shape, DataSource source)
    {
        double u = Guard.Positive(standardDifference, standardDifference.InSi());
        return new(
            "regulator set point",
            "set point of the regulators",
            standardDifference,
            shape,
            source,
            false,
            (s, z, _) => s.SetPoint += u * z
        );
    }

    /// <summary>The fuel's density; its viscosity and its stoichiometric ratio stay.</summary>
    /// <param name="standardDeviation">As a share of the density; greater than zero, at most 50 %.</param>
    /// <param name="shape">The shape of the scatter.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The deviation is out of range.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static UncertainInput FuelDensity(Ratio standardDeviation, SpreadShape shape, DataSource source)
    {
        double u = Share(standardDeviation);
        return new(
            "fuel density",
            "density of the fuel",
            standardDeviation,
            shape,
            source,
            false,
            (s, z, _) => s.Density *= 1 + (u * z)
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {StandardDeviation}, {Shape}");

    /// <summary>How many random numbers a trial needs for it.</summary>
    internal int Count(int seats) => each ? seats : 1;

    /// <summary>Moves a trial's inputs by one random number, in standard deviations.</summary>
    internal void Apply(InputShifts shifts, double share, int seat) =>
        Shift(shifts, Draws.Deviation(Shape, share), seat);

    /// <summary>Moves inputs by so many standard deviations.</summary>
    internal void Shift(InputShifts shifts, double deviations, int seat) => apply(shifts, deviations, seat);

    private static double Share(Ratio standardDeviation)
    {
        return Guard.PositiveUpTo(standardDeviation, standardDeviation.InSi(), Most, SiUnits.Ratio);
    }

    private static void ScaleAll(InputShifts shifts, double by)
    {
        for (int i = 0; i < shifts.InjectorFlow.Length; i++)
        {
            shifts.InjectorFlow[i] *= 1 + by;
        }
    }
}
