using System.Diagnostics;
using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>The laws there are.</summary>
internal enum LinkLawKind
{
    Pipe,
    CheckPipe,
    CubicPipe,
    CubicCheckPipe,
    CurvedPipe,
    Square,
    OneWaySquare,
    Capped,
    PumpTable,
    PumpPower,
    Stopped,
    Bypass,
    Reducing,
}

/// <summary>Which law a part follows, and a group of it.</summary>
internal static class LinkLaws
{
    internal static LinkLawKind KindOf(LinkPart part) =>
        part switch
        {
            PipePart { Friction: FrictionLaw.ColebrookStraightPassage, OneWay: false } => LinkLawKind.Pipe,
            PipePart { Friction: FrictionLaw.ColebrookStraightPassage } => LinkLawKind.CheckPipe,
            PipePart { OneWay: false } => LinkLawKind.CubicPipe,
            PipePart => LinkLawKind.CubicCheckPipe,
            CurvedPart => LinkLawKind.CurvedPipe,
            SquarePart { OneWay: false } => LinkLawKind.Square,
            SquarePart => LinkLawKind.OneWaySquare,
            CappedPart => LinkLawKind.Capped,
            PumpTablePart => LinkLawKind.PumpTable,
            PumpPowerPart => LinkLawKind.PumpPower,
            StoppedPart => LinkLawKind.Stopped,
            RegulatorPart { Bypass: true } => LinkLawKind.Bypass,
            RegulatorPart => LinkLawKind.Reducing,
            _ => throw new UnreachableException(),
        };

    internal static LinkGroup<T> Group<T>(LinkLawKind kind, Ends[] ends, LinkPart[] parts)
        where T : struct, IScalar<T> =>
        kind switch
        {
            LinkLawKind.Pipe => new LinkGroup<T, PipeLaw<T>>(ends, parts),
            LinkLawKind.CheckPipe => new LinkGroup<T, OneWayLaw<T, PipeLaw<T>>>(ends, parts),
            LinkLawKind.CubicPipe => new LinkGroup<T, CubicPipeLaw<T>>(ends, parts),
            LinkLawKind.CubicCheckPipe => new LinkGroup<T, OneWayLaw<T, CubicPipeLaw<T>>>(ends, parts),
            LinkLawKind.CurvedPipe => new LinkGroup<T, CurvedPipeLaw<T>>(ends, parts),
            LinkLawKind.Square => new LinkGroup<T, SquareLaw<T>>(ends, parts),
            LinkLawKind.OneWaySquare => new LinkGroup<T, OneWayLaw<T, SquareLaw<T>>>(ends, parts),
            LinkLawKind.Capped => new LinkGroup<T, CappedLaw<T>>(ends, parts),
            LinkLawKind.PumpTable => new LinkGroup<T, PumpTableLaw<T>>(ends, parts),
            LinkLawKind.PumpPower => new LinkGroup<T, PumpPowerLaw<T>>(ends, parts),
            LinkLawKind.Stopped => new LinkGroup<T, StoppedLaw<T>>(ends, parts),
            LinkLawKind.Bypass => new LinkGroup<T, BypassLaw<T>>(ends, parts),
            LinkLawKind.Reducing => new LinkGroup<T, ReducingLaw<T>>(ends, parts),
            _ => throw new UnreachableException(),
        };
}
