using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>A whole fuel system and the chambers by themselves, at the pressures and voltage that the system found.</summary>
public sealed class SystemAgreementTests
{
    /// <summary>
    /// The system solves until nothing moves by more than 1e-10 of itself. The chambers by themselves take one pressure for
    /// all: that of each chamber's injector is put in, one chamber after another.
    /// </summary>
    [Theory]
    [InlineData(900, 35)]
    [InlineData(3000, 80)]
    [InlineData(6500, 180)]
    public void OpenLoop_AtTheSystemsPressures_AgreesWithTheSystem(double rpm, double kilopascals)
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector[] fitted =
        [
            rated,
            rated.WithFlowScale("weak", Ratio.FromPercent(88), Workshop.Invented),
            Workshop.Injector("slow", 500, extraDeadMilliseconds: 0.15),
            rated,
        ];
        FuelSystem system = Workshop.Four(fitted, believed: rated);
        OperatingPoint operating = Workshop.Point(rpm, kilopascals, Workshop.Open(0.95));
        SystemState state = system.Solve(operating);
        var chambers = new FittedInjectors(
            system.Fuel,
            [new FittedInjectors.Stage("primary", system.Stages[0].Belief!, 1, fitted)],
            [],
            [1, 1, 1, 1],
            MixtureLimits.CommonPractice
        );
        Engine engine = system.Engine;
        for (int chamber = 0; chamber < 4; chamber++)
        {
            var point = new MixturePoint(
                "same",
                engine.InjectionPeriod(operating.Speed, 1),
                engine.AirMassPerChamberCycle(operating.Speed, operating.Air.Manifold, operating.Air.Charge),
                Trade.Lambda(0.95),
                new InjectorConditions(
                    [state.Injectors[chamber].DifferentialPressure],
                    operating.Fuel,
                    state.Injectors[chamber].Voltage
                )
            ).WithVoltageAtController(operating.Supply);
            PredictedMixture.ChamberMixture alone = chambers.OpenLoop(point, Trade.Share(1)).Chambers[chamber];

            Close.Within(1e-8, state.Chambers[chamber].Lambda!.Value.ToRatio(), alone.Lambda!.Value.ToRatio());
        }
    }

    /// <summary>Primaries and secondaries: the schedule gives the widths that the system found.</summary>
    [Theory]
    [InlineData(120)]
    [InlineData(190)]
    [InlineData(230)]
    public void Schedule_AtTheSystemsPressures_AgreesWithTheSystem(double kilopascals)
    {
        Injector second = Workshop.Injector("second", 700);
        FuelSystem system = Workshop.Four(secondaries: (second, 0.6), injectorOhms: 0.001);
        OperatingPoint operating = Workshop.Point(7000, kilopascals, Workshop.Open(0.85));
        SystemState state = system.Solve(operating);
        ControllerBelief belief = system.Stages[0].Belief!;
        var schedule = new StageSchedule(
            system.Stages.Select(s =>
                new StageSchedule.Stage(
                    s.Name,
                    s.Belief!.Injector,
                    1,
                    s.Belief!.DifferentialPressure,
                    s.Belief!.Fuel.DensityAt(s.Belief!.FuelTemperature),
                    operating.Supply
                ).WithPulsesPerCycle(s.PulsesPerCycle)
            ),
            [system.Staging!],
            system.Engine.InjectionPeriod(operating.Speed, 1)
        );
        StageSchedule.StagedPulses shared = schedule.At(
            FuelDemand.FromAir(
                system.Engine.AirMassPerChamberCycle(operating.Speed, operating.Air.Manifold, operating.Air.Charge),
                belief.Fuel.StoichiometricRatio,
                Trade.Lambda(0.85)
            )
        );

        for (int s = 0; s < 2; s++)
        {
            Close.WithinOf(
                17,
                1e-10,
                state.Stages[s].PulseWidth.Milliseconds,
                shared.Stages[s].Pulse.PulseWidth.Milliseconds
            );
        }
    }
}
