using System.Globalization;
using FsCheck.Xunit;
using FuelMath.Formulas;
using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// The working of a solved state goes through the parts' own formulas, not through the solver's laws: its residual is a
/// second opinion on the state.
/// </summary>
[Properties(Arbitrary = [typeof(SystemArbitraries)], MaxTest = 60)]
public sealed class StateWorkingTests
{
    /// <summary>
    /// The solver accepts a line that misses its law by 1 mPa, or by a billionth of the greatest pressure; a way has fewer
    /// than a dozen lines.
    /// </summary>
    private const double Lines = 12;

    private static readonly OperatingPoint Hard = Workshop.Point(6000, 100, Workshop.Hold(0.88));

    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    public void Residual_OfBundledSystems_IsWithinTheSolversTolerance(string name)
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System(name));

        foreach (OperatingPoint point in OperatingListDocument.Read(TestFiles.Points(name)))
        {
            Assert.Equal(system.Network.Nodes.Length, Checked(system, system.Solve(point)));
        }
    }

    [Property]
    public void Residual_OfAnyPoint_IsWithinTheSolversTolerance(RigPoint point)
    {
        FuelSystem system = Workshop.Four();

        Assert.Equal(system.Network.Nodes.Length, Checked(system, system.Solve(point.Open)));
    }

    [Fact]
    public void Residual_OfOtherPlumbing_IsWithinTheSolversTolerance()
    {
        FuelSystem[] systems = [PlumbingRig.WithoutReturn(), SurgeTankSystemTests.With(1), Workshop.Four()];

        Assert.All(systems, s => Assert.Equal(s.Network.Nodes.Length, Checked(s, s.Solve(Hard))));
    }

    [Fact]
    public void PressureWorkingAt_TheRail_GoesFromTheTankLineByLine()
    {
        SystemState state = Workshop.Four().Solve(Hard);

        Working working = state.PressureWorkingAt("rail end").In("bar");

        Close.Within(1e-8, state.PressureAt("rail end").AboveAmbient.Bars, working.Conversion!.ToValue);
        Assert.Equal(
            ["pump outlet", "filter outlet", "rail start", "rail end"],
            working.Lines.Where(l => l.Symbol.Name == "p").Select(l => l.Symbol.Meaning.Split('\'')[1])
        );
        Assert.All(working.Lines, l => Assert.NotNull(l.Source));
        Assert.Contains("L/h", working.ToText(CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }

    [Property]
    public void DeliveryWorkingOf_EachInjector_EndsInItsPulse(RigPoint point)
    {
        SystemState state = Workshop.Four().Solve(point.Open);

        for (int i = 0; i < state.Injectors.Length; i++)
        {
            SystemState.InjectorResult injector = state.Injectors[i];
            double whole = injector.Pulse.StaticMassFlow.KilogramsPerSecond * injector.Pulse.Period.Seconds;
            Close.WithinOf(whole, 1e-7, injector.Pulse.Mass.Kilograms, state.DeliveryWorkingOf(i).Value);
        }
    }

    [Fact]
    public void PumpWorkingOf_ARunningPump_MeetsTheSystem()
    {
        SystemState state = Workshop.Four().Solve(Hard);

        Working working = state.PumpWorkingOf(0);

        Assert.InRange(Math.Abs(working.Value), 0, 2e-3);
        Working.Line asked = working.Lines.Single(l => l.Symbol.Name == "dps");
        Close.Within(1e-9, state.Pumps[0].PressureRise.Pascals, asked.Value);
    }

    [Fact]
    public void Workings_OfWhatIsNotThere_Refuse()
    {
        SystemState state = Workshop.Four().Solve(Hard);

        Assert.Throws<ArgumentException>("node", () => state.PressureWorkingAt("nowhere"));
        Assert.Throws<ArgumentException>("node", () => state.ResidualWorkingAt("nowhere"));
        Assert.Throws<ArgumentOutOfRangeException>("injector", () => state.DeliveryWorkingOf(4));
        Assert.Throws<ArgumentOutOfRangeException>("pump", () => state.PumpWorkingOf(-1));
    }

    [Fact]
    public void DeliveryWorkingOf_AShutInjector_IsNothing()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(3000, 60, FuelCommand.Cut));

        Assert.Equal(0, state.Injectors[0].Pulse.Mass.Kilograms);
        Close.WithinOf(1e-6, 1e-9, 0, state.DeliveryWorkingOf(0).Value);
    }

    /// <summary>Holds the residual of each node that a way leads to, and counts those.</summary>
    private static int Checked(FuelSystem system, SystemState state)
    {
        int count = 0;
        foreach (Network.Node node in system.Network.Nodes)
        {
            Working working;
            try
            {
                working = state.ResidualWorkingAt(node.Name);
            }
            catch (InvalidOperationException)
            {
                continue;
            }

            count++;
            double greatest = system.Network.Nodes.Max(n => Math.Abs(state.PressureAt(n.Name).AboveAmbient.Pascals));
            Assert.InRange(Math.Abs(working.Value), 0, Lines * (1e-3 + (1e-9 * greatest)));
        }

        return count;
    }
}
