using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class ShopTestExamples
{
    [Fact]
    public void Bucket()
    {
        FuelSystem system = BundledCar.System;
        OperatingPoint keyOn = BundledCar.KeyOn;

        #region Bucket
        BucketTest bucket = BucketTest.Of(system, keyOn, Duration.FromSeconds(30));
        Volume expected = bucket.ExpectedVolume; // 1.68 L, at 11.6 V
        ShopComparison alone = bucket.Compare(Volume.FromLiters(1.5), tolerance: Ratio.FromPercent(5));
        ShopComparison.Outcome verdict = alone.Verdict; // CannotTell: a bucket alone tells nothing apart

        ShopComparison.AddedReadings added = ShopComparison
            .AddedReadings.None.WithPumpVoltage(
                ElectricPotential.FromVolts(10.8),
                tolerance: ElectricPotential.FromVolts(0.1)
            )
            .WithPressure(
                "primary rail",
                bucket.State.PressureAt("primary rail"),
                toleranceDifference: Pressure.FromKilopascals(5)
            );
        ShopComparison all = bucket.Compare(Volume.FromLiters(1.5), Ratio.FromPercent(5), added);
        ShopComparison.Outcome together = all.Verdict; // OneCause
        Console.WriteLine(all.Causes[0]); // "Too little voltage at the pump: ... instead of 11.61 V. ..."
        #endregion

        // By hand: 216 and 110 L/h at 12 V, 8 V and 300 kPa make 205 L/h at 11.6 V, less 2 L/h for the losses.
        Assert.Equal(203 * 30 / 3600.0, expected.Liters, 0.02);
        Assert.Equal(ShopComparison.Outcome.CannotTell, verdict);
        Assert.Equal(ShopComparison.Outcome.OneCause, together);
        Assert.StartsWith("Too little voltage at the pump: 10.", all.Causes[0].ToString());
    }
}
