using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// A finding says its value. A limit of just that value is kept and gives no finding; one a millionth stricter gives it again.
/// </summary>
public sealed class StatedValueTests
{
    public static TheoryData<string, Limits.Kind> Cases
    {
        get
        {
            var cases = new TheoryData<string, Limits.Kind>();
            foreach (string name in new[] { "time-trial-car", "training-stand", "circuit-car" })
            {
                // A finding on the mixture states lambda, not by how much it is off.
                foreach (
                    Limits.Kind kind in Enum.GetValues<Limits.Kind>().Where(k => k != Limits.Kind.MixtureDeviation)
                )
                {
                    cases.Add(name, kind);
                }
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Findings_AtTheValueThatTheyState_Vanish(string name, Limits.Kind kind)
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System(name));
        foreach (OperatingPoint point in OperatingListDocument.Read(TestFiles.Points(name)))
        {
            if (Solved(system, point) is null)
            {
                continue;
            }

            double[] values =
            [
                .. Resting(system, point, Strictest(kind), kind)
                    .Select(f => f.ValueQuantity)
                    .OfType<IQuantity>()
                    .Where(q => q.GetType() == Strictest(kind).GetType())
                    .Select(q => IsLeast(kind) ? q.As(UnitOf(kind)) : Math.Abs(q.As(UnitOf(kind)))),
            ];
            if (values.Length == 0)
            {
                continue;
            }

            // The worst of all; the others keep a limit that this one keeps.
            double worst = IsLeast(kind) ? values.Min() : values.Max();
            double stricter = worst * (IsLeast(kind) ? 1 + 1e-6 : 1 - 1e-6);
            if (IsAllowed(kind, worst) && IsAllowed(kind, stricter))
            {
                Assert.Empty(Resting(system, point, Quantity.From(worst, UnitOf(kind)), kind));
                Assert.NotEmpty(Resting(system, point, Quantity.From(stricter, UnitOf(kind)), kind));
            }
        }
    }

    /// <summary>The findings of a point with one kind of limit as strict as it can be; none where there is no state.</summary>
    internal static IEnumerable<Finding> AtItsStrictest(FuelSystem system, OperatingPoint point, Limits.Kind kind) =>
        Solved(
            system.WithLimits(
                Limits.CommonPractice.With(new Limits.OwnLimit(kind, Strictest(kind), "stated in this test"))
            ),
            point
        )?.Findings
        ?? [];

    private static IEnumerable<Finding> Resting(
        FuelSystem system,
        OperatingPoint point,
        IQuantity value,
        Limits.Kind kind
    ) =>
        Solved(
            system.WithLimits(Limits.CommonPractice.With(new Limits.OwnLimit(kind, value, "stated in this test"))),
            point
        )!
            .Findings.Where(f =>
                f.Code != FindingCode.LimitOfOwner
                && f.LimitSource.Key == "Owner"
                && f.LimitSource.ToString().Contains("stated in this test", StringComparison.Ordinal)
            );

    private static SystemState? Solved(FuelSystem system, OperatingPoint point)
    {
        try
        {
            return system.Solve(point);
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return null;
        }
    }

    private static bool IsLeast(Limits.Kind kind) =>
        kind is Limits.Kind.PumpReserve or Limits.Kind.VaporMargin or Limits.Kind.LowestCorrection;

    private static bool IsAllowed(Limits.Kind kind, double value) =>
        kind switch
        {
            Limits.Kind.DutyCycle => value is >= 0.1 and <= 1,
            Limits.Kind.PumpReserve => value is >= 0 and <= 10,
            Limits.Kind.LowestCorrection => value is > 0 and <= 1,
            Limits.Kind.HighestCorrection => value is >= 1 and <= 10,
            _ => value > 0,
        };

    private static Enum UnitOf(Limits.Kind kind) =>
        kind switch
        {
            Limits.Kind.VoltageDrop => UnitsNet.Units.ElectricPotentialUnit.Volt,
            Limits.Kind.FeedVelocity or Limits.Kind.SuctionVelocity => UnitsNet.Units.SpeedUnit.MeterPerSecond,
            Limits.Kind.VaporMargin => UnitsNet.Units.PressureUnit.Pascal,
            _ => UnitsNet.Units.RatioUnit.DecimalFraction,
        };

    private static IQuantity Strictest(Limits.Kind kind) =>
        Quantity.From(
            kind switch
            {
                Limits.Kind.DutyCycle => 0.1,
                Limits.Kind.PumpReserve => 10,
                Limits.Kind.VaporMargin => 1e8,
                Limits.Kind.LowestCorrection or Limits.Kind.HighestCorrection => 1,
                _ => 1e-9,
            },
            UnitOf(kind)
        );
}
