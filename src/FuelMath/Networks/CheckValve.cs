using UnitsNet;

namespace FuelMath;

/// <summary>A check valve: it opens at a pressure difference, and nothing flows backwards.</summary>
/// <remarks>
/// <para>
/// With a spring it is a relief valve: a higher pressure behind it raises the one at which it opens. Keep its way back
/// clear. One with its source, whose opening a system warns of, is a ReliefValve.
/// </para>
/// <para>
/// Source: [Common-practice] loss in a short passage with the square of flow.
/// </para>
/// </remarks>
public sealed class CheckValve : FlowPart
{
    private readonly SquareSettings law;

    /// <summary>Describes a check valve.</summary>
    /// <param name="openingDifferentialPressure">The difference at which it opens; not negative.</param>
    /// <param name="openLoss">What it loses beyond that; greater than zero.</param>
    /// <param name="openFlow">The flow of that loss, which grows with its square; greater than zero.</param>
    /// <param name="density">Density of the fluid of that loss; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public CheckValve(Pressure openingDifferentialPressure, Pressure openLoss, VolumeFlow openFlow, Density density)
    {
        double q = Guard.Positive(openFlow, openFlow.InSi());
        double loss = Guard.Positive(openLoss, openLoss.InSi());
        law = new SquareSettings
        {
            Opening = Guard.NotNegative(openingDifferentialPressure, openingDifferentialPressure.InSi()),
            SquarePerDensity = loss / (q * q) / Guard.Positive(density, density.InSi()),
            OneWay = true,
        };
        (OpeningDifferentialPressure, OpenLoss) = (openingDifferentialPressure, openLoss);
        (OpenFlow, Density) = (openFlow, density);
    }

    /// <summary>The difference at which it opens.</summary>
    public Pressure OpeningDifferentialPressure { get; }

    /// <summary>What it loses beyond that at <see cref="OpenFlow"/>.</summary>
    public Pressure OpenLoss { get; }

    /// <summary>The flow of that loss.</summary>
    public VolumeFlow OpenFlow { get; }

    /// <summary>Density of the fluid of that loss.</summary>
    public Density Density { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"opens at {OpeningDifferentialPressure}");

    /// <inheritdoc />
    internal override LawSettings Law => law;

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool ShutsIn => true;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => LeakPlaces.CheckValve;
}
