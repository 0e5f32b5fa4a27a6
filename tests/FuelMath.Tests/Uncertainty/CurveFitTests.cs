using FuelMath.Formulas;
using FuelMath.Statistics;

namespace FuelMath.Tests.Uncertainty;

/// <summary>The least squares of any model, against certified values.</summary>
public sealed class CurveFitTests
{
    private static readonly double[] Temperature = [1.309, 1.471, 1.490, 1.565, 1.611, 1.680];
    private static readonly double[] Energy = [2.138, 3.421, 3.597, 4.340, 4.882, 5.660];

    /// <summary>
    /// Data set DanWood, y = b1 x^b2, from both starts: parameters, their standard deviations and the residual sum of
    /// squares. Certified to 11 digits; a sum of squares is flat at its least, so that parameters keep half of the digits
    /// of a step: 1e-8.
    /// </summary>
    [Theory]
    [Trait("Source", "NIST-StRD")]
    [InlineData(1, 5)]
    [InlineData(0.7, 4)]
    public void Of_PowerLaw_GivesTheCertifiedValues(double first, double second)
    {
        CurveFit fit = CurveFit.Of(new PowerLaw(), Energy, [1, 1, 1, 1, 1, 1], [first, second]);
        double deviation = Math.Sqrt(fit.ChiSquared / 4);

        Close.Within(1e-8, 7.6886226176e-01, fit.Parameters[0]);
        Close.Within(1e-8, 3.8604055871, fit.Parameters[1]);
        Close.Within(1e-7, 1.8281973860e-02, fit.StandardError(0) * deviation);
        Close.Within(1e-7, 5.1726610913e-02, fit.StandardError(1) * deviation);
        Close.Within(1e-9, 4.3173084083e-03, fit.ChiSquared);
    }

    /// <summary>Weights: a reading of half the uncertainty counts like four.</summary>
    [Fact]
    public void Of_Constant_IsTheWeightedMean()
    {
        CurveFit fit = CurveFit.Of(new Constant(), [1, 2, 4], [1, 1, 0.5], [0]);

        Close.Within(1e-12, (1 + 2 + (4 * 4)) / 6.0, fit.Parameters[0]);
        Close.Within(1e-12, 1 / Math.Sqrt(6), fit.StandardError(0));
    }

    [Fact]
    public void Of_ModelWithoutALeast_IsRefused()
    {
        NoSolutionException error = Assert.Throws<NoSolutionException>(() =>
            CurveFit.Of(new Runaway(), [0.0], [1.0], [0])
        );
        Assert.StartsWith("No solution for the least squares of a model:", error.Message, StringComparison.Ordinal);
    }

    /// <summary>|p| is never -1: (1 + |p|)^2 is least in the corner at 0, where its slope is 2 to one side and -2 to the other.</summary>
    [Theory]
    [InlineData(0.7)]
    [InlineData(-3)]
    [InlineData(100)]
    public void Of_ACorner_IsFoundWhereTheSlopeIsNotZero(double start)
    {
        CurveFit fit = CurveFit.Of(new Corner(), [-1.0], [1.0], [start]);

        Close.WithinOf(1, 1e-9, 0, fit.Parameters[0]);
        Close.Within(1e-9, 1, fit.ChiSquared);
    }

    /// <summary>
    /// By hand: p + q = 9 and q = 5 want p = 4. With p up to 2, (7 - q)^2 + (5 - q)^2 is least at q = 6, where it is 2.
    /// </summary>
    [Fact]
    public void Of_AnEndOfWhatIsPossible_IsHeld()
    {
        CurveFit fit = CurveFit.Of(new Ended(), [9, 5], [1.0, 1.0], [0, 0]);

        Assert.Equal(2, fit.Parameters[0]);
        Close.Within(1e-9, 6, fit.Parameters[1]);
        Close.Within(1e-9, 2, fit.ChiSquared);
    }

    private sealed class Corner : IFitModel
    {
        public int ParameterCount => 1;

        public bool HasCorners => true;

        public bool IsDefined(double[] parameters) => double.IsFinite(parameters[0]);

        public T At<T>(T[] parameters, int reading)
            where T : struct, IScalar<T> => T.Abs(parameters[0]);
    }

    private sealed class Ended : IFitModel
    {
        public int ParameterCount => 2;

        public double Highest(int parameter) => parameter == 0 ? 2 : double.PositiveInfinity;

        public bool IsDefined(double[] parameters) => parameters.All(double.IsFinite);

        public T At<T>(T[] parameters, int reading)
            where T : struct, IScalar<T> => reading == 0 ? parameters[0] + parameters[1] : parameters[1];
    }

    private sealed class PowerLaw : IFitModel
    {
        public int ParameterCount => 2;

        public T At<T>(T[] parameters, int reading)
            where T : struct, IScalar<T> => parameters[0] * T.Exp(parameters[1] * Math.Log(Temperature[reading]));

        public bool IsDefined(double[] parameters) => true;
    }

    private sealed class Constant : IFitModel
    {
        public int ParameterCount => 1;

        public T At<T>(T[] parameters, int reading)
            where T : struct, IScalar<T> => parameters[0];

        public bool IsDefined(double[] parameters) => true;
    }

    /// <summary>Falls without end: exp(-x).</summary>
    private sealed class Runaway : IFitModel
    {
        public int ParameterCount => 1;

        public T At<T>(T[] parameters, int reading)
            where T : struct, IScalar<T> => 1 + T.Exp(-parameters[0]);

        public bool IsDefined(double[] parameters) => parameters[0] < 2;
    }
}
