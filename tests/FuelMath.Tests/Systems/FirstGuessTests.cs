using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A guess of the rounds may leave the data of pumps and injectors; an answer may not.</summary>
public sealed class FirstGuessTests
{
    private static readonly OperatingPoint Held = Workshop.Point(3000, 100, Workshop.Hold(0.9));

    /// <summary>The supply of 13.8 V lies above both curves, what reaches the pump between them.</summary>
    [Fact]
    public void Solve_CurvesReachTheSettledVoltageButNotTheSupply_IsWhatMoreCurvesGive()
    {
        SystemState three = GuessRig.Of([12, 13.5, 15], 0.06).Solve(Held);
        SystemState two = GuessRig.Of([12, 13.5], 0.06).Solve(Held);

        Assert.InRange(two.Pumps[0].Voltage.Volts, 12.2, 13.3);
        Close.Within(1e-9, three.Pumps[0].Voltage.Volts, two.Pumps[0].Voltage.Volts);
        Close.Within(1e-9, three.Stages[0].PulseWidth.Seconds, two.Stages[0].PulseWidth.Seconds);
    }

    [Fact]
    public void Solve_SettledVoltageAboveTheCurves_SaysWhatItSettledAt()
    {
        double settled = GuessRig.Of([12, 13.5, 15], 0.001).Solve(Held).Pumps[0].Voltage.Volts;

        var error = Assert.Throws<OutsideTableException>(() => GuessRig.Of([12, 13.5], 0.001).Solve(Held));

        Assert.Equal((12, 13.5), (error.Minimum, error.Maximum));
        Close.Within(1e-3, settled, error.Value);
        Assert.Empty(error.Remedy);
    }

