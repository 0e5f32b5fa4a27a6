using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>A tank of one temperature that a pump heats and the air cools. SI units.</summary>
/// <remarks>
/// A lumped model: fuel and tank share one temperature, and the heat loss is proportional to its difference from
/// ambient.
/// </remarks>
/// <seealso href="../guide/heat.html">Heat: the tank warms, the rail soaks</seealso>
public static class TankHeating
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource SettledTemperatureSource = new("Incropera-2007", "section 5.3");

    internal static readonly DataSource TemperatureAfterSource = new("Incropera-2007", "section 5.3");

    internal static readonly DataSource DrainingAdiabaticSource = new(
        "Definition",
        "integration of (C0 - d t) dT = P dt"
    );

    internal static readonly DataSource DrainingTemperatureSource = new(
        "Definition",
        "integration of (C0 - d t) dT = (P - U (T - Ta)) dt"
    );

    internal static readonly Symbol Later = new("T", "K", "temperature of the tank");

    internal static readonly Symbol Settled = new("Ts", "K", "temperature at which loss equals power");

    /// <summary>The temperature at which heat loss equals heat input: Ta + P/U.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="ambient">Temperature of the air, K.</param>
    /// <param name="power">Heat input, W.</param>
    /// <param name="loss">Heat loss per kelvin above ambient, W/K; greater than zero.</param>
    /// <returns>Temperature, K.</returns>
    /// <remarks>Source: [Incropera-2007] section 5.3.</remarks>
    [MethodImpl(Inline)]
    public static T SettledTemperature<T>(T ambient, T power, T loss)
        where T : struct, IScalar<T> => T.Step(ambient + (power / loss), Settled, SettledTemperatureSource);

    /// <summary>The temperature after a time with the mass constant: Ts + (T0 - Ts) exp(-U t/(m c)).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="start">Temperature at the start, K.</param>
    /// <param name="ambient">Temperature of the air, K.</param>
    /// <param name="power">Heat input, W.</param>
    /// <param name="loss">Heat loss per kelvin above ambient, W/K; greater than zero.</param>
    /// <param name="heatCapacity">Of fuel and tank together, J/K; greater than zero.</param>
    /// <param name="time">Time, s.</param>
    /// <returns>Temperature, K.</returns>
    /// <remarks>Source: [Incropera-2007] section 5.3.</remarks>
    [MethodImpl(Inline)]
    public static T TemperatureAfter<T>(T start, T ambient, T power, T loss, T heatCapacity, T time)
        where T : struct, IScalar<T>
    {
        T settled = SettledTemperature(ambient, power, loss);
        return T.Step(
            settled + ((start - settled) * T.Exp(-(loss * time / heatCapacity))),
            Later,
            TemperatureAfterSource
        );
    }

    /// <summary>The temperature after a time when nothing is lost and the tank empties: T0 + P/(m' c) ln(C0/(C0 - m' c t)).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="start">Temperature at the start, K.</param>
    /// <param name="power">Heat input, W.</param>
    /// <param name="heatCapacity">Of fuel and tank together at the start, J/K; greater than zero.</param>
    /// <param name="drain">
    /// Heat capacity of the fuel that leaves per unit of time, W/K; greater than zero, and not all of it by the end.
    /// </param>
    /// <param name="time">Time, s.</param>
    /// <returns>Temperature, K.</returns>
    /// <remarks>
    /// The fuel that the engine burns takes its heat along. Source: [Definition] integration of (C0 - d t) dT = P dt.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T DrainingAdiabatic<T>(T start, T power, T heatCapacity, T drain, T time)
        where T : struct, IScalar<T> =>
        T.Step(start - (power / drain * T.Log(1 - (drain * time / heatCapacity))), Later, DrainingAdiabaticSource);

    /// <summary>The temperature after a time while the tank empties: Ts + (T0 - Ts)(1 - d t/C0)^(U/d).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="start">Temperature at the start, K.</param>
    /// <param name="ambient">Temperature of the air, K.</param>
    /// <param name="power">Heat input, W.</param>
    /// <param name="loss">Heat loss per kelvin above ambient, W/K; greater than zero.</param>
    /// <param name="heatCapacity">Of fuel and tank together at the start, J/K; greater than zero.</param>
    /// <param name="drain">
    /// Heat capacity of the fuel that leaves per unit of time, W/K; greater than zero, and not all of it by the end.
    /// </param>
    /// <param name="time">Time, s.</param>
    /// <returns>Temperature, K.</returns>
    /// <remarks>Source: [Definition] integration of (C0 - d t) dT = (P - U (T - Ta)) dt.</remarks>
    [MethodImpl(Inline)]
    public static T DrainingTemperature<T>(T start, T ambient, T power, T loss, T heatCapacity, T drain, T time)
        where T : struct, IScalar<T>
    {
        T settled = SettledTemperature(ambient, power, loss);
        T left = T.Exp(loss / drain * T.Log(1 - (drain * time / heatCapacity)));
        return T.Step(settled + ((start - settled) * left), Later, DrainingTemperatureSource);
    }
}
