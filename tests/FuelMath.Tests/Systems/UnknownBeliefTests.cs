using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What a controller was told matters where it computes pulse widths by itself, and nowhere else.</summary>
public sealed class UnknownBeliefTests
{
    private static readonly FuelSystem Told = Workshop.Four();

    private static readonly FuelSystem Untold = new(
        Told.Name,
        Told.Fuel,
        Told.Engine,
        Told.Network,
        Told.Stages.Select(s => new InjectorStage(s.Name, s.Discharge, s.PulsesPerCycle, s.Seats)),
        Told.Power,
        Told.Source
    );

    public static TheoryData<string> Commands => ["held", "cut", "open", "widths"];

    /// <summary>The same equations, from another start: the same state within what the solver promises.</summary>
    [Theory]
    [MemberData(nameof(Commands))]
    public void Solve_MixtureHeldOrWidthsGiven_NeedsNoBelief(string command)
    {
        OperatingPoint point = At(
            command switch
            {
                "held" => Workshop.Hold(0.9),
                "cut" => FuelCommand.Cut,
                "open" => FuelCommand.AllOpen,
                _ => FuelCommand.FromPulseWidths([Duration.FromMilliseconds(6)]),
            }
        );

        SystemState told = Told.Solve(point);
        SystemState untold = Untold.Solve(point);

        Close.Within(
            1e-6,
            told.PressureAt("rail end").AboveAmbient.Pascals,
            untold.PressureAt("rail end").AboveAmbient.Pascals
        );
        Close.Within(1e-6, told.Stages[0].PulseWidth.Seconds, untold.Stages[0].PulseWidth.Seconds);
        Assert.Equal(told.Lambda is null, untold.Lambda is null);
        Close.Within(1e-6, told.Lambda?.ToRatio() ?? 1, untold.Lambda?.ToRatio() ?? 1);
    }

    /// <summary>A correction is one of what the controller believes: of nothing there is none.</summary>
    [Fact]
    public void Banks_WithoutBelief_HaveNoCorrection()
    {
        OperatingPoint point = At(Workshop.Hold(0.9));

        Assert.NotNull(Told.Solve(point).Banks[0].Correction);
        Assert.Null(Untold.Solve(point).Banks[0].Correction);
    }

    [Fact]
    public void OpenLoop_WithoutBelief_IsRefused()
    {
        OperatingPoint point = At(Workshop.Open(0.9));

        Assert.Throws<RefusedArgumentException>("point", () => Untold.Solve(point));
        Assert.Throws<RefusedArgumentException>(
            "conditions",
            () => new Sweep(Untold, point, [Workshop.Rpm(3000)], [Workshop.Kilopascals(90)], CancellationToken.None)
        );
        Assert.Throws<RefusedArgumentException>(
            "assessment",
            () => new TuningSheet(new SystemAssessment(Untold, [At(Workshop.Hold(0.9))]))
        );
    }

    [Fact]
    public void Document_WithoutBelief_ComesBackWithoutOne()
    {
        string text = SystemDocument.Write(Untold);

        Assert.DoesNotContain("belief", text, StringComparison.Ordinal);
        Assert.Null(SystemDocument.Read(text).Stages[0].Belief);
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
    }

    [Fact]
    public void WithBelief_OtherWiths_KeepIt()
    {
        InjectorStage stage = Untold.Stages[0].WithBelief(Told.Stages[0].Belief!);

        Assert.Same(Told.Stages[0].Belief, stage.WithFiringGroups(2).Belief);
        Assert.Same(Told.Stages[0].Belief, stage.WithInjectors(stage.Seats.Select(s => s.Injector)).Belief);
        Assert.Null(Untold.Stages[0].WithFiringGroups(2).Belief);
    }

    private static OperatingPoint At(FuelCommand command) =>
        new(
            "point",
            Workshop.Rpm(4000),
            new IntakeAir(Workshop.Kilopascals(90), Workshop.Kilopascals(100), Workshop.Celsius(30)),
            Workshop.Celsius(30),
            ElectricPotential.FromVolts(13.8),
            command
        );
}