    [Fact]
    public void Solve_PumpOfOneCurve_SaysHowToMakeAnother()
    {
        var error = Assert.Throws<OutsideTableException>(() => GuessRig.Of([13.5], 0.06).Solve(Held));

        Assert.Contains("PumpEstimate.AtVoltage", error.Remedy, StringComparison.Ordinal);
        Assert.Contains(error.Remedy, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_PumpOfOneCurveAndAnEstimate_IsSolvedAndSaysSo()
    {
        PumpCurve measured = GuessRig.Curve(13.5);
        Pump pump = new(
            "pump",
            [PumpEstimate.AtVoltage(measured, ElectricPotential.FromVolts(12)), measured],
            Workshop.Gasoline,
            Workshop.Invented
        );

        SystemState state = GuessRig.Of(pump, 0.06, 3, null).Solve(Held);

        Assert.Contains(state.Evidence.Estimates, e => e.Contains("affinity laws", StringComparison.Ordinal));
    }

    /// <summary>Dead times measured from 3.5 to 5 bar; the controller was told 3 bar; the rail holds about 4.</summary>
    [Fact]
    public void Solve_DeadTimesReachTheSettledPressureButNotTheBelievedOne_IsWhatAWiderTableGives()
    {
        SystemState wide = GuessRig.Of([8, 12, 15], 0.02, 4, GuessRig.Dead([8, 16], [0.5, 3.5, 5, 8])).Solve(Held);
        SystemState narrow = GuessRig.Of([8, 12, 15], 0.02, 4, GuessRig.Dead([8, 16], [3.5, 5])).Solve(Held);

        Assert.InRange(narrow.Stages[0].LeastDifferentialPressure.Bars, 3.9, 4.2);
        Close.Within(1e-9, wide.Stages[0].PulseWidth.Seconds, narrow.Stages[0].PulseWidth.Seconds);
    }

    [Fact]
    public void Solve_SettledPressureOutsideTheDeadTimes_SaysWhatItSettledAt()
    {
        FuelSystem wide = GuessRig.Of([8, 12, 15], 0.02, 4, GuessRig.Dead([8, 16], [0.5, 8]));
        double settled = wide.Solve(Held).Injectors[0].DifferentialPressure.Pascals;

        var error = Assert.Throws<OutsideTableException>(() =>
            GuessRig.Of([8, 12, 15], 0.02, 4, GuessRig.Dead([8, 16], [0.5, 3.5])).Solve(Held)
        );

        Assert.Equal(350, error.Maximum, 1e-6);
        Close.Within(1e-3, settled / 1000, error.Value);
    }

    /// <summary>A curve that reaches 0.1 V lower than a first guess of all the current that the supply could drive.</summary>
    [Fact]
    public void Solve_GuessedCurrentTakesTheWholeVoltage_IsNoRefusal()
    {
        // 13.8 V would drive about 8 A, and 8 A through 2 Ω are more than there is; at 4.6 V the pump draws less than 3 A.
        FuelSystem system = GuessRig.Of([1, 3, 8, 15], 1.9, 0.3, GuessRig.Dead([2, 16], [0.01, 8]), 6);
        OperatingPoint point = Workshop.Point(700, 40, FuelCommand.Cut);

        SystemState state = system.Solve(point);

        Close.Within(
            1e-8,
            13.8 - state.Pumps[0].Voltage.Volts,
            state.Pumps[0].Current.Amperes * ((PowerSupply.TwoCircuits)system.Power).Pumps.Resistance.Ohms
        );
    }

    /// <summary>
    /// Random rigs, with data that reach a little around what they settle at: around it the narrow data are the wide ones, so
    /// that either the state is the same, or both say that it lies outside.
    /// </summary>
    [FsCheck.Xunit.Property(Arbitrary = [typeof(GuessArbitraries)])]
    public void Solve_DataAroundTheAnswer_RefusesByTheAnswerAlone(AnyGuessRig rig)
    {
        (SystemState wide, Exception? refusal, SystemState? narrow, bool inside, _) = rig.Solved();

        Assert.Equal(inside, refusal is null);
        if (!inside)
        {
            OutsideTableException outside = Assert.IsType<OutsideTableException>(refusal);
            Assert.False(outside.Value >= outside.Minimum && outside.Value <= outside.Maximum);
            return;
        }

        Close.Within(1e-7, wide.Pumps[0].Voltage.Volts, narrow!.Pumps[0].Voltage.Volts);
        Close.Within(1e-7, wide.Pumps[0].Current.Amperes, narrow.Pumps[0].Current.Amperes);
        Close.Within(1e-7, wide.Stages[0].PulseWidth.Seconds, narrow.Stages[0].PulseWidth.Seconds);
        Close.Within(
            1e-7,
            wide.Injectors[0].DifferentialPressure.InSi(),
            narrow.Injectors[0].DifferentialPressure.InSi()
        );
    }

    /// <summary>The data begin 5 mV above a state that was found without them; curves between others must not jump there.</summary>
    [Fact]
    public void Solve_DataThatBeginBesideTheAnswer_RefusesByTheAnswerAlone() =>
        Solve_DataAroundTheAnswer_RefusesByTheAnswerAlone(
            new AnyGuessRig(12.57052992947, 0.1712255, 3.2985127, -0.00483979516025, 0.1451514148485, 1956.127, 1)
        );

    /// <summary>The rigs above bring both kinds, and a first guess outside the data in most.</summary>
    [Fact]
    public void Rigs_OfTheProperty_BringStatesAndRefusalsAndGuessesOutside()
    {
        int inside = 0;
        int leaves = 0;
        var random = new Random(20261129);
        for (int i = 0; i < 60; i++)
        {
            (_, _, _, bool isInside, bool guessLeaves) = AnyGuessRig.Drawn(random.NextDouble).Solved();
            inside += isInside ? 1 : 0;
            leaves += isInside && guessLeaves ? 1 : 0;
        }

        Assert.InRange(inside, 20, 55);
        Assert.InRange(leaves, 15, inside);
    }
}
