using UnitsNet;

namespace FuelMath;

/// <summary>A short passage without length, by its loss coefficient alone: dp = K rho v|v| / 2.</summary>
/// <remarks>Source: [White-2003] section 6.9.</remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class PlainFitting : FlowPart
{
    private readonly SquareSettings law;

    /// <summary>Describes a fitting.</summary>
    /// <param name="bore">The inner diameter that the loss coefficient refers to; greater than zero.</param>
    /// <param name="lossCoefficient">The loss coefficient; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public PlainFitting(Length bore, Ratio lossCoefficient)
    {
        double diameter = Guard.Positive(bore, bore.InSi());
        double k = Guard.Positive(lossCoefficient, lossCoefficient.InSi());
        law = new SquareSettings { SquarePerDensity = PartMath.PerDensity(k, diameter) };
        (Bore, LossCoefficient) = (bore, lossCoefficient);
    }

    /// <summary>The inner diameter that the loss coefficient refers to.</summary>
    public Length Bore { get; }

    /// <summary>The loss coefficient.</summary>
    public Ratio LossCoefficient { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"K {LossCoefficient:1} at {Bore:mm}");

    /// <inheritdoc />
    internal override LawSettings Law => law;
}
