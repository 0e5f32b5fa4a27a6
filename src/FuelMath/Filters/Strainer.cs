using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A strainer of plain woven wire with square openings, as on a pick-up or ahead of a pump.</summary>
/// <remarks>
/// <para>
/// What it loses follows from its measures: one term with viscosity and flow, one with density and the square of flow. With
/// the length of a wire over its two crossings L = √(1 + (n d)²), n wires of diameter d to a meter, the mesh has the depth
/// 2 d, the open part 1 − π n d L / 4 of that, and π n L of surface in each volume.
/// </para>
/// <para>
/// It is clean: what it holds back closes it. It stops what does not pass its openings and is no filter for injectors.
/// </para>
/// <para>
/// Caution: ahead of a pump its loss comes off the suction head, and a clogged one starves the engine.
/// </para>
/// <para>Source: [Armour-Cannon-1968] friction of woven screens.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/FilterExamples.cs" region="Strainer" />
/// </example>
/// <seealso href="../guide/filters.html">Filters</seealso>
public sealed class Strainer : FlowPart
{
    /// <summary>The screens were measured up to this Reynolds number.</summary>
    private const double GreatestReynolds = 1000;

    private const double Viscous = 8.61;
    private const double Inertial = 0.52;

    private readonly double linear;
    private readonly double quadratic;

    // Flow over kinematic viscosity and Reynolds number, m.
    private readonly double flowPerReynolds;

    /// <summary>Describes a strainer by its wire.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="opening">The clear width between two wires; 0.01 to 5 mm.</param>
    /// <param name="wireDiameter">Diameter of the wire; greater than zero and at most twice the opening.</param>
    /// <param name="area">The mesh that fuel passes, without what its frame covers; greater than zero.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public Strainer(string name, Length opening, Length wireDiameter, Area area, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(source);
        double width = Guard.InRange(opening, opening.InSi(), 1e-5, 5e-3, SiUnits.Length, part: Name);
        double wire = Guard.PositiveUpTo(wireDiameter, wireDiameter.InSi(), 2 * width, SiUnits.Length, part: Name);
        double square = Guard.Positive(area, area.InSi(), part: Name);
        (Opening, WireDiameter, Area, Source) = (opening, wireDiameter, area, source);

        double perMeter = 1 / (width + wire);
        double crimped = Math.Sqrt(1 + (perMeter * wire * perMeter * wire));
        double open = 1 - (Math.PI / 4 * perMeter * wire * crimped);
        double surface = Math.PI * perMeter * crimped;
        double depth = 2 * wire / (open * open);
        linear = Viscous * depth * surface * surface / square;
        quadratic = Inertial * depth / (width * square * square);
        flowPerReynolds = surface * surface * width * square;
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The clear width between two wires.</summary>
    public Length Opening { get; }

    /// <summary>Diameter of the wire.</summary>
    public Length WireDiameter { get; }

    /// <summary>The mesh that fuel passes.</summary>
    public Area Area { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <inheritdoc />
    internal override LawSettings Law =>
        new SquareSettings { LinearPerViscosity = linear, SquarePerDensity = quadratic };

    /// <inheritdoc />
    internal override IEnumerable<Finding> FindingsAt(PartState at)
    {
        double greatest = GreatestFlowSi(at.Density, at.Viscosity);
        if (Math.Abs(at.Flow) > greatest)
        {
            yield return Finding.Of(
                FindingCode.FilterBeyondTest,
                Severity.Warning,
                at.Line,
                $"Strainer '{at.Line}' carries more than such screens were measured for: its loss is extrapolated",
                Shown.LitersPerHour(Math.Abs(at.Flow)),
                Shown.LitersPerHour(greatest),
                Source,
                "Fit a larger one."
            );
        }
    }

    /// <summary>The greatest flow of its law: a Reynolds number of 1000 by the surface of the wire.</summary>
    /// <param name="density">Density of the fluid; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fluid; greater than zero.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public VolumeFlow GreatestFlow(Density density, DynamicViscosity viscosity) =>
        SiUnits.VolumeFlow(
            GreatestFlowSi(
                Guard.Positive(density, density.InSi(), part: Name),
                Guard.Positive(viscosity, viscosity.InSi(), part: Name)
            )
        );

    /// <summary>The pressure lost at a flow.</summary>
    /// <param name="flow">Volume flow of either sign, at most <see cref="GreatestFlow"/>.</param>
    /// <param name="density">Density of the fluid; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fluid; greater than zero.</param>
    /// <returns>The loss, in Pa, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A property of the fluid is outside what is allowed.</exception>
    /// <exception cref="OutsideTableException">The flow is greater than the law was measured for.</exception>
    public Pressure LossAt(VolumeFlow flow, Density density, DynamicViscosity viscosity)
    {
        double most = GreatestFlow(density, viscosity).InSi();
        double q = Guard.Finite(flow, flow.InSi(), part: Name);
        q = Guard.InTable(new TableLabel("Strainer", "", Name), "flow", flow, q, -most, most, SiUnits.VolumeFlow);
        return SiUnits.Pressure(
            PorousMedium
                .PressureLoss(
                    new Real(linear),
                    new Real(quadratic),
                    new Real(viscosity.InSi()),
                    new Real(density.InSi()),
                    new Real(q)
                )
                .Value
        );
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    private double GreatestFlowSi(double density, double viscosity) =>
        GreatestReynolds * flowPerReynolds * viscosity / density;
}
