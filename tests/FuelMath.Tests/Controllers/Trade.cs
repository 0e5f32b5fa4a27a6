using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>Injectors and points of the workshop class, as the trade speaks of them.</summary>
internal static class Trade
{
    internal static readonly DataSource Invented = new("Workshop-class", "tests of beliefs");

    internal static readonly Fuel Fluid = StandardFuels.NHeptane;

    internal static readonly Temperature Warm = Temperature.FromDegreesCelsius(20);

    internal static Density Density => Fluid.DensityAt(Warm);

    internal static Duration Milliseconds(double value) => Duration.FromMilliseconds(value);

    internal static Ratio Share(double value) => Ratio.FromDecimalFractions(value);

    internal static Lambda Lambda(double value) => FuelMath.Lambda.FromRatio(value);

    /// <summary>An injector that is straight from the first moment, with one dead time at all voltages.</summary>
    internal static Injector Injector(
        double cubicCentimetersPerMinute,
        double deadMilliseconds = 1,
        double smallestMilliseconds = 0.3,
        double closingMilliseconds = 0.4,
        ShortPulseCorrection? correction = null
    ) =>
        new(
            FormattableString.Invariant($"{cubicCentimetersPerMinute} cm3/min"),
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(cubicCentimetersPerMinute),
                Pressure.FromBars(3),
                Fluid,
                Warm,
                Invented
            ),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(6), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Milliseconds(deadMilliseconds), Milliseconds(deadMilliseconds)],
                OutsideRange.Refuse,
                Invented
            ),
            correction ?? ShortPulseCorrection.None,
            Milliseconds(smallestMilliseconds),
            Milliseconds(closingMilliseconds),
            ElectricResistance.FromOhms(12)
        );

    internal static ControllerBelief Belief(Injector injector, double bars = 3) =>
        new(injector, Pressure.FromBars(bars), Fluid, Warm);

    internal static FittedInjectors Fitted(Injector believed, params Injector[] fitted) =>
        FittedInjectors.FromStage(
            Fluid,
            new FittedInjectors.Stage("primary", Belief(believed), 1, fitted),
            MixtureLimits.CommonPractice
        );

    /// <summary>A point at which the controller means to give an effective width with the injector it believes in.</summary>
    internal static MixturePoint Point(
        Injector believed,
        double effectiveMilliseconds,
        double cycleMilliseconds = 20,
        double lambda = 1,
        double bars = 3
    ) =>
        new(
            "test",
            Milliseconds(cycleMilliseconds),
            Mass.FromKilograms(
                believed.Rating.StaticMassFlow.KilogramsPerSecond
                    * effectiveMilliseconds
                    / 1000
                    * Fluid.StoichiometricRatio.ToMassRatio()
                    * lambda
            ),
            Lambda(lambda),
            new InjectorConditions([Pressure.FromBars(bars)], Warm, ElectricPotential.FromVolts(14))
        );

    internal static double[] Lambdas(PredictedMixture mixture) =>
        [.. mixture.Chambers.Select(c => c.Lambda!.Value.ToRatio())];
}
