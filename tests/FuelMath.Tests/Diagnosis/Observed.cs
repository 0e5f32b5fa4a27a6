using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Diagnosis;

/// <summary>Places of operation of an invented engine, and what a truth would show there.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Milliseconds">Effective width commanded.</param>
/// <param name="ManifoldBar">Absolute manifold pressure; ambient is 1 bar.</param>
/// <param name="Rpm">Speed.</param>
/// <param name="Volts">Voltage of the supply.</param>
/// <param name="Lambda">Lambda aimed at.</param>
/// <param name="IsOpenLoop">Whether no sensor corrects there.</param>
public sealed record Place(
    string Name,
    double Milliseconds,
    double ManifoldBar,
    double Rpm,
    double Volts = 14,
    double Lambda = 1,
    bool IsOpenLoop = false
)
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
    /// <summary>The set that the observations belong to: one injector of 500 cm3/min, told as it is.</summary>
    internal static FittedInjectors Set { get; } = Trade.Fitted(Trade.Injector(500), Trade.Injector(500));

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
                    return At(p, believed, Trade.Milliseconds(p.Milliseconds + 1), factor, uncertainty);
                }
            ),
        ];

    /// <summary>One observation with no correction in it and lambda over the one aimed at.</summary>
    internal static MixtureObservation At(
        Place place,
        double believedBar,
        Duration width,
        double factor,
        double uncertainty
    ) =>
        new(
            place.Name,
            Duration.FromSeconds(120 / place.Rpm),
            Trade.Lambda(place.Lambda),
            new AbsolutePressure(Pressure.FromBars(place.ManifoldBar)),
            new AbsolutePressure(Pressure.FromBars(1)),
            new InjectorConditions(
                [Pressure.FromBars(believedBar)],
                Trade.Warm,
                ElectricPotential.FromVolts(place.Volts)
            ),
            [
                new MixtureObservation.BankReading(
                    1,
                    [width],
                    Trade.Share(1),
                    Trade.Lambda(factor * place.Lambda),
                    Trade.Share(uncertainty)
                ),
            ]
        );

    internal static double Share(MixtureDiagnosis.Estimate estimate) => ((Ratio)estimate.Value).DecimalFractions;

    internal static double Milliseconds(MixtureDiagnosis.Estimate estimate) => ((Duration)estimate.Value).Milliseconds;

    internal static double Bar(MixtureDiagnosis.Estimate estimate) => ((Pressure)estimate.Value).Bars;
}
