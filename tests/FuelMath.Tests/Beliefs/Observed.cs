using FuelMath.Beliefs;
using FuelMath.Quantities;
using UnitsNet;

namespace FuelMath.Tests.Beliefs;

/// <summary>Places of operation of an invented engine, and what a truth would show there.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Milliseconds">Effective width commanded.</param>
/// <param name="ManifoldBar">Absolute manifold pressure; ambient is 1 bar.</param>
/// <param name="Rpm">Speed.</param>
internal sealed record Place(string Name, double Milliseconds, double ManifoldBar, double Rpm)
{
    internal static readonly Place[] Five =
    [
        new("idle", 1.1, 0.35, 900),
        new("slow", 1.9, 0.55, 1800),
        new("cruise", 2.6, 0.5, 3000),
        new("hill", 4.8, 0.95, 2500),
        new("peak", 9.5, 1.9, 6000),
    ];
}

/// <summary>Makes observations from a truth: the factor is worked out here, by hand, not by the library.</summary>
internal static class Observed
{
    /// <summary>Flow factor, dead-time error in ms, pressure error in bar, share of boost missed, air ratio.</summary>
    internal static MixtureObservation[] Of(
        double flow = 1,
        double deadMilliseconds = 0,
        double pressureBar = 0,
        double boostShare = 0,
        Func<Place, double>? air = null,
        bool fixedRail = false,
        double uncertainty = 0.005,
        Func<int, double>? scatter = null,
        IReadOnlyList<Place>? places = null
    ) =>
        [
            .. (places ?? Place.Five).Select(
                (p, i) =>
                {
                    double believed = fixedRail ? 3 + 1 - p.ManifoldBar : 3;
                    double real = believed + pressureBar - (boostShare * (p.ManifoldBar - 1));
                    double delivered =
                        flow * Math.Sqrt(real / believed) * (p.Milliseconds - deadMilliseconds) / p.Milliseconds;
                    double factor = (air?.Invoke(p) ?? 1) / delivered * Math.Exp(scatter?.Invoke(i) ?? 0);
                    return MixtureObservation.FromCorrection(
                        p.Name,
                        Trade.Milliseconds(p.Milliseconds + 1),
                        Trade.Milliseconds(1),
                        Pressure.FromBars(believed),
                        new AbsolutePressure(Pressure.FromBars(p.ManifoldBar)),
                        new AbsolutePressure(Pressure.FromBars(1)),
                        RotationalSpeed.FromRevolutionsPerMinute(p.Rpm),
                        Trade.Share(factor),
                        Trade.Share(uncertainty)
                    );
                }
            ),
        ];

    internal static double Share(CauseEstimate estimate) => ((Ratio)estimate.Value).DecimalFractions;

    internal static double Milliseconds(CauseEstimate estimate) => ((Duration)estimate.Value).Milliseconds;

    internal static double Bar(CauseEstimate estimate) => ((Pressure)estimate.Value).Bars;
}
