using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>Tees and wyes against the tests of the open library fluids, which has the book's errata in it.</summary>
public sealed class TeeLossTests
{
    /// <summary>Example 7-36 (wye of 45 degrees) prints 0.4640; the other rows to all digits of fluids.</summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(0.146, 0.146, 1515, 950, 45, 0.4640, 2e-4)]
    [InlineData(0.146, 0.146, 0.02525, 0.01583, 90, 1.0910792393446236, 1e-12)]
    [InlineData(0.146, 0.07, 0.02525, 0.01583, 45, 1.1950718299625727, 1e-12)]
    [InlineData(0.146, 0.07, 0.01425, 0.02283, 45, 3.7281052908078762, 1e-12)]
    [InlineData(0.146, 0.146, 0.02525, 0.01983, 90, 1.1194688533508077, 1e-12)]
    [InlineData(0.146, 0.146, 0.02525, 0.04183, 45, 0.30418565498014477, 1e-12)]
    [InlineData(0.146, 0.116, 0.02525, 0.01983, 90, 1.1456727552755597, 1e-12)]
    public void DividingBranch_PublishedValues_Agrees(
        double run,
        double branch,
        double alongRun,
        double intoBranch,
        double degrees,
        double expected,
        double tolerance
    )
    {
        (Real share, Real area) = Shares(run, branch, alongRun, intoBranch);

        Close.Within(tolerance, expected, TeeLoss.DividingBranch(share, area, degrees).Value);
    }

    /// <summary>Example 7-36 prints -0.06809; the other rows to all digits of fluids.</summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(0.146, 0.146, 1515, 950, -0.06809, 2e-4)]
    [InlineData(0.146, 0.146, 0.01025, 0.01983, 0.041523953539921235, 1e-12)]
    [InlineData(0.146, 0.08, 0.02525, 0.01583, 0.0593965132275684, 1e-12)]
    public void DividingRun_PublishedValues_Agrees(
        double run,
        double branch,
        double alongRun,
        double intoBranch,
        double expected,
        double tolerance
    )
    {
        (Real share, Real area) = Shares(run, branch, alongRun, intoBranch);

        Close.Within(tolerance, expected, TeeLoss.DividingRun(share, area).Value);
    }

    /// <summary>Example 7-35 (tee) prints -0.04026, and rounds its flows on the way; the other rows to all digits of fluids.</summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(0.1023, 0.1023, 1135, 380, 90, -0.04026, 1e-2)]
    [InlineData(0.1023, 0.05, 1135, 380, 90, 0.9799379575823042, 1e-12)]
    [InlineData(0.1023, 0.1023, 0.018917, 0.0133, 90, 0.2644824555594152, 1e-12)]
    [InlineData(0.1023, 0.1023, 0.018917, 0.0133, 45, 0.13231793346761025, 1e-12)]
    public void CombiningBranch_PublishedValues_Agrees(
        double run,
        double branch,
        double alongRun,
        double fromBranch,
        double degrees,
        double expected,
        double tolerance
    )
    {
        (Real share, Real area) = Shares(run, branch, alongRun, fromBranch);

        Close.Within(tolerance, expected, TeeLoss.CombiningBranch(share, area, degrees).Value);
    }

    /// <summary>All digits of fluids; example 7-35 has the first row.</summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(90, 0.32575847854551254)]
    [InlineData(30, 0.32920396892611553)]
    [InlineData(60, 0.3757218131135227)]
    public void CombiningRun_PublishedValues_Agrees(double degrees, double expected)
    {
        (Real share, Real area) = Shares(0.1023, 0.1023, 0.018917, 0.00633);

        Close.Within(1e-12, expected, TeeLoss.CombiningRun(share, area, degrees).Value);
    }

    private static (Real Share, Real Area) Shares(double run, double branch, double alongRun, double branchFlow) =>
        (new(branchFlow / (alongRun + branchFlow)), new(branch / run * (branch / run)));
}
