using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>Invented: two rails behind a Y that join again, a return regulator, four groups of injectors. 12 links and 4.</summary>
internal static class TwoRails
{
    internal static readonly string[] Injectors = ["A front", "A rear", "B front", "B rear"];

    internal static Network Network { get; } =
        OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(740),
            KinematicViscosity.FromCentistokes(0.5),
            [
                Fixed("tank"),
                Fixed("manifold"),
                .. "pump filter Y A0 A1 B0 B1 join regulator return".Split(' ').Select(Junction),
            ],
            [
                OwnLine.Pump("pump", "tank", "pump", Curve),
                OwnLine.Filter("filter", "pump", "filter", LitersPerHour(200), Kilopascals(10), Kilopascals(10)),
                Hose("feed", "filter", "Y", 3.5, 8, 3),
                Hose("to A", "Y", "A0", 0.4, 8, 1.5),
                Hose("rail A", "A0", "A1", 0.35, 12, 0.5),
                Hose("from A", "A1", "join", 0.3, 8, 1),
                Hose("to B", "Y", "B0", 0.6, 8, 1.5),
                Hose("rail B", "B0", "B1", 0.35, 12, 0.5),
                Hose("from B", "B1", "join", 0.5, 8, 1),
                Hose("to regulator", "join", "regulator", 0.5, 8, 1),
                OwnLine.BypassRegulator(
                    "regulator",
                    "regulator",
                    "return",
                    new(Kilopascals(300), new(Pressure.Zero), Kilopascals(9), LitersPerHour(200))
                ),
                Hose("return", "return", "tank", 3.5, 8, 3),
                Injector("A front", "A0"),
                Injector("A rear", "A1"),
                Injector("B front", "B0"),
                Injector("B rear", "B1"),
            ]
        );

    internal static PlainPump Curve =>
        PlainPump.Straight([Point(0, 900), Point(108, 830), Point(288, 620), Point(450, 400)], OutsideRange.Refuse);

    private static OwnLine Injector(string name, string from) =>
        OwnLine.CappedOrifice(name, from, "manifold", LitersPerHour(35), Kilopascals(300), LitersPerHour(20));

    private static OwnLine Hose(string name, string from, string to, double meters, double bore, double k) =>
        OwnLine.Pipe(
            name,
            from,
            to,
            Length.FromMeters(meters),
            Length.FromMillimeters(bore),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(k),
            Pipe.FrictionLaw.ColebrookStraightPassage
        );

    private static Network.Node Fixed(string name) => Network.Node.FixedPressure(name, new(Pressure.Zero), Length.Zero);

    private static Network.Node Junction(string name) => Network.Node.Junction(name, Length.Zero);

    private static PlainPump.Point Point(double litersPerHour, double kilopascals) =>
        new(LitersPerHour(litersPerHour), Kilopascals(kilopascals));

    private static Pressure Kilopascals(double value) => Pressure.FromKilopascals(value);

    private static VolumeFlow LitersPerHour(double value) => VolumeFlow.FromLitersPerHour(value);
}
