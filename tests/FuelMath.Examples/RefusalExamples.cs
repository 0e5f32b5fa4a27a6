using UnitsNet;

namespace FuelMath.Examples;

/// <summary>Refusals that a program reads. The data are invented.</summary>
public sealed class RefusalExamples
{
    [Fact]
    public void Read()
    {
        #region Refusal
        var hose = new Hose(
            "feed",
            Length.FromMeters(3),
            Length.FromMillimeters(8),
            Length.FromMillimeters(0.0015),
            Ratio.FromDecimalFractions(1.5),
            new DataSource("Workshop-class", "example")
        );
        Refusal? refusal = null;

        try
        {
            _ = hose.LossAt(
                VolumeFlow.FromLitersPerHour(200),
                Density.FromKilogramsPerCubicMeter(-740),
                DynamicViscosity.FromMillipascalSeconds(0.5)
            );
        }
        catch (ArgumentException problem)
        {
            refusal = Refusal.Of(problem); // null where it is none of this library's
            string own = $"{refusal?.Part}: {refusal?.What} > {refusal?.Minimum} {refusal?.Unit}"; // feed: density > 0 kg/m³
            Console.WriteLine(own);
        }
        #endregion

        Assert.Equal("feed", refusal!.Part);
        Assert.Equal("density", refusal.What);
        Assert.Equal(-740, refusal.Value);
        Assert.Equal(0, refusal.Minimum);
        Assert.True(refusal.IsMinimumExcluded);
        Assert.Equal("kg/m³", refusal.Unit);
    }

    [Fact]
    public void Own()
    {
        #region OwnRefusal
        static int Cylinders(int cylinders) =>
            cylinders is >= 1 and <= 12
                ? cylinders
                : throw new RefusedValueException(
                    RefusalCode.OutOfRange,
                    FormattableString.Invariant($"Must be from 1 to 12; it was {cylinders}."),
                    nameof(cylinders),
                    cylinders,
                    1,
                    12
                );

        int four = Cylinders(4); // 4
        #endregion

        Assert.Equal(4, four);
        Refusal refusal = Refusal.Of(Assert.Throws<RefusedValueException>(() => Cylinders(13)))!;
        Assert.Equal(("cylinders", 13, 12), (refusal.What, refusal.Value, refusal.Maximum));
    }
}
