using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>One of each part that is given by its numbers alone. Invented.</summary>
internal static class PlainParts
{
    private static readonly Length Bore = Length.FromMillimeters(8);
    private static readonly VolumeFlow Flow = VolumeFlow.FromLitersPerHour(100);

    internal static Pipe Pipe { get; } =
        new(
            Length.FromMeters(1.5),
            Bore,
            Length.FromMicrometers(2),
            Ratio.FromDecimalFractions(0.5),
            Pipe.FrictionLaw.ColebrookStraightPassage
        );

    internal static CurvedPipe CurvedPipe { get; } =
        new(
            Length.FromMeters(3),
            Bore,
            Length.FromMicrometers(2),
            Ratio.FromDecimalFractions(0.5),
            Length.FromMillimeters(200)
        );

    internal static PlainFitting Fitting { get; } = new(Bore, Ratio.FromDecimalFractions(1.5));

    internal static PlainFilter Filter { get; } =
        new(
            Flow,
            Pressure.FromKilopascals(2),
            Pressure.FromKilopascals(3),
            PlumbingRig.Petrol,
            DynamicViscosity.FromMillipascalSeconds(0.5)
        );

    internal static CheckValve CheckValve { get; } =
        new(Pressure.FromKilopascals(5), Pressure.FromKilopascals(3), Flow, PlumbingRig.Petrol);

    internal static PlainPump Pump { get; } =
        PlainPump.Straight(
            [new(default, Pressure.FromBars(6)), new(VolumeFlow.FromLitersPerHour(300), Pressure.FromBars(2))],
            OutsideRange.Refuse
        );

    internal static PlainRegulator Bypass { get; } =
        PlainRegulator.Bypass(
            Pressure.FromBars(3),
            new GaugePressure(Pressure.Zero),
            Pressure.FromBars(0.2),
            Flow,
            PlumbingRig.Petrol
        );

    internal static PlainRegulator Reducing { get; } =
        PlainRegulator
            .Reducing(
                Pressure.FromBars(3),
                new GaugePressure(Pressure.Zero),
                Pressure.FromBars(0.2),
                Flow,
                PlumbingRig.Petrol
            )
            .WithSlope(Pressure.FromBars(0.1), Flow);

    internal static Nozzle Nozzle { get; } =
        new(Flow, Pressure.FromBars(3), PlumbingRig.Petrol, InjectorDraw.Backflow.Allowed);

    internal static InjectorDraw Draw { get; } = new(Flow, Pressure.FromBars(3), PlumbingRig.Petrol);
}
