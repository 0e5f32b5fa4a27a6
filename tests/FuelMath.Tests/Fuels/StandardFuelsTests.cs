using FuelMath.Fuels;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

public sealed class StandardFuelsTests
{
    public static TheoryData<string> Names => [.. All.Keys];

    private static Dictionary<string, Fuel> All { get; } =
        new[]
        {
            StandardFuels.PumpGasoline,
            StandardFuels.Ethanol,
            StandardFuels.Methanol,
            StandardFuels.IsoOctane,
            StandardFuels.NHeptane,
            StandardFuels.Toluene,
            StandardFuels.TwoStrokeOil,
        }.ToDictionary(f => f.Name);

    internal static Fuel Named(string name) => All[name];

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryFuel_NamesItsSourcesAndCautions(string name)
    {
        Assert.NotEmpty(All[name].Sources);
        Assert.NotEmpty(All[name].Cautions);
    }

    // Where good sources differ by 0.4 % in density and 3 % in viscosity: the tolerance is their spread.
    [Theory]
    [InlineData("ethanol", 0, 806.243, 0.004)]
    [InlineData("ethanol", 20, 790.184, 0.004)]
    [InlineData("ethanol", 50, 763.929, 0.004)]
    [InlineData("n-heptane", 0, 700.675, 0.004)]
    [InlineData("n-heptane", 20, 683.818, 0.004)]
    [InlineData("n-heptane", 50, 658.016, 0.004)]
    [InlineData("toluene", 15, 871.977, 0.004)]
    [InlineData("toluene", 40, 848.414, 0.004)]
    [InlineData("methanol", 15, 796.802, 0.004)]
    [InlineData("methanol", 40, 772.743, 0.004)]
    [Trait("Source", "VDI-2010")]
    public void Density_AgainstTheOtherHandbook_Agrees(string name, double celsius, double density, double relative) =>
        Close.Within(
            relative,
            density,
            All[name].DensityAt(Temperature.FromDegreesCelsius(celsius)).KilogramsPerCubicMeter
        );
}
