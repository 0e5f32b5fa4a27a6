using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Sizing;

/// <summary>Widths, duty cycles and the small end of an injector, against closed forms.</summary>
public sealed class InjectorTimingTests
{
    /// <summary>The unit library knows turns per minute to 3e-12 of them.</summary>
    private const double Turns = 1e-11;

    internal static readonly AbsolutePressure Ambient = new(Pressure.FromBars(1));

    private static readonly Temperature Charge = Temperature.FromDegreesCelsius(25);

    private static readonly RailPressure Referenced = RailPressure.Referenced(Pressure.FromBars(3));

    private static AbsolutePressure Bar(double value) => new(Pressure.FromBars(value));

    internal static RotationalSpeed Rpm(double value) => RotationalSpeed.FromRevolutionsPerMinute(value);

    internal static InjectorSupply Supply(RailPressure? rail = null) =>
        new(rail ?? Referenced, Ambient, Trade.Fluid, Trade.Warm, ElectricPotential.FromVolts(14));

    internal static Engine Engine(
        Engine.WorkingCycle cycle = FuelMath.Engine.WorkingCycle.FourStroke,
        VolumetricEfficiency? breathing = null
    )
    {
        VolumetricEfficiency air = breathing ?? VolumetricEfficiency.FromConstant(Trade.Share(0.9), Trade.Invented);
        return cycle switch
        {
            FuelMath.Engine.WorkingCycle.FourStroke => FuelMath.Engine.FourStroke("four", 4, Volume.FromLiters(2), air),
            FuelMath.Engine.WorkingCycle.TwoStroke => FuelMath.Engine.TwoStroke(
                "two",
                2,
                Volume.FromLiters(0.5),
                air,
                Trade.Share(0.8)
            ),
            _ => FuelMath.Engine.Rotary("rotary", 2, Volume.FromLiters(0.65), air),
        };
    }

    private static InjectorTiming Timing(
        double flow = 500,
        int perChamber = 1,
        int pulses = 1,
        Engine? engine = null,
        RailPressure? rail = null
    ) => new(Trade.Injector(flow), new InjectorLayout(engine ?? Engine(), perChamber, pulses), Supply(rail));

    /// <summary>Half the pressure across the injector at 1.5 bar of boost: root two times the effective width.</summary>
    [Fact]
    public void WidthFor_FixedRailUnderBoost_GrowsByTheRoot()
    {
        Mass mass = Mass.FromMilligrams(20);
        InjectorTiming held = Timing();
        InjectorTiming rigid = Timing(rail: RailPressure.Fixed(new(Pressure.FromBars(3))));
        double expected = held.WidthFor(mass, Rpm(3000), Bar(2.5)).EffectiveWidth.Milliseconds * Math.Sqrt(3.0 / 1.5);

        Close.Within(1e-12, expected, rigid.WidthFor(mass, Rpm(3000), Bar(2.5)).EffectiveWidth.Milliseconds);
    }

    [Fact]
    public void Deliver_TheWidthForAMass_DeliversIt()
    {
        InjectorTiming timing = Timing(perChamber: 2, pulses: 2);
        Injector.PulseResult pulse = timing.WidthFor(Mass.FromMilligrams(20), Rpm(2000), Bar(0.8));

        // Two injectors, two pulses each: a quarter a pulse.
        Close.Within(1e-12, 5, pulse.Mass.Milligrams);
        Close.Within(1e-12, 5, timing.Deliver(pulse.PulseWidth, Rpm(2000), Bar(0.8)).Mass.Milligrams);
        Close.Within(Turns, 30, pulse.Period.Milliseconds);
    }

    /// <summary>
    /// Duty cycle by hand: air 0.9 x p V/(R T), fuel by stoichiometry, 1 ms of dead time, over the time of a cycle or half
    /// of it in batch, where each pulse has a dead time of its own.
    /// </summary>
    [Theory]
    [InlineData(FuelMath.Engine.WorkingCycle.FourStroke, 1, 0.5e-3, 0.5)]
    [InlineData(FuelMath.Engine.WorkingCycle.FourStroke, 2, 0.5e-3, 0.5)]
    [InlineData(FuelMath.Engine.WorkingCycle.TwoStroke, 1, 0.25e-3, 1)]
    [InlineData(FuelMath.Engine.WorkingCycle.Rotary, 1, 0.65e-3, 1)]
    public void DutyCycleAt_EachCycle_IsWidthOverPeriod(
        Engine.WorkingCycle cycle,
        int pulses,
        double chamberCubicMeters,
        double cyclesPerTurn
    )
    {
        double air = 0.9 * 1e5 * chamberCubicMeters / (287.05287 * 298.15);
        double fuel = air / Trade.Fluid.StoichiometricRatio.ToMassRatio() / 0.9;
        double flow = Trade.Injector(700).Rating.StaticMassFlow.KilogramsPerSecond;
        double width = 0.001 + (fuel / pulses / flow);
        double expected = width * 5000 / 60 * cyclesPerTurn * pulses;

        Close.Within(
            Turns,
            expected,
            Timing(700, pulses: pulses, engine: Engine(cycle))
                .DutyCycleAt(Trade.Lambda(0.9), Rpm(5000), Bar(1), Charge)
                .DecimalFractions
        );
    }

