using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

public sealed class CurvedPipeTests
{
    private const double Rho = 740;
    private const double Nu = 0.5e-6;

    private static OwnLine Coil(double bore, double coil, double meters) =>
        OwnLine.CurvedPipe(
            "coil",
            "a",
            "b",
            Length.FromMeters(meters),
            Length.FromMillimeters(bore),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(1.2),
            Length.FromMillimeters(coil)
        );

    /// <summary>
    /// The flow that the solver finds, put into the law written out here: laminar, about the change-over, turbulent, and
    /// backwards. The solver leaves a billionth of the pressure.
    /// </summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(1.5)]
    [InlineData(20)]
    [InlineData(-20)]
    [Trait("Source", "White-1929")]
    [Trait("Source", "Ito-1959")]
    public void Solve_Coil_FollowsItsLaw(double kilopascals)
    {
        NetworkState state = Fuel(Fixed("a", kilopascals), Fixed("b", 0), Coil(8, 200, 2)).Solve();

        double v = state.FlowIn("coil").CubicMetersPerSecond / (Math.PI / 4 * 0.008 * 0.008);
        double re = Math.Abs(v) * 0.008 / Nu;
        double dean = re * Math.Sqrt(0.04);
        double white = 64 / re / (1 - Math.Pow(1 - Math.Pow(11.6 / dean, 0.45), 1 / 0.45));
        double ito = Friction.ColebrookFactor(new Real(re), new Real(1.5e-6 / 0.008)).Value + (0.029 * Math.Sqrt(0.04));
        double factor = Math.Max(white, ito);
        double loss = ((factor * 2 / 0.008) + 1.2) * Rho * v * Math.Abs(v) / 2;
        Close.Within(1e-8, kilopascals * 1e3, loss);
        Assert.Equal(Network.LineCondition.Open, state.ConditionOf("coil"));
    }

    /// <summary>Straight behind coiled carry the same flow, and the coil of the same length loses more.</summary>
    [Fact]
    [Trait("Source", "Ito-1959")]
    public void Solve_CoilBehindAStraightHose_LosesMore()
    {
        NetworkState state = Fuel(
                Fixed("a", 30),
                Junction("b"),
                Fixed("c", 0),
                Coil(8, 200, 2),
                Hose("hose", "b", "c", 2, 8, 1.2)
            )
            .Solve();

        Assert.True(state.PressureDifferenceOver("coil").Pascals > 1.05 * state.PressureDifferenceOver("hose").Pascals);
        Close.Within(1e-8, state.LitersPerHourIn("hose"), state.LitersPerHourIn("coil"));
    }

    /// <summary>300 / (1/20)^2 is a Reynolds number of 120 000: 1360 L/h in 8 mm.</summary>
    [Fact]
    public void Solve_FlowBeyondTheLaw_IsRefusedWithItsRange() =>
        Words.OutsideTable("'coil', 0, 120000", () => Fuel(Fixed("a", 300), Fixed("b", 0), Coil(8, 160, 1)).Solve());

    [Theory]
    [InlineData(131)]
    [InlineData(2401)]
    public void CurvedPipe_TighterOrGentlerThanTheLaw_IsRefused(double coil) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "coilDiameter",
            $"131.2 mm, 2400 mm, {coil} mm",
            () => Coil(8, coil, 1)
        );

    [Fact]
    public void CurvedPipe_WithoutBore_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("bore", "0 mm", () => Coil(0, 200, 1));
}
