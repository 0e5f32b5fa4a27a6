using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A filter: its pressure loss is a term in viscosity times flow (the medium) plus one in density times the square of
/// flow (housing and ports).
/// </summary>
/// <remarks>
/// <para>
/// The two coefficients are fitted to published points with a stated test fluid and convert the loss to another fluid:
/// a filter published with a viscous test fluid loses less with gasoline, and more of that is quadratic.
/// </para>
/// <para>
/// It may be used only up to the greatest tested flow. Between zero and the least tested flow the form of the law,
/// which passes through zero, is used. The fitted filter is clean; <see cref="Loaded"/> gives one that holds dirt.
/// </para>
/// <para>
/// Caution: relieve the pressure before opening a filter; fuel stays under pressure in it after switch-off.
/// </para>
/// <para>Source: [Forchheimer-1901] the two-term law; [Lawson-1974] chapter 23 for the fit.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/FilterExamples.cs" region="Filter" />
/// </example>
/// <seealso href="../guide/filters.html">Filters</seealso>
public sealed partial class Filter : FlowPart
{
    private readonly double linear;
    private readonly double cleanLinear;
    private readonly double quadratic;
    private readonly double greatestFlow;

    private Filter(
        string name,
        ImmutableArray<Point> points,
        Density density,
        DynamicViscosity viscosity,
        DataSource source
    )
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(source);
        (Points, TestDensity, TestViscosity, Source) = (points, density, viscosity, source);
        double rho = Guard.Positive(density, density.InSi(), part: Name);
        double mu = Guard.Positive(viscosity, viscosity.InSi(), part: Name);

        double[] flows = [.. points.Select(p => p.Flow.InSi())];
        double[] losses = [.. points.Select(p => p.PressureLoss.InSi())];
        Guard.AtLeast(2, flows.Length, "A filter", nameof(points), Name);
        Guard.Positive(points[0].Flow, flows[0], nameof(points), Name);
        Guard.StrictlyRising(flows, "Flow", nameof(points), Name);
        Guard.StrictlyRising(losses, "Pressure loss", nameof(points), Name);
        greatestFlow = flows[^1];

        (double perFlow, double perSquare) = FilterFit.Solve(flows, losses);
        (linear, quadratic) = (perFlow / mu, perSquare / rho);
        cleanLinear = linear;
        Retained = SiUnits.Mass(0);

        double worst = 0;
        for (int i = 0; i < flows.Length; i++)
        {
            double misfit = (Loss(flows[i], rho, mu) / losses[i]) - 1;
            worst = Math.Abs(misfit) > Math.Abs(worst) ? misfit : worst;
        }

