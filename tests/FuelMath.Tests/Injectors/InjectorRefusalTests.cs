using UnitsNet;

namespace FuelMath.Tests.Injectors;

public sealed class InjectorRefusalTests
{
    private static readonly Duration Long = Duration.FromMilliseconds(1000);
    private static readonly Pressure ThreeBar = Pressure.FromKilopascals(300);
    private static readonly ElectricPotential TwelveVolts = ElectricPotential.FromVolts(12);

    private static Density Heptane => TestInjector.Rating.FluidDensity;

    [Theory]
    [InlineData(75)]
    [InlineData(90)]
    public void WidthFor_MoreThanThePeriodCarries_SaysBoth(double milligrams) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "wanted",
            $"71.68 mg, 20 ms, 80 mg, {milligrams} mg",
            () => WidthFor(Linear(), milligrams, 20)
        );

    [Fact]
    public void WidthFor_BelowTheSmallestRepeatable_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "wanted",
            "1.6 mg, 'primary', 1.5 mg",
            () => WidthFor(Linear(), 1.5, 20)
        );

    [Fact]
    public void WidthFor_NegativeMass_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>("wanted", "-1 mg", () => WidthFor(Linear(), -1, 20));

    [Fact]
    public void Deliver_BadValue_Refuses()
    {
        Injector injector = Linear();
        Duration ms = Duration.FromMilliseconds(1);

        Words.Refused<ArgumentOutOfRangeException>(
            "pulseWidth",
            "-1 ms",
            () => injector.Deliver(Duration.FromMilliseconds(-1), Long, ThreeBar, Heptane, TwelveVolts)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "period",
            "0 ms",
            () => injector.Deliver(ms, Duration.FromMilliseconds(0), ThreeBar, Heptane, TwelveVolts)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressure",
            "-5 kPa",
            () => injector.Deliver(ms, Long, Pressure.FromKilopascals(-5), Heptane, TwelveVolts)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "density",
            "0 kg/m³",
            () => injector.Deliver(ms, Long, ThreeBar, default, TwelveVolts)
        );
        Words.OutsideTable(
            "8, 16, 6",
            () => injector.Deliver(ms, Long, ThreeBar, Heptane, ElectricPotential.FromVolts(6))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "period",
            "0 ms",
            () => injector.MostMass(Duration.FromMilliseconds(0), ThreeBar, Heptane)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "period",
            "0 ms",
            () => injector.MostMeasuredMass(Duration.FromMilliseconds(0), ThreeBar, Heptane, TwelveVolts)
        );
        Words.Refused<ArgumentOutOfRangeException>("period", "0 ms", () => WidthFor(injector, 5, 0));
    }

    [Theory]
    [InlineData(-1, 0.5, 12, "smallestRepeatableWidth", "Must be finite and not negative; it was -1 ms.")]
    [InlineData(0.4, -0.5, 12, "closingTime", "Must be finite and not negative; it was -0.5 ms.")]
    [InlineData(0.4, 0.5, 0, "coil", "Must be finite and greater than zero; it was 0 Ω.")]
    public void Constructor_BadValue_Refuses(double smallest, double closing, double ohms, string name, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(name, words, () => Make("i", smallest, closing, ohms));

    [Fact]
    public void Constructor_NullOrBlank_SaysWhich()
    {
        Duration one = Duration.FromMilliseconds(1);
        ElectricResistance coil = ElectricResistance.FromOhms(12);
        ShortPulseCorrection none = ShortPulseCorrection.None;

        Words.Refused<ArgumentException>("name", () => Make(" ", 0.4, 0.5, 12));
        Assert.Throws<ArgumentNullException>(
            "rating",
            () => new Injector("i", null!, TestInjector.DeadTime, none, one, one, coil)
        );
        Assert.Throws<ArgumentNullException>(
            "deadTime",
            () => new Injector("i", TestInjector.Rating, null!, none, one, one, coil)
        );
        Assert.Throws<ArgumentNullException>(
            "correction",
            () => new Injector("i", TestInjector.Rating, TestInjector.DeadTime, null!, one, one, coil)
        );
    }

    [Fact]
    public void With_OneThingChanged_KeepsTheRest()
    {
        Injector before = Linear();
        Injector after = before.WithDeadTime("other", TestInjector.DeadTime).WithRating("another", TestInjector.Rating);

        Assert.Equal("another", after.Name);
        Assert.Same(before.Correction, after.Correction);
        Assert.Equal(before.ClosingTime.Seconds, after.ClosingTime.Seconds);
        Assert.Equal(before.SmallestRepeatableWidth.Seconds, after.SmallestRepeatableWidth.Seconds);
        Assert.Equal(before.Coil.Ohms, after.Coil.Ohms);
        Close.Within(1e-14, 4, after.StaticMassFlow(ThreeBar, Heptane).GramsPerSecond);
    }

    private static Injector Linear() => TestInjector.With(ShortPulseCorrection.None, 0.4, 0.9);

    private static Injector Make(string name, double smallest, double closing, double ohms) =>
        new(
            name,
            TestInjector.Rating,
            TestInjector.DeadTime,
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(smallest),
            Duration.FromMilliseconds(closing),
            ElectricResistance.FromOhms(ohms)
        );

    private static Injector.PulseResult Deliver(Injector injector, double width, double period) =>
        injector.Deliver(
            Duration.FromMilliseconds(width),
            Duration.FromMilliseconds(period),
            ThreeBar,
            Heptane,
            TwelveVolts
        );

    private static Injector.PulseResult WidthFor(Injector injector, double milligrams, double period) =>
        injector.WidthFor(
            Mass.FromMilligrams(milligrams),
            Duration.FromMilliseconds(period),
            ThreeBar,
            Heptane,
            TwelveVolts
        );
}
