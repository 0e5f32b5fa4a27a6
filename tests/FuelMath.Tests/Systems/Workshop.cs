using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Invented parts of the workshop class, put together in a few ways.</summary>
internal static class Workshop
{
    internal static readonly DataSource Invented = new("Workshop-class", "test rig");

    internal static readonly Fuel Gasoline = StandardFuels.PumpGasoline;

    internal static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    internal static AbsolutePressure Kilopascals(double value) => new(Pressure.FromKilopascals(value));

    internal static RotationalSpeed Rpm(double value) => RotationalSpeed.FromRevolutionsPerMinute(value);

    /// <summary>An injector whose dead time depends on voltage, and on pressure a little.</summary>
    internal static Injector Injector(
        string name,
        double cubicCentimetersPerMinute,
        double smallestMilliseconds = 0.3,
        double extraDeadMilliseconds = 0
    ) =>
        new(
            name,
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(cubicCentimetersPerMinute),
                Pressure.FromBars(3),
                StandardFuels.NHeptane,
                Celsius(20),
                Invented
            ),
            new DeadTimeTable(
                [.. new[] { 6.0, 8, 10, 12, 14, 16 }.Select(v => ElectricPotential.FromVolts(v))],
                [Pressure.FromBars(0.5), Pressure.FromBars(8)],
                DeadTimes(extraDeadMilliseconds),
                OutsideRange.Refuse,
                Invented
            ),
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(smallestMilliseconds),
            Duration.FromMilliseconds(0.4),
            ElectricResistance.FromOhms(12)
        );

    /// <summary>A four-cylinder four-stroke of 2 L with one injector each, return-style regulator, one feed, one return.</summary>
    internal static FuelSystem Four(
        IReadOnlyList<Injector>? fitted = null,
        double deliveryShare = 1,
        RegulatorReference reference = RegulatorReference.Manifold,
        double pumpOhms = 0.05,
        double injectorOhms = 0.05,
        double setBars = 3,
        double returnBoreMillimeters = 8,
        Injector? believed = null,
        (Injector Injector, double TransitionDuty)? secondaries = null
    )
    {
        Injector rated = Injector("rated", 500);
        fitted ??= [rated, rated, rated, rated];
        var stages = new List<InjectorStage> { Stage("primary", believed ?? rated, fitted) };
        if (secondaries is { } second)
        {
            stages.Add(Stage("secondary", second.Injector, [.. Enumerable.Repeat(second.Injector, 4)]));
        }

        return new FuelSystem(
            "test rig",
            Gasoline,
            Engine.FourStroke("two liters", 4, Volume.FromLiters(2), Breathing()),
            NetworkOf(Pump(deliveryShare), Regulator(reference, setBars), returnBoreMillimeters),
            stages,
            secondaries is { } s ? new StageSchedule.Transition(Ratio.FromDecimalFractions(s.TransitionDuty)) : null,
            new PowerSupply.TwoCircuits(Circuit("pump", pumpOhms), Circuit("injectors", injectorOhms)),
            Limits.CommonPractice,
            Invented
        );
    }

    internal static InjectorStage Stage(string name, Injector believed, IReadOnlyList<Injector> fitted) =>
        new InjectorStage(
            name,
            InjectorStage.DischargePlace.Manifold,
            1,
            fitted.Select((injector, i) => new InjectorStage.Seat(i + 1, i < 2 ? "rail start" : "rail end", injector))
        ).WithBelief(new ControllerBelief(believed, Pressure.FromBars(3), Gasoline, Celsius(20)));

    internal static Network NetworkOf(Pump pump, BypassRegulator regulator, double returnBoreMillimeters) =>
        new(
            [
                Network.Node.FixedPressure("tank", default, Length.Zero),
                Network.Node.Junction("pump outlet", Length.Zero),
                Network.Node.Junction("filter outlet", Length.Zero),
                Network.Node.Junction("rail start", Length.Zero),
                Network.Node.Junction("rail end", Length.Zero),
                Network.Node.Junction("return", Length.Zero),
            ],
            [
                new Line("pump", "tank", "pump outlet", pump),
                new Line("filter", "pump outlet", "filter outlet", Filter()),
                new Line("feed", "filter outlet", "rail start", Hose("feed", 3, 8.7)),
                new Line("rail", "rail start", "rail end", Hose("rail", 0.35, 12)),
                new Line("regulator", "rail end", "return", regulator),
                new Line("return hose", "return", "tank", Hose("return", 3, returnBoreMillimeters)),
            ]
        );

    internal static Hose Hose(string name, double meters, double millimeters) =>
        new(
            name,
            Length.FromMeters(meters),
            Length.FromMillimeters(millimeters),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(2),
            Invented
        );

    internal static Filter Filter() =>
        FuelMath.Filter.Fit(
            "filter",
            [
                new Filter.Point(Pressure.FromKilopascals(4), VolumeFlow.FromLitersPerHour(80)),
                new Filter.Point(Pressure.FromKilopascals(9), VolumeFlow.FromLitersPerHour(160)),
                new Filter.Point(Pressure.FromKilopascals(15), VolumeFlow.FromLitersPerHour(240)),
            ],
            Density.FromKilogramsPerCubicMeter(745),
            DynamicViscosity.FromMillipascalSeconds(0.5),
            Invented
        );

    /// <summary>About 250 L/h at 3 bar and 13.5 V for a share of one.</summary>
    internal static Pump Pump(double share) =>
        new(
            "pump",
            [PumpCurve(8, 0.5, share), PumpCurve(12, 0.88, share), PumpCurve(15, 1.12, share)],
            Gasoline,
            Invented
        );

    internal static BypassRegulator Regulator(RegulatorReference reference, double setBars) =>
        new(
            "regulator",
            new BypassRegulator.BenchReading(Pressure.FromBars(setBars), VolumeFlow.FromLitersPerHour(60)),
            new BypassRegulator.BenchReading(Pressure.FromBars(setBars + 0.06), VolumeFlow.FromLitersPerHour(180)),
            new RegulatorMechanics(
                Area.FromSquareMillimeters(700),
                Area.FromSquareMillimeters(20),
                new RegulatorMechanics.Restriction(
                    Pressure.FromKilopascals(30),
                    VolumeFlow.FromLitersPerHour(250),
                    Density.FromKilogramsPerCubicMeter(745)
                )
            ),
            reference,
            Invented
        );

    internal static OperatingPoint Point(
        double rpm,
        double manifoldKilopascals,
        FuelCommand command,
        double volts = 13.8,
        double fuelCelsius = 20
    ) =>
        new(
            "test",
            Rpm(rpm),
            new IntakeAir(Kilopascals(manifoldKilopascals), Kilopascals(100), Celsius(25)),
            Celsius(fuelCelsius),
            ElectricPotential.FromVolts(volts),
            command
        );

    internal static FuelCommand Hold(double lambda) => FuelCommand.HoldLambda(Lambda.FromRatio(lambda));

    internal static FuelCommand Open(double lambda) => FuelCommand.OpenLoop(Lambda.FromRatio(lambda));

    private static Circuit Circuit(string name, double ohms) =>
        new(
            name,
            [new FuelMath.Conductor(WireSize.FromAwg(12), Length.FromMeters(1), Celsius(20))],
            [new FuelMath.Conductor(WireSize.FromAwg(12), Length.FromMeters(1), Celsius(20))],
            ElectricResistance.FromOhms(ohms)
        );

    private static PumpCurve PumpCurve(double volts, double scale, double share)
    {
        double[] bars = [0, 2, 4, 6, 8, 9];
        double[] flows = [330, 295, 255, 200, 90, 0];
        return new PumpCurve(
            ElectricPotential.FromVolts(volts),
            bars.Zip(
                flows,
                (bar, flow) =>
                    new PumpCurve.Point(
                        Pressure.FromBars(bar * scale),
                        VolumeFlow.FromLitersPerHour(flow * scale * share),
                        ElectricCurrent.FromAmperes((4 + bar) * scale)
                    )
            ),
            Invented
        );
    }

    private static VolumetricEfficiency Breathing()
    {
        double[] speeds = [100, 1000, 3000, 6000, 8000];
        double[] pressures = [20, 100, 300];
        var values = new Ratio[speeds.Length, pressures.Length];
        for (int i = 0; i < speeds.Length; i++)
        {
            for (int j = 0; j < pressures.Length; j++)
            {
                values[i, j] = Ratio.FromDecimalFractions(0.8 + (0.05 * Math.Min(i, 3)));
            }
        }

        return new VolumetricEfficiency(
            speeds.Select(Rpm),
            pressures.Select(Kilopascals),
            values,
            OutsideRange.Refuse,
            Invented
        );
    }

    private static Duration[,] DeadTimes(double extraMilliseconds)
    {
        double[] milliseconds = [2.9, 1.8, 1.25, 0.95, 0.75, 0.62];
        var values = new Duration[milliseconds.Length, 2];
        for (int i = 0; i < milliseconds.Length; i++)
        {
            values[i, 0] = Duration.FromMilliseconds(milliseconds[i] + extraMilliseconds);
            values[i, 1] = Duration.FromMilliseconds((milliseconds[i] * 1.15) + extraMilliseconds);
        }

        return values;
    }
}
