using UnitsNet;

namespace FuelMath;

/// <summary>A check valve: it opens at a pressure difference, and nothing flows backwards.</summary>
/// <remarks>
/// <para>
/// With a spring it is a relief valve: a higher pressure downstream raises its opening pressure. Keep its return clear.
/// For a valve with a source and a finding when it opens use ReliefValve.
/// </para>
/// <para>Source: [Common-practice] loss in a short passage with the square of flow.</para>
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class CheckValve : FlowPart
{
    private readonly SquareSettings law;

    /// <summary>Describes a check valve.</summary>
    /// <param name="openingDifferentialPressure">The difference at which it opens; not negative.</param>
    /// <param name="openLoss">The additional pressure loss at a flow; greater than zero.</param>
    /// <param name="openFlow">The flow of that loss, which grows with its square; greater than zero.</param>
    /// <param name="density">Density of the fluid of that loss; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
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

    /// <summary>The additional pressure loss at <see cref="OpenFlow"/>.</summary>
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
