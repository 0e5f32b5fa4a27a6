using FuelMath.Formulas;
using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Sizing;

/// <summary>Injectors for a power, against worked examples and closed forms.</summary>
public sealed class InjectorSizingTests
{
    private static readonly InjectorSizing.IdleDemand Idle = new(
        Trade.Lambda(1),
        InjectorTimingTests.Rpm(900),
        new AbsolutePressure(Pressure.FromBars(0.35)),
        Temperature.FromDegreesCelsius(25),
        new ControllerTimer(Duration.FromMicroseconds(10))
    );

    private static InjectorSizing Sizing(
        double kilowatts = 150,
        double gramsPerKilowattHour = 320,
        double rpm = 6500,
        Engine? engine = null,
        double duty = 0.85
    ) =>
        new(
            new InjectorLayout(engine ?? InjectorTimingTests.Engine(), 1, 1),
            InjectorTimingTests.Supply(),
            new InjectorSizing.PeakDemand(
                Power.FromKilowatts(kilowatts),
                BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(gramsPerKilowattHour),
                InjectorTimingTests.Rpm(rpm),
                new AbsolutePressure(Pressure.FromBars(1.8))
            ),
            Trade.Share(duty)
        );

    /// <summary>
    /// Worked examples on the fuel that an injector gives in each cycle: power x consumption over cylinders and cycles.
    /// Printed to three or four digits. The second to fourth count in horsepower, which cancels against the horsepower of
    /// their consumption.
    /// </summary>
    [Theory]
    [Trait("Source", "Mathur-Sharma")]
    [InlineData(6, 89, 245, 2500, 0.84, 0.0577)]
    public void NeededStaticFlow_WorkedExample_GivesItsFuelPerCycle(
        int cylinders,
        double power,
        double consumption,
        double rpm,
        double specificGravity,
        double cubicCentimeters
    ) => Compare(cylinders, power, consumption, rpm, specificGravity, cubicCentimeters, 0.00005);

    [Theory]
    [Trait("Source", "Textbook-companion")]
    [InlineData(6, 720, 250, 180, 1, 5.56, 0.005)]
    [InlineData(4, 400, 215, 250, 0.9, 3.185, 0.0005)]
    [InlineData(4, 450, 200, 200, 0.9, 4.167, 0.0005)]
    public void NeededStaticFlow_MoreWorkedExamples_GivesTheirFuelPerCycle(
        int cylinders,
        double power,
        double consumption,
        double rpm,
        double specificGravity,
        double cubicCentimeters,
        double halfDigit
    ) => Compare(cylinders, power, consumption, rpm, specificGravity, cubicCentimeters, halfDigit);

    /// <summary>
    /// Six cylinders, 220 kW, 0.273 kg/kWh, 1500 rpm, 30 degrees of 720, 120 bar across an orifice with 0.9 and specific
    /// gravity 0.85: diameter 0.813 mm, printed to three digits.
    /// </summary>
    [Fact]
    [Trait("Source", "Textbook-companion")]
    public void NeededStaticFlow_OrificeOfAWorkedExample_HasItsDiameter()
    {
        double mean = 220e3 * 0.273 / 3.6e6 / 6;
        double needed = PulseTiming
            .NeededStaticFlow(new Real(mean), new Real(30.0 / 720), new Real(0), new Real(120.0 / 1500))
            .Value;
        double perArea = Orifice.MassFlow(new Real(0.9), new Real(1), new Real(850), new Real(120e5)).Value;

        Assert.Equal(8.13e-4, Math.Sqrt(needed / perArea * 4 / Math.PI), 5e-7);
    }

    /// <summary>
    /// Best consumption of a spark-ignition engine: 270 g/(kW h) is 0.45 lb/(hp h), printed to two digits. A pound an hour
    /// and horsepower is 608.277 g/(kW h).
    /// </summary>
    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void PeakDemand_BestConsumption_IsTheSameInBothUnits()
    {
        InjectorSizing.PeakDemand demand = new(
            Power.FromMechanicalHorsepower(100),
            BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(270),
            InjectorTimingTests.Rpm(6000),
            new AbsolutePressure(Pressure.FromBars(1))
        );

        Assert.Equal(0.45, demand.FuelFlow.PoundsPerHour / 100, 0.0065);
    }

    /// <summary>150 kW at 320 g/kWh over four: 3.333 g/s each; 85 % of 18.46 ms less 1 ms of dead time.</summary>
    [Fact]
    public void NeededStaticFlow_WithDeadTime_IsTheClosedForm()
    {
        double period = 120.0 / 6500;
        double expected = 150 * 320 / 3600.0 / 4 / (0.85 - (0.001 / period));

        Close.Within(1e-12, expected, Sizing().NeededStaticFlow(Trade.Milliseconds(1)).GramsPerSecond);
    }

    /// <summary>At the conditions of the ratings, three bar of the same fluid, nothing changes; at 4 bar it is more by a root.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    public void NeededRating_OtherPressure_GoesWithTheRoot(double bar)
    {
        InjectorSizing sizing = Sizing();
        double needed = (sizing.NeededStaticFlow(Trade.Milliseconds(1)) / Trade.Density).CubicCentimetersPerMinute;

        Close.Within(
            1e-12,
            needed * Math.Sqrt(bar / 3),
            sizing
                .NeededRating(Trade.Milliseconds(1), Pressure.FromBars(bar), Trade.Fluid, Trade.Warm)
                .CubicCentimetersPerMinute
        );
    }

