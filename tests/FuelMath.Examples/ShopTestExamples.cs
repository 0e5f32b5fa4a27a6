using FuelMath.ShopTests;
using FuelMath.Systems;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class ShopTestExamples
{
    [Fact]
    public void Bucket()
    {
        FuelSystem system = SystemExamples.Build();
        OperatingPoint keyOn = SystemExamples.Standing();

        #region Bucket
        BucketTest bucket = BucketTest.Of(system, keyOn, Duration.FromSeconds(30));
        Volume expected = bucket.ExpectedVolume; // 1.62 L, at 11.8 V
        ShopComparison comparison = bucket.Compare(Volume.FromLiters(1.4), tolerance: Ratio.FromPercent(5));
        foreach (ShopCause cause in comparison.Causes)
        {
            Console.WriteLine(cause); // "Too little voltage at the pump: 10.77 V instead of 11.81 V. ..."
        }
        #endregion

        Assert.Equal(1.62, expected.Liters, 0.005);
        Assert.Equal(5, comparison.Causes.Length);
        Assert.StartsWith(
            "Too little voltage at the pump: 10.77 V instead of 11.81 V. ",
            comparison.Causes[0].ToString()
        );
    }
}
