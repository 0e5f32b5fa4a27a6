using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The force balance of a bypass regulator, and its restriction when fully open.</summary>
/// <remarks>
/// The diaphragm carries the spring and the reference pressure on one side. On the other side the upstream pressure
/// acts on the diaphragm less the seat, and the return-line pressure on the seat. All pressures are gauge.
/// </remarks>
/// <seealso href="../guide/regulators.html">Regulators</seealso>
public static class BypassValve
{
    internal static readonly DataSource HeldPressureSource = new("Definition", "balance of forces");

    internal static readonly DataSource SpringForceSource = new("Definition", "HeldPressure solved for the force");

    internal static readonly DataSource FullyOpenCoefficientSource = new(
        "Common-practice",
        "loss in a short passage with the square of flow"
    );

    internal static readonly DataSource FullyOpenLossSource = new(
        "Common-practice",
        "loss in a short passage with the square of flow"
    );

    internal static readonly DataSource FullyOpenFlowSource = new(
        "Definition",
        "the flow at which both laws of the valve give one pressure"
    );

    internal static readonly Symbol HeldPressureResult = new("ph", "Pa", "held pressure, gauge");

    internal static readonly Symbol SpringForceResult = new("F", "N", "spring force");

    internal static readonly Symbol FullyOpenCoefficientResult = new(
        "k",
        "1/m4",
        "loss over density and the square of flow"
    );

    internal static readonly Symbol FullyOpenFlowResult = new("Qo", "m3/s", "flow at which the valve is fully open");

    /// <summary>The upstream pressure that a regulating valve holds.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="springForce">Spring force where the valve just opens, N.</param>
    /// <param name="reference">Pressure on the spring side of the diaphragm, Pa gauge.</param>
    /// <param name="returnLine">Pressure behind the seat, Pa gauge.</param>
    /// <param name="diaphragmArea">Effective area of the diaphragm, m².</param>
    /// <param name="seatArea">Area of the seat, m², smaller than the diaphragm.</param>
    /// <param name="slope">Rise of the held pressure with bypassed flow, Pa/(m³/s).</param>
    /// <param name="bypassedFlow">Flow through the valve, m³/s, not negative.</param>
    /// <returns>Upstream pressure, Pa gauge.</returns>
    /// <remarks>
    /// <para>
    /// The held pressure rises with the reference by slightly more than 1:1 (the area of the diaphragm over that of the
    /// diaphragm less the seat) and falls slightly with rising return-line pressure.
    /// </para>
    /// <para>Source: [Definition] balance of forces; the linear slope is [Common-practice].</para>
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HeldPressure<T>(
        T springForce,
        T reference,
        T returnLine,
        T diaphragmArea,
        T seatArea,
        T slope,
        T bypassedFlow
    )
        where T : struct, IScalar<T> =>
        T.Step(
            ((springForce + (reference * diaphragmArea) - (returnLine * seatArea)) / (diaphragmArea - seatArea))
                + (slope * bypassedFlow),
            HeldPressureResult,
            HeldPressureSource
        );

    /// <summary>The spring force behind a set point taken with reference and return at ambient pressure.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="setDifference">Upstream less reference pressure at the set point, Pa.</param>
    /// <param name="setFlow">Bypassed flow at the set point, m³/s.</param>
    /// <param name="slope">Rise of the held pressure with bypassed flow, Pa/(m³/s).</param>
    /// <param name="diaphragmArea">Effective area of the diaphragm, m².</param>
    /// <param name="seatArea">Area of the seat, m², smaller than the diaphragm.</param>
    /// <returns>Spring force where the valve just opens, N.</returns>
    /// <remarks>
    /// <para>Valid where reference and return line were open to ambient pressure.</para>
    /// <para>Source: [Definition] <see cref="HeldPressure{T}"/> solved for the force.</para>
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpringForce<T>(T setDifference, T setFlow, T slope, T diaphragmArea, T seatArea)
        where T : struct, IScalar<T> =>
        T.Step((setDifference - (slope * setFlow)) * (diaphragmArea - seatArea), SpringForceResult, SpringForceSource);

    /// <summary>The coefficient of a fully open valve from one reading.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="loss">Pressure lost, Pa.</param>
    /// <param name="density">Density of the fluid, kg/m³.</param>
    /// <param name="flow">Volume flow, m³/s, greater than zero.</param>
    /// <returns>Loss per density and flow squared, 1/m⁴.</returns>
    /// <remarks>
    /// <para>Valid for turbulent flow, as through any short passage.</para>
    /// <para>Source: [Common-practice] loss in a short passage with the square of flow.</para>
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FullyOpenCoefficient<T>(T loss, T density, T flow)
        where T : struct, IScalar<T> =>
        T.Step(loss / (density * flow * flow), FullyOpenCoefficientResult, FullyOpenCoefficientSource);

    /// <summary>The pressure lost in a fully open valve.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="coefficient">Loss per density and flow squared, 1/m⁴.</param>
    /// <param name="density">Density of the fluid, kg/m³.</param>
    /// <param name="flow">Volume flow, m³/s; the loss has its sign.</param>
    /// <returns>Pressure lost, Pa.</returns>
    /// <remarks>
    /// <para>Valid for turbulent flow, as through any short passage.</para>
    /// <para>Source: [Common-practice] loss in a short passage with the square of flow.</para>
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FullyOpenLoss<T>(T coefficient, T density, T flow)
        where T : struct, IScalar<T> =>
        T.Step(coefficient * density * flow * T.Abs(flow), Symbols.PressureLoss, FullyOpenLossSource);

    /// <summary>The flow at which a regulating valve reaches its stop and becomes a fixed restriction.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="margin">
    /// Pressure margin at no flow, Pa, not negative: for a bypass valve the opening pressure minus the return-line
    /// pressure, for a reducing valve the supply pressure minus the held pressure.
    /// </param>
    /// <param name="slope">Change of the held pressure with flow, up for bypass and down for reducing, Pa/(m³/s).</param>
    /// <param name="restriction">Loss over the square of flow of the open valve, and of what follows it, Pa s²/m⁶.</param>
    /// <returns>The flow, m³/s: the greater root of restriction q² - slope q - margin.</returns>
    /// <remarks>
    /// <para>
    /// Below this flow the valve regulates; above it the valve is fully open. With neither margin nor slope the flow is
    /// zero and has no derivative.
    /// </para>
    /// <para>Source: [Definition] the flow at which both laws of the valve give one pressure.</para>
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FullyOpenFlow<T>(T margin, T slope, T restriction)
        where T : struct, IScalar<T> =>
        T.Step(
            (slope + T.Sqrt((slope * slope) + (4 * restriction * margin))) / (2 * restriction),
            FullyOpenFlowResult,
            FullyOpenFlowSource
        );
}