    /// <summary>An injector of exactly the needed flow works at the limit and carries the power, no more.</summary>
    [Fact]
    public void Choose_InjectorOfTheNeededFlow_WorksAtTheLimit()
    {
        InjectorSizing sizing = Sizing();
        double needed = sizing
            .NeededRating(Trade.Milliseconds(1), Pressure.FromBars(3), Trade.Fluid, Trade.Warm)
            .CubicCentimetersPerMinute;
        InjectorSizing.Candidate sized = sizing.Choose([Trade.Injector(needed)], Idle)[0];

        Assert.True(sized.IsAccepted);
        Close.Within(1e-12, 0.85, sized.PeakDutyCycle!.Value.DecimalFractions);
        Close.Within(1e-12, 150, (double)sized.PowerAtLimit!.Value.Kilowatts);
    }

    [Fact]
    public void Choose_AList_RanksByIdleAndSaysWhyNot()
    {
        InjectorSizing sizing = Sizing();
        Injector[] list =
        [
            Trade.Injector(2000, smallestMilliseconds: 0.6),
            Trade.Injector(250),
            Trade.Injector(550),
            Trade.Injector(450),
        ];
        var choice = sizing.Choose(list, Idle);

        Assert.Equal(
            ["450 cm3/min", "550 cm3/min", "250 cm3/min", "2000 cm3/min"],
            choice.Select(c => c.Injector.Name)
        );
        Assert.Equal([true, true, false, false], choice.Select(c => c.IsAccepted));
        Assert.StartsWith("duty cycle at the peak is 12", choice[2].Reasons[0], StringComparison.Ordinal);
        Assert.StartsWith("the peak leaves it 0.000 ms to close", choice[2].Reasons[1], StringComparison.Ordinal);
        Assert.Matches(
            "^idle asks for \\d\\d\\.\\d % of the least mass that it repeats: the engine would idle at lambda 0\\.\\d\\d\\d$",
            choice[3].Reasons[0]
        );

        // A larger injector works with shorter pulses at idle, and a step of the timer weighs more.
        Assert.True(choice[0].Idle!.WorstStepError.DecimalFractions < choice[1].Idle!.WorstStepError.DecimalFractions);
    }

    [Fact]
    public void Choose_DataThatDoNotReach_IsAReason()
    {
        var sizing = new InjectorSizing(
            new InjectorLayout(InjectorTimingTests.Engine(), 1, 1),
            new InjectorSupply(
                RailPressure.Referenced(Pressure.FromBars(3)),
                InjectorTimingTests.Ambient,
                Trade.Fluid,
                Trade.Warm,
                ElectricPotential.FromVolts(18)
            ),
            Sizing().Peak,
            Trade.Share(0.85)
        );
        InjectorSizing.Candidate sized = sizing.Choose([Trade.Injector(500)], Idle)[0];

        Assert.Null(sized.PeakDutyCycle);
        Assert.Null(sized.Idle);
        Assert.StartsWith(
            "its data do not reach the peak: Dead time of injector '500 cm3/min': voltage at the injector must be from 6 V to 16 V; it was 18 V.",
            sized.Reasons[0],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Choose_EmptyList_IsRefused() =>
        Words.Refused<ArgumentException>("candidates", "1, 0", () => Sizing().Choose([], Idle));

    [Fact]
    public void NeededStaticFlow_DeadTimeOfTheWholePulse_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "deadTime",
            "15.6923 ms, 16 ms",
            () => Sizing().NeededStaticFlow(Trade.Milliseconds(16))
        );

    [Fact]
    public void New_DutyLimitAboveOne_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("dutyLimit", "0.1, 1, 1.2", () => Sizing(duty: 1.2));

    [Fact]
    public void PeakDemand_NoPower_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("crankPower", "0", () => Sizing(kilowatts: 0));

    [Fact]
    public void WorkingFor_DeadTime_ShowsTheNeededFlow()
    {
        var working = Sizing().WorkingFor(Trade.Milliseconds(1));

        Close.Within(1e-12, Sizing().NeededStaticFlow(Trade.Milliseconds(1)).KilogramsPerSecond, working.Value);
        Assert.Equal(["mff", "mm", "ms"], working.Lines.Select(l => l.Symbol.Name));
    }

    private static void Compare(
        int cylinders,
        double power,
        double consumption,
        double rpm,
        double specificGravity,
        double cubicCentimeters,
        double halfDigit
    )
    {
        Engine engine = Engine.FourStroke(
            "example",
            cylinders,
            Volume.FromLiters(6),
            FuelMath.VolumetricEfficiency.FromConstant(Trade.Share(0.9), Trade.Invented)
        );
        InjectorSizing sizing = Sizing(power, consumption, rpm, engine, 0.5);
        double grams = sizing.NeededStaticFlow(Duration.Zero).GramsPerSecond * 0.5 * (120 / rpm);

        Assert.Equal(cubicCentimeters, grams / specificGravity, halfDigit);
    }
}
