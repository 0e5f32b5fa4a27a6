using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Parts for the rig that the usual one does not have.</summary>
internal static class PlumbingParts
{
    /// <summary>5 L/h at 3 bar.</summary>
    internal static Jet Jet(double exponent = 0.5) =>
        new(
            "jet",
            VolumeFlow.FromLitersPerHour(5),
            Pressure.FromBars(3),
            PlumbingRig.Petrol,
            Ratio.FromDecimalFractions(exponent),
            Workshop.Invented
        );

    /// <summary>3 bar at 5 L/h, 9 bar at 10 L/h.</summary>
    internal static LossTable LossTable() =>
        new(
            "restriction",
            [
                new(VolumeFlow.FromLitersPerHour(5), Pressure.FromBars(3)),
                new(VolumeFlow.FromLitersPerHour(10), Pressure.FromBars(9)),
            ],
            PlumbingRig.Petrol,
            DynamicViscosity.FromMillipascalSeconds(0.5),
            Workshop.Invented
        );

    /// <summary>Far too small for the pump: Reynolds numbers beyond the law at 1000 L/h.</summary>
    internal static Strainer Strainer(double squareMillimeters = 20) =>
        new(
            "strainer",
            Length.FromMillimeters(0.25),
            Length.FromMillimeters(0.16),
            Area.FromSquareMillimeters(squareMillimeters),
            Workshop.Invented
        );

    internal static Fitting Elbow(Fitting.LossBasis basis = Fitting.LossBasis.Supplied) =>
        new("elbow", Length.FromMillimeters(7), Ratio.FromDecimalFractions(1.2), basis, Workshop.Invented);

    internal static FittedHose Fitted() =>
        new(Workshop.Hose("feed", 3, 8.7), [Elbow(Fitting.LossBasis.Estimate), Elbow(Fitting.LossBasis.Published)]);

    /// <summary>1.08e12 Pa s/m3 at any flow: 15 bar at 5 L/h.</summary>
    internal static CustomPart<Laminar> Own() => new("own", new Laminar(1.08e12), VolumeFlow.FromLitersPerHour(5));

    internal readonly struct Laminar(double perFlow) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => T.Of(perFlow) * at.Flow;
    }
}
