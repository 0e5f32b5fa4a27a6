using UnitsNet;

namespace FuelMath;

/// <summary>
/// A passage curved along its whole length, such as a coil of tube, by its dimensions alone: it loses more than a
/// straight one.
/// </summary>
/// <remarks>
/// <para>
/// Its friction is that of <see cref="Formulas.CurvedFriction.Factor"/>; a flow beyond the measured range of the law is
/// refused after the solution. Source: [White-1929]; [Ito-1959].
/// </para>
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class CurvedPipe : FlowPart
{
    private readonly CurvedSettings law;

    /// <summary>Describes a curved pipe.</summary>
    /// <param name="length">Its length; greater than zero.</param>
    /// <param name="bore">Its inner diameter; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; 0 to a twentieth of the bore.</param>
    /// <param name="lossCoefficient">Sum of loss coefficients of its ends, for this bore; not negative.</param>
    /// <param name="coilDiameter">Diameter of the curve of its center line, 16.4 to 300 bores.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public CurvedPipe(Length length, Length bore, Length roughness, Ratio lossCoefficient, Length coilDiameter)
    {
        law = PartMath.CurvedPipe(length, bore, roughness, lossCoefficient, coilDiameter);
        (Length, Bore, Roughness) = (length, bore, roughness);
        (LossCoefficient, CoilDiameter) = (lossCoefficient, coilDiameter);
    }

    /// <summary>Its length.</summary>
    public Length Length { get; }

    /// <summary>Its inner diameter.</summary>
    public Length Bore { get; }

    /// <summary>Roughness of the wall.</summary>
    public Length Roughness { get; }

    /// <summary>Sum of loss coefficients of its ends, for this bore.</summary>
    public Ratio LossCoefficient { get; }

    /// <summary>Diameter of the curve of its center line.</summary>
    public Length CoilDiameter { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Length} of {Bore:mm}, coiled to {CoilDiameter:mm}");

    /// <inheritdoc />
    internal override LawSettings Law => law;

    /// <inheritdoc />
    internal override double? VolumeSi => PartMath.Volume(law);
}
