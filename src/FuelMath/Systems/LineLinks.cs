using FuelMath.Filters;
using FuelMath.Fittings;
using FuelMath.Hoses;
using FuelMath.Internal;
using FuelMath.Networks;
using FuelMath.Pumps;
using FuelMath.Regulators;
using FuelMath.Tables;

namespace FuelMath.Systems;

/// <summary>The one place where parts become link laws.</summary>
internal static class LineLinks
{
    /// <summary>The part of a line as a link of the network.</summary>
    internal static NetworkLink Of(FuelLine line)
    {
        (LinkKind kind, LinkPart part) = line switch
        {
            { Hose: { CoilDiameter: { } coil } hose } => (LinkKind.CurvedPipe, Coil(hose, coil, line.Fittings)),
            { Hose: { } hose } => (LinkKind.Pipe, Pipe(hose, line.Fittings)),
            { Fitting: { } fitting } => (LinkKind.Fitting, Square(fitting)),
            { Filter: { } filter } => (LinkKind.Filter, Square(filter)),
            { Pump: { } pump } => (LinkKind.Pump, new PumpTablePart(pump.Name, Longest(pump), false)),
            { Relief: { } relief } => (LinkKind.ReliefValve, Square(relief)),
            { ReducingRegulator: { } reducing } => (LinkKind.ReducingRegulator, Valve(reducing)),
            _ => (LinkKind.BypassRegulator, (LinkPart)Valve(line.Regulator!)),
        };
        return new(line.Name, line.From, line.To, kind, part);
    }

    private static PipePart Pipe(Hose hose, IEnumerable<Fitting> fittings) =>
        new(
            hose.Length.InSi(),
            hose.Bore.InSi(),
            hose.Roughness.InSi(),
            Coefficient(hose, fittings),
            FrictionLaw.ColebrookStraightPassage,
            false
        );

    private static CurvedPart Coil(Hose hose, UnitsNet.Length coil, IEnumerable<Fitting> fittings) =>
        new(hose.Length.InSi(), hose.Bore.InSi(), hose.Roughness.InSi(), Coefficient(hose, fittings), coil.InSi());

    private static double Coefficient(Hose hose, IEnumerable<Fitting> fittings) =>
        hose.LossCoefficient.InSi() + new FittingSeries(fittings).CoefficientFor(hose.Bore).InSi();

    private static SquarePart Square(Fitting fitting) =>
        new() { SquarePerDensity = PartMath.PerDensity(fitting.LossCoefficient.InSi(), fitting.Bore.InSi()) };

    private static SquarePart Square(Filter filter) =>
        new() { LinearPerViscosity = filter.LinearSi, SquarePerDensity = filter.QuadraticSi };

    private static SquarePart Square(ReliefValve relief) =>
        new()
        {
            Opening = relief.OpeningDifferentialPressure.InSi(),
            SquarePerDensity = relief.CoefficientSi,
            OneWay = true,
        };

    private static RegulatorPart Valve(BypassRegulator regulator) =>
        new()
        {
            Bypass = true,
            Setting = regulator.OpeningDifferentialPressure.InSi(),
            Slope = regulator.SlopeSi,
            Influence = regulator.ReturnInfluence.InSi(),
            SquarePerDensity = regulator.FullyOpenCoefficientSi,
        };

    private static RegulatorPart Valve(ReducingRegulator regulator) =>
        new()
        {
            Bypass = false,
            Setting = regulator.SettingSi,
            Slope = regulator.DroopSi,
            Influence = regulator.SupplyInfluence.InSi(),
            SquarePerDensity = regulator.FullyOpenCoefficientSi,
        };

    /// <summary>The most pieces that the pump's curve has at any voltage.</summary>
    private static Piece[] Longest(Pump pump)
    {
        double[] volts = [.. pump.Curves.Select(c => pump.Drive.Least(c.Voltage).InSi())];
        return volts
            .Concat(volts.Zip(volts.Skip(1), (low, high) => (low + high) / 2))
            .Select(v => pump.CurveAt(SiUnits.ElectricPotential(v)).RiseOverFlow.Pieces.ToArray())
            .MaxBy(pieces => pieces.Length)!;
    }
}
