using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>An ethanol fuel told by its class: the most that the class allows is reckoned with.</summary>
public sealed class E85ClassTests
{
    private const double Psi = 6894.757293168;

    private static readonly Temperature At = Temperature.FromDegreesFahrenheit(100);

    // Table 1: at most 9, 9.5, 12 and 15 psi at 37.8 °C.
    [Theory]
    [InlineData(1, 9.0)]
    [InlineData(2, 9.5)]
    [InlineData(3, 12.0)]
    [InlineData(4, 15.0)]
    [Trait("Source", "ASTM-D5798")]
    public void VaporPressureAt_OfAClass_IsTheMostThatItAllows(int number, double psi)
    {
        Fuel sold = Sold(70, number);

        Close.Within(1e-6, psi * Psi, sold.VaporPressureAt(At).AboveVacuum.Pascals);
        Assert.Equal(number, sold.EthanolClass!.Number);
        Assert.Contains(sold.Estimates, e => e.Contains("class", StringComparison.Ordinal));
    }

    // One factor at every temperature, and density and stoichiometry stay those of the blend.
    [Fact]
    public void VaporPressureAt_OtherTemperatures_KeepsTheCurveOfTheBlend()
    {
        Fuel mixed = StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(70));
        Fuel sold = Sold(70, 3);
        double factor = 12 * Psi / mixed.VaporPressureAt(At).AboveVacuum.Pascals;
        Temperature hot = Temperature.FromDegreesCelsius(60);

        Close.Within(
            1e-9,
            factor * mixed.VaporPressureAt(hot).AboveVacuum.Pascals,
            sold.VaporPressureAt(hot).AboveVacuum.Pascals
        );
        Assert.Equal(mixed.DensityAt(hot).InSi(), sold.DensityAt(hot).InSi());
        Assert.Equal(mixed.StoichiometricRatio, sold.StoichiometricRatio);
    }

    // A gasoline of 15 psi with 51 % of ethanol is beyond class 1: what is mixed is never made less volatile by its label.
    [Fact]
    public void VaporPressureAt_OfAMixBeyondItsClass_StaysAsMixed()
    {
        Fuel winter = StandardFuels.Gasoline(
            Density.FromKilogramsPerCubicMeter(740),
            new(Pressure.FromPoundsForcePerSquareInch(15))
        );
        Fuel mixed = StandardFuels.E85(winter, Ratio.FromPercent(51));
        Fuel sold = StandardFuels.E85(winter, Ratio.FromPercent(51), E85Class.FromNumber(1));

        Assert.True(mixed.VaporPressureAt(At).AboveVacuum.Pascals > 9 * Psi);
        Assert.Equal(mixed.VaporPressureAt(At), sold.VaporPressureAt(At));
    }

    [Fact]
    public void Solve_WithAGasolineThatItsClassDoesNotAllow_SaysSo()
    {
        OperatingPoint point = VaporPoint();
        SystemState fits = Workshop.Four().WithFuel(Sold(70, 1)).Solve(point);
        SystemState odd = Workshop.Four().WithFuel(Sold(70, 4)).Solve(point);

        Assert.DoesNotContain(fits.Findings, f => f.Code == FindingCode.FuelOutsideClass);
        Finding said = Assert.Single(odd.Findings, f => f.Code == FindingCode.FuelOutsideClass);
        Assert.Equal(Severity.Note, said.Severity);
        Assert.Equal("ASTM-D5798", said.LimitSource.Key);
    }

    // The source of a vapor pressure stands beside the margin that rests on it, of a blend, too.
    [Fact]
    public void Solve_NearBoiling_SaysWhereTheVaporPressureComesFrom()
    {
        Fuel sold = Sold(70, 4);
        Finding[] said =
        [
            .. Workshop
                .Four()
                .WithFuel(sold)
                .Solve(VaporPoint())
                .Findings.Where(f => f.Code == FindingCode.VaporMarginLow),
        ];

        Assert.NotEmpty(said);
        foreach (DataSource source in sold.VaporPressure.Sources)
        {
            Assert.All(said, f => Assert.Contains(source.Key, f.Value, StringComparison.Ordinal));
        }

        Assert.All(said, f => Assert.Contains("an estimate", f.Value, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    public void FromNumber_WithoutSuchAClass_Refuses(int number) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(number), () => E85Class.FromNumber(number));

    private static Fuel Sold(double percent, int number) =>
        StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(percent), E85Class.FromNumber(number));

    private static OperatingPoint VaporPoint() =>
        new(
            "hot fuel",
            Workshop.Rpm(3000),
            new IntakeAir(Workshop.Kilopascals(60), Workshop.Kilopascals(100), Workshop.Celsius(40)),
            Workshop.Celsius(45),
            ElectricPotential.FromVolts(13.5),
            FuelCommand.HoldLambda(Lambda.FromRatio(1))
        );
}
