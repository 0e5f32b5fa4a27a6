using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The loading curve of an element: its loss at one flow over the mass of dirt that it holds, from a loading test.
/// </summary>
/// <remarks>
/// <para>
/// A monotone curve through the points. The loss above that of the clean element is assigned to the medium, so it is
/// proportional to viscosity and flow in another fuel. Dirt of another kind and size loads differently: a test dust
/// does not represent the dirt of a tank.
/// </para>
/// <para>Source: [ISO-16889] the test; [Forchheimer-1901] the term of the medium.</para>
/// </remarks>
/// <seealso href="../guide/filters.html">Filters</seealso>
public sealed partial class FilterLoading
{
    private readonly Curve losses;
    private readonly double flow;
    private readonly double viscosity;

    // Set in the copy that belongs to a filter, and never after.
    private string? filter;

    /// <summary>Creates a loading test.</summary>
    /// <param name="testFlow">The flow of the test; greater than zero.</param>
    /// <param name="testViscosity">Dynamic viscosity of the fluid of the test; greater than zero.</param>
    /// <param name="points">Two or more points, the first without dirt; mass and loss rising from point to point. Copied.</param>
    /// <param name="source">Where the points come from.</param>
    /// <exception cref="ArgumentNullException">Points or source are null.</exception>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public FilterLoading(
        VolumeFlow testFlow,
        DynamicViscosity testViscosity,
        IEnumerable<Point> points,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(source);
        flow = Guard.Positive(testFlow, testFlow.InSi());
        viscosity = Guard.Positive(testViscosity, testViscosity.InSi());
        (TestFlow, TestViscosity, Points, Source) = (testFlow, testViscosity, [.. points], source);
        Guard.AtLeast(2, Points.Length, "A loading test", nameof(points));
        double[] masses = [.. Points.Select(p => p.Retained.InSi())];
        double[] pascals = [.. Points.Select(p => p.PressureLoss.InSi())];
        if (masses[0] != 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.CleanPointNeeded,
                $"The first point must be the clean element, {Amount.In(default(Mass), TradeUnit.Of(Points[0].Retained)):exactly}; it holds {Points[0].Retained:value}.",
                nameof(points)
            );
        }

        Guard.StrictlyRising(masses, "Retained mass", nameof(points));
        Guard.StrictlyRising(pascals, "Pressure loss", nameof(points));
        losses = new Curve("Loading test", "retained mass (kg)", masses, pascals, OutsideRange.Refuse);
    }

    /// <summary>The flow of the test.</summary>
    public VolumeFlow TestFlow { get; }

    /// <summary>Dynamic viscosity of the fluid of the test.</summary>
    public DynamicViscosity TestViscosity { get; }

    /// <summary>The points, mass ascending.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Where the points come from.</summary>
    public DataSource Source { get; }

    /// <summary>The greatest mass that was tested.</summary>
    public Mass GreatestMass => Points[^1].Retained;

    /// <summary>The loss at the flow and fluid of the test.</summary>
    /// <param name="retained">Mass of dirt in the element, at most <see cref="GreatestMass"/>.</param>
    /// <returns>Inlet less outlet pressure, in Pa.</returns>
    /// <exception cref="OutsideTableException">The mass is greater than any tested.</exception>
    public Pressure LossAt(Mass retained) => SiUnits.Pressure(losses.At(Place(retained)));

    /// <summary>The mass of dirt at which a filter reaches a limit of loss, at a flow of a fuel.</summary>
    /// <param name="clean">The clean filter of this element.</param>
    /// <param name="limitLoss">The limit of loss; greater than that of the clean filter.</param>
    /// <param name="atFlow">Volume flow; greater than zero.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <param name="dynamicViscosity">Dynamic viscosity of the fuel; greater than zero.</param>
    /// <returns>The mass, in kg.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="clean"/> is null.</exception>
    /// <exception cref="OutsideTableException">The test ended before that loss, or the flow was not tested.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Mass MassUntil(
        Filter clean,
        Pressure limitLoss,
        VolumeFlow atFlow,
        Density density,
        DynamicViscosity dynamicViscosity
    )
    {
        ArgumentNullException.ThrowIfNull(clean);
        Guard.Positive(atFlow, atFlow.InSi(), part: filter);
        double first = clean.LossAt(atFlow, density, dynamicViscosity).InSi();
        double added = limitLoss.InSi() - first;
        if (!(added > 0 && double.IsFinite(added)))
        {
            throw Guard.OutOfRange(
                limitLoss,
                $"greater than that of the clean filter, {SiUnits.Pressure(first):above}",
                part: clean.Name
            );
        }

        double inTest = losses.Values[0] + (added * viscosity * flow / (dynamicViscosity.InSi() * atFlow.InSi()));
        double reached = Guard.InTable(
            Label,
            "loss at the flow and fluid of the test",
            SiUnits.Pressure(inTest).ToUnit(limitLoss.Unit),
            inTest,
            losses.Values[0],
            losses.Values[^1],
            SiUnits.Pressure,
            nameof(limitLoss)
        );
        return SiUnits.Mass(losses.Inverse(reached));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Points.Length} points to {GreatestMass}");

    /// <summary>The same test of a filter's element, which its refusals name.</summary>
    internal FilterLoading Of(string filter)
    {
        var owned = (FilterLoading)MemberwiseClone();
        owned.filter = filter;
        return owned;
    }

    /// <summary>The dirt's addition to the coefficient of the medium, 1/m³.</summary>
    internal double AddedSi(Mass retained) =>
        Filtration
            .AddedCoefficient(
                new Real(losses.At(Place(retained)) - losses.Values[0]),
                new Real(viscosity),
                new Real(flow)
            )
            .Value;

    private TableLabel Label => new("Loading test", " of filter", filter);

    private double Place(Mass retained) =>
        Guard.InTable(Label, "retained mass", retained, retained.InSi(), losses.First, losses.Last, SiUnits.Mass);
}
