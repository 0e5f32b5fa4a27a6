using UnitsNet;

namespace FuelMath.Tests.Hoses;

public sealed class HoseStandardTests
{
    /// <summary>Nominal inside diameters in millimeters, printed to 0.01 mm.</summary>
    [Theory]
    [Trait("Source", "SAE-J517")]
    [InlineData("SAE 100R5", 4, 4.76)]
    [InlineData("SAE 100R5", 5, 6.35)]
    [InlineData("SAE 100R5", 6, 7.94)]
    [InlineData("SAE 100R5", 8, 10.32)]
    [InlineData("SAE 100R5", 10, 12.70)]
    [InlineData("SAE 100R5", 12, 15.88)]
    [InlineData("SAE 100R5", 16, 22.22)]
    [InlineData("SAE 100R5", 20, 28.57)]
    [InlineData("SAE 100R5", 24, 34.92)]
    [InlineData("SAE 100R5", 32, 46.04)]
    [InlineData("SAE 100R1", 3, 4.76)]
    [InlineData("SAE 100R1", 4, 6.35)]
    [InlineData("SAE 100R1", 5, 7.94)]
    [InlineData("SAE 100R1", 6, 9.52)]
    [InlineData("SAE 100R1", 8, 12.70)]
    [InlineData("SAE 100R1", 10, 15.88)]
    [InlineData("SAE 100R1", 12, 19.05)]
    [InlineData("SAE 100R1", 16, 25.40)]
    [InlineData("SAE 100R1", 20, 31.75)]
    [InlineData("SAE 100R1", 24, 38.10)]
    [InlineData("SAE 100R1", 32, 50.80)]
    [InlineData("SAE 100R14 sized by tube", 4, 4.76)]
    [InlineData("SAE 100R14 sized by tube", 8, 10.32)]
    [InlineData("SAE 100R14 sized by tube", 16, 22.22)]
    [InlineData("SAE 100R14 sized by bore", 4, 6.35)]
    [InlineData("SAE 100R14 sized by bore", 8, 12.70)]
    [InlineData("SAE 100R14 sized by bore", 16, 25.40)]
    public void BoreOf_DashSize_GivesTheNominalBore(string standard, int dash, double millimeters) =>
        // Half of the last digit and a rounding of exact halves, such as 9.525 and 22.225, either way.
        Close.WithinOf(1, 0.0051, millimeters, Named(standard).BoreOf(dash).Millimeters);

    /// <summary>
    /// Nominal diameters DN of metric practice, in millimeters. They name the hose by whole numbers near its bore, so the
    /// tolerance is 0.8 mm, the widest gap in the published table (28.57 mm is DN 28, 4.76 mm is DN 5).
    /// </summary>
    [Theory]
    [Trait("Source", "SAE-J517")]
    [InlineData(4, 5)]
    [InlineData(5, 6)]
    [InlineData(6, 8)]
    [InlineData(8, 10)]
    [InlineData(10, 12)]
    [InlineData(12, 16)]
    [InlineData(16, 22)]
    [InlineData(20, 28)]
    [InlineData(24, 35)]
    [InlineData(32, 46)]
    public void BoreOf_100R5_LiesNearItsNominalDiameter(int dash, double nominal) =>
        Close.WithinOf(1, 0.8, nominal, HoseStandard.Sae100R5.BoreOf(dash).Millimeters);

    [Fact]
    public void BoreOf_LargerDash_IsWider() =>
        Assert.All(
            HoseStandard.All,
            s =>
                Assert.Equal(s.Dashes.Select(d => s.BoreOf(d).Meters).Order(), s.Dashes.Select(d => s.BoreOf(d).Meters))
        );

    /// <summary>A dash counts sixteenths of the tube outside, so the bore of a hose sized by tube is always smaller.</summary>
    [Fact]
    public void BoreOf_SizedByTube_IsNarrowerThanTheTube() =>
        Assert.All(
            HoseStandard.Sae100R5.Dashes,
            d => Assert.True(HoseStandard.Sae100R5.BoreOf(d) < Length.FromInches(d / 16.0))
        );

    [Theory]
    [InlineData(7)]
    [InlineData(0)]
    [InlineData(-8)]
    public void BoreOf_SizeThatIsNotThere_ListsThoseThatAre(int dash) =>
        Words.Refused<ArgumentOutOfRangeException>(
            nameof(dash),
            $"100, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, {dash}",
            () => HoseStandard.Sae100R5.BoreOf(dash)
        );

    private static HoseStandard Named(string name) => HoseStandard.All.Single(s => s.Name == name);
}
