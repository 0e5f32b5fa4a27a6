using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>A system at a point, what the verdict must be and which finding must decide, reasoned by hand beside it.</summary>
/// <param name="System">The system.</param>
/// <param name="Point">The point.</param>
/// <param name="Kind">What the verdict must be.</param>
/// <param name="Decides">A code among the reasons; null when it holds.</param>
internal sealed record VerdictCase(FuelSystem System, OperatingPoint Point, Verdict.Outcome Kind, FindingCode? Decides);

/// <summary>The table of cases: the two-liter rig, 3 bar, limits of common practice (5 % lean, 3 % pressure, 0.7 V, 85 % duty).</summary>
internal static class VerdictCases
{
    private static readonly OperatingPoint Cruise = At(Workshop.Hold(1));

    private static readonly OperatingPoint Open = At(Workshop.Open(0.9));

    internal static IReadOnlyDictionary<string, VerdictCase> All { get; } =
        new Dictionary<string, VerdictCase>
        {
            // Nothing departs from what was told; gasoline's vapor pressure is known at 20 °C.
            ["healthy, held"] = Holds(Rig(), Cruise),
            ["healthy, open loop"] = Holds(Rig(), Open),
            ["healthy, fuel cut"] = Holds(Rig(), At(FuelCommand.Cut)),
            ["healthy, injectors held open on the stand"] = Holds(Rig(), At(FuelCommand.AllOpen)),
            // Below the data of the vapor pressure its lowest value is an upper bound, and the margin is wide against it.
            ["healthy, in the cold"] = Holds(Rig(), At(Workshop.Open(0.9), fuelCelsius: -15)),
            // 1/0.97 is 3.1 % lean: inside 5 %.
            ["all 3 % weak"] = Holds(Fitted(0.97, 0.97, 0.97, 0.97), Open),
            // 1/0.94 is 6.4 % lean, all alike.
            ["all 6 % weak"] = Is(
                Fitted(0.94, 0.94, 0.94, 0.94),
                Open,
                Verdict.Outcome.DoNotRun,
                FindingCode.MixtureLean
            ),
            // A sensor that holds the mean corrects what all have in common, until it fails.
            ["all 6 % weak, held"] = Is(
                Fitted(0.94, 0.94, 0.94, 0.94),
                Cruise,
                Verdict.Outcome.ActFirst,
                FindingCode.MixtureLean
            ),
            // 1/0.97 is 3.1 % lean without it.
            ["all 3 % weak, held"] = Holds(Fitted(0.97, 0.97, 0.97, 0.97), Cruise),
            // 3 x 0.975 + 0.94: the mean is 3.5 % lean, chamber 2 6.4 %: 2.8 % against the mean. Each step is inside 5 %.
            ["one 6 % weak among weak ones"] = Is(
                Fitted(0.975, 0.94, 0.975, 0.975),
                Open,
                Verdict.Outcome.DoNotRun,
                FindingCode.ChamberLean
            ),
            // The same under a sensor: 2.8 % is all that is left, and 6.4 % again if it fails.
            ["one 6 % weak among weak ones, held"] = Is(
                Fitted(0.975, 0.94, 0.975, 0.975),
                Cruise,
                Verdict.Outcome.ActFirst,
                FindingCode.ChamberLean
            ),
            // 1/0.93 = 7.5 %, and the sensor gives back a quarter of 7 %: 5.6 % are left.
            ["one 7 % weak, held"] = Is(
                Fitted(1, 0.93, 1, 1),
                Cruise,
                Verdict.Outcome.DoNotRun,
                FindingCode.ChamberLean
            ),
            // 4.2 % by itself, the mean 1 % less.
            ["one 4 % weak"] = Holds(Fitted(1, 0.96, 1, 1), Open),
            // 1/1.08 is 7.4 % rich: no danger to the engine's life, and nothing to tune on.
            ["all 8 % strong"] = Is(
                Fitted(1.08, 1.08, 1.08, 1.08),
                Open,
                Verdict.Outcome.ActFirst,
                FindingCode.MixtureRich
            ),
            // 3 ms more dead time than told: the pulse of idle ends inside it.
            ["dead time far longer than told"] = Is(
                Rig(
                    [.. Enumerable.Repeat(Workshop.Injector("slow", 500, extraDeadMilliseconds: 5), 4)],
                    believed: Workshop.Injector("rated", 500)
                ),
                At(Workshop.Open(0.9), 900, 35),
                Verdict.Outcome.DoNotRun,
                FindingCode.ChamberWithoutFuel
            ),
            // Given widths ask for no lambda: nobody can say whether it is the right one.
            ["given widths"] = Is(
                Rig(),
                At(FuelCommand.FromPulseWidths([Duration.FromMilliseconds(6)])),
                Verdict.Outcome.NotKnown,
                FindingCode.MixtureNotJudged
            ),
            // A tenth of the pump: 25 L/h at 3 bar for an engine that asks for about 60.
            ["pump far too small"] = Is(
                Rig(deliveryShare: 0.2),
                At(Workshop.Open(0.85), 6000, 160),
                Verdict.Outcome.DoNotRun,
                FindingCode.RegulatorShut
            ),
            // 250 L/h back through 2.5 mm: far more than 3 % of pressure.
            ["return far too narrow"] = Is(
                Rig(returnBoreMillimeters: 2.5),
                Open,
                Verdict.Outcome.ActFirst,
                FindingCode.RegulatorFullyOpen
            ),
            // About 8 A of pump through 0.15 ohm more is over 1 V.
            ["poor wiring of the pump"] = Is(
                Rig(pumpOhms: 0.2),
                Open,
                Verdict.Outcome.ActFirst,
                FindingCode.PumpVoltageLow
            ),
            // 2 L at 7800 rpm and 1.6 bar through 4 x 500 cm3/min: more than the whole cycle.
            ["injectors far too small"] = Is(
                Rig(),
                At(Workshop.Open(0.8), 7800, 200),
                Verdict.Outcome.DoNotRun,
                FindingCode.InjectorHeldOpen
            ),
            // No pump curve below 8 V.
            ["supply below the pump's data"] = Is(
                Rig(),
                At(Workshop.Open(0.9), volts: 6.5),
                Verdict.Outcome.NotKnown,
                FindingCode.StateRefused
            ),
            // Gasoline of 60 kPa Reid boils at 55 °C in a vented tank.
            ["fuel that boils"] = Is(
                Rig(),
                At(Workshop.Open(0.9), fuelCelsius: 70),
                Verdict.Outcome.DoNotRun,
                FindingCode.VaporMarginLow
            ),
            // Data of the vapor pressure end at 37.8 °C.
            ["fuel hotter than its data"] = Is(
                Rig().WithFuel(InsideItsTable),
                At(Workshop.Open(0.9), fuelCelsius: 70),
                Verdict.Outcome.NotKnown,
                FindingCode.VaporNotChecked
            ),
            // Methanol in gasoline: nobody knows, and at 20 °C it is a note, at 45 °C it matters.
            ["no vapor pressure, cool"] = Holds(
                Told(Rig().WithFuel(Blend), RailPressure.Reference.Manifold, fuel: Blend),
                Cruise
            ),
            // 10 % methanol by volume are 10.6 % by mass: 0.894 x 14.6 + 0.106 x 6.5 = 13.7 in place of 14.6, 6 % lean.
            ["another fuel than told, held"] = Is(
                Rig().WithFuel(Blend),
                Cruise,
                Verdict.Outcome.ActFirst,
                FindingCode.MixtureLean
            ),
            ["no vapor pressure, warm"] = Is(
                Rig().WithFuel(Blend),
                At(Workshop.Hold(1), fuelCelsius: 45),
                Verdict.Outcome.NotKnown,
                FindingCode.VaporNotChecked
            ),
            // 16:1 with no oil burned is about 7 % leaner than with all of it burned; 50:1 about 2 %.
            ["premix 16:1"] = Is(
                Rig().WithFuel(Premix(16)),
                At(Workshop.Hold(0.9)),
                Verdict.Outcome.ActFirst,
                FindingCode.PremixMixture
            ),
            ["premix 50:1"] = Holds(Rig().WithFuel(Premix(50)), At(Workshop.Hold(0.9))),
            // Fixed at 3 bar with 0.55 bar of vacuum: 18 % more than told.
            ["fixed rail told as referenced, part load"] = Is(
                Fixed(RailPressure.Reference.Manifold),
                At(Workshop.Hold(1), 2500, 45),
                Verdict.Outcome.ActFirst,
                FindingCode.RailReferenceNotAsTold
            ),
            // With 0.8 bar of boost 2.2 bar are left: 27 % less.
            ["fixed rail told as referenced, boost"] = Is(
                Fixed(RailPressure.Reference.Manifold),
                At(Workshop.Hold(0.85), 4000, 180),
                Verdict.Outcome.DoNotRun,
                FindingCode.RailReferenceNotAsTold
            ),
            ["fixed rail told as fixed, part load"] = Holds(
                Fixed(RailPressure.Reference.Fixed),
                At(Workshop.Open(1), 2500, 45)
            ),
            ["fixed rail told as fixed, boost"] = Holds(
                Fixed(RailPressure.Reference.Fixed),
                At(Workshop.Open(0.85), 3000, 180)
            ),
            ["fixed rail measured, part load"] = Holds(
                Fixed(RailPressure.Reference.Measured),
                At(Workshop.Open(1), 2500, 45)
            ),
            // 3 bar where 3.6 were reckoned with: 17 % less.
            ["referenced rail told as fixed, part load"] = Is(
                Told(Rig(), RailPressure.Reference.Fixed),
                At(Workshop.Hold(1), 2500, 40),
                Verdict.Outcome.DoNotRun,
                FindingCode.RailReferenceNotAsTold
            ),
            // Regulated at 2.7 bar where 3 bar were told: 10 % less, whatever the reference.
            ["regulator set low"] = Is(
                Rig(setBars: 2.63),
                Cruise,
                Verdict.Outcome.ActFirst,
                FindingCode.PressureNotAsTold
            ),
            // Nothing returns; 47.8 L/h are drawn, and at 3.3 bar and 13.1 V the curves give about 105 L/h.
            ["no return, pump as usual"] = Holds(DeadHead(0.4), At(Workshop.Hold(0.85), 6000, 110)),
            // At 3.3 bar and 13.3 V between 45.9 L/h (12 V) and 62.1 L/h (15 V): 52.9. 5 L/h are left, a tenth of what is drawn.
            ["no return, pump just enough"] = Is(
                DeadHead(0.2),
                At(Workshop.Hold(0.85), 6000, 110),
                Verdict.Outcome.ActFirst,
                FindingCode.PumpReserveLow
            ),
            ["no return, pump too small"] = Is(
                DeadHead(0.18),
                At(Workshop.Open(0.85), 6000, 160),
                Verdict.Outcome.DoNotRun,
                FindingCode.RegulatorStarved
            ),
        };

