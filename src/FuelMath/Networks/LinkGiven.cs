using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What a link was made from, as it was given, so that it can be written down. Immutable.</summary>
internal abstract class LinkGiven
{
    /// <summary>What lets a pump join and leave; null where it always runs.</summary>
    internal virtual PumpSwitch? Switch => null;
}

/// <summary>The switch of a line.</summary>
internal sealed class SwitchGiven(PumpSwitch by) : LinkGiven
{
    internal override PumpSwitch? Switch { get; } = by;
}

/// <summary>A round passage.</summary>
internal abstract class RoundGiven(Length length, Length bore, Length roughness, Ratio lossCoefficient) : LinkGiven
{
    internal Length Length { get; } = length;

    internal Length Bore { get; } = bore;

    internal Length Roughness { get; } = roughness;

    internal Ratio LossCoefficient { get; } = lossCoefficient;
}

/// <summary>A pipe, with or without a check valve.</summary>
internal sealed class PipeGiven(
    Length length,
    Length bore,
    Length roughness,
    Ratio lossCoefficient,
    FrictionLaw friction
) : RoundGiven(length, bore, roughness, lossCoefficient)
{
    internal FrictionLaw Friction { get; } = friction;

    internal PipePart Part(bool oneWay) => PartMath.Pipe(Length, Bore, Roughness, LossCoefficient, Friction, oneWay);
}

/// <summary>A pipe bent all along its length.</summary>
internal sealed class CurvedPipeGiven(
    Length length,
    Length bore,
    Length roughness,
    Ratio lossCoefficient,
    Length coilDiameter
) : RoundGiven(length, bore, roughness, lossCoefficient)
{
    internal Length CoilDiameter { get; } = coilDiameter;

    internal CurvedPart Part() => PartMath.CurvedPipe(Length, Bore, Roughness, LossCoefficient, CoilDiameter);
}

/// <summary>A fitting.</summary>
internal sealed class FittingGiven(Length bore, Ratio lossCoefficient) : LinkGiven
{
    internal Length Bore { get; } = bore;

    internal Ratio LossCoefficient { get; } = lossCoefficient;
}

/// <summary>A filter.</summary>
internal sealed class FilterGiven(VolumeFlow flow, Pressure linearLoss, Pressure quadraticLoss) : LinkGiven
{
    internal VolumeFlow Flow { get; } = flow;

    internal Pressure LinearLoss { get; } = linearLoss;

    internal Pressure QuadraticLoss { get; } = quadraticLoss;
}

/// <summary>A pump.</summary>
internal sealed class PumpGiven(NetworkPump pump) : LinkGiven
{
    internal NetworkPump Pump { get; } = pump;

    internal override PumpSwitch? Switch => Pump.Switch;
}

/// <summary>A regulator of either type.</summary>
internal sealed class RegulatorGiven(NetworkRegulator regulator) : LinkGiven
{
    internal NetworkRegulator Regulator { get; } = regulator;
}

/// <summary>A check valve.</summary>
internal sealed class CheckValveGiven(Pressure opening, Pressure openLoss, VolumeFlow openFlow) : LinkGiven
{
    internal Pressure Opening { get; } = opening;

    internal Pressure OpenLoss { get; } = openLoss;

    internal VolumeFlow OpenFlow { get; } = openFlow;

    internal SquarePart Part(bool hasSpring) => PartMath.Check(Opening, OpenLoss, OpenFlow, hasSpring);
}

/// <summary>An opening into a space, steady or capped at a commanded flow.</summary>
internal sealed class OpeningGiven(
    VolumeFlow flow,
    Pressure differentialPressure,
    Backflow backflow,
    VolumeFlow commanded
) : LinkGiven
{
    internal VolumeFlow Flow { get; } = flow;

    internal Pressure DifferentialPressure { get; } = differentialPressure;

    /// <summary>Of a steady one.</summary>
    internal Backflow Backflow { get; } = backflow;

    /// <summary>Of a capped one.</summary>
    internal VolumeFlow Commanded { get; } = commanded;
}

/// <summary>A pump's curve: a table, or a power law through its shutoff and one point.</summary>
internal sealed class PumpCurveGiven(
    bool isSmooth,
    ImmutableArray<NetworkPumpPoint> points,
    OutsideRange outside,
    Pressure shutoff,
    Ratio exponent
)
{
    internal bool IsPower => Points.Length == 1;

    internal bool IsSmooth { get; } = isSmooth;

    /// <summary>Whether the rise does not fall from each point to the next.</summary>
    internal bool HasHump { get; } =
        points.Skip(1).Zip(points, (next, last) => next.RiseSi >= last.RiseSi).Contains(true);

    internal ImmutableArray<NetworkPumpPoint> Points { get; } = points;

    internal OutsideRange Outside { get; } = outside;

    internal Pressure Shutoff { get; } = shutoff;

    internal Ratio Exponent { get; } = exponent;
}
