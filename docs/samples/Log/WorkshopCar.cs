using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Samples.Log;

/// <summary>What the controller was told of the time-trial car's injectors, and what is really fitted. Invented.</summary>
internal static class WorkshopCar
{
    internal const double OpensLaterBy = 0.15e-3; // s: the fault that the log hides

    internal static readonly double[] Volts = [8, 10, 12, 14, 16];

    internal static readonly double[] DeadTimes = [2.4e-3, 1.65e-3, 1.2e-3, 0.96e-3, 0.8e-3]; // s, at 3 bar

    internal static readonly Temperature FuelTemperature = Temperature.FromDegreesCelsius(30);

    internal static readonly AbsolutePressure Ambient = new(Pressure.FromKilopascals(100));

    private static readonly DataSource Source = new("Workshop-class", "injectors of the time-trial car, invented");

    private static readonly Pressure Rated = Pressure.FromBars(3);

    internal static Fuel Gasoline => StandardFuels.PumpGasoline;

    /// <summary>Static flow of the rating: 980 cm3/min of n-heptane at 3 bar, kg/s.</summary>
    internal static double RatedMassFlow => 980 / 6e7 * RatedDensity;

    internal static double RatedDensity =>
        StandardFuels.NHeptane.DensityAt(Temperature.FromDegreesCelsius(21)).KilogramsPerCubicMeter;

    internal static double FuelDensity => Gasoline.DensityAt(FuelTemperature).KilogramsPerCubicMeter;

    internal static double StoichiometricRatio => Gasoline.StoichiometricRatio.ToMassRatio();

    /// <summary>The mass of a pulse as the controller reckons it, with the dead times that it was told.</summary>
    internal static FormulaInfo DeliveredMass { get; } =
        InjectorFormulas.DeliveredMass(
            Grid.FromFirstAxis(
                "dead time",
                new Grid.Axis("voltage (V)", Volts),
                new Grid.Axis("differential pressure (Pa)", [Rated.Pascals]),
                DeadTimes,
                OutsideRange.Refuse
            )
        );

    internal static FittedInjectors Presumed()
    {
        var injector = new Injector(
            "primary",
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(980),
                Rated,
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(21),
                Source
            ),
            DeadTimeTable.FromVoltage(
                Volts.Select(v => ElectricPotential.FromVolts(v)),
                Rated,
                DeadTimes.Select(d => Duration.FromSeconds(d)),
                OutsideRange.Refuse,
                Source
            ),
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(0.4),
            Duration.FromMilliseconds(0.9),
            ElectricResistance.FromOhms(12.5)
        );
        return FittedInjectors.FromStage(
            Gasoline,
            new FittedInjectors.Stage(
                "primary",
                new ControllerBelief(injector, Rated, Gasoline, FuelTemperature),
                1,
                Enumerable.Repeat(injector, 4)
            ),
            MixtureLimits.CommonPractice
        );
    }
}
