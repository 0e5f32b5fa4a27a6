using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>Stoichiometric ratios, each with the air model of its source.</summary>
public sealed class StoichiometryTests
{
    // Table D.4, from memory, printed to two decimals (gasoline to one): half a unit of the last digit.
    [Theory]
    [InlineData(8, 18, 0, 15.13, 0.005)]
    [InlineData(7, 8, 0, 13.50, 0.005)]
    [InlineData(2, 6, 1, 9.00, 0.005)]
    [InlineData(1, 4, 1, 6.47, 0.005)]
    [InlineData(3, 8, 0, 15.67, 0.005)]
    [InlineData(1, 4, 0, 17.23, 0.005)]
    [Trait("Source", "Heywood-1988")]
    public void StoichiometricRatio_LumpedNitrogen_IsThePrintedOne(int c, int h, int o, double printed, double half) =>
        Assert.Equal(printed, Ratio(ElementalComposition.FromFormula(c, h, o, 0, 0), AirModel.LumpedNitrogen), half);

    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void StoichiometricRatio_Gasoline_IsThePrintedOne() =>
        Assert.Equal(
            14.6,
            StandardFuels.PumpGasoline.StoichiometricRatioWith(AirModel.LumpedNitrogen).ToMassRatio(),
            0.05
        );

    // Worked by hand with O2 + 3.76 N2 in a thread of exercises; two decimals, molar masses rounded to whole numbers,
    // which moves the answer by up to 0.1 %.
    [Theory]
    [InlineData(8, 18, 15.03)]
    [InlineData(7, 16, 15.08)]
    [Trait("Source", "Stoichiometry-exercises")]
    public void StoichiometricRatio_OxygenAndNitrogen_IsTheWorkedOne(int c, int h, double worked) =>
        Assert.Equal(worked, Ratio(ElementalComposition.FromFormula(c, h, 0, 0, 0), AirModel.OxygenAndNitrogen), 0.015);

    // The table prints ethanol 9.0: half a unit of the last digit.
    [Fact]
    [Trait("Source", "DOE-AFDC")]
    public void StoichiometricRatio_Ethanol_IsThePrintedOne() =>
        Assert.Equal(9.0, StandardFuels.Ethanol.StoichiometricRatio.ToMassRatio(), 0.05);

    // Calculated there for an average gasoline, 14.7; ours is for CH1.87, and gasolines differ by 2 %.
    [Fact]
    [Trait("Source", "DOE-AFDC")]
    public void StoichiometricRatio_Gasoline_IsNearThePrintedOne() =>
        Close.Within(0.02, 14.7, StandardFuels.PumpGasoline.StoichiometricRatio.ToMassRatio());

    // 20.9476 % oxygen by volume at 28.9644 g/mol, evaluated apart from this code with the same atomic weights, to the
    // four decimals of that evaluation.
    [Theory]
    [InlineData(8, 18, 0, 0, 15.1305)]
    [InlineData(7, 16, 0, 0, 15.1787)]
    [InlineData(1, 4, 1, 0, 6.4729)]
    [InlineData(1, 3, 2, 1, 1.6990)]
    [Trait("Source", "ISO-2533")]
    public void StoichiometricRatio_StandardDryAir_IsTheSeparateEvaluation(int c, int h, int o, int n, double ratio) =>
        Assert.Equal(ratio, Ratio(ElementalComposition.FromFormula(c, h, o, n, 0), AirModel.StandardDry), 2e-4);

    // 23.2 % oxygen by mass is the handbook figure for dry air; each model is within half a percent of it.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void OxygenMassFraction_OfEveryModel_IsAboutTheUsualFigure()
    {
        AirModel[] models = [AirModel.StandardDry, AirModel.LumpedNitrogen, AirModel.OxygenAndNitrogen];

        Assert.All(models, m => Assert.Equal(23.2, m.OxygenMassFraction.Percent, 0.12));
    }

    // Sulfur burns to SO2: 31.998 of oxygen for 32.06 of sulfur.
    [Fact]
    [Trait("Source", "Definition")]
    public void StoichiometricRatio_OneMorePercentOfSulfur_TakesItsOxygen()
    {
        var without = new ElementalComposition(Percent(86), Percent(14), Percent(0), Percent(0), Percent(0));
        var with = new ElementalComposition(Percent(85), Percent(14), Percent(0), Percent(0), Percent(1));
        var oxygen = new AirModel("oxygen", Percent(100), new DataSource("Definition", "pure oxygen"));

        double difference = Ratio(with, oxygen) - Ratio(without, oxygen);

        Assert.Equal((0.01 * 31.998 / 32.06) - (0.01 * 31.998 / 12.011), difference, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void AirModel_WithoutOxygen_Refuses(double percent)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new AirModel("nothing", Percent(percent), new DataSource("Definition", "none"))
        );

        Words.Says($"{percent} %", error);
    }

    [Fact]
    public void AirModel_MoreThanAllOxygen_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new AirModel("too much", Percent(120), new DataSource("Definition", "none"))
        );

        Words.Says("0 %, 100 %, 120 %", error);
    }

    internal static double Ratio(ElementalComposition composition, AirModel air) =>
        new Fuel(
            "test",
            composition,
            StandardFuels.IsoOctane.Density,
            StandardFuels.IsoOctane.Viscosity,
            LiquidVaporPressure.Unknown("not asked for."),
            null,
            new DataSource("Definition", "composition"),
            [],
            []
        )
            .StoichiometricRatioWith(air)
            .ToMassRatio();

    private static Ratio Percent(double value) => UnitsNet.Ratio.FromPercent(value);
}
