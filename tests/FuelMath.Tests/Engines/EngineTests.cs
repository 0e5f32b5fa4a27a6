using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Engines;

[Properties(Arbitrary = [typeof(EngineArbitraries)])]
public sealed class EngineTests
{
    private static readonly VolumetricEfficiency Full = VolumetricEfficiency.FromConstant(
        Ratio.FromPercent(100),
        EngineArbitraries.Invented
    );

    // Standard atmosphere by geometric altitude: pressure and temperature give the density, here the mass that fills one
    // liter. Printed to four or five digits.
    [Theory]
    [InlineData(101_320, 288.15, 1.225)]
    [InlineData(79_501, 275.15, 1.0066)]
    [InlineData(47_218, 249.19, 0.66011)]
    [InlineData(26_500, 223.25, 0.41351)]
    [Trait("Source", "ISO-2533")]
    public void AirMassPerChamberCycle_OneLiterOfStandardAir_IsThePrintedDensity(
        double pascals,
        double kelvins,
        double density
    ) =>
        Close.Within(
            1e-4,
            density,
            Engine
                .FourStroke("one", 1, Volume.FromLiters(1), Full)
                .AirMassPerChamberCycle(
                    RotationalSpeed.FromRevolutionsPerMinute(3000),
                    new AbsolutePressure(Pressure.FromPascals(pascals)),
                    Temperature.FromKelvins(kelvins)
                )
                .Grams
        );

    // The trade's rule: theoretical air in ft³/min is cubic inches times rpm over 3456; 350 in³ at 6000 rpm make 608
    // (value from memory). As a flow of volume at manifold density it is exact.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void AirMassFlow_FourStroke_IsTheRuleForTheoreticalAir()
    {
        Running at = new(6000, 100, 20);
        Engine engine = Engine.FourStroke("V8", 8, Volume.FromCubicInches(350), Full);

        double density = 100_000 / (287.05287 * 293.15);
        double feet =
            engine.AirMassFlow(at.Speed, at.Manifold, at.Charge).KilogramsPerSecond / density * 60 / 0.028316846592;

        Close.Within(0.001, 608, feet);
        Close.Within(1e-9, 350.0 * 6000 / 3456, feet);
    }

    // A rotor's chamber fills once in each turn of the shaft, and a piston every second turn: a rotary of 2 x 650 cm³
    // takes in as much as a four-stroke of 2.6 L.
    [Fact]
    [Trait("Source", "Yamamoto-1981")]
    public void AirMassFlow_Rotary_IsThatOfAFourStrokeOfTwiceTheSize()
    {
        Running at = new(7000, 95, 35);
        Engine rotary = Engine.Rotary("two rotors", 2, Volume.FromCubicCentimeters(650), Full);
        Engine four = Engine.FourStroke("2.6 L", 4, Volume.FromCubicCentimeters(4 * 650), Full);

        Close.Within(
            1e-12,
            four.AirMassFlow(at.Speed, at.Manifold, at.Charge).GramsPerSecond,
            rotary.AirMassFlow(at.Speed, at.Manifold, at.Charge).GramsPerSecond
        );
        Close.Within(1e-12, 1300, rotary.Displacement.CubicCentimeters);
    }

    // At 6000 rpm a turn takes 10 ms: a sequential injector of a four-stroke has 20 ms, of a two-stroke or a rotary 10 ms.
    // The unit library knows the turn per minute to twelve digits.
    [Theory]
    [InlineData(Engine.WorkingCycle.FourStroke, 1, 20)]
    [InlineData(Engine.WorkingCycle.FourStroke, 2, 10)]
    [InlineData(Engine.WorkingCycle.TwoStroke, 1, 10)]
    [InlineData(Engine.WorkingCycle.Rotary, 1, 10)]
    [Trait("Source", "Definition")]
    public void InjectionPeriod_At6000Rpm_FollowsTheCycle(Engine.WorkingCycle cycle, int pulses, double milliseconds)
    {
        Engine engine = cycle switch
        {
            Engine.WorkingCycle.FourStroke => Engine.FourStroke("four", 4, Volume.FromLiters(2), Full),
            Engine.WorkingCycle.TwoStroke => Engine.TwoStroke(
                "two",
                2,
                Volume.FromLiters(0.25),
                Full,
                Ratio.FromPercent(70)
            ),
            _ => Engine.Rotary("rotary", 2, Volume.FromCubicCentimeters(650), Full),
        };

        Close.Within(
            1e-11,
            milliseconds,
            engine.InjectionPeriod(RotationalSpeed.FromRevolutionsPerMinute(6000), pulses).Milliseconds
        );
    }

    // Fuel mixed with the air before it enters leaves with it: what burns is what was sent. Fuel that comes after the port
    // has shut all stays: half of the air lost makes a delivered 1.8 burn at 0.9.
    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void TrappedLambda_TwoStroke_FollowsWhatIsKept()
    {
        Engine engine = Engine.TwoStroke("single", 1, Volume.FromLiters(0.125), Full, Ratio.FromPercent(50));

        Close.Within(1e-15, 0.9, engine.TrappedLambda(Lambda.FromRatio(0.9), Ratio.FromPercent(50)).ToRatio());
        Close.Within(1e-15, 0.9, engine.TrappedLambda(Lambda.FromRatio(1.8), Ratio.FromPercent(100)).ToRatio());
    }

