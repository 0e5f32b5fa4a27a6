using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Volume that one chamber sweeps. SI units.</summary>
/// <seealso href="../guide/engines.html">Engines</seealso>
public static class Displacement
{
    internal static readonly DataSource CylinderSource = new("Definition", "volume of a cylinder");

    internal static readonly DataSource RotorChamberSource = new("Yamamoto-1981", "displacement of a chamber");

    internal static readonly Symbol SweptVolumeResult = new("Vd", "m3", "swept volume");

    /// <summary>A cylinder: V = pi/4 bore² stroke.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="bore">Bore, m.</param>
    /// <param name="stroke">Stroke, m.</param>
    /// <returns>Swept volume, m³.</returns>
    /// <remarks>Source: [Definition] volume of a cylinder.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Cylinder<T>(T bore, T stroke)
        where T : struct, IScalar<T> => T.Step(Math.PI / 4 * bore * bore * stroke, SweptVolumeResult, CylinderSource);

    /// <summary>One chamber of a three-sided rotor: V = 3 sqrt(3) e R b.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="eccentricity">Eccentricity e of the shaft, m.</param>
    /// <param name="generatingRadius">Generating radius R, center of the rotor to its apex, m.</param>
    /// <param name="width">Width b of the rotor, m.</param>
    /// <returns>Difference of largest and smallest volume of a chamber, m³.</returns>
    /// <remarks>Source: [Yamamoto-1981] displacement of a chamber.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RotorChamber<T>(T eccentricity, T generatingRadius, T width)
        where T : struct, IScalar<T> =>
        T.Step(3 * Math.Sqrt(3) * eccentricity * generatingRadius * width, SweptVolumeResult, RotorChamberSource);
}
