using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class SlotComparisonTests
{
    /// <summary>Three injectors in three slots; slot 2 reads 3 % high and slot 3 2 % low: found again, apart from scatter.</summary>
    [Fact]
    public void Compare_BiasedSlots_IsToldApart()
    {
        SlotComparison found = Of(Square([1, 1.03, 0.98], 1e-4));
        double mean = Math.Cbrt(1.03 * 0.98);

        Close.Within(3e-4, 1.03 / mean, found.SlotFactor("2").DecimalFractions);
        Close.Within(3e-4, 0.98 / mean, found.SlotFactor("3").DecimalFractions);
        Close.Within(3e-4, 1000 * mean, found.InjectorFlow("A").CubicCentimetersPerMinute);
        Close.Within(3e-4, 0.9, found.InjectorFlow("C") / found.InjectorFlow("A"));
        Assert.False(found.AreSlotsAlike);
        Assert.Equal("3 injectors in 3 slots: not alike", found.ToString());
        Finding finding = Assert.Single(found.Findings);
        Assert.Equal("Slots of the bench differ: '2' reads most, '3' least", finding.What);
        // 1.03 over 0.98, to the scatter.
        Assert.Matches("^5[.](0[89]|1|11|12) %, probability 0", finding.Value);
        Assert.Equal("probability at least 0.05", finding.Limit);
        Assert.True(found.InjectorTest.PValue.DecimalFractions < 1e-4);
    }

    [Fact]
    public void Compare_EqualSlots_FindsNothing()
    {
        SlotComparison found = Of(Square([1, 1, 1], 0.01));

        Assert.True(found.AreSlotsAlike);
        Assert.Equal("3 injectors in 3 slots: alike", found.ToString());
        Assert.Empty(found.Findings);
        Assert.True(found.Repeatability.DecimalFractions is > 0.001 and < 0.02);
    }

    /// <summary>
    /// Two injectors in two slots, by hand: with logs a, b, c, d the slot effect is half of half the sum of differences, the
    /// one residual is (a - b - c + d)/4 in each, s2 = 4 r2, and the standard error of an effect is s / 2.
    /// </summary>
    [Fact]
    public void Compare_TwoByTwo_IsAsByHand()
    {
        (double a, double b, double c, double d) = (Math.Log(1000), Math.Log(1020), Math.Log(900), Math.Log(909));
        SlotComparison found = Of([("A", "1", 1000), ("A", "2", 1020), ("C", "1", 900), ("C", "2", 909)]);
        double effect = (b - a + d - c) / 4;
        double scatter = Math.Abs(a - b - c + d) / 2;

        Close.Within(1e-12, Math.Exp(effect), found.SlotFactor("2").DecimalFractions);
        Close.Within(1e-9, scatter, found.Repeatability.DecimalFractions);
        Close.Within(1e-9, Math.Exp(effect) * scatter / 2, found.SlotFactorStandardError("2").DecimalFractions);
        Close.Within(1e-9, effect * effect * 4 / (scatter * scatter), found.SlotTest.F);
    }

    /// <summary>Order of readings plays no part.</summary>
    [Property]
    public Property Compare_Permuted_IsTheSame() =>
        Prop.ForAll(
            Gen.Shuffle(Square([1, 1.03, 0.98], 0.01)).ToArbitrary(),
            order =>
            {
                (SlotComparison one, SlotComparison other) = (Of(Square([1, 1.03, 0.98], 0.01)), Of(order));
                return one.Slots.All(s =>
                        Math.Abs(one.SlotFactor(s).DecimalFractions - other.SlotFactor(s).DecimalFractions) < 1e-12
                    )
                    && Math.Abs(one.SlotTest.PValue.DecimalFractions - other.SlotTest.PValue.DecimalFractions) < 1e-9;
            }
        );

    [Fact]
    public void Compare_SlotsThatShareNothing_AreRefusedByName() =>
        Words.Refused<ArgumentException>(
            "columns",
            "2, 1",
            () => Of([("A", "1", 1000), ("A", "1", 1001), ("B", "2", 900), ("B", "2", 901)])
        );

    [Fact]
    public void Compare_JustEnough_IsRefused() =>
        Assert.Contains(
            "There are just as many readings as effects",
            Assert.Throws<NoSolutionException>(() => Of([("A", "1", 1000), ("A", "2", 1020), ("B", "1", 900)])).Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void SlotFactor_NoSuchSlot_IsRefused() =>
        Words.Refused<ArgumentException>("slot", "1, 2, 3, '9'", () => Of(Square([1, 1, 1], 0.01)).SlotFactor("9"));

    /// <summary>Injectors A, B, C flow 1000, 950, 900; a pattern of scatter that no row or column has.</summary>
    private static (string, string, double)[] Square(double[] slots, double scatter) =>
        [
            .. from i in Enumerable.Range(0, 3)
            from j in Enumerable.Range(0, 3)
            select (
                $"{(char)('A' + i)}",
                $"{j + 1}",
                (1000 - (50 * i)) * slots[j] * (1 + (scatter * (((i + j) % 3) - 1) * (i == 1 ? 1.1 : 1)))
            ),
        ];

    private static SlotComparison Of((string Injector, string Slot, double Flow)[] readings) =>
        new(
            readings.Select(r => new SlotComparison.SlotReading(r.Injector, r.Slot, Read(r.Flow))),
            Read(1000).ToRating(),
            TestBench.NinetyFive
        );

    private static StaticFlowReading Read(double cubicCentimeters) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(0.1)),
            Duration.FromMinutes(1),
            TestBench.Conditions
        );
}
