using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Flow of a liquid through a small opening: the square-root law. SI units.</summary>
/// <remarks>
/// The differential pressure is upstream minus downstream, with the same reference, and not negative. Mass flow is
/// proportional to the square root of density and volume flow to its inverse, so that conversion of a rating to another
/// fluid changes the two in opposite directions.
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public static class Orifice
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource MassFlowSource = new(
        "White-2003",
        "section 6.12 (Bernoulli obstruction theory)"
    );

    internal static readonly DataSource VolumeFlowSource = new(
        "White-2003",
        "section 6.12 (Bernoulli obstruction theory)"
    );

    internal static readonly DataSource CarriedMassFlowSource = new(
        "White-2003",
        "section 6.12, as the ratio of two states"
    );

    internal static readonly DataSource CarriedVolumeFlowSource = new(
        "White-2003",
        "section 6.12, as the ratio of two states"
    );

    internal static readonly DataSource PowerLawMassFlowSource = new(
        "White-2003",
        "section 6.12 for the root of density"
    );

    internal static readonly DataSource PowerLawPressureLossSource = new(
        "White-2003",
        "section 6.12 for the root of density"
    );

    internal static readonly DataSource ApproachFactorSource = new("ISO-5167", "part 1 (velocity of approach factor)");

    internal static readonly Symbol ApproachFactorResult = new("Fa", "", "velocity of approach factor");

    /// <summary>Below this fraction of a reading's flow a power law is replaced by a line through zero.</summary>
    internal const double CreepingShare = 1e-3;

    /// <summary>Mass flow: m = Cd A sqrt(2 rho dp).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="dischargeCoefficient">Discharge coefficient, 0 to 1; times an approach factor where one applies.</param>
    /// <param name="area">Area of the opening, m².</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="differentialPressure">Differential pressure, Pa; not negative.</param>
    /// <returns>Mass flow, kg/s.</returns>
    /// <remarks>Source: [White-2003] section 6.12 (Bernoulli obstruction theory).</remarks>
    [MethodImpl(Inline)]
    public static T MassFlow<T>(T dischargeCoefficient, T area, T density, T differentialPressure)
        where T : struct, IScalar<T> =>
        T.Step(
            dischargeCoefficient * area * T.Sqrt(2 * density * differentialPressure),
            Symbols.MassFlow,
            MassFlowSource
        );

    /// <summary>Volume flow: Q = Cd A sqrt(2 dp / rho).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="dischargeCoefficient">Discharge coefficient, 0 to 1; times an approach factor where one applies.</param>
    /// <param name="area">Area of the opening, m².</param>
    /// <param name="density">Density, kg/m³; greater than zero.</param>
    /// <param name="differentialPressure">Differential pressure, Pa; not negative.</param>
    /// <returns>Volume flow, m³/s.</returns>
    /// <remarks>Source: [White-2003] section 6.12 (Bernoulli obstruction theory).</remarks>
    [MethodImpl(Inline)]
    public static T VolumeFlow<T>(T dischargeCoefficient, T area, T density, T differentialPressure)
        where T : struct, IScalar<T> =>
        T.Step(
            dischargeCoefficient * area * T.Sqrt(2 * differentialPressure / density),
            Symbols.VolumeFlow,
            VolumeFlowSource
        );

    /// <summary>A rated mass flow converted to another pressure and density: m = m0 sqrt(dp/dp0 rho/rho0).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="referenceMassFlow">Rated mass flow, kg/s.</param>
    /// <param name="referenceDifferentialPressure">Differential pressure of the rating, Pa; greater than zero.</param>
    /// <param name="referenceDensity">Density of the rating's fluid, kg/m³; greater than zero.</param>
    /// <param name="differentialPressure">Differential pressure, Pa; not negative.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <returns>Mass flow, kg/s.</returns>
    /// <remarks>
    /// Valid as long as the discharge coefficient is that of the rating. Source: [White-2003] section 6.12, as the
    /// ratio of two states.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T CarriedMassFlow<T>(
        T referenceMassFlow,
        T referenceDifferentialPressure,
        T referenceDensity,
        T differentialPressure,
        T density
    )
        where T : struct, IScalar<T> =>
        T.Step(
            referenceMassFlow
                * T.Sqrt(differentialPressure / referenceDifferentialPressure * (density / referenceDensity)),
            Symbols.MassFlow,
            CarriedMassFlowSource
        );

    /// <summary>A rated volume flow converted to another pressure and density: Q = Q0 sqrt(dp/dp0 rho0/rho).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="referenceVolumeFlow">Rated volume flow, m³/s.</param>
    /// <param name="referenceDifferentialPressure">Differential pressure of the rating, Pa; greater than zero.</param>
    /// <param name="referenceDensity">Density of the rating's fluid, kg/m³.</param>
    /// <param name="differentialPressure">Differential pressure, Pa; not negative.</param>
    /// <param name="density">Density, kg/m³; greater than zero.</param>
    /// <returns>Volume flow, m³/s.</returns>
    /// <remarks>
    /// Valid as long as the discharge coefficient is that of the rating. Source: [White-2003] section 6.12, as the
    /// ratio of two states.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T CarriedVolumeFlow<T>(
        T referenceVolumeFlow,
        T referenceDifferentialPressure,
        T referenceDensity,
        T differentialPressure,
        T density
    )
        where T : struct, IScalar<T> =>
        T.Step(
            referenceVolumeFlow
                * T.Sqrt(differentialPressure / referenceDifferentialPressure * (referenceDensity / density)),
            Symbols.VolumeFlow,
            CarriedVolumeFlowSource
        );

    /// <summary>
    /// A rated mass flow converted by a measured power of pressure: m = m0 (dp/dp0)^n sqrt(rho/rho0).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="referenceMassFlow">Rated mass flow, kg/s.</param>
    /// <param name="referenceDifferentialPressure">Differential pressure of the rating, Pa; greater than zero.</param>
    /// <param name="referenceDensity">Density of the rating's fluid, kg/m³; greater than zero.</param>
    /// <param name="differentialPressure">Differential pressure, Pa; greater than zero.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="exponent">The power, 0.3 to 1; one half is the square-root law.</param>
    /// <returns>Mass flow, kg/s.</returns>
    /// <remarks>
    /// The exponent holds for one fluid; the dependence on density remains that of an orifice, a square root.
    /// Source: [White-2003] section 6.12 for the root of density; the power of pressure is a fit, [Definition] of a power law.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T PowerLawMassFlow<T>(
        T referenceMassFlow,
        T referenceDifferentialPressure,
        T referenceDensity,
        T differentialPressure,
        T density,
        double exponent
    )
        where T : struct, IScalar<T> =>
        T.Step(
            referenceMassFlow
                * T.Pow(differentialPressure / referenceDifferentialPressure, exponent)
                * T.Sqrt(density / referenceDensity),
            Symbols.MassFlow,
            PowerLawMassFlowSource
        );

    /// <summary>
    /// The pressure loss of a volume flow by a measured power law: dp = dp0 s |s|^(1/n - 1), where s = Q/Q0
    /// sqrt(rho/rho0). The inverse of <see cref="PowerLawMassFlow"/>, for either sign.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volumeFlow">Volume flow, m³/s; its sign is kept.</param>
    /// <param name="referenceVolumeFlow">Volume flow of the reading, m³/s; greater than zero.</param>
    /// <param name="referenceDifferentialPressure">Differential pressure of the reading, Pa; greater than zero.</param>
    /// <param name="referenceDensity">Density of the reading's fluid, kg/m³; greater than zero.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="exponent">The exponent of pressure in the flow, 0.3 to 1; one half is the square-root law.</param>
    /// <returns>Pressure lost, Pa, with the sign of the flow.</returns>
    /// <remarks>
    /// Below a thousandth of the reading's flow the loss is linear in the flow, because the power law has zero slope at
    /// no flow. Source: [White-2003] section 6.12 for the root of density; the power of pressure is a fit, [Definition]
    /// of a power law.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T PowerLawPressureLoss<T>(
        T volumeFlow,
        T referenceVolumeFlow,
        T referenceDifferentialPressure,
        T referenceDensity,
        T density,
        double exponent
    )
        where T : struct, IScalar<T>
    {
        T share = volumeFlow / referenceVolumeFlow * T.Sqrt(density / referenceDensity);
        T size = T.Max(T.Abs(share), T.Of(CreepingShare));
        return T.Step(
            referenceDifferentialPressure * share * T.Pow(size, (1 / exponent) - 1),
            Symbols.PressureLoss,
            PowerLawPressureLossSource
        );
    }

    /// <summary>The velocity-of-approach factor of an opening: 1 / sqrt(1 - (d/D)^4).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="diameterRatio">Diameter of the opening over that of the pipe, 0 to less than 1.</param>
    /// <returns>The factor, from 1 upward.</returns>
    /// <remarks>Source: [ISO-5167] part 1 (velocity of approach factor).</remarks>
    [MethodImpl(Inline)]
    public static T ApproachFactor<T>(T diameterRatio)
        where T : struct, IScalar<T>
    {
        T square = diameterRatio * diameterRatio;
        return T.Step(1 / T.Sqrt(1 - (square * square)), ApproachFactorResult, ApproachFactorSource);
    }
}
