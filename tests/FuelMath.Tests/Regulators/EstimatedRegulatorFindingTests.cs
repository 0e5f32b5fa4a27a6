using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Regulators;

/// <summary>A regulator of which one set point is known says in each state that the rest is an estimate; one that was measured does not.</summary>
public sealed class EstimatedRegulatorFindingTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Solve_Bypass(bool isEstimate) =>
        Says(
            isEstimate,
            PlumbingRig.With(
                PlumbingRig.Usual(
                    regulator: isEstimate
                        ? BypassRegulator.FromSetPoint(
                            "regulator",
                            new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(60)),
                            RegulatorReference.Manifold,
                            Workshop.Invented
                        )
                        : null
                )
            )
        );

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Solve_Reducing(bool isEstimate)
    {
        ReducingRegulator measured = PlumbingRig.Reducing(RegulatorReference.Manifold);

        Says(
            isEstimate,
            PlumbingRig.WithoutReturn(
                regulator: isEstimate ? measured.AsEstimate("its droop was taken from another one") : measured
            )
        );
    }

    private static void Says(bool isEstimate, FuelSystem system)
    {
        Finding[] found =
        [
            .. system
                .Solve(Workshop.Point(2500, 60, Workshop.Hold(1)))
                .Findings.Where(f => f.Code == FindingCode.RegulatorEstimated),
        ];

        Assert.Equal(isEstimate ? [("regulator", Severity.Note)] : [], found.Select(f => (f.Part, f.Severity)));
    }
}
