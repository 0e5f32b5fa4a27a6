using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>
/// The working of a part's loss: its result is what its law says, by hand, and it names no number that plays no part. Density
/// 800 kg/m3, viscosity 5e-4 Pa s.
/// </summary>
public sealed class LossWorkingTests
{
    private static readonly Symbol Q = new("q", "m3/s", "flow");
    private static readonly Symbol Rho = new("rho", "kg/m3", "density");
    private static readonly Symbol Mu = new("mu", "Pa s", "viscosity");

    /// <summary>6e7 q + 4e11 q2 over what it opens at; a quadratic one alone names no viscosity.</summary>
    [Theory]
    [InlineData(6e7, 4e11, 0, 2e-4, 12_000 + 16_000, true)]
    [InlineData(6e7, 4e11, 3000, 2e-4, 12_000 + 16_000 + 3000, true)]
    [InlineData(6e7, 0, 0, 2e-4, 12_000, true)]
    [InlineData(0, 4e11, 0, 2e-4, 16_000, false)]
    [InlineData(0, 4e11, 0, -2e-4, -16_000, false)]
    public void Square_IsTheSumOfItsTerms(double a, double b, double opening, double flow, double loss, bool viscous)
    {
        SquareSettings law = new()
        {
            LinearPerViscosity = a / 5e-4,
            SquarePerDensity = b / 800,
            Opening = opening,
        };

        Traced found = law.LossWorking(At(flow))!.Value;

        Close.Within(1e-12, loss, found.Value);
        Assert.Equal(viscous, Names(found, "mu"));
        Assert.Equal(opening > 0, Names(found, "dpo"));
    }

    [Fact]
    public void Square_IntoASpaceOrWithoutLoss_HasNone()
    {
        Assert.Null(new SquareSettings { SquarePerDensity = 1e8, IntoSpace = true }.LossWorking(At(1e-4)));
        Assert.Null(new SquareSettings { Opening = 5 }.LossWorking(At(1e-4)));
        Assert.Null(new StoppedSettings().LossWorking(At(1e-4)));
        Assert.Null(
            new PipeSettings(1, 5e-3, 0, 0, Pipe.FrictionLaw.SwameeJainCubicPassage, false).LossWorking(At(1e-4))
        );
    }

    /// <summary>Laminar in 2 m of 10 mm, with K = 3: 128 mu L q / pi d4 and K rho v2 / 2.</summary>
    [Fact]
    public void Pipe_IsFrictionAndBends()
    {
        const double q = 1e-6;
        double velocity = q / (Math.PI / 4 * 1e-4);

        Traced found = new PipeSettings(2, 0.01, 0, 3, Pipe.FrictionLaw.ColebrookStraightPassage, true)
            .LossWorking(At(q))!
            .Value;

        Close.Within(1e-9, (128 * 5e-4 * 2 * q / (Math.PI * 1e-8)) + (3 * 800 * velocity * velocity / 2), found.Value);
    }

    /// <summary>In a curve below a Dean number of 11.6 it is that of a straight pipe; the curve is named by its diameter.</summary>
    [Fact]
    public void CurvedPipe_SlowEnough_IsStraight()
    {
        // A Reynolds number of 20 in a curvature of 0.1: a Dean number of 6.3.
        double q = 20 * 5e-4 * Math.PI * 0.01 / 4 / 800;

        Traced found = new CurvedSettings(2, 0.01, 0, 0, 0.1).LossWorking(At(q))!.Value;

        Close.Within(1e-9, 128 * 5e-4 * 2 * q / (Math.PI * 1e-8), found.Value);
        Assert.True(Names(found, "Dc"));
    }

    /// <summary>
    /// From 1: 90 - 10 t, from 3: 70 - 5 t - 4 t2 + 2 t3, from 5 straight on; a curve names its coefficients where it has them.
    /// </summary>
    [Theory]
    [InlineData(0.5, 95, false)]
    [InlineData(1, 90, false)]
    [InlineData(2, 80, false)]
    [InlineData(3, 70, true)]
    [InlineData(4, 70 - 5 - 4 + 2, true)]
    [InlineData(6, 60 - 13, false)]
    public void PumpTable_IsThePieceOfItsFlow(double flow, double rise, bool curved)
    {
        Traced found = Table().LossWorking(At(flow))!.Value;

        Close.Within(1e-12, -rise, found.Value);
        Assert.Equal(curved, Names(found, "c3"));
    }

    /// <summary>One coefficient alone bends a curve, too; and settings of a point take the place of the part's own.</summary>
    [Theory]
    [InlineData(7, 0, 100 - 4 + (7 * 4))]
    [InlineData(0, 7, 100 - 4 + (7 * 8))]
    public void PumpTable_OneCoefficient_Bends(double c2, double c3, double rise)
    {
        Piece[] pieces = [new(0, 100, -2, c2, c3), new(0, 100, -2, c2, c3), new(9, 1, -1, 0, 0)];
        double[] settings = new double[15];
        PieceTable.Write(pieces, settings);

        Close.Within(1e-12, -rise, Table().LossWorking(At(2, settings))!.Value.Value);
    }

    private static PumpTableSettings Table() =>
        new(
            [new(1, 90, -10, 0, 0), new(1, 90, -10, 0, 0), new(3, 70, -5, -4, 2), new(5, 60, -13, 0, 0)],
            true,
            VolumeFlow.Zero
        );

    private static LossInputs At(double flow, double[]? settings = null) =>
        new()
        {
            Flow = Traced.Input(Q, flow),
            Density = Traced.Input(Rho, 800),
            Viscosity = Traced.Input(Mu, 5e-4),
            Settings = settings ?? [],
        };

    private static bool Names(Traced result, string symbol) =>
        result.ToWorking().Inputs.Any(i => i.Symbol.Name == symbol);
}
