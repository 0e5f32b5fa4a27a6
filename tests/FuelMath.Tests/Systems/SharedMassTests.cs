using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// Two rails with a regulator each, of which one stands behind a narrow hose, and one sensor behind all chambers: the injectors
/// share what the sensor asks for, and the starved ones hand their share to the others.
/// </summary>
public sealed class SharedMassTests
{
    /// <summary>The pulses of a held mixture, given as they are, bring the same state: no round shares anything then.</summary>
    [Theory]
    [InlineData(1, 0.85, 3000, 160)]
    [InlineData(1, 1.05, 6000, 110)]
    [InlineData(0.5, 0.7, 6000, 40)]
    [InlineData(0.35, 0.5, 1000, 110)]
    [InlineData(0.7, 0.8, 6000, 80)]
    [InlineData(0.5, 1.15, 6000, 110)]
    [InlineData(0.5, 1.3, 6000, 160)]
    public void StarvedRail_OfAHeldMixture_SettlesWhereItsPulsesDo(
        double pump,
        double millimeters,
        double rpm,
        double kpa
    )
    {
        FuelSystem system = TwoRails(pump, millimeters);
        SystemState held = system.Solve(Workshop.Point(rpm, kpa, Workshop.Hold(0.85)));

        SystemState given = system.Solve(
            Workshop.Point(rpm, kpa, FuelCommand.FromPulseWidths(held.Stages.Select(s => s.PulseWidth)))
        );

        Close.Within(1e-9, 0.85, held.Lambda!.Value.ToRatio());
        Assert.True(held.Chambers[^1].Lambda!.Value.ToRatio() > 1.02 * held.Chambers[0].Lambda!.Value.ToRatio());
        foreach (
            (SystemState.InjectorResult one, SystemState.InjectorResult other) in held.Injectors.Zip(given.Injectors)
        )
        {
            Close.Within(1e-8, other.DifferentialPressure.Pascals, one.DifferentialPressure.Pascals);
            Close.Within(1e-8, other.MeanFlow.CubicMetersPerSecond, one.MeanFlow.CubicMetersPerSecond);
        }
    }

    /// <summary>Each narrowness, speed and load has its state, unless the data of an injector end before it.</summary>
    [Fact]
    public void StarvedRail_OfAnyNarrowness_HasAState()
    {
        (int found, int outside) = (0, 0);
        foreach (double pump in new[] { 0.35, 0.5, 1 })
        {
            foreach ((double rpm, double kpa) in new[] { (1000.0, 40.0), (3000, 110), (6000, 80), (6000, 160) })
            {
                for (double millimeters = 0.5; millimeters < 3; millimeters += 0.05)
                {
                    try
                    {
                        SystemState state = TwoRails(pump, millimeters)
                            .Solve(Workshop.Point(rpm, kpa, Workshop.Hold(0.85)));
                        Close.Within(1e-8, 0.85, state.Lambda!.Value.ToRatio());
                        found++;
                    }
                    catch (OutsideTableException)
                    {
                        outside++;
                    }
                }
            }
        }

        Assert.InRange(outside, 1, found / 5);
    }

    private static FuelSystem TwoRails(double pump, double millimeters) =>
        PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(pump)),
            new("first", "pump outlet", "rail start", PlumbingRig.Reducing(RegulatorReference.Manifold)),
            new("narrow", "pump outlet", "second inlet", Workshop.Hose("narrow", 1, millimeters)),
            new("second", "second inlet", "rail end", PlumbingRig.Reducing(RegulatorReference.Manifold))
        );
}
