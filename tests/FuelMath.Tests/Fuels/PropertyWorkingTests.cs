using FuelMath.Formulas;

namespace FuelMath.Tests.Fuels;

/// <summary>Each property shows its working, and the working ends in the number that the property gives.</summary>
public sealed class PropertyWorkingTests
{
    public static TheoryData<string> Names => [.. Fuels.Keys];

    private static Dictionary<string, Fuel> Fuels { get; } =
        new Fuel[]
        {
            StandardFuels.PumpGasoline,
            StandardFuels.Ethanol,
            StandardFuels.Methanol,
            StandardFuels.IsoOctane,
            StandardFuels.NHeptane,
            StandardFuels.Toluene,
            StandardFuels.TwoStrokeOil,
            FuelBlend.ByMass("blend", TestFuels.Two(StandardFuels.Ethanol, 30, StandardFuels.PumpGasoline)),
        }.ToDictionary(f => f.Name);

    [Theory]
    [MemberData(nameof(Names))]
    public void WorkingAt_EveryProperty_EndsInItsValue(string name)
    {
        Fuel fuel = Fuels[name];

        Assert.Equal(
            fuel.DensityAt(Celsius.Of(30)).KilogramsPerCubicMeter,
            fuel.Density.WorkingAt(Celsius.Of(30)).Value
        );
        Assert.Equal(fuel.ViscosityAt(Celsius.Of(30)).PascalSeconds, fuel.Viscosity.WorkingAt(Celsius.Of(30)).Value);
        if (fuel.VaporPressure.IsKnown)
        {
            Assert.Equal(
                fuel.VaporPressureAt(Celsius.Of(30)).AboveVacuum.Pascals,
                fuel.VaporPressure.WorkingAt(Celsius.Of(30)).Value
            );
        }

        if (fuel.HeatCapacity.IsKnown)
        {
            Assert.Equal(
                fuel.HeatCapacity.At(Celsius.Of(30)).JoulesPerKilogramKelvin,
                fuel.HeatCapacity.WorkingAt(Celsius.Of(30)).Value
            );
        }
    }

    [Fact]
    public void WorkingAt_DensityOfGasoline_ShowsFormulaNumbersResultAndSource()
    {
        Working working = StandardFuels.PumpGasoline.Density.WorkingAt(Celsius.Of(25));

        string text = working.ToString();
        Assert.Contains("T = 298.15 K", text, StringComparison.Ordinal);
        Assert.Contains("VCF = exp(", text, StringComparison.Ordinal);
        Assert.Contains("rho = 745 * VCF = 745 * 0.98782", text, StringComparison.Ordinal);
        Assert.Contains("[ASTM-D1250]", text, StringComparison.Ordinal);
    }

    [Fact]
    public void StoichiometricWorkingWith_ShowsTheOxygenDemand()
    {
        Fuel ethanol = StandardFuels.Ethanol;

        Working working = ethanol.StoichiometricWorkingWith(AirModel.StandardDry);

        Assert.Equal(ethanol.StoichiometricRatio.ToMassRatio(), working.Value);
        Assert.Contains("o2 = ", working.ToString(), StringComparison.Ordinal);
        Assert.Contains("AFRst = o2 / wO2", working.ToString(), StringComparison.Ordinal);
        Assert.Contains("[Heywood-1988] section 3.4", working.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void WorkingAt_OutsideTheRange_Refuses() =>
        Assert.Throws<OutsideTableException>(() => StandardFuels.PumpGasoline.Density.WorkingAt(Celsius.Of(120)));
}
