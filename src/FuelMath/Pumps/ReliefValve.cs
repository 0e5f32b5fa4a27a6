using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A spring-loaded bypass around a pump: closed below a pressure difference, a restriction above it.</summary>
/// <remarks>
/// <para>
/// It opens by the pressure difference across it, so a pressure behind it raises its opening pressure. All pressure
/// lost in it becomes heat.
/// </para>
/// <para>
/// Caution: keep relief and return clear; with a blocked relief a dead-headed pump reaches its highest pressure.
/// </para>
/// <para>
/// Source: [Definition] balance of forces; [Common-practice] loss in a short passage with the square of flow.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/PumpExamples.cs" region="Relief" />
/// </example>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public sealed class ReliefValve : FlowPart
{
    private readonly double opening;
    private readonly double coefficient;

    /// <summary>Describes a valve by two readings.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="openingDifferentialPressure">The difference at which it begins to open; greater than zero.</param>
    /// <param name="addedLoss">The rise of the difference above that at a flow; greater than zero.</param>
    /// <param name="flow">That flow; greater than zero.</param>
    /// <param name="density">Density of the fluid of that reading; greater than zero.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public ReliefValve(
        string name,
        Pressure openingDifferentialPressure,
        Pressure addedLoss,
        VolumeFlow flow,
        Density density,
        DataSource source
    )
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(source);
        opening = Guard.Positive(openingDifferentialPressure, openingDifferentialPressure.InSi(), part: Name);
        coefficient = BypassValve
            .FullyOpenCoefficient(
                new Real(Guard.Positive(addedLoss, addedLoss.InSi(), part: Name)),
                new Real(Guard.Positive(density, density.InSi(), part: Name)),
                new Real(Guard.Positive(flow, flow.InSi(), part: Name))
            )
            .Value;
        (OpeningDifferentialPressure, AddedLoss, Flow, Density, Source) = (
            openingDifferentialPressure,
            addedLoss,
            flow,
            density,
            source
        );
    }

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool ShutsIn => true;

    /// <inheritdoc />
    internal override bool ReturnsSurplus => true;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => LeakPlaces.ReliefSeat;

    /// <inheritdoc />
    /// <remarks>A safety valve should be closed in normal operation.</remarks>
    internal override IEnumerable<Finding> FindingsAt(PartState at)
    {
        if (at.Flow > 0)
        {
            yield return Finding.Of(
                FindingCode.ReliefOpen,
                Severity.Warning,
                at.Line,
                $"Relief valve '{at.Line}' is open",
                Shown.LitersPerHour(at.Flow),
                "shut",
                Source,
                "What passes it heats the fuel in a circle: find what lifts the pressure, and keep its way back clear. A steady surplus belongs to a bypass regulator."
            );
        }
    }

    /// <inheritdoc />
    internal override LawSettings Law =>
        new SquareSettings
        {
            Opening = opening,
            SquarePerDensity = coefficient,
            OneWay = true,
        };

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The difference at which it begins to open.</summary>
    public Pressure OpeningDifferentialPressure { get; }

    /// <summary>The rise of the difference above that at <see cref="Flow"/>.</summary>
    public Pressure AddedLoss { get; }

    /// <summary>The flow of that reading.</summary>
    public VolumeFlow Flow { get; }

    /// <summary>Density of the fluid of that reading.</summary>
    public Density Density { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>Describes a valve by its seat and spring.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="seat">Area of the seat; greater than zero.</param>
    /// <param name="seated">Spring force when closed; greater than zero.</param>
    /// <param name="lifted">Spring force at a flow; greater than when closed.</param>
    /// <param name="flow">That flow; greater than zero.</param>
    /// <param name="density">Density of the fluid; greater than zero.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <returns>The valve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public static ReliefValve FromSpring(
        string name,
        Area seat,
        Force seated,
        Force lifted,
        VolumeFlow flow,
        Density density,
        DataSource source
    )
    {
        double area = Guard.Positive(seat, seat.InSi(), part: name);
        double shut = Guard.Positive(seated, seated.InSi(), part: name);
        double open = Guard.Positive(lifted, lifted.InSi(), part: name);
        return open > shut
            ? new(
                name,
                Held(shut, area),
                SiUnits.Pressure(Held(open, area).InSi() - Held(shut, area).InSi()),
                flow,
                density,
                source
            )
            : throw Guard.OutOfRange(lifted, $"greater than where it is shut, {seated:above}", part: name);
    }

    /// <summary>The flow at a pressure difference.</summary>
    /// <param name="differentialPressure">Pressure ahead less pressure behind; below the opening one nothing passes.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The volume flow, in m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public VolumeFlow FlowAt(Pressure differentialPressure, Density density)
    {
        double above = Guard.Finite(differentialPressure, differentialPressure.InSi(), part: Name) - opening;
        double rho = Guard.Positive(density, density.InSi(), part: Name);
        return SiUnits.VolumeFlow(Math.Sqrt(Math.Max(above, 0) / (coefficient * rho)));
    }

    /// <summary>The pressure difference at a flow.</summary>
    /// <param name="flow">Volume flow; not negative.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>Pressure ahead less pressure behind, in Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Pressure DifferentialPressureAt(VolumeFlow flow, Density density) =>
        SiUnits.Pressure(
            opening
                + BypassValve
                    .FullyOpenLoss(
                        new Real(coefficient),
                        new Real(Guard.Positive(density, density.InSi(), part: Name)),
                        new Real(Guard.NotNegative(flow, flow.InSi(), part: Name))
                    )
                    .Value
        );

    /// <summary>The power that the flow turns into heat.</summary>
    /// <param name="flow">Volume flow; not negative.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The power, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Power HeatAt(VolumeFlow flow, Density density) =>
        SiUnits.Power(
            PumpPower.Hydraulic(new Real(DifferentialPressureAt(flow, density).InSi()), new Real(flow.InSi())).Value
        );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: opens at {OpeningDifferentialPressure}");

    /// <summary>The pressure on the seat that balances a spring: a valve without a diaphragm.</summary>
    private static Pressure Held(double force, double seat) =>
        SiUnits.Pressure(
            BypassValve
                .HeldPressure(
                    new Real(force),
                    new Real(0),
                    new Real(0),
                    new Real(seat),
                    new Real(0),
                    new Real(0),
                    new Real(0)
                )
                .Value
        );
}
