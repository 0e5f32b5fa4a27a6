using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The air that an engine takes in and the fuel that it needs. SI units.</summary>
/// <seealso href="../guide/engines.html">Engines</seealso>
public static class EngineAir
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource AirDensitySource = new("ISO-2533", "equation of state");

    internal static readonly DataSource AirMassPerEventSource = new(
        "Heywood-1988",
        "section 2.10 (volumetric efficiency)"
    );

    internal static readonly DataSource FuelMassSource = new("Heywood-1988", "section 3.4 (relative air/fuel ratio)");

    internal static readonly DataSource EventsPerSecondSource = new(
        "Definition",
        "events per revolution times revolutions per second"
    );

    internal static readonly DataSource FuelFlowFromPowerSource = new(
        "Heywood-1988",
        "section 2.8 (specific fuel consumption)"
    );

    internal static readonly DataSource HarmonicMeanLambdaSource = new("Definition", "of lambda for the sum");

    /// <summary>Specific gas constant of dry air, J/(kg K). Source: [ISO-2533] primary constants.</summary>
    public const double AirGasConstant = 287.05287;

    /// <summary>Density of dry air: rho = p / (R T).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="absolutePressure">Absolute pressure, Pa.</param>
    /// <param name="temperature">Temperature, K; greater than zero.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>Source: [ISO-2533] equation of state.</remarks>
    [MethodImpl(Inline)]
    public static T AirDensity<T>(T absolutePressure, T temperature)
        where T : struct, IScalar<T> =>
        T.Step(absolutePressure / (AirGasConstant * temperature), Symbols.AirDensity, AirDensitySource);

    /// <summary>Air mass of one intake event: m = ve rho V.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="displacementPerEvent">Displacement that one event fills, m³.</param>
    /// <param name="volumetricEfficiency">Volumetric efficiency for that density, a fraction.</param>
    /// <param name="airDensity">Density at the reference of the volumetric efficiency, kg/m³.</param>
    /// <returns>Air mass, kg.</returns>
    /// <remarks>Source: [Heywood-1988] section 2.10 (volumetric efficiency).</remarks>
    [MethodImpl(Inline)]
    public static T AirMassPerEvent<T>(T displacementPerEvent, T volumetricEfficiency, T airDensity)
        where T : struct, IScalar<T> =>
        T.Step(volumetricEfficiency * airDensity * displacementPerEvent, Symbols.AirMass, AirMassPerEventSource);

    /// <summary>The fuel for an air mass: m = air / (stoichiometric ratio x lambda).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="airMass">Mass of air, kg (or mass flow, kg/s).</param>
    /// <param name="stoichiometricRatio">Stoichiometric ratio by mass; greater than zero.</param>
    /// <param name="lambda">Intended lambda; greater than zero.</param>
    /// <returns>Mass of fuel, in the unit of the air.</returns>
    /// <remarks>Source: [Heywood-1988] section 3.4 (relative air/fuel ratio).</remarks>
    [MethodImpl(Inline)]
    public static T FuelMass<T>(T airMass, T stoichiometricRatio, T lambda)
        where T : struct, IScalar<T> =>
        T.Step(airMass / (stoichiometricRatio * lambda), Symbols.FuelMass, FuelMassSource);

    /// <summary>Events per second at a shaft speed: speed / 2 pi x events per revolution.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="speedRadPerSecond">Shaft speed, rad/s.</param>
    /// <param name="eventsPerRevolution">Events per revolution of that shaft: a half, one, two and so on.</param>
    /// <returns>Events per second, 1/s.</returns>
    /// <remarks>Source: [Definition].</remarks>
    [MethodImpl(Inline)]
    public static T EventsPerSecond<T>(T speedRadPerSecond, T eventsPerRevolution)
        where T : struct, IScalar<T> =>
        T.Step(speedRadPerSecond * eventsPerRevolution / (2 * Math.PI), Symbols.EventsPerSecond, EventsPerSecondSource);

    /// <summary>The fuel flow for a power: power x brake specific fuel consumption.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="power">Brake power, W.</param>
    /// <param name="brakeSpecificFuelConsumption">
    /// Brake specific fuel consumption, kg/J, of the same fuel and at the same shaft. It includes its own enrichment:
    /// don't divide by lambda again.
    /// </param>
    /// <returns>Mass flow of fuel, kg/s.</returns>
    /// <remarks>Source: [Heywood-1988] section 2.8 (specific fuel consumption).</remarks>
    [MethodImpl(Inline)]
    public static T FuelFlowFromPower<T>(T power, T brakeSpecificFuelConsumption)
        where T : struct, IScalar<T> =>
        T.Step(power * brakeSpecificFuelConsumption, Symbols.FuelFlow, FuelFlowFromPowerSource);

    /// <summary>
    /// The lambda that one sensor reads when cylinders get equal air and unequal fuel: the harmonic mean of their
    /// lambdas.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="lambdas">Lambda of each cylinder; one or more, each greater than zero.</param>
    /// <returns>Total air over the air that the total fuel needs.</returns>
    /// <remarks>
    /// A mean hides the leanest cylinder: it proves no cylinder safe. Source: [Definition] of lambda for the sum.
    /// </remarks>
    /// <exception cref="ArgumentException"><paramref name="lambdas"/> is empty.</exception>
    public static T HarmonicMeanLambda<T>(ReadOnlySpan<T> lambdas)
        where T : struct, IScalar<T>
    {
        if (lambdas.IsEmpty)
        {
            throw Guard.Empty(nameof(lambdas));
        }

        T fuel = 1 / lambdas[0];
        for (int i = 1; i < lambdas.Length; i++)
        {
            fuel += 1 / lambdas[i];
        }

        return T.Step(lambdas.Length / fuel, Symbols.Lambda, HarmonicMeanLambdaSource);
    }
}
