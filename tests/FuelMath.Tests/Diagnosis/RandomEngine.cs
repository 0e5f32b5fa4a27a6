using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Diagnosis;

/// <summary>An invented engine with one thing wrong, and what its sensors would show.</summary>
/// <remarks>
/// The truth is set into the parts themselves (other injectors, another table, another pressure, another fuel) and run
/// forward through <see cref="FittedInjectors"/>; a leak is added by hand.
/// </remarks>
internal sealed class RandomEngine
{
    private static readonly double[] Bars = [1.5, 2.5, 3.5, 4.5, 6];
    private static readonly double[] Volts = [8, 11, 13, 15];

    private readonly Random random;
    private readonly double flow;
    private readonly double stageRatio;
    private readonly double[,] deadTimes;
    private readonly double bars;
    private readonly bool referenced;
    private readonly int[] banks;
    private readonly ShortPulseCorrection correction;
    private readonly bool staged;

    /// <summary>Draws an engine with one cause in it, of random size.</summary>
    internal RandomEngine(int seed, MixtureDiagnosis.Cause cause, bool readsChambers)
    {
        random = new Random(seed);
        (Cause, ReadsChambers) = (cause, readsChambers);
        flow = Between(200, 900);
        staged = random.Next(4) == 0;
        stageRatio = Between(0.8, 1.6);
        bars = Between(2.8, 4.2);
        referenced = random.Next(2) == 0;
        int chambers = new[] { 2, 3, 4, 4, 6, 8 }[random.Next(6)];
        int bankCount = chambers >= 4 && random.Next(2) == 0 ? 2 : 1;
        banks = [.. Enumerable.Range(0, chambers).Select(c => 1 + (c * bankCount / chambers))];
        deadTimes = new double[Volts.Length, Bars.Length];
        (double dead, double overPressure) = (Between(0.6, 1.1), Between(0.02, 0.12));
        for (int i = 0; i < Volts.Length; i++)
        {
            for (int j = 0; j < Bars.Length; j++)
            {
                deadTimes[i, j] = dead * Math.Pow(13 / Volts[i], 1.4) * (1 + (overPressure * (Bars[j] - 3)));
            }
        }

        correction =
            random.Next(2) == 0
                ? ShortPulseCorrection.None
                : new(
                    [Trade.Milliseconds(0.3), Trade.Milliseconds(0.6), Trade.Milliseconds(1.6)],
                    [Trade.Milliseconds(-0.1), Trade.Milliseconds(0.03), Trade.Milliseconds(0)],
                    Trade.Invented
                );
        Chamber = CauseIsOfOneChamber ? 1 + random.Next(chambers) : null;
        Sizes = cause switch
        {
            MixtureDiagnosis.Cause.NoError => [],
            MixtureDiagnosis.Cause.InjectorFlow => [Math.Exp(Signed(0.03, 0.3))],
            MixtureDiagnosis.Cause.DeadTime => [Signed(0.03, 0.3)],
            MixtureDiagnosis.Cause.InjectorFlowAndDeadTime => [Math.Exp(Signed(0.03, 0.3)), Signed(0.03, 0.3)],
            MixtureDiagnosis.Cause.RailPressure => [Signed(0.15, 1)],
            MixtureDiagnosis.Cause.PressureReference => [referenced ? 1 : -1],
            MixtureDiagnosis.Cause.FuelDensity => [Math.Exp(Signed(0.03, 0.2))],
            MixtureDiagnosis.Cause.StoichiometricRatio =>
            [
                StandardFuels.Ethanol.StoichiometricRatio.ToMassRatio() / Stoichiometric,
            ],
            MixtureDiagnosis.Cause.AirModel => [Math.Exp(Signed(0.03, 0.2))],
            MixtureDiagnosis.Cause.AirModelOverLoad or MixtureDiagnosis.Cause.AirModelOverSpeed => OverARange(),
            MixtureDiagnosis.Cause.OneInjectorFlow => [Between(0.4, 0.9)],
            MixtureDiagnosis.Cause.OneInjectorLeak => [Between(0.01, 0.08)],
            _ => throw new InvalidOperationException("Not drawn."),
        };
        Presumed = Set(false);
        Points = Draw();
    }

