using System.Globalization;
using FsCheck.Xunit;

namespace FuelMath.Tests.Quantities;

/// <summary>Lambda and air-fuel ratio, which are two views of one mixture.</summary>
[Properties(Arbitrary = [typeof(QuantityArbitraries)])]
public sealed class MixtureTests
{
    /// <summary>Each multiplication and division rounds once, by 1.1e-16.</summary>
    private const double TwoRoundings = 2.3e-16;

    // Lambda is the actual ratio over the stoichiometric one: 13.23 over 14.7 is 0.9 by that definition.
    [Fact]
    [Trait("Source", "Definition")]
    public void ToLambda_ActualOverStoichiometric_IsTheirQuotient() =>
        Close.Within(
            TwoRoundings,
            0.9,
            AirFuelRatio.FromMassRatio(13.23).ToLambda(AirFuelRatio.FromMassRatio(14.7)).ToRatio()
        );

    // The equivalence ratio is fuel over air, relative to stoichiometric: rich 1.25 is lambda 0.8.
    [Fact]
    [Trait("Source", "Definition")]
    public void FromEquivalenceRatio_Rich_IsLambdaBelowOne() =>
        Assert.Equal(0.8, Lambda.FromEquivalenceRatio(1.25).ToRatio());

    [Property]
    public void ToAirFuelRatio_ThenToLambda_GivesLambdaBack(Lambda lambda, AirFuelRatio stoichiometric) =>
        Close.Within(
            TwoRoundings,
            lambda.ToRatio(),
            lambda.ToAirFuelRatio(stoichiometric).ToLambda(stoichiometric).ToRatio()
        );

    [Property]
    public void ToEquivalenceRatio_ThenBack_GivesLambdaBack(Lambda lambda) =>
        Close.Within(
            TwoRoundings,
            lambda.ToRatio(),
            Lambda.FromEquivalenceRatio(lambda.ToEquivalenceRatio()).ToRatio()
        );

    [Property]
    public void Stoichiometric_HasTheFuelsRatio(AirFuelRatio stoichiometric) =>
        Assert.Equal(stoichiometric, Lambda.Stoichiometric.ToAirFuelRatio(stoichiometric));

    [Property]
    public void Order_IsFromRichToLean(Lambda a, Lambda b)
    {
        double difference = a.ToRatio() - b.ToRatio();

        Assert.Equal(difference < 0, a < b);
        Assert.Equal(difference > 0, a > b);
        Assert.Equal(difference <= 0, a <= b);
        Assert.Equal(difference >= 0, a >= b);
        Assert.Equal(difference == 0, a == b);
        Assert.Equal(difference != 0, a != b);
        Assert.Equal(Math.Sign(difference), Math.Sign(a.CompareTo(b)));
        Assert.Equal(difference == 0, a.Equals((object)b));
    }

    [Property]
    public void AirFuelRatio_EqualNumbers_AreEqual(AirFuelRatio ratio)
    {
        AirFuelRatio again = AirFuelRatio.FromMassRatio(ratio.ToMassRatio());

        Assert.True(ratio == again);
        Assert.False(ratio != again);
        Assert.True(ratio.Equals((object)again));
        Assert.Equal(ratio.GetHashCode(), again.GetHashCode());
    }

    [Theory]
    [InlineData(0, "Must be from 1E-300 to 1E+300; it was 0.")]
    [InlineData(-0.9, "Must be from 1E-300 to 1E+300; it was -0.9.")]
    [InlineData(double.NaN, "Must be from 1E-300 to 1E+300; it was NaN.")]
    [InlineData(double.PositiveInfinity, "Must be from 1E-300 to 1E+300; it was Infinity.")]
    public void Factories_NotAMixture_SayWhatIsAllowed(double value, string message)
    {
        Says("value", message, () => Lambda.FromRatio(value));
        Says("value", message, () => Lambda.FromEquivalenceRatio(value));
        Says(
            "airOverFuel",
            message.Replace("from 1E-300 to 1E+300", "finite and greater than zero", StringComparison.Ordinal),
            () => AirFuelRatio.FromMassRatio(value)
        );
    }

    [Fact]
    public void ToLambda_DefaultStoichiometricRatio_IsRefused() =>
        Says(
            "stoichiometric",
            "Must be finite and greater than zero; it was 0.",
            () => AirFuelRatio.FromMassRatio(14).ToLambda(default)
        );

    /// <summary>A default lambda was never set down; it has no equivalence ratio and no air-fuel ratio.</summary>
    [Fact]
    public void DefaultLambda_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            default(Lambda).ToAirFuelRatio(AirFuelRatio.FromMassRatio(14))
        );
        var error = Assert.Throws<InvalidOperationException>(() => default(Lambda).ToEquivalenceRatio());
        Assert.Equal("The default lambda is not a mixture and has no equivalence ratio.", error.Message);
    }

    [Fact]
    public void ToString_IsInvariantUnlessTold()
    {
        var comma = new NumberFormatInfo { NumberDecimalSeparator = "," };

        Assert.Equal("0.850", Lambda.FromRatio(0.85).ToString());
        Assert.Equal("0,9", Lambda.FromRatio(0.85).ToString("0.0", comma));
        Assert.Equal("14.70", AirFuelRatio.FromMassRatio(14.7).ToString());
        Assert.Equal("14,700", AirFuelRatio.FromMassRatio(14.7).ToString("0.000", comma));
    }

    private static void Says(string parameter, string message, Func<object> act)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(act);

        Assert.Equal(parameter, error.ParamName);
        Assert.StartsWith(message, error.Message, StringComparison.Ordinal);
    }

    /// <summary>A mixture and its inverse are both numbers.</summary>
    [Theory]
    [InlineData(1e-310)]
    [InlineData(5e-324)]
    [InlineData(1e301)]
    [InlineData(double.MaxValue)]
    public void Lambda_BeyondWhatHasAnInverse_IsRefused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Lambda.FromEquivalenceRatio(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lambda.FromRatio(value));
    }
}
