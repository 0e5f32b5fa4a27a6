using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>A pump at another speed, in another fluid, or worn.</summary>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public static class PumpScaling
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource FlowSource = new("White-2003", "section 11.3 (similarity rules)");

    internal static readonly DataSource PressureRiseSource = new("White-2003", "section 11.3 (similarity rules)");

    internal static readonly DataSource PressureRiseInFluidSource = new(
        "White-2003",
        "section 11.3 (head and power coefficients)"
    );

    internal static readonly Symbol PressureRiseInFluidResult = new("dp", "Pa", "pressure rise in the other fluid");

    internal static readonly DataSource PowerSource = new("White-2003", "section 11.3 (similarity rules)");

    internal static readonly DataSource WornFlowSource = new(
        "Common-practice",
        "a share and a leak, as laminar flow through a worn gap is"
    );

    internal static readonly DataSource TemperatureRiseSource = new(
        "Cengel-Boles-2015",
        "energy balance of a steady flow"
    );

    internal static readonly Symbol FlowResult = new("Q", "m3/s", "flow at the other speed");

    internal static readonly Symbol PressureRiseResult = new("dp", "Pa", "pressure rise at the other speed");

    internal static readonly Symbol PowerResult = new("P", "W", "power at the other speed");

    internal static readonly Symbol WornFlowResult = new("Qw", "m3/s", "flow of the worn pump");

    internal static readonly Symbol TemperatureRiseResult = new("dT", "K", "rise of temperature");

    /// <summary>The flow at another speed, by the affinity laws: Q n.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volumeFlow">Flow at the known speed, m³/s.</param>
    /// <param name="speedRatio">Other speed over known speed; greater than zero.</param>
    /// <returns>Flow at the other speed, m³/s, at the corresponding point.</returns>
    /// <remarks>
    /// Valid for one pump and one fluid while the efficiency hardly changes. Source: [White-2003] section 11.3
    /// (similarity rules).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T Flow<T>(T volumeFlow, T speedRatio)
        where T : struct, IScalar<T> => T.Step(volumeFlow * speedRatio, FlowResult, FlowSource);

    /// <summary>The pressure rise at another speed, by the affinity laws: p n².</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="pressureRise">Pressure rise at the known speed, Pa.</param>
    /// <param name="speedRatio">Other speed over known speed; greater than zero.</param>
    /// <returns>Pressure rise at the other speed, Pa, at the corresponding point.</returns>
    /// <remarks>
    /// Valid for one pump and one fluid while the efficiency hardly changes. Source: [White-2003] section 11.3
    /// (similarity rules).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T PressureRise<T>(T pressureRise, T speedRatio)
        where T : struct, IScalar<T> =>
        T.Step(pressureRise * speedRatio * speedRatio, PressureRiseResult, PressureRiseSource);

    /// <summary>The shaft power at another speed, by the affinity laws: P n³.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="power">Power at the known speed, W.</param>
    /// <param name="speedRatio">Other speed over known speed; greater than zero.</param>
    /// <returns>Power at the other speed, W, at the corresponding point.</returns>
    /// <remarks>
    /// Valid for one pump and one fluid while the efficiency hardly changes. Source: [White-2003] section 11.3
    /// (similarity rules).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T Power<T>(T power, T speedRatio)
        where T : struct, IScalar<T> => T.Step(power * speedRatio * speedRatio * speedRatio, PowerResult, PowerSource);

    /// <summary>The pressure rise of a rotodynamic pump in a fluid of another density: p r.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="pressureRise">Pressure rise in the known fluid, Pa.</param>
    /// <param name="densityRatio">Other density over known density; greater than zero.</param>
    /// <returns>Pressure rise in the other fluid, Pa, at the same flow and speed.</returns>
    /// <remarks>
    /// The head does not change, so pressure rise and shaft power are proportional to the density. The rise of a
    /// positive-displacement pump does not change. Source: [White-2003] section 11.3 (head and power coefficients).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T PressureRiseInFluid<T>(T pressureRise, T densityRatio)
        where T : struct, IScalar<T> =>
        T.Step(pressureRise * densityRatio, PressureRiseInFluidResult, PressureRiseInFluidSource);

    /// <summary>The flow of a worn pump: a share of that of the new one, less a leak that grows with pressure.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volumeFlow">Flow of the new pump at this pressure rise, m³/s.</param>
    /// <param name="flowShare">The fraction of it that is left without leakage; 0 to 1.</param>
    /// <param name="leakPerPressure">Leak from outlet to inlet for each unit of pressure rise, m³/(s Pa); not negative.</param>
    /// <param name="pressureRise">Pressure rise, Pa.</param>
    /// <returns>Flow of the worn pump, m³/s; below zero where it can't hold this pressure.</returns>
    /// <remarks>Source: [Common-practice] a share and a leak, as laminar flow through a worn gap is.</remarks>
    [MethodImpl(Inline)]
    public static T WornFlow<T>(T volumeFlow, T flowShare, T leakPerPressure, T pressureRise)
        where T : struct, IScalar<T> =>
        T.Step((flowShare * volumeFlow) - (leakPerPressure * pressureRise), WornFlowResult, WornFlowSource);

    /// <summary>The temperature rise of a flow that takes up a power: P / (rho c Q).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="heat">Power that becomes heat in the liquid, W.</param>
    /// <param name="density">Density, kg/m³; greater than zero.</param>
    /// <param name="specificHeat">Specific heat capacity, J/(kg K); greater than zero.</param>
    /// <param name="volumeFlow">Flow, m³/s; greater than zero.</param>
    /// <returns>Rise of temperature, K.</returns>
    /// <remarks>Steady state, nothing lost to the surroundings. Source: [Cengel-Boles-2015] energy balance of a steady flow.</remarks>
    [MethodImpl(Inline)]
    public static T TemperatureRise<T>(T heat, T density, T specificHeat, T volumeFlow)
        where T : struct, IScalar<T> =>
        T.Step(heat / (density * specificHeat * volumeFlow), TemperatureRiseResult, TemperatureRiseSource);
}
