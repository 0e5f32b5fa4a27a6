using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>What a belief and a staging rule refuse.</summary>
public sealed class ControllerBeliefTests
{
    [Fact]
    public void New_NoPressure_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressure",
            "0 Pa",
            () =>
                _ = new ControllerBelief(
                    Workshop.Injector("r", 500),
                    Pressure.Zero,
                    Workshop.Gasoline,
                    Workshop.Celsius(20)
                )
        );

    [Theory]
    [InlineData(0.04)]
    [InlineData(0.96)]
    [InlineData(double.NaN)]
    public void StagingRule_OutOfRange_Throws(double duty) =>
        Assert.ThrowsAny<ArgumentException>(() => new StageSchedule.Transition(Ratio.FromDecimalFractions(duty)));
}
