using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A calibrated opening in a line, such as a jet or a restrictor, described by one reading.</summary>
/// <remarks>
/// <para>
/// Its volume flow is proportional to the square root of the pressure across it, or to another measured power, and to
/// one over the square root of density. It is symmetric in direction.
/// </para>
/// <para>Source: [White-2003] section 6.12 (flow through an opening); [Definition] of a power law.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/FittingExamples.cs" region="Jet" />
/// </example>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed class Jet : FlowPart
{
    /// <summary>The least exponent, as of a measured static flow.</summary>
    private const double LeastExponent = 0.3;

    private readonly double flow;
    private readonly double loss;
    private readonly double density;
    private readonly double exponent;

    /// <summary>Describes a jet by the square-root law.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="flow">The flow of the reading; greater than zero.</param>
    /// <param name="differentialPressure">The pressure across it at that flow; greater than zero.</param>
    /// <param name="density">Density of the fluid of the reading; greater than zero.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public Jet(string name, VolumeFlow flow, Pressure differentialPressure, Density density, DataSource source)
        : this(name, flow, differentialPressure, density, SiUnits.Ratio(0.5), source) { }

    /// <summary>Describes a jet by a measured exponent of pressure.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="flow">The flow of the reading; greater than zero.</param>
    /// <param name="differentialPressure">The pressure across it at that flow; greater than zero.</param>
    /// <param name="density">Density of the fluid of the reading; greater than zero.</param>
    /// <param name="exponent">
    /// The exponent of pressure in the flow; 30 % to 100 %, where 50 % is the square root.
    /// </param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public Jet(
        string name,
        VolumeFlow flow,
        Pressure differentialPressure,
        Density density,
        Ratio exponent,
        DataSource source
    )
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(source);
        this.flow = Guard.Positive(flow, flow.InSi(), part: Name);
        loss = Guard.Positive(differentialPressure, differentialPressure.InSi(), part: Name);
        this.density = Guard.Positive(density, density.InSi(), part: Name);
        this.exponent = Guard.InRange(exponent, exponent.InSi(), LeastExponent, 1, SiUnits.Ratio, part: Name);
        (Flow, DifferentialPressure, Density, Exponent, Source) = (
            flow,
            differentialPressure,
            density,
            exponent,
            source
        );
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The flow of the reading.</summary>
    public VolumeFlow Flow { get; }

    /// <summary>The pressure across it at that flow.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>Density of the fluid of the reading.</summary>
    public Density Density { get; }

    /// <summary>The exponent of pressure in the flow.</summary>
    public Ratio Exponent { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <inheritdoc />
    internal override LawSettings Law =>
        exponent == 0.5
            ? new SquareSettings { SquarePerDensity = loss / (flow * flow * density) }
            : new PowerSettings(flow, loss, density, exponent);

    /// <summary>The pressure loss at a flow.</summary>
    /// <param name="volumeFlow">Volume flow, of either sign.</param>
    /// <param name="fuelDensity">Density of the fuel; greater than zero.</param>
    /// <returns>The loss, in Pa, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Pressure LossAt(VolumeFlow volumeFlow, Density fuelDensity) =>
        SiUnits.Pressure(
            Orifice
                .PowerLawPressureLoss(
                    new Real(Guard.Finite(volumeFlow, volumeFlow.InSi(), part: Name)),
                    new Real(flow),
                    new Real(loss),
                    new Real(density),
                    new Real(Guard.Positive(fuelDensity, fuelDensity.InSi(), part: Name)),
                    exponent
                )
                .Value
        );

    /// <summary>The flow at a pressure difference.</summary>
    /// <param name="differentialPressure">Pressure ahead less pressure behind; not negative.</param>
    /// <param name="fuelDensity">Density of the fuel; greater than zero.</param>
    /// <returns>The volume flow, in m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public VolumeFlow FlowAt(Pressure differentialPressure, Density fuelDensity)
    {
        double across = Guard.NotNegative(differentialPressure, differentialPressure.InSi(), part: Name);
        double rho = Guard.Positive(fuelDensity, fuelDensity.InSi(), part: Name);
        double share = Math.Pow(across / loss, exponent);
        double creeping = across / loss / Math.Pow(Orifice.CreepingShare, (1 / exponent) - 1);
        share = share < Orifice.CreepingShare ? creeping : share;
        return SiUnits.VolumeFlow(flow * share * Math.Sqrt(density / rho));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Flow} at {DifferentialPressure}");
}