    /// <summary>30 mg at 500 cm3/min: width 1 ms + m/flow; 85 % of two turns.</summary>
    [Fact]
    public void SpeedAtDutyCycle_ConstantMass_IsTheClosedForm()
    {
        double flow = Trade.Injector(500).Rating.StaticMassFlow.KilogramsPerSecond;
        double width = 0.001 + (30e-6 / flow);
        double rpm = 0.85 / width * 120;

        Close.Within(
            Turns,
            rpm,
            Timing().SpeedAtDutyCycle(Trade.Share(0.85), Mass.FromMilligrams(30), Bar(1)).RevolutionsPerMinute
        );
    }

    [Fact]
    public void FirstSpeedAtDutyCycle_ConstantEfficiency_AgreesWithTheClosedForm()
    {
        InjectorTiming timing = Timing();
        Mass fuel = FuelDemand.FromAir(
            Engine().AirMassPerChamberCycle(Rpm(3000), Bar(1), Charge),
            Trade.Fluid.StoichiometricRatio,
            Trade.Lambda(0.9)
        );
        RotationalSpeed closed = timing.SpeedAtDutyCycle(Trade.Share(0.85), fuel, Bar(1));
        RotationalSpeed found = timing.FirstSpeedAtDutyCycle(
            Trade.Share(0.85),
            Trade.Lambda(0.9),
            Bar(1),
            Charge,
            Rpm(1000),
            Rpm(20_000)
        );

        Close.Within(1e-12, closed.RevolutionsPerMinute, found.RevolutionsPerMinute);
    }

    /// <summary>An engine that breathes less and less above its best speed never reaches the limit, and it says how far.</summary>
    [Fact]
    public void FirstSpeedAtDutyCycle_NeverReached_SaysHowFarItComes()
    {
        VolumetricEfficiency breathing = VolumetricEfficiency.FromSpeeds(
            [Rpm(1000), Rpm(5000), Rpm(9000)],
            Bar(1),
            [Trade.Share(0.8), Trade.Share(0.9), Trade.Share(0.2)],
            OutsideRange.Refuse,
            Trade.Invented
        );
        NoSolutionException error = Assert.Throws<NoSolutionException>(() =>
            Timing(900, engine: Engine(breathing: breathing))
                .FirstSpeedAtDutyCycle(Trade.Share(0.85), Trade.Lambda(1), Bar(1), Charge, Rpm(1000), Rpm(9000))
        );

        Assert.Matches(
            "^No solution for the speed at which the duty cycle reaches 85 %: up to 9000 rpm it comes to \\d\\d\\.\\d+ %, at [5-9]\\d\\d\\d",
            error.Message
        );
    }

