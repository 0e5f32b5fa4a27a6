using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>
/// The force balance of a reducing regulator: one that throttles the flow to hold the pressure downstream.
/// </summary>
/// <remarks>
/// Its poppet sits upstream of the seat and closes in the direction of flow. Spring and reference pressure open it
/// through the diaphragm; the held pressure on the diaphragm less the seat, and the supply pressure on the seat, close
/// it. All pressures are gauge. It is the balance of <see cref="BypassValve"/> with the supply in place of the return
/// line.
/// </remarks>
/// <seealso href="../guide/regulators.html">Regulators</seealso>
public static class ReducingValve
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource HeldPressureSource = new("Definition", "balance of forces");

    internal static readonly DataSource SpringForceSource = new("Definition", "HeldPressure solved for the force");

    /// <summary>The pressure that a regulating valve holds behind it.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="springForce">Spring force where the valve just shuts, N.</param>
    /// <param name="reference">Pressure on the spring side of the diaphragm, Pa gauge.</param>
    /// <param name="supply">Pressure ahead of the seat, Pa gauge.</param>
    /// <param name="diaphragmArea">Effective area of the diaphragm, m².</param>
    /// <param name="seatArea">Area of the seat, m², smaller than the diaphragm.</param>
    /// <param name="droop">Fall of the held pressure with flow, Pa/(m³/s); not negative.</param>
    /// <param name="flow">Flow through the valve, m³/s, not negative.</param>
    /// <returns>Held pressure, Pa gauge.</returns>
    /// <remarks>
    /// <para>A rising supply pressure lowers the held pressure slightly; a falling one raises it.</para>
    /// <para>Source: [Definition] balance of forces; the linear droop is [Common-practice].</para>
    /// </remarks>
    [MethodImpl(Inline)]
    public static T HeldPressure<T>(T springForce, T reference, T supply, T diaphragmArea, T seatArea, T droop, T flow)
        where T : struct, IScalar<T> =>
        T.Step(
            BypassValve.HeldPressure(springForce, reference, supply, diaphragmArea, seatArea, -droop, flow),
            BypassValve.HeldPressureResult,
            HeldPressureSource
        );

    /// <summary>The spring force behind a set point taken with the reference at ambient pressure.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="setDifference">Held less reference pressure at the set point, Pa.</param>
    /// <param name="setFlow">Flow at the set point, m³/s.</param>
    /// <param name="setSupply">Pressure ahead of the seat at the set point, Pa gauge.</param>
    /// <param name="droop">Fall of the held pressure with flow, Pa/(m³/s); not negative.</param>
    /// <param name="diaphragmArea">Effective area of the diaphragm, m².</param>
    /// <param name="seatArea">Area of the seat, m², smaller than the diaphragm.</param>
    /// <returns>Spring force where the valve just shuts, N.</returns>
    /// <remarks>
    /// <para>Valid where the reference was open to ambient pressure.</para>
    /// <para>Source: [Definition] <see cref="HeldPressure{T}"/> solved for the force.</para>
    /// </remarks>
    [MethodImpl(Inline)]
    public static T SpringForce<T>(T setDifference, T setFlow, T setSupply, T droop, T diaphragmArea, T seatArea)
        where T : struct, IScalar<T> =>
        T.Step(
            BypassValve.SpringForce(setDifference, setFlow, -droop, diaphragmArea, seatArea) + (setSupply * seatArea),
            BypassValve.SpringForceResult,
            SpringForceSource
        );
}
