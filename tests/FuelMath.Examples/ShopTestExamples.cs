using FuelMath.ShopTests;
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
        Volume expected = bucket.ExpectedVolume; // 1.61 L, at 11.8 V
        ShopComparison alone = bucket.Compare(Volume.FromLiters(1.4), tolerance: Ratio.FromPercent(5));
        ShopComparison.Outcome verdict = alone.Verdict; // CannotTell: a bucket alone tells nothing apart

        ShopComparison.AddedReadings added = ShopComparison
            .AddedReadings.None.WithPumpVoltage(
                ElectricPotential.FromVolts(10.8),
                tolerance: ElectricPotential.FromVolts(0.1)
            )
            .WithPressure("rail", bucket.State.PressureAt("rail"), toleranceDifference: Pressure.FromKilopascals(5));
        ShopComparison all = bucket.Compare(Volume.FromLiters(1.4), Ratio.FromPercent(5), added);
        Console.WriteLine(all.Causes[0]); // "Too little voltage at the pump: 10.81 V instead of 11.8 V. ..."
        #endregion

        Assert.Equal(1.61, expected.Liters, 0.005);
        Assert.Equal(ShopComparison.Outcome.CannotTell, verdict);
        Assert.Equal(ShopComparison.Outcome.OneCause, all.Verdict);
        Assert.StartsWith("Too little voltage at the pump: 10.81 V instead of 11.8", all.Causes[0].ToString());
    }
}
