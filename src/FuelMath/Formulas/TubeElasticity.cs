using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Stress and swelling under pressure of a round tube of one elastic material.</summary>
/// <remarks>SI units. Pressures are inside minus outside. The material stays elastic.</remarks>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public static class TubeElasticity
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource HoopStressSource = new("Timoshenko-1956", "thick-walled cylinder");

    internal static readonly DataSource ThinWallPressureSource = new("Esposito-2009", "chapter 10");

    internal static readonly DataSource ThickWallPressureSource = new(
        "Timoshenko-1956",
        "thick-walled cylinder, solved for the pressure"
    );

    internal static readonly DataSource ThinWallSwellingSource = new(
        "Wylie-Streeter-1993",
        "thin-walled pipe that is anchored at one end"
    );

    internal static readonly DataSource ThickWallSwellingSource = new(
        "Timoshenko-1956",
        "thick-walled cylinder, with the strains of its stresses"
    );

    internal static readonly Symbol PressureResult = new("p", "Pa", "pressure inside above that outside");

    internal static readonly Symbol Stress = new("sigma", "Pa", "hoop stress");

    internal static readonly Symbol Swelling = new(
        "s",
        "1/Pa",
        "relative increase of volume for each unit of pressure"
    );

    /// <summary>The hoop stress in a wall of any thickness, after Lamé: p a² (1 + b²/r²) / (b² - a²).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="pressure">Pressure inside above that outside, Pa.</param>
    /// <param name="insideDiameter">Inside diameter, m; greater than zero.</param>
    /// <param name="outsideDiameter">Outside diameter, m; greater than the inside one.</param>
    /// <param name="atDiameter">
    /// The diameter in the wall at which the stress is computed, m; the stress is greatest at the inside.
    /// </param>
    /// <returns>Stress along the circumference, Pa; tension is positive.</returns>
    /// <remarks>Source: [Timoshenko-1956] thick-walled cylinder.</remarks>
    [MethodImpl(Inline)]
    public static T HoopStress<T>(T pressure, T insideDiameter, T outsideDiameter, T atDiameter)
        where T : struct, IScalar<T>
    {
        T inside = insideDiameter * insideDiameter;
        T outside = outsideDiameter * outsideDiameter;
        return T.Step(
            pressure * inside * (1 + (outside / (atDiameter * atDiameter))) / (outside - inside),
            Stress,
            HoopStressSource
        );
    }

    /// <summary>The pressure at which a thin wall carries a stress, after Barlow on the inside: p = 2 t s / D.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="wall">Thickness of the wall, m.</param>
    /// <param name="insideDiameter">Inside diameter, m; at least ten walls.</param>
    /// <param name="stress">Stress that the wall may carry, Pa.</param>
    /// <returns>Pressure inside above that outside, Pa.</returns>
    /// <remarks>For a thicker wall the pressure is overestimated. Source: [Esposito-2009] chapter 10.</remarks>
    [MethodImpl(Inline)]
    public static T ThinWallPressure<T>(T wall, T insideDiameter, T stress)
        where T : struct, IScalar<T> =>
        T.Step(2 * wall * stress / insideDiameter, PressureResult, ThinWallPressureSource);

    /// <summary>The pressure at which the inside of a wall of any thickness carries a stress: p = s (b² - a²) / (b² + a²).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="insideDiameter">Inside diameter, m; greater than zero.</param>
    /// <param name="outsideDiameter">Outside diameter, m; greater than the inside one.</param>
    /// <param name="stress">Stress that the wall may carry, Pa.</param>
    /// <returns>Pressure inside above that outside, Pa.</returns>
    /// <remarks>Source: [Timoshenko-1956] thick-walled cylinder, solved for the pressure.</remarks>
    [MethodImpl(Inline)]
    public static T ThickWallPressure<T>(T insideDiameter, T outsideDiameter, T stress)
        where T : struct, IScalar<T>
    {
        T inside = insideDiameter * insideDiameter;
        T outside = outsideDiameter * outsideDiameter;
        return T.Step(stress * (outside - inside) / (outside + inside), PressureResult, ThickWallPressureSource);
    }

    /// <summary>
    /// The swelling of a thin tube with closed, free ends: dV/V = p D (5/4 - nu) / (t E), for each unit of pressure.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="diameter">Inside diameter, m; at least ten walls.</param>
    /// <param name="wall">Thickness of the wall, m; greater than zero.</param>
    /// <param name="elasticModulus">Modulus of elasticity, Pa; greater than zero.</param>
    /// <param name="poissonRatio">Poisson's ratio, 0 to 0.5.</param>
    /// <returns>Relative increase of volume for each unit of pressure, 1/Pa.</returns>
    /// <remarks>Source: [Wylie-Streeter-1993] thin-walled pipe that is anchored at one end.</remarks>
    [MethodImpl(Inline)]
    public static T ThinWallSwelling<T>(T diameter, T wall, T elasticModulus, T poissonRatio)
        where T : struct, IScalar<T> =>
        T.Step(diameter * (1.25 - poissonRatio) / (wall * elasticModulus), Swelling, ThinWallSwellingSource);

    /// <summary>
    /// The swelling of a tube of any thickness with closed, free ends: twice the strain of the bore plus that of the
    /// length, from Lamé's stresses. (3 (1 - 2 nu) a² + 2 (1 + nu) b²) / (E (b² - a²)).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="insideDiameter">Inside diameter, m; greater than zero.</param>
    /// <param name="outsideDiameter">Outside diameter, m; greater than the inside one.</param>
    /// <param name="elasticModulus">Modulus of elasticity, Pa; greater than zero.</param>
    /// <param name="poissonRatio">Poisson's ratio, 0 to 0.5.</param>
    /// <returns>Relative increase of volume for each unit of pressure, 1/Pa.</returns>
    /// <remarks>Source: [Timoshenko-1956] thick-walled cylinder, with the strains of its stresses.</remarks>
    [MethodImpl(Inline)]
    public static T ThickWallSwelling<T>(T insideDiameter, T outsideDiameter, T elasticModulus, T poissonRatio)
        where T : struct, IScalar<T>
    {
        T inside = insideDiameter * insideDiameter;
        T outside = outsideDiameter * outsideDiameter;
        T strains = (3 * (1 - (2 * poissonRatio)) * inside) + (2 * (1 + poissonRatio) * outside);
        return T.Step(strains / (elasticModulus * (outside - inside)), Swelling, ThickWallSwellingSource);
    }
}
