using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Swept volume of one chamber, from its dimensions.</summary>
/// <seealso href="../guide/engines.html">Engines</seealso>
public static class ChamberDisplacement
{
    /// <summary>A cylinder. Source: [Definition] volume of a cylinder.</summary>
    /// <param name="bore">Bore; greater than zero.</param>
    /// <param name="stroke">Stroke; greater than zero.</param>
    /// <returns>The swept volume, in m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero.</exception>
    public static Volume OfCylinder(Length bore, Length stroke) =>
        SiUnits.Volume(
            Displacement
                .Cylinder(new Real(Guard.Positive(bore, bore.InSi())), new Real(Guard.Positive(stroke, stroke.InSi())))
                .Value
        );

    /// <summary>One chamber of a three-sided rotor. Source: [Yamamoto-1981] displacement of a chamber.</summary>
    /// <param name="eccentricity">Eccentricity of the shaft; greater than zero.</param>
    /// <param name="generatingRadius">Center of the rotor to its apex; greater than zero.</param>
    /// <param name="width">Width of the rotor; greater than zero.</param>
    /// <returns>The displacement of one chamber, in m³; it counts once per rotor and turn of the shaft.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero.</exception>
    public static Volume OfRotor(Length eccentricity, Length generatingRadius, Length width) =>
        SiUnits.Volume(
            Displacement
                .RotorChamber(
                    new Real(Guard.Positive(eccentricity, eccentricity.InSi())),
                    new Real(Guard.Positive(generatingRadius, generatingRadius.InSi())),
                    new Real(Guard.Positive(width, width.InSi()))
                )
                .Value
        );
}