    [Fact]
    public void FirstSpeedAtDutyCycle_ReachedAtTheStart_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "from",
            "20.0 %, 6000 rpm",
            () =>
                Timing().FirstSpeedAtDutyCycle(Trade.Share(0.2), Trade.Lambda(1), Bar(1), Charge, Rpm(6000), Rpm(9000))
        );

    [Fact]
    public void FirstSpeedAtDutyCycle_EndBelowStart_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "to",
            "6000 rpm, 3000 rpm",
            () =>
                Timing().FirstSpeedAtDutyCycle(Trade.Share(0.85), Trade.Lambda(1), Bar(1), Charge, Rpm(6000), Rpm(3000))
        );

    [Fact]
    public void SpeedAtDutyCycle_MassBelowTheLeast_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "perChamberCycle",
            "1",
            () => Timing().SpeedAtDutyCycle(Trade.Share(0.85), Mass.FromMilligrams(1), Bar(1))
        );

    [Fact]
    public void SpeedAtDutyCycle_AboveOne_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "limit",
            "0, 1, 1.1",
            () => Timing().SpeedAtDutyCycle(Trade.Share(1.1), Mass.FromMilligrams(30), Bar(1))
        );

    /// <summary>
    /// A large injector idles rich: its least pulse of 0.3 ms gives three times what idle asks for, so that lambda is a
    /// third.
    /// </summary>
    [Fact]
    public void IdleAt_LargeInjector_SaysHowLeanItCanIdle()
    {
        double wanted = 0.9 * 0.3e5 * 0.5e-3 / (287.05287 * 298.15) / Trade.Fluid.StoichiometricRatio.ToMassRatio();
        double flow = 3 * wanted / 0.3e-3;
        double rated = flow / Trade.Density.KilogramsPerCubicMeter * 6e7;
        IdleControl idle = Timing(rated)
            .IdleAt(Trade.Lambda(1), Rpm(900), Bar(0.3), Charge, new ControllerTimer(Duration.FromMicroseconds(10)));

        Assert.False(idle.IsControllable);
        Close.Within(1e-9, 1 / 3.0, idle.Margin.DecimalFractions);
        Close.Within(1e-9, 1 / 3.0, idle.LambdaAtLeastPulse.ToRatio());
        Close.Within(1e-9, wanted * 1e6, idle.WantedMass.Milligrams);
        Close.Within(1e-9, 3 * wanted * 1e6, idle.LeastMass.Milligrams);
        Close.Within(1e-9, 0.3, idle.EffectiveWidth.Milliseconds);
        Close.Within(1e-9, 0.3, idle.SmallestEffectiveWidth.Milliseconds);
        Close.Within(1e-9, 1.3, idle.PulseWidth.Milliseconds);
        Close.Within(1e-9, 10e-3 / 0.6, idle.WorstStepError.DecimalFractions);
    }

    [Fact]
    public void IdleAt_SmallInjector_MetersIt()
    {
        IdleControl idle = Timing(250)
            .IdleAt(Trade.Lambda(1), Rpm(900), Bar(0.3), Charge, new ControllerTimer(Duration.FromMicroseconds(1)));

        Assert.True(idle.IsControllable);
        Close.Within(
            1e-12,
            idle.WantedMass.Kilograms,
            idle.EffectiveWidth.Seconds * Trade.Injector(250).Rating.StaticMassFlow.KilogramsPerSecond
        );
    }

    /// <summary>A step of 16 us at 0.8 ms: half a step is 1 % of the mass; lambda from 1/1.01 to 1/0.99.</summary>
    [Fact]
    public void ControllerTimer_Step_IsARelativeError()
    {
        var timer = new ControllerTimer(Duration.FromMicroseconds(16));

        Close.Within(1e-12, 0.01, timer.WorstMassErrorAt(Trade.Milliseconds(0.8)).DecimalFractions);
        Close.Within(1e-12, 1 / 0.99, timer.LeanestFactorAt(Trade.Milliseconds(0.8)).DecimalFractions);
        Close.Within(1e-12, 1 / 1.01, timer.RichestFactorAt(Trade.Milliseconds(0.8)).DecimalFractions);
        Close.Within(1e-12, 0.8, timer.ShortestWidthFor(Trade.Share(0.01)).Milliseconds);
        Close.Within(1e-12, 80, timer.Rounded(Duration.FromMicroseconds(87)).Microseconds);
        Close.Within(1e-12, 96, timer.Rounded(Duration.FromMicroseconds(88)).Microseconds);
    }

    [Fact]
    public void ControllerTimer_WidthOfHalfAStep_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "effectiveWidth",
            "0.05 ms",
            () => new ControllerTimer(Trade.Milliseconds(0.1)).WorstMassErrorAt(Trade.Milliseconds(0.05))
        );

    [Fact]
    public void ControllerTimer_NoStep_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("step", "0 s", () => _ = new ControllerTimer(Duration.Zero));

    [Fact]
    public void WorkingAt_ShowsTheDutyCycle()
    {
        InjectorTiming timing = Timing();
        var working = timing.WorkingAt(Trade.Lambda(0.9), Rpm(5000), Bar(1), Charge);

        Close.Within(
            1e-12,
            timing.DutyCycleAt(Trade.Lambda(0.9), Rpm(5000), Bar(1), Charge).DecimalFractions,
            working.Value
        );
        Assert.Equal(["mf", "mp", "m", "tp", "d"], working.Lines.Select(l => l.Symbol.Name));
    }

    [Fact]
    public void InjectorLayout_NoInjector_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "injectorsPerChamber",
            "1, 8, 0",
            () => _ = new InjectorLayout(Engine(), 0, 1)
        );
}