    [Property]
    public void AirMassFlow_IsChambersTimesCyclesTimesMass(Engine engine, Running at) =>
        Close.Within(
            1e-13,
            engine.Chambers
                * engine.CyclesPerSecond(at.Speed).Hertz
                * engine.AirMassPerChamberCycle(at.Speed, at.Manifold, at.Charge).Kilograms,
            engine.AirMassFlow(at.Speed, at.Manifold, at.Charge).KilogramsPerSecond
        );

    [Property]
    public void MassPerChamberCycle_OfTheWholeAir_IsThatOfOneChamber(Engine engine, Running at) =>
        Close.Within(
            1e-13,
            engine.AirMassPerChamberCycle(at.Speed, at.Manifold, at.Charge).Kilograms,
            engine.MassPerChamberCycle(engine.AirMassFlow(at.Speed, at.Manifold, at.Charge), at.Speed).Kilograms
        );

    [Property]
    public void TrappedAir_IsNeverMoreThanWasSent(Engine engine, Running at)
    {
        double sent = engine.AirMassPerChamberCycle(at.Speed, at.Manifold, at.Charge).Kilograms;
        double kept = engine.TrappedAirMassPerChamberCycle(at.Speed, at.Manifold, at.Charge).Kilograms;

        Close.Within(1e-14, engine.TrappingEfficiency.DecimalFractions * sent, kept);
        Assert.True(kept <= sent);
        Assert.Equal(
            engine.Cycle != Engine.WorkingCycle.TwoStroke || engine.TrappingEfficiency.Percent >= 100,
            kept == sent
        );
    }

    [Property]
    public void AirMass_GoesWithPressureAndAgainstTemperature(Engine engine, Running at)
    {
        double mass = engine.AirMassPerChamberCycle(at.Speed, at.Manifold, at.Charge).Kilograms;
        Temperature twice = Temperature.FromKelvins(2 * at.Charge.Kelvins);
        AbsolutePressure doubled = new(at.Manifold.AboveVacuum * 2);

        Close.Within(1e-13, mass / 2, engine.AirMassPerChamberCycle(at.Speed, at.Manifold, twice).Kilograms);
        Close.Within(1e-13, mass * 2, engine.AirMassPerChamberCycle(at.Speed, doubled, at.Charge).Kilograms);
    }

    [Property]
    public void Injections_TimesPeriod_IsOne(Engine engine, Running at) =>
        Close.Within(
            1e-14,
            1,
            engine.InjectionsPerSecond(at.Speed, 2).Hertz * engine.InjectionPeriod(at.Speed, 2).Seconds
        );

    [Fact]
    public void FourStroke_NoCylinders_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Engine.FourStroke("none", 0, Volume.FromLiters(2), Full)
        );

        Words.Says("1, 64, 0", error);
    }

    [Fact]
    public void FourStroke_NoDisplacement_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Engine.FourStroke("flat", 4, Volume.FromLiters(0), Full)
        );

        Assert.Equal("displacement", error.ParamName);
        Words.Says("0 l", error);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(110)]
    public void TwoStroke_TrappingOutside_Refuses(double percent)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Engine.TwoStroke("two", 1, Volume.FromLiters(0.1), Full, Ratio.FromPercent(percent))
        );

        Assert.Equal("trappingEfficiency", error.ParamName);
        Refusal refusal = Refusal.Of(error)!;
        Assert.Equal(
            (percent, 0, true, 100, "%"),
            (refusal.Value, refusal.Minimum, refusal.IsMinimumExcluded, refusal.Maximum, refusal.Unit)
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3000)]
    public void CyclesPerSecond_NotTurning_Refuses(double rpm)
    {
        Engine engine = Engine.FourStroke("four", 4, Volume.FromLiters(2), Full);

        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            engine.CyclesPerSecond(RotationalSpeed.FromRevolutionsPerMinute(rpm))
        );
        Words.Says($"{rpm} rpm", error);
    }

    [Fact]
    public void InjectionsPerSecond_NoPulses_Refuses()
    {
        Engine engine = Engine.FourStroke("four", 4, Volume.FromLiters(2), Full);

        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            engine.InjectionsPerSecond(RotationalSpeed.FromRevolutionsPerMinute(3000), 0)
        );
        Words.Says("1, 8, 0", error);
    }

    [Fact]
    public void AirMass_AtVacuum_Refuses()
    {
        Engine engine = Engine.FourStroke("four", 4, Volume.FromLiters(2), Full);

        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            engine.AirMassPerChamberCycle(
                RotationalSpeed.FromRevolutionsPerMinute(3000),
                default,
                Temperature.FromDegreesCelsius(20)
            )
        );
        Assert.Equal("manifoldPressure", error.ParamName);
    }

    [Fact]
    public void TrappedLambda_OfNoMixture_Refuses()
    {
        Engine engine = Engine.TwoStroke("two", 1, Volume.FromLiters(0.1), Full, Ratio.FromPercent(60));

        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            engine.TrappedLambda(default, Ratio.FromPercent(60))
        );
        Assert.Equal("delivered", error.ParamName);
    }
}
