using FuelMath.Formulas;
using FuelMath.Tables;

namespace FuelMath.Networks;

/// <summary>What a link is made of, in plain SI numbers. Immutable.</summary>
internal abstract class LinkPart { }

/// <summary>A round passage.</summary>
internal abstract class RoundPart(double length, double bore, double roughness, double lossCoefficient) : LinkPart
{
    internal readonly double Length = length;
    internal readonly double Bore = bore;
    internal readonly double Roughness = roughness;
    internal readonly double LossCoefficient = lossCoefficient;
}

/// <summary>A straight round passage.</summary>
internal sealed class PipePart(
    double length,
    double bore,
    double roughness,
    double lossCoefficient,
    FrictionLaw friction,
    bool oneWay
) : RoundPart(length, bore, roughness, lossCoefficient)
{
    internal readonly FrictionLaw Friction = friction;
    internal readonly bool OneWay = oneWay;
}

/// <summary>A round passage that is bent all along its length.</summary>
internal sealed class CurvedPart(
    double length,
    double bore,
    double roughness,
    double lossCoefficient,
    double coilDiameter
) : RoundPart(length, bore, roughness, lossCoefficient)
{
    /// <summary>Bore over the diameter of the curve of the center line.</summary>
    internal readonly double Curvature = bore / coilDiameter;

    /// <summary>The greatest Reynolds number of the law.</summary>
    internal double GreatestReynolds => CurvedFriction.GreatestReynoldsTimesSquare / (Curvature * Curvature);
}

/// <summary>
/// opening + linear q + square q|q|, where linear = Linear + LinearPerViscosity mu and square = Square +
/// SquarePerDensity rho.
/// </summary>
internal sealed class SquarePart : LinkPart
{
    /// <summary>Pa s/m3.</summary>
    internal double Linear { get; init; }

    /// <summary>1/m3.</summary>
    internal double LinearPerViscosity { get; init; }

    /// <summary>Pa s2/m6.</summary>
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
}

/// <summary>q = min(commanded, C sqrt(dp)) into a space, nothing backwards: the mean draw of pulsed injectors.</summary>
internal sealed class CappedPart(double coefficient, double commanded) : LinkPart
{
    /// <summary>m3/s per root of Pa.</summary>
    internal readonly double Coefficient = coefficient;

    /// <summary>m3/s.</summary>
    internal readonly double Commanded = commanded;
}

/// <summary>A pump that stands still.</summary>
internal sealed class StoppedPart : LinkPart { }

/// <summary>A pump whose rise is given by pieces over flow.</summary>
internal sealed class PumpTablePart(string name, Piece[] pieces, bool extend) : LinkPart
{
    internal readonly string Name = name;

    /// <summary>One straight piece before the first point, one for each interval, one straight piece after the last.</summary>
    internal readonly Piece[] Pieces = pieces;
    internal readonly bool Extend = extend;

    /// <summary>Whether the rise does not fall from each point to the next.</summary>
    internal readonly bool HasHump = pieces
        .Skip(2)
        .Zip(pieces.Skip(1), (next, last) => next.C0 >= last.C0)
        .Contains(true);
}

/// <summary>A pump whose rise is shutoff - factor q^exponent.</summary>
internal sealed class PumpPowerPart(double shutoff, double factor, double exponent) : LinkPart
{
    internal readonly double Shutoff = shutoff;
    internal readonly double Factor = factor;
    internal readonly double Exponent = exponent;

    /// <summary>The flow at half the shutoff, m3/s.</summary>
    internal readonly double Half = Math.Pow(shutoff / 2 / factor, 1 / exponent);
}

/// <summary>
/// A regulator. Bypass: holds its upstream side at setting + reference (1 + influence) - influence x downstream + slope q.
/// Reducing: holds its downstream side at setting + reference (1 + influence) - influence x upstream - slope q.
/// </summary>
internal sealed class RegulatorPart : LinkPart
{
    internal bool Bypass { get; init; }

    /// <summary>Pa over the reference, at no flow and with the return line at ambient pressure.</summary>
    internal double Setting { get; init; }

    /// <summary>Pa gauge.</summary>
    internal double Reference { get; init; }

    /// <summary>Pa s/m3.</summary>
    internal double Slope { get; init; }

    /// <summary>Seat area over diaphragm area less seat area.</summary>
    internal double Influence { get; init; }

    /// <summary>The fully open restriction, Pa s2/m6.</summary>
    internal double Square { get; init; }

    /// <summary>The part of it that grows with density, 1/m4.</summary>
    internal double SquarePerDensity { get; init; }
}
