using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The static flow of an injector, held open, with the differential pressure and the fluid of the rating.
/// </summary>
/// <remarks>
/// <para>
/// Converted to another pressure and density by the square-root law, or by a measured exponent of pressure. Mass flow
/// is proportional to the square root of density, volume flow to its inverse: of a denser fuel an injector flows more
/// grams but fewer cubic centimeters.
/// </para>
/// <para>Source: [White-2003] section 6.12, as the ratio of two states.</para>
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed partial class FlowRating
{
    private readonly double massFlow;
    private readonly double volumeFlow;
    private readonly double reference;
    private readonly double referenceDensity;
    private readonly IQuantity? given;

    // Set in the copy that belongs to an injector, and never after.
    private string? injector;

    private FlowRating(
        double massFlow,
        double volumeFlow,
        bool isByVolume,
        Pressure differentialPressure,
        Fuel fluid,
        Temperature fluidTemperature,
        double density,
        MeasuredExponent? exponent,
        DataSource source,
        IQuantity? given
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        this.given = given;
        reference = Guard.Positive(differentialPressure, differentialPressure.InSi(), part: Label);
        (this.massFlow, this.volumeFlow, referenceDensity) = (massFlow, volumeFlow, density);
        (IsByVolume, DifferentialPressure, Fluid) = (isByVolume, differentialPressure, fluid);
        (FluidTemperature, Exponent, Source) = (fluidTemperature, exponent, source);
    }

    /// <summary>Whether the rating was given as a volume flow; otherwise as a mass flow.</summary>
    public bool IsByVolume { get; }

    /// <summary>The static mass flow at the rating's own conditions, in kg/s.</summary>
    public MassFlow StaticMassFlow => SiUnits.MassFlow(massFlow);

    /// <summary>The static volume flow at the rating's own conditions, in m³/s.</summary>
    public VolumeFlow StaticVolumeFlow => SiUnits.VolumeFlow(volumeFlow);

    /// <summary>Inlet less discharge pressure of the rating.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>The fluid of the rating.</summary>
    public Fuel Fluid { get; }

    /// <summary>Temperature of the fluid.</summary>
    public Temperature FluidTemperature { get; }

    /// <summary>Density of the fluid at that temperature, in kg/m³.</summary>
    public Density FluidDensity => SiUnits.Density(referenceDensity);

    /// <summary>The measured exponent of pressure; null where the square-root law is used.</summary>
    public MeasuredExponent? Exponent { get; private set; }

    /// <summary>Where the rating comes from.</summary>
    public DataSource Source { get; }

    /// <summary>The part in refusals: its injector, or what it is before it belongs to one.</summary>
    private string Label => injector ?? (given is null ? "Flow rating" : $"Flow rating of {Amount.Of(given).Text()}");

    /// <summary>The same rating of an injector, which its refusals name.</summary>
    internal FlowRating Of(string injector)
    {
        var owned = (FlowRating)MemberwiseClone();
        (owned.injector, owned.Exponent) = (injector, Exponent?.Of(injector));
        return owned;
    }

    internal double MassFlowSi => massFlow;

    internal double DifferentialPressureSi => reference;

    internal double DensitySi => referenceDensity;

    /// <summary>A rating given as a volume flow.</summary>
    /// <param name="staticFlow">Volume flow when held open; greater than zero.</param>
    /// <param name="differentialPressure">Inlet less discharge pressure; greater than zero.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="fluidTemperature">Its temperature, for which its density is known.</param>
    /// <param name="source">Where the rating comes from.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException">Fluid or source is null.</exception>
    public static FlowRating FromVolume(
        VolumeFlow staticFlow,
        Pressure differentialPressure,
        Fuel fluid,
        Temperature fluidTemperature,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(fluid);
        double flow = Guard.Positive(staticFlow, staticFlow.InSi());
        double density = fluid.DensityAt(fluidTemperature).InSi();
        return new(
            flow * density,
            flow,
            true,
            differentialPressure,
            fluid,
            fluidTemperature,
            density,
            null,
            source,
            staticFlow
        );
    }

    /// <summary>A rating given as a mass flow.</summary>
    /// <param name="staticFlow">Mass flow when held open; greater than zero.</param>
    /// <param name="differentialPressure">Inlet less discharge pressure; greater than zero.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="fluidTemperature">Its temperature, for which its density is known.</param>
    /// <param name="source">Where the rating comes from.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException">Fluid or source is null.</exception>
    public static FlowRating FromMass(
        MassFlow staticFlow,
        Pressure differentialPressure,
        Fuel fluid,
        Temperature fluidTemperature,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(fluid);
        double flow = Guard.Positive(staticFlow, staticFlow.InSi());
        double density = fluid.DensityAt(fluidTemperature).InSi();
        return new(
            flow,
            flow / density,
            false,
            differentialPressure,
            fluid,
            fluidTemperature,
            density,
            null,
            source,
            staticFlow
        );
    }

    /// <summary>The static mass flow at other conditions.</summary>
    /// <param name="differentialPressure">Inlet less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <returns>The mass flow, in kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public MassFlow MassFlowAt(Pressure differentialPressure, Density density) =>
        SiUnits.MassFlow(MassFlowSiAt(differentialPressure, density));

    /// <summary>The static volume flow at other conditions.</summary>
    /// <param name="differentialPressure">Inlet less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <returns>The volume flow, in m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public VolumeFlow VolumeFlowAt(Pressure differentialPressure, Density density) =>
        SiUnits.VolumeFlow(
            Exponent is null
                ? Orifice
                    .CarriedVolumeFlow(
                        new Real(volumeFlow),
                        new Real(reference),
                        new Real(referenceDensity),
                        new Real(Differential(differentialPressure)),
                        new Real(Guard.Positive(density, density.InSi(), part: Label))
                    )
                    .Value
                : MassFlowSiAt(differentialPressure, density) / density.InSi()
        );

    /// <summary>The same rating with a measured exponent of pressure in place of the square root.</summary>
    /// <param name="exponent">The exponent with its range of pressures.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="exponent"/> is null.</exception>
    public FlowRating WithExponent(MeasuredExponent exponent)
    {
        ArgumentNullException.ThrowIfNull(exponent);
        return With(1, exponent, Source);
    }

    /// <summary>The same rating with its flow multiplied, as for one injector measured against its set.</summary>
    /// <param name="scale">The factor on the flow; greater than zero.</param>
    /// <param name="source">Where the factor comes from.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="scale"/> is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public FlowRating WithFlowScale(Ratio scale, DataSource source)
    {
        return With(Guard.Positive(scale, scale.InSi(), part: Label), Exponent, source);
    }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{(IsByVolume ? StaticVolumeFlow : (object)StaticMassFlow)} at {DifferentialPressure}, {Fluid}");

    /// <summary>Static mass flow, kg/s; a pressure outside the readings of its exponent is refused.</summary>
    internal double MassFlowSiAt(Pressure differentialPressure, Density density)
    {
        double pascals = Differential(differentialPressure);
        double kilograms = Guard.Positive(density, density.InSi(), part: Label);
        return Carried(Exponent?.Checked(differentialPressure, pascals) ?? pascals, kilograms);
    }

    /// <summary>
    /// Static mass flow, kg/s, for an iterate of a solver: held at the end outside the readings of its exponent.
    /// </summary>
    /// <param name="pascals">Differential pressure, Pa; greater than zero.</param>
    /// <param name="kilograms">Density, kg/m³; greater than zero.</param>
    internal double HeldMassFlow(double pascals, double kilograms) =>
        Carried(Exponent?.Held(pascals) ?? pascals, kilograms);

    private double Carried(double pascals, double kilograms) => MassFlow(new Real(pascals), new Real(kilograms)).Value;

    /// <summary>
    /// The static mass flow, kg/s, in any scalar: for solvers. A measured power law is extrapolated beyond its
    /// readings; the solver checks the solution afterwards.
    /// </summary>
    internal T MassFlow<T>(T differentialPressure, T density)
        where T : struct, IScalar<T> =>
        MassFlow(T.Of(massFlow), T.Of(reference), T.Of(referenceDensity), differentialPressure, density);

    private T MassFlow<T>(T rated, T ratedAt, T ratedDensity, T differentialPressure, T density)
        where T : struct, IScalar<T> =>
        Exponent is null
            ? Orifice.CarriedMassFlow(rated, ratedAt, ratedDensity, differentialPressure, density)
            : Orifice.PowerLawMassFlow(
                rated,
                ratedAt,
                ratedDensity,
                differentialPressure,
                density,
                Exponent.ExponentSi
            );

    private FlowRating With(double factor, MeasuredExponent? exponent, DataSource source) =>
        new(
            massFlow * factor,
            volumeFlow * factor,
            IsByVolume,
            DifferentialPressure,
            Fluid,
            FluidTemperature,
            referenceDensity,
            exponent,
            source,
            factor == 1 ? given : null
        );

    private double Differential(Pressure differentialPressure)
    {
        double pascals = differentialPressure.InSi();
        return pascals >= 0 && double.IsFinite(pascals)
            ? pascals
            : throw Guard.OutOfRange(
                differentialPressure,
                Guard
                    .FromZero(differentialPressure)
                    .Then(", because no fuel flows when the rail lies below the discharge pressure"),
                part: Label
            );
    }
}
