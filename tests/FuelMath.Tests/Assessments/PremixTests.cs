using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Both bounds of a premix, against balances of air and fuel that do not use the blend.</summary>
[Trait("Source", "Definition")]
public sealed class PremixTests
{
    private static readonly Fuel Gasoline = StandardFuels.PumpGasoline;

    private static readonly Fuel Oil = StandardFuels.TwoStrokeOil;

    /// <summary>
    /// Air over need, by hand: at n:1 by volume the oil is rho_o / (n rho_f + rho_o) of the mass; without it only the
    /// gasoline needs air.
    /// </summary>
    [Theory]
    [InlineData(16)]
    [InlineData(32)]
    [InlineData(50)]
    public void LambdaIfOilUnburned_APremix_CountsTheGasolineAlone(int parts)
    {
        SystemState state = Premixed(parts);
        double rho = Gasoline.DensityAt(Workshop.Celsius(20)).KilogramsPerCubicMeter;
        double oil = Oil.DensityAt(Workshop.Celsius(20)).KilogramsPerCubicMeter;
        double share = oil / ((parts * rho) + oil);

        foreach (FuelMath.PredictedMixture.ChamberMixture chamber in state.Chambers)
        {
            double fuel = chamber.Fuel.Kilograms * (1 - share);
            double unburned = chamber.Air.Kilograms / (fuel * Gasoline.StoichiometricRatio.ToMassRatio());
            Close.Within(1e-9, unburned, chamber.LambdaIfOilUnburned!.Value.ToRatio());
        }

        Close.Within(1e-9, share, VerdictCases.Premix(parts).OilFraction.DecimalFractions);
        Assert.True(state.LambdaIfOilUnburned!.Value > state.Lambda!.Value);
    }

    /// <summary>The same pulse as gasoline without oil: richer by the denser fuel if all burns, leaner by the oil if none does.</summary>
    [Fact]
    public void Lambda_TheSamePulseOfPremix_LiesBetweenRicherAndLeaner()
    {
        SystemState neat = Workshop.Four().Solve(Widths);
        SystemState mixed = Workshop.Four().WithFuel(VerdictCases.Premix(16)).Solve(Widths);
        double plain = neat.Lambda!.Value.ToRatio();

        Assert.InRange(mixed.Lambda!.Value.ToRatio() / plain, 0.99, 0.999);
        Assert.InRange(mixed.LambdaIfOilUnburned!.Value.ToRatio() / plain, 1.055, 1.075);
    }

    [Fact]
    public void LambdaIfOilUnburned_WithoutOil_IsLambda()
    {
        SystemState state = Workshop.Four().Solve(VerdictCases.At(Workshop.Open(0.9)));

        Assert.Equal(state.Lambda, state.LambdaIfOilUnburned);
        Assert.DoesNotContain(state.Findings, f => f.Code == FindingCode.PremixMixture);
        Assert.Equal(0, Gasoline.OilFraction.DecimalFractions);
    }

    [Fact]
    public void StoichiometricRatioIfOilUnburned_OfOilAlone_IsNone() =>
        Assert.Null(Oil.StoichiometricRatioIfOilUnburned);

    /// <summary>However it is mixed: a premix of a premix, or oil as a part of a blend, holds the same oil.</summary>
    [Property]
    public Property OilFraction_OfAnyBlend_IsTheMassOfItsOil() =>
        Prop.ForAll(
            Gen.Choose(0, 400).Select(n => n / 1000.0).ToArbitrary(),
            Gen.Choose(16, 200).ToArbitrary(),
            (more, parts) =>
            {
                Fuel premix = VerdictCases.Premix(parts);
                Fuel blend = FuelBlend.ByMass(
                    "blend",
                    [new(premix, Ratio.FromDecimalFractions(1 - more)), new(Oil, Ratio.FromDecimalFractions(more))]
                );
                double oil = ((1 - more) * premix.OilFraction.DecimalFractions) + more;
                double rest = (1 - oil) * Gasoline.StoichiometricRatio.ToMassRatio();
                return Math.Abs(blend.OilFraction.DecimalFractions - oil) < 1e-12
                    && Math.Abs((blend.StoichiometricRatioIfOilUnburned!.Value.ToMassRatio() / rest) - 1) < 1e-9;
            }
        );

    [Fact]
    public void PrintedTable_OfThePage_IsWhatTheModelSays() =>
        Assert.All(
            new[] { 16, 25, 32, 50 },
            parts =>
                Assert.Contains(Row(parts), House.Repository.Read("docs/guide/premix.md"), StringComparison.Ordinal)
        );

    private static string Row(int parts)
    {
        double plain = Workshop.Four().Solve(Widths).Lambda!.Value.ToRatio();
        SystemState mixed = Workshop.Four().WithFuel(VerdictCases.Premix(parts)).Solve(Widths);
        return FormattableString.Invariant(
            $"| {parts}:1 | {VerdictCases.Premix(parts).OilFraction.Percent:0.0} % | {100 * ((mixed.Lambda!.Value.ToRatio() / plain) - 1):+0.0;−0.0} % | {100 * ((mixed.LambdaIfOilUnburned!.Value.ToRatio() / plain) - 1):+0.0;−0.0} % |"
        );
    }

    private static OperatingPoint Widths =>
        VerdictCases.At(FuelCommand.FromPulseWidths([Duration.FromMilliseconds(6)]));

    private static SystemState Premixed(int parts) =>
        Workshop.Four().WithFuel(VerdictCases.Premix(parts)).Solve(VerdictCases.At(Workshop.Hold(0.9)));
}