    /// <summary>
    /// The rig without anything to act on: the pump stays inside what the filter was tested for, about 215 L/h, and the
    /// regulator, which droops by 0.05 bar for each 100 L/h, comes to the 3 bar that the controller was told.
    /// </summary>
    private static FuelSystem Rig(
        IReadOnlyList<Injector>? fitted = null,
        double deliveryShare = 0.8,
        RegulatorReference reference = RegulatorReference.Manifold,
        double pumpOhms = 0.05,
        double setBars = 2.93,
        double returnBoreMillimeters = 8,
        Injector? believed = null
    ) =>
        Workshop.Four(
            fitted,
            deliveryShare,
            reference,
            pumpOhms,
            setBars: setBars,
            returnBoreMillimeters: returnBoreMillimeters,
            believed: believed
        );

    /// <summary>The rig, for cases of their own.</summary>
    internal static FuelSystem Healthy => Rig();

    private static Fuel Blend =>
        FuelBlend.ByVolume(
            "M10 of the workshop",
            Workshop.Celsius(20),
            [new(StandardFuels.PumpGasoline, Ratio.FromPercent(90)), new(StandardFuels.Methanol, Ratio.FromPercent(10))]
        );

    private static Fuel InsideItsTable =>
        StandardFuels.PumpGasoline.WithVaporPressure(
            "gasoline, inside the table",
            LiquidVaporPressure.FromReid(new(Pressure.FromKilopascals(60)))
        );