    internal MixtureDiagnosis.Cause Cause { get; }

    internal bool ReadsChambers { get; }

    /// <summary>The chamber that is ill, counted from 1.</summary>
    internal int? Chamber { get; }

    /// <summary>
    /// How large the cause is: ratios, a dead time in ms, a pressure in bar, a share; a leak as a share of static flow at the least
    /// pressure.
    /// </summary>
    internal double[] Sizes { get; }

    internal FittedInjectors Presumed { get; }

    internal Place[] Points { get; }

    private bool CauseIsOfOneChamber =>
        Cause is MixtureDiagnosis.Cause.OneInjectorFlow or MixtureDiagnosis.Cause.OneInjectorLeak;

    private static double Stoichiometric => Fuel(1, false).StoichiometricRatio.ToMassRatio();

    /// <summary>What the sensors show, with normal scatter of a size and the uncertainty that is stated for it.</summary>
    internal MixtureObservation[] Observe(double scatter, double uncertainty)
    {
        FittedInjectors real = Set(true);
        return [.. Points.Select(p => Observe(real, p, scatter, uncertainty))];
    }

    /// <summary>The sizes as a diagnosis estimates them.</summary>
    internal static double[] SizesOf(MixtureDiagnosis.RankedCause cause) =>
        [
            .. cause.Estimates.Select(e =>
                e.Value switch
                {
                    Ratio ratio => ratio.DecimalFractions,
                    Duration time => time.Milliseconds,
                    Pressure pressure => pressure.Bars,
                    MassFlow leak => leak.KilogramsPerSecond,
                    _ => double.NaN,
                }
            ),
        ];

    /// <summary>The truth in the measure of the estimates.</summary>
    internal double[] Truth()
    {
        if (Cause != MixtureDiagnosis.Cause.OneInjectorLeak)
        {
            return Sizes;
        }

        return [Sizes[0] * StaticFlow(Points.Min(p => Told(p)))];
    }

