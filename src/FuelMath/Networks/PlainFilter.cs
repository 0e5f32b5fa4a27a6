using UnitsNet;

namespace FuelMath;

/// <summary>A filter by two losses alone: one proportional to flow, the other to its square.</summary>
/// <remarks>
/// <para>
/// The first is converted to another fluid by viscosity, the second by density. Source: [Forchheimer-1901].
/// </para>
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class PlainFilter : FlowPart
{
    private readonly SquareSettings law;

    /// <summary>Describes a filter.</summary>
    /// <param name="flow">The flow at which both losses are given; greater than zero.</param>
    /// <param name="linearLoss">The loss proportional to flow; not negative.</param>
    /// <param name="quadraticLoss">The loss proportional to its square; not negative, and not both zero.</param>
    /// <param name="density">Density of the fluid of these losses; greater than zero.</param>
    /// <param name="viscosity">Its dynamic viscosity; greater than zero.</param>
    /// <exception cref="ArgumentException">Both losses are zero.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public PlainFilter(
        VolumeFlow flow,
        Pressure linearLoss,
        Pressure quadraticLoss,
        Density density,
        DynamicViscosity viscosity
    )
    {
        double q = Guard.Positive(flow, flow.InSi());
        double a = Guard.NotNegative(linearLoss, linearLoss.InSi());
        double b = Guard.NotNegative(quadraticLoss, quadraticLoss.InSi());
        double rho = Guard.Positive(density, density.InSi());
        double mu = Guard.Positive(viscosity, viscosity.InSi());
        law =
            a + b > 0
                ? new SquareSettings { LinearPerViscosity = a / q / mu, SquarePerDensity = b / (q * q) / rho }
                : throw new RefusedArgumentException(
                    RefusalCode.Missing,
                    "One of the two losses must be greater than zero.",
                    nameof(linearLoss)
                );
        (Flow, LinearLoss, QuadraticLoss) = (flow, linearLoss, quadraticLoss);
        (Density, Viscosity) = (density, viscosity);
    }

    /// <summary>The flow at which both losses are given.</summary>
    public VolumeFlow Flow { get; }

    /// <summary>The loss proportional to flow.</summary>
    public Pressure LinearLoss { get; }

    /// <summary>The loss proportional to its square.</summary>
    public Pressure QuadraticLoss { get; }

    /// <summary>Density of the fluid of these losses.</summary>
    public Density Density { get; }

    /// <summary>Its dynamic viscosity.</summary>
    public DynamicViscosity Viscosity { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{LinearLoss} and {QuadraticLoss} at {Flow:L/h}");

    /// <inheritdoc />
    internal override LawSettings Law => law;
}