    internal static Fuel Premix(int parts) =>
        PremixRatio
            .FromParts(parts)
            .ToFuel($"premix {parts}:1", StandardFuels.PumpGasoline, StandardFuels.TwoStrokeOil, Workshop.Celsius(20));

    /// <summary>The rig with injectors that pass a share of their rating, and a controller that was told the rating.</summary>
    internal static FuelSystem Fitted(params double[] shares)
    {
        Injector rated = Workshop.Injector("rated", 500);
        return Rig(
            [
                .. shares.Select(
                    (s, i) => rated.WithFlowScale($"number {i + 1}", Ratio.FromDecimalFractions(s), Workshop.Invented)
                ),
            ],
            believed: rated
        );
    }

    /// <summary>The same system whose controller was told another reference of the rail.</summary>
    internal static FuelSystem Told(
        FuelSystem system,
        RailPressure.Reference reference,
        double bars = 3,
        Fuel? fuel = null
    ) =>
        new(
            system.Name,
            system.Fuel,
            system.Engine,
            system.Network,
            system.Stages.Select(s =>
                new InjectorStage(s.Name, s.Discharge, s.PulsesPerCycle, s.Seats).WithBelief(
                    new ControllerBelief(
                        s.Belief!.Injector,
                        Pressure.FromBars(bars),
                        fuel ?? s.Belief!.Fuel,
                        s.Belief!.FuelTemperature
                    ).WithRailReference(reference)
                )
            ),
            system.Staging,
            system.Power,
            system.Limits,
            system.Source
        );

    internal static FuelSystem Fixed(RailPressure.Reference told) =>
        Told(Rig(reference: RegulatorReference.Ambient), told);

    /// <summary>A reducing regulator behind a pump that nothing else lets back.</summary>
    internal static FuelSystem DeadHead(double pumpShare) =>
        PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(pumpShare)),
            new("filter", "pump outlet", "filter outlet", Workshop.Filter()),
            new("regulator", "filter outlet", "rail start", PlumbingRig.Reducing(RegulatorReference.Manifold)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );

    internal static OperatingPoint At(
        FuelCommand command,
        double rpm = 3000,
        double manifoldKilopascals = 60,
        double volts = 13.8,
        double fuelCelsius = 20
    ) => Workshop.Point(rpm, manifoldKilopascals, command, volts, fuelCelsius);

    private static VerdictCase Holds(FuelSystem system, OperatingPoint point) =>
        new(system, point, Verdict.Outcome.Holds, null);

    private static VerdictCase Is(FuelSystem system, OperatingPoint point, Verdict.Outcome kind, FindingCode decides) =>
        new(system, point, kind, decides);
}
