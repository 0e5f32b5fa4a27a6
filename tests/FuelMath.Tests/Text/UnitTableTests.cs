namespace FuelMath.Tests.Text;

public sealed class UnitTableTests
{
    // Printed factors of GNU Units and their exact definitions; the tolerance is that of the digits printed.
    [Theory]
    [Trait("Source", "GNU-units")]
    [InlineData("volume", "US gal", "L", 3.785411784, 1e-15)]
    [InlineData("volume", "imperial gal", "L", 4.54609, 1e-15)]
    [InlineData("volume flow", "US gal/min", "L/min", 3.785411784, 1e-15)]
    [InlineData("mass flow", "lb/h", "g/s", 0.125997880555556, 4e-15)]
    [InlineData("mass flow", "lb/h", "kg/h", 0.45359237, 1e-15)]
    [InlineData("force", "lbf", "N", 4.4482216152605, 1e-15)]
    [InlineData("pressure difference", "bar", "Pa", 100000, 0)]
    [InlineData("pressure difference", "psi", "Pa", 6894.757293168, 1e-13)]
    [InlineData("gauge pressure", "psi gauge", "Pa gauge", 6894.757293168, 1e-13)]
    [InlineData("length", "in", "mm", 25.4, 1e-15)]
    [InlineData("length", "ft", "m", 0.3048, 1e-15)]
    [InlineData("power", "hp", "W", 745.69987158227, 1e-14)]
    [InlineData("power", "metric hp", "W", 735.49875, 1e-15)]
    [InlineData("dynamic viscosity", "cP", "Pa s", 0.001, 1e-15)]
    [InlineData("kinematic viscosity", "cSt", "m2/s", 1e-6, 1e-15)]
    [InlineData("specific energy", "Btu/lb", "kJ/kg", 2.326, 1e-15)]
    [InlineData("area", "in2", "mm2", 645.16, 1e-15)]
    [InlineData("brake specific fuel consumption", "lb/(hp h)", "g/kWh", 608.277388, 1e-9)]
    [InlineData("speed", "km/h", "m/s", 0.277777777777778, 1e-14)]
    [InlineData("rotational speed", "rpm", "rad/s", 0.104719755119660, 1e-14)]
    [InlineData("temperature", "degC", "K", 274.15, 1e-15)] // One degree Celsius.
    [InlineData("temperature", "degF", "K", 255.927777777778, 1e-14)] // One degree Fahrenheit: 460.67 * 5 / 9.
    public void OneOfAUnit_InAnother_IsTheDefinedFactor(
        string kind,
        string from,
        string to,
        double factor,
        double tolerance
    ) => Close.Within(tolerance, factor, Convert(kind, from, to, 1));

    // conversions of fluids: 1 lb/h of a liquid of 0.72 g/cm3 is 10.49982 cm3/min.
    [Fact]
    [Trait("Source", "GNU-units")]
    public void PoundPerHour_AtADensity_IsTheVolumeFlowInUse()
    {
        double density = Convert("density", "g/cm3", "kg/m3", 0.72);
        double massFlow = Convert("mass flow", "lb/h", "kg/s", 1);
        double volumeFlow = UnitTable.VolumeFlow.Find("cm3/min")!.FromSi(massFlow / density);
        Close.Within(1e-6, 10.49982, volumeFlow);
    }

    [Fact]
    public void EveryKind_StartsWithTheSiUnit() => Assert.All(UnitTable.All, k => Assert.True(k.SiUnit.IsSi, k.Name));

    [Fact]
    public void NoKind_HasASymbolTwice() =>
        Assert.All(
            UnitTable.All,
            k => Assert.All(k.Units, u => Assert.Same(u, Assert.Single(k.Units, v => v.IsWritten(u.Symbol))))
        );

    [Fact]
    public void EveryKind_HasANameOfItsOwn() =>
        Assert.Equal(UnitTable.All.Length, UnitTable.All.Select(k => k.Name).Distinct().Count());

    [Fact]
    public void EveryKind_IsListed() =>
        Assert.Equal(
            typeof(UnitTable)
                .GetProperties(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.NonPublic)
                .Count(p => p.PropertyType == typeof(UnitKind)),
            UnitTable.All.Length
        );

    private static double Convert(string kind, string from, string to, double number)
    {
        UnitKind found = UnitTable.All.Single(k => k.Name == kind);
        return found.Find(to)!.FromSi(found.Find(from)!.ToSi(number));
    }
}
