using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fittings;

[Properties(Arbitrary = [typeof(FittingArbitraries)])]
public sealed class TeeTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);

    /// <summary>Examples 7-35 and 7-36: a tee and a wye, as the book prints them. It rounds its flows on the way, which moves the last digit.</summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(102.3, 90, 1135, 380, Tee.Path.CombiningBranch, -0.04026, 5e-4)]
    [InlineData(102.3, 90, 1135, 380, Tee.Path.CombiningRun, 0.3258, 5e-4)]
    [InlineData(146, 45, 1515, 950, Tee.Path.DividingBranch, 0.4640, 1e-4)]
    [InlineData(146, 45, 1515, 950, Tee.Path.DividingRun, -0.06809, 1e-4)]
    public void CoefficientAt_WorkedExamples_Agrees(
        double bore,
        double degrees,
        double run,
        double branch,
        Tee.Path path,
        double expected,
        double tolerance
    ) =>
        Close.WithinOf(
            1,
            tolerance,
            expected,
            new TeeMeasures(bore, 1, degrees, 0)
                .ToTee()
                .CoefficientAt(path, Ratio.FromDecimalFractions(branch / (run + branch)))
                .DecimalFractions
        );

    /// <summary>
    /// Flow through the branch alone of a full-size tee: 1.3 of the head times 1.3, where the same book's plain table
    /// has 60 times the factor of rough pipe (1.6 at 8 mm, by memory). They agree to a third.
    /// </summary>
    [Fact]
    [Trait("Source", "Common-practice")]
    public void CoefficientAt_AllIntoTheBranch_LiesNearThePlainTable() =>
        Assert.InRange(Full(90).CoefficientAt(Tee.Path.DividingBranch, One).DecimalFractions, 1.6 * 0.67, 1.6 * 1.34);

    /// <summary>Nothing in the branch: a run without loss.</summary>
    [Property]
    public void CoefficientAt_NothingInTheBranch_LeavesTheRunAlone(TeeMeasures tee)
    {
        Close.WithinOf(1, 1e-15, 0, tee.ToTee().CoefficientAt(Tee.Path.DividingRun, Ratio.Zero).DecimalFractions);
        Close.WithinOf(1, 1e-15, 0, tee.ToTee().CoefficientAt(Tee.Path.CombiningRun, Ratio.Zero).DecimalFractions);
    }

    /// <summary>The fitting of a leg loses, at the leg's flow, what the combined coefficient says at the combined flow.</summary>
    [Property]
    public void ToFitting_AtTheLegsFlow_LosesTheSame(TeeMeasures measures)
    {
        Tee tee = measures.ToTee();
        Ratio share = Ratio.FromDecimalFractions(measures.Share);
        VolumeFlow combined = VolumeFlow.FromLitersPerHour(300);
        double area = Math.PI / 4 * measures.BoreMillimeters * measures.BoreMillimeters * 1e-6;
        double head = 740 * Math.Pow(combined.CubicMetersPerSecond / area, 2) / 2;
        foreach (Tee.Path path in Enum.GetValues<Tee.Path>())
        {
            double leg = path is Tee.Path.DividingBranch or Tee.Path.CombiningBranch
                ? measures.Share
                : 1 - measures.Share;
            double k = tee.CoefficientAt(path, share).DecimalFractions;
            if (leg > 0 && k >= 0)
            {
                double loss = tee.ToFitting(path, share).LossAt(leg * combined, Petrol).Pascals;
                Close.WithinOf(head, 1e-9 * Math.Max(1, k), k * head, loss);
            }
        }
    }

    [Fact]
    public void Tee_BadMeasures_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "branchBore",
            "8 mm, 9.6 mm",
            () => new TeeMeasures(8, 1.2, 90, 0).ToTee()
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "branchAngle",
            "30 °, 90 °, 20 °",
            () => new TeeMeasures(8, 1, 20, 0).ToTee()
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "branchShare",
            "0, 1, 1.5",
            () => Full(90).CoefficientAt(Tee.Path.DividingRun, Ratio.FromDecimalFractions(1.5))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "branchShare",
            "0",
            () => Full(90).ToFitting(Tee.Path.DividingBranch, Ratio.Zero)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "branchShare",
            "-0.4941",
            () => Full(90).ToFitting(Tee.Path.CombiningBranch, Ratio.FromDecimalFractions(0.1))
        );
        Words.Refused<ArgumentOutOfRangeException>("path", "7", () => Full(90).CoefficientAt((Tee.Path)7, Ratio.Zero));
    }

    private static Ratio One => Ratio.FromDecimalFractions(1);

    private static Tee Full(double degrees) => new TeeMeasures(8, 1, degrees, 0).ToTee();
}
