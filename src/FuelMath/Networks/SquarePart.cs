using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>
/// opening + linear q + square q|q|, where linear = Linear mu/mu0 + LinearPerViscosity mu and square = Square rho/rho0 +
/// SquarePerDensity rho; mu0 and rho0 are those of the network's own fluid.
/// </summary>
/// <remarks>Drag by viscosity grows with viscosity, that of turned and slowed fluid with density.</remarks>
internal sealed class SquarePart : LinkPart
{
    /// <summary>In the network's own fluid, Pa s/m3.</summary>
    internal double Linear { get; init; }

    /// <summary>1/m3.</summary>
    internal double LinearPerViscosity { get; init; }

    /// <summary>In the network's own fluid, Pa s2/m6.</summary>
    internal double Square { get; init; }

    /// <summary>1/m4.</summary>
    internal double SquarePerDensity { get; init; }

    /// <summary>The difference at which it opens, Pa.</summary>
    internal double Opening { get; init; }

    /// <summary>The pressure loss that sets its scale of flow, Pa.</summary>
    internal double Scale { get; init; } = 1e4;

    internal bool OneWay { get; init; }

    /// <summary>Whether it discharges into a space: then the downstream pressure is taken as it is, at any height.</summary>
    internal bool IntoSpace { get; init; }

    internal override bool IsOneWay => OneWay;

    internal override bool NeedsSpace => IntoSpace;

    internal override Type Law => OneWay ? typeof(OneWayLaw<Real, SquareLaw<Real>>) : typeof(SquareLaw<>);

    internal override LinkGroup<T> Group<T>(Ends[] ends, LinkPart[] parts) =>
        OneWay
            ? new LinkGroup<T, OneWayLaw<T, SquareLaw<T>>>(ends, parts)
            : new LinkGroup<T, SquareLaw<T>>(ends, parts);
}
