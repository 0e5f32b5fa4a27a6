using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>Short words for test networks: kilopascals gauge, liters per hour, millimeters, meters.</summary>
internal static class Make
{
    internal static Network Fuel(params object[] nodesAndLinks) =>
        OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(740),
            KinematicViscosity.FromCentistokes(0.5),
            nodesAndLinks.OfType<Network.Node>(),
            nodesAndLinks.OfType<OwnLine>()
        );

    internal static Network.Node Fixed(string name, double kilopascals) => Fixed(name, kilopascals, 0);

    internal static Network.Node Fixed(string name, double kilopascals, double meters) =>
        Network.Node.FixedPressure(name, Gauge(kilopascals), Length.FromMeters(meters));

    internal static Network.Node Junction(string name) => Junction(name, 0);

    internal static Network.Node Junction(string name, double meters) =>
        Network.Node.Junction(name, Length.FromMeters(meters));

    internal static Network.Node Drawn(string name, double litersPerHour) =>
        Network.Node.Junction(name, Length.Zero, LitersPerHour(litersPerHour));

    /// <summary>A loss that grows with flow alone: so much at 100 L/h.</summary>
    internal static OwnLine Linear(string name, string from, string to, double kilopascals) =>
        OwnLine.Filter(name, from, to, LitersPerHour(100), Kilopascals(kilopascals), Pressure.Zero);

    internal static OwnLine Hose(string name, string from, string to, double meters, double bore) =>
        Hose(name, from, to, meters, bore, 0);

    internal static OwnLine Hose(string name, string from, string to, double meters, double bore, double k) =>
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

    internal static OwnLine Injector(string name, string from, string to, double at300, double commanded) =>
        OwnLine.CappedOrifice(name, from, to, LitersPerHour(at300), Kilopascals(300), LitersPerHour(commanded));

    internal static OwnLine Check(string name, string from, string to, double opening) =>
        OwnLine.CheckValve(name, from, to, Kilopascals(opening), Kilopascals(5), LitersPerHour(100));

    internal static PlainPump Straight(OutsideRange outside, params (double Flow, double Rise)[] points) =>
        PlainPump.Straight(points.Select(p => Point(p.Flow, p.Rise)), outside);

    internal static PlainPump.Point Point(double litersPerHour, double kilopascals) =>
        new(LitersPerHour(litersPerHour), Kilopascals(kilopascals));

    internal static GaugePressure Gauge(double kilopascals) => new(Kilopascals(kilopascals));

    internal static Pressure Kilopascals(double value) => Pressure.FromKilopascals(value);

    internal static VolumeFlow LitersPerHour(double value) => VolumeFlow.FromLitersPerHour(value);

    /// <summary>Gauge pressure in kPa.</summary>
    internal static double KilopascalsAt(this NetworkState state, string node) =>
        state.PressureAt(node).AboveAmbient.Kilopascals;

    internal static double LitersPerHourIn(this NetworkState state, string link) => state.FlowIn(link).LitersPerHour;
}