        WorstMisfit = SiUnits.Ratio(worst);
    }

    private Filter(Filter clean, FilterLoading? loading, Mass retained, Pressure? collapse)
    {
        (Name, Points, Source) = (clean.Name, clean.Points, clean.Source);
        (TestDensity, TestViscosity, WorstMisfit) = (clean.TestDensity, clean.TestViscosity, clean.WorstMisfit);
        (cleanLinear, quadratic, greatestFlow) = (clean.cleanLinear, clean.quadratic, clean.greatestFlow);
        linear = cleanLinear + (loading?.AddedSi(retained) ?? 0);
        (Loading, Retained, CollapseDifferentialPressure) = (loading, retained, collapse);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The points of the fit, flow ascending, in the units they were given in.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Density of the test fluid.</summary>
    public Density TestDensity { get; }

    /// <summary>Dynamic viscosity of the test fluid.</summary>
    public DynamicViscosity TestViscosity { get; }

    /// <summary>Where the points come from.</summary>
    public DataSource Source { get; }

    /// <summary>
    /// The relative deviation of the fit from the worst point; positive where the fit has the higher loss. It shows
    /// points that no sum of the two terms can fit, such as a loss that rises more slowly than flow.
    /// </summary>
    public Ratio WorstMisfit { get; }

    /// <summary>The greatest tested flow, in m³/s.</summary>
    public VolumeFlow GreatestFlow => SiUnits.VolumeFlow(greatestFlow);

    /// <summary>The loading curve of its element; null for a clean filter.</summary>
    public FilterLoading? Loading { get; }

    /// <summary>Mass of dirt in the element; zero for a clean filter.</summary>
    public Mass Retained { get; }

    /// <summary>The loss at which the element collapses; null where not known.</summary>
    public Pressure? CollapseDifferentialPressure { get; }

    /// <inheritdoc />
    internal override LawSettings Law =>
        new SquareSettings { LinearPerViscosity = linear, SquarePerDensity = quadratic };

    /// <inheritdoc />
    /// <remarks>Beyond the tested flow the fitted law is extrapolated, with a finding.</remarks>
    internal override IEnumerable<Finding> FindingsAt(PartState at)
    {
        double loss = Math.Abs(LossSi(at.Flow, at.Density, at.Viscosity));
        if (CollapseDifferentialPressure is { } limit && loss > limit.InSi())
        {
            yield return Finding.Of(
                FindingCode.FilterCollapse,
                Severity.Danger,
                at.Line,
                $"Filter '{at.Line}' loses more than its element stands",
                Shown.Bar(loss),
                Shown.Bar(limit.InSi()),
                Source,
                "Change the element: a collapsed one sends its dirt to the injectors, all at once."
            );
        }

        if (Math.Abs(at.Flow) > greatestFlow * (1 + Guard.EdgeTolerance))
        {
            yield return Finding.Of(
                FindingCode.FilterBeyondTest,
                Severity.Warning,
                at.Line,
                $"Filter '{at.Line}' carries more than it was tested for: its loss is extrapolated",
                Shown.LitersPerHour(Math.Abs(at.Flow)),
                Shown.LitersPerHour(greatestFlow),
                Source,
                "Ask its maker for points at this flow, or fit a larger one."
            );
        }
    }

    /// <summary>Loss per viscosity and flow, 1/m³.</summary>
    internal double LinearSi => linear;

    /// <summary>Loss per density and flow squared, 1/m⁴.</summary>
    internal double QuadraticSi => quadratic;

    /// <summary>Fits a filter to points taken with one fluid, by least squares with no coefficient below zero.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="points">Two or more points, flow and loss rising from point to point. Copied.</param>
    /// <param name="density">Density of the test fluid; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the test fluid; greater than zero.</param>
    /// <param name="source">Where the points come from.</param>
    /// <returns>The filter.</returns>
    /// <exception cref="ArgumentNullException">Points or source are null.</exception>
    /// <exception cref="ArgumentException">The name is blank or the points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Filter Fit(
        string name,
        IEnumerable<Point> points,
        Density density,
        DynamicViscosity viscosity,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(points);
        return new(name, [.. points], density, viscosity, source);
    }

    /// <summary>The same filter with dirt in its element.</summary>
    /// <param name="loading">The loading curve of the element.</param>
    /// <param name="retained">Mass of dirt in the element, at most the greatest tested.</param>
    /// <returns>The filter, with the effect of the dirt on the loss of its medium.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="loading"/> is null.</exception>
    /// <exception cref="OutsideTableException">The mass is greater than any tested.</exception>
    public Filter Loaded(FilterLoading loading, Mass retained)
    {
        ArgumentNullException.ThrowIfNull(loading);
        return new(this, loading.Of(Name), retained, CollapseDifferentialPressure);
    }

    /// <summary>The same filter with the loss at which its element collapses.</summary>
    /// <param name="collapseDifferentialPressure">Inlet less outlet pressure; greater than zero.</param>
    /// <returns>The filter, which refuses flows beyond that loss.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The difference is not greater than zero.</exception>
    public Filter WithCollapseLimit(Pressure collapseDifferentialPressure)
    {
        Guard.Positive(collapseDifferentialPressure, collapseDifferentialPressure.InSi(), part: Name);
        return new(this, Loading, Retained, collapseDifferentialPressure);
    }

    /// <summary>The pressure lost.</summary>
    /// <param name="flow">Volume flow, at most <see cref="GreatestFlow"/> in either direction; the loss has its sign.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fuel; greater than zero.</param>
    /// <returns>Inlet less outlet pressure, in Pa.</returns>
    /// <exception cref="OutsideTableException">The flow is greater than any tested.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Density or viscosity is not greater than zero, or the element collapses at this flow.
    /// </exception>
    public Pressure LossAt(VolumeFlow flow, Density density, DynamicViscosity viscosity)
    {
        double cubicMetersPerSecond = Guard.InTable(
            new TableLabel("Filter", "", Name),
            "flow",
            flow,
            flow.InSi(),
            -greatestFlow,
            greatestFlow,
            SiUnits.VolumeFlow
        );
        double loss = Loss(
            cubicMetersPerSecond,
            Guard.Positive(density, density.InSi(), part: Name),
            Guard.Positive(viscosity, viscosity.InSi(), part: Name)
        );
        return
            CollapseDifferentialPressure is { } collapse && Math.Abs(loss) > collapse.InSi() * (1 + Guard.EdgeTolerance)
            ? throw Guard.OutOfRange(
                flow,
                $"a flow at which it loses at most {collapse:mostLoss}, where its element collapses; it would lose {SiUnits.Pressure(loss).ToUnit(collapse.Unit):loss}",
                part: Name
            )
            : SiUnits.Pressure(loss);
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>The fitted law, Pa, also beyond the tested flow.</summary>
    internal double LossSi(double flow, double density, double viscosity) => Loss(flow, density, viscosity);

    private double Loss(double flow, double density, double viscosity) =>
        PorousMedium
            .PressureLoss(new Real(linear), new Real(quadratic), new Real(viscosity), new Real(density), new Real(flow))
            .Value;
}