    private MixtureObservation Observe(FittedInjectors real, Place place, double scatter, double uncertainty)
    {
        double told = Told(place);
        double boost = place.ManifoldBar - 1;
        double pressure =
            told
            + (Cause == MixtureDiagnosis.Cause.RailPressure ? Sizes[0] : 0)
            - (Cause == MixtureDiagnosis.Cause.PressureReference ? Sizes[0] * boost : 0);
        double load = Share(place.ManifoldBar, Points.Select(p => p.ManifoldBar));
        double speed = Share(place.Rpm, Points.Select(p => p.Rpm));
        double air = Cause switch
        {
            MixtureDiagnosis.Cause.AirModel => Sizes[0],
            MixtureDiagnosis.Cause.AirModelOverLoad => Math.Pow(Sizes[0], 1 - load) * Math.Pow(Sizes[1], load),
            MixtureDiagnosis.Cause.AirModelOverSpeed => Math.Pow(Sizes[0], 1 - speed) * Math.Pow(Sizes[1], speed),
            _ => 1,
        };
        double cycle = 120 / place.Rpm;
        int stages = Presumed.Stages.Length;

        // The air for which the controller means to give this width: of the first stage alone, so that a second one joins.
        double mass = StaticFlow(told) * place.Milliseconds / 1e3 * (staged ? 1.3 : 1);
        ElectricPotential volts = ElectricPotential.FromVolts(place.Volts);
        MixturePoint point = new MixturePoint(
            place.Name,
            Duration.FromSeconds(cycle),
            Mass.FromKilograms(mass * Stoichiometric * place.Lambda * air),
            Trade.Lambda(place.Lambda),
            new InjectorConditions(Enumerable.Repeat(Pressure.FromBars(pressure), stages), Trade.Warm, volts)
        )
            .WithBelievedAir(Trade.Share(1 / air))
            .WithBelievedPressures(Enumerable.Repeat(Pressure.FromBars(told), stages));
        PredictedMixture mixture =
            Cause == MixtureDiagnosis.Cause.OneInjectorLeak || place.IsOpenLoop
                ? real.OpenLoop(point, Trade.Share(1))
                : real.ClosedLoop(point);
        double[] fuel = [.. mixture.Chambers.Select(c => c.Fuel.Kilograms)];
        if (Cause == MixtureDiagnosis.Cause.OneInjectorLeak)
        {
            fuel[Chamber!.Value - 1] += Truth()[0] * Math.Sqrt(told / Points.Min(Told)) * cycle;
        }

        Lambda Seen(IEnumerable<int> of)
        {
            int[] all = [.. of];
            double lambda =
                all.Sum(c => mixture.Chambers[c].Air.Kilograms)
                / all.Sum(c => fuel[c])
                / real.Fuel.StoichiometricRatio.ToMassRatio();
            return Trade.Lambda(lambda * Math.Exp(scatter * Normal()));
        }

        MixtureObservation seen = new(
            place.Name,
            point.Cycle,
            point.Target,
            new(Pressure.FromBars(place.ManifoldBar)),
            new(Pressure.FromBars(1)),
            new InjectorConditions(point.BelievedDifferentialPressures, Trade.Warm, volts),
            mixture.Banks.Select(b =>
                ReadsChambers
                    ? MixtureObservation.BankReading.FromPulseWidths(b.Bank, b.PulseWidths, b.Correction)
                    : new MixtureObservation.BankReading(
                        b.Bank,
                        b.PulseWidths,
                        b.Correction,
                        Seen(b.Chambers.Select(c => c - 1)),
                        Trade.Share(uncertainty)
                    )
            )
        );
        return ReadsChambers
            ? seen.WithChamberReadings(
                fuel.Select((_, c) => new MixtureObservation.ChamberReading(c + 1, Seen([c]), Trade.Share(uncertainty)))
            )
            : seen;
    }

    private Place[] Draw()
    {
        double idle = Between(1.2, 2);
        double top = Between(5500, 8000);
        double widest = 0.55 * 120_000 / top;
        double load = Between(1.2, 2);
        return
        [
            new("idle", idle, Between(0.3, 0.45), Between(750, 1000), Between(12.5, 14), 1, false),
            new("slow", idle * Between(1.3, 1.8), Between(0.4, 0.6), Between(1500, 2500), 13.8, 1, false),
            new("cruise", Between(2.5, 3.5), Between(0.5, 0.8), Between(2500, 3500), 14, 1, false),
            new("hill", Between(4.5, 7), Between(0.85, 1.05), Between(2000, 3500), 13.9, 1, false),
            new("fast", Between(3, 5), Between(0.5, 0.8), Between(4500, 5500), 14.1, 0.95, true),
            new("peak", widest, load, top, Between(13, 14.2), 0.85, true),
        ];
    }

    private FittedInjectors Set(bool real)
    {
        ControllerBelief belief(Injector i) => new(i, Pressure.FromBars(bars), Fuel(1, false), Trade.Warm);
        Injector told = Injector(1, 0);
        bool isOfFlow = Cause is MixtureDiagnosis.Cause.InjectorFlow or MixtureDiagnosis.Cause.InjectorFlowAndDeadTime;
        double all = real && isOfFlow ? Sizes[0] : 1;
        double dead = !real
            ? 0
            : Cause switch
            {
                MixtureDiagnosis.Cause.DeadTime => Sizes[0],
                MixtureDiagnosis.Cause.InjectorFlowAndDeadTime => Sizes[1],
                _ => 0,
            };
        Injector[] Fitted(double ratio) =>
            [
                .. banks.Select(
                    (_, c) =>
                        Injector(
                            ratio
                                * all
                                * (
                                    real && Cause == MixtureDiagnosis.Cause.OneInjectorFlow && c == Chamber - 1
                                        ? Sizes[0]
                                        : 1
                                ),
                            dead
                        )
                ),
            ];
        var stages = new List<FittedInjectors.Stage> { new("primary", belief(told), 1, Fitted(1)) };
        if (staged)
        {
            stages.Add(new("secondary", belief(Injector(stageRatio, 0)), 1, Fitted(stageRatio)));
        }

        return new(
            real
                ? Fuel(
                    Cause == MixtureDiagnosis.Cause.FuelDensity ? Sizes[0] : 1,
                    Cause == MixtureDiagnosis.Cause.StoichiometricRatio
                )
                : Fuel(1, false),
            stages,
            stages.Skip(1).Select(_ => new StageSchedule.Transition(Trade.Share(0.4))),
            banks,
            MixtureLimits.CommonPractice
        );
    }

    private Injector Injector(double ratio, double longer)
    {
        var table = new Duration[Volts.Length, Bars.Length];
        for (int i = 0; i < Volts.Length; i++)
        {
            for (int j = 0; j < Bars.Length; j++)
            {
                table[i, j] = Trade.Milliseconds(deadTimes[i, j] + longer);
            }
        }

        return new(
            "drawn",
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(flow * ratio),
                Pressure.FromBars(3),
                Trade.Fluid,
                Trade.Warm,
                Trade.Invented
            ),
            new DeadTimeTable(
                Volts.Select(v => ElectricPotential.FromVolts(v)),
                Bars.Select(b => Pressure.FromBars(b)),
                table,
                OutsideRange.Extend,
                Trade.Invented
            ),
            correction,
            Trade.Milliseconds(0.6),
            Trade.Milliseconds(0.4),
            ElectricResistance.FromOhms(12)
        );
    }

    /// <summary>Heptane's make-up or ethanol's, with heptane's density times a factor.</summary>
    private static Fuel Fuel(double density, bool ethanol) =>
        new(
            "drawn",
            (ethanol ? StandardFuels.Ethanol : Trade.Fluid).Composition,
            LiquidDensity.FromPoints(
                [Trade.Warm, Temperature.FromDegreesCelsius(60)],
                [Density.FromKilogramsPerCubicMeter(684 * density), Density.FromKilogramsPerCubicMeter(650 * density)],
                Trade.Invented
            ),
            LiquidViscosity.Unknown("not needed."),
            LiquidVaporPressure.Unknown("not needed."),
            null,
            Trade.Invented,
            [],
            []
        );

    /// <summary>The pressure across the injectors that the controller is told, bar.</summary>
    private double Told(Place place) => referenced ? bars : bars + 1 - place.ManifoldBar;

    /// <summary>Static flow of the first stage at a pressure, kg/s: by hand, square roots of pressure and density.</summary>
    private double StaticFlow(double atBars) =>
        flow
        / 6e7
        * Trade.Density.KilogramsPerCubicMeter
        * Math.Sqrt(atBars / 3 * 684 / Trade.Density.KilogramsPerCubicMeter);

    private static double Share(double at, IEnumerable<double> of)
    {
        double[] all = [.. of];
        return (at - all.Min()) / (all.Max() - all.Min());
    }

    private double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    private double Signed(double low, double high) => Between(low, high) * (random.Next(2) == 0 ? 1 : -1);

    /// <summary>Errors at the two ends, which differ by as much as counts as an error.</summary>
    private double[] OverARange()
    {
        while (true)
        {
            (double low, double high) = (Signed(0.03, 0.2), Signed(0.03, 0.2));
            if (Math.Abs(high - low) > 0.03)
            {
                return [Math.Exp(low), Math.Exp(high)];
            }
        }
    }

    private double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
