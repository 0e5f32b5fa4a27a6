using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Makes the parts and the evidence of a <see cref="SystemState"/> of a settled solve.</summary>
internal static class SystemReport
{
    private const string BetweenVoltages =
        "A pump runs between two measured voltages, where flow and current are taken as linear in voltage: not proven.";

    internal static SystemParts PartsOf(ReportedSolve solve)
    {
        (FuelSystem system, SolverState state) = (solve.System, solve.State);
        ImmutableArray<SystemState.InjectorResult> injectors = Injectors(solve);
        (ImmutableArray<PredictedMixture.ChamberMixture> chambers, Lambda? lambda, Lambda? ifOilUnburned) = Mixture(
            solve
        );
        var parts = new SystemParts
        {
            Injectors = injectors,
            Stages = Stages(solve, injectors),
            Pumps = Pumps(solve),
            Regulators = Regulators(solve),
            Chambers = chambers,
            Banks = BankReport.Of(system, state, chambers),
            Lambda = lambda,
            LambdaIfOilUnburned = ifOilUnburned,
            SurgeTanks = system.Layout.BalancesIn(solve.Network),
            Target = state.Point.Command.Lambda,
            SourceVolts = state.SourceVolts,
            Wiring = system.Power.StateAt(state.Point.Supply, state.FeedAmperes, state.InjectorConductance),
        };
        return parts.WithReserve(PumpReserve.Of(solve, parts), PumpOutlets.Demand(solve));
    }

    internal static SystemState.SolutionEvidence EvidenceOf(ReportedSolve solve) =>
        new(
            solve.State.Rounds,
            solve.State.Iterations,
            solve.Network.WorstMassImbalance,
            solve.Network.WorstMassImbalanceNode,
            solve.Network.WorstPressureResidual,
            solve.Network.WorstPressureResidualLine,
            Estimates(solve.State)
        );

    private static ImmutableArray<string> Estimates(SolverState state)
    {
        ImmutableArray<string> estimates = state.Path.Estimates;
        if (Array.Exists(state.Pumps, p => p.IsBetweenVoltages))
        {
            estimates = estimates.Add(BetweenVoltages);
        }

        foreach (Pump pump in state.Path.Pumps)
        {
            if (PumpFindings.Words(pump, state.Density) is { } words)
            {
                estimates = estimates.Add(words);
            }
        }

        foreach (PumpReading pump in state.Pumps)
        {
            if (pump.EstimateBasis is { } basis)
            {
                estimates = estimates.Add($"A pump curve is an estimate: {basis}.");
            }
        }

        return estimates;
    }

    private static ImmutableArray<SystemState.InjectorResult> Injectors(ReportedSolve solve)
    {
        (FuelSystem system, SolverState state) = (solve.System, solve.State);
        var results = ImmutableArray.CreateBuilder<SystemState.InjectorResult>(state.Path.Seats.Length);
        for (int s = 0; s < system.Stages.Length; s++)
        {
            StageModel model = state.Fitted(s);
            for (int i = 0; i < system.Stages[s].Seats.Length; i++)
            {
                int seat = state.Path.First[s] + i;
                results.Add(
                    new SystemState.InjectorResult(
                        system.Stages[s].Name,
                        state.Path.Seats[seat],
                        SiUnits.Pressure(state.TrueDifferences[seat]),
                        SiUnits.ElectricPotential(state.InjectorVolts),
                        model.Pulse(i, state.Widths.Of(seat)),
                        SiUnits.VolumeFlow(solve.InjectorFlows[seat]),
                        state.Widths.Of(seat) == 0
                    )
                );
            }
        }

        return results.MoveToImmutable();
    }

    private static ImmutableArray<SystemState.StageResult> Stages(
        ReportedSolve solve,
        ImmutableArray<SystemState.InjectorResult> injectors
    )
    {
        (FuelSystem system, SolverState state) = (solve.System, solve.State);
        var results = ImmutableArray.CreateBuilder<SystemState.StageResult>(system.Stages.Length);
        for (int s = 0; s < system.Stages.Length; s++)
        {
            int first = state.Path.First[s];
            int count = system.Stages[s].Seats.Length;
            double flow = 0;
            double least = double.PositiveInfinity;
            bool open = false;
            for (int seat = first; seat < first + count; seat++)
            {
                flow += solve.InjectorFlows[seat];
                least = Math.Min(least, state.TrueDifferences[seat]);
                open |= injectors[seat].Pulse.IsHeldOpen;
            }

            (double overTime, double overFlow) = Pulsing(solve, injectors, s);
            results.Add(
                new SystemState.StageResult(
                    system.Stages[s].Name,
                    SiUnits.Duration(state.Widths.Longest(s)),
                    SiUnits.Duration(state.Periods[s]),
                    SiUnits.Ratio(state.DutyCycle(s)),
                    SiUnits.Pressure(least),
                    SiUnits.MassFlow(flow * state.Density),
                    system.Stages[s].FiringGroups,
                    SiUnits.Ratio(overTime),
                    SiUnits.Ratio(overFlow),
                    state.Widths.Longest(s) == 0,
                    open
                )
            );
        }

        return results.MoveToImmutable();
    }

    /// <summary>How losses rise because a stage draws in pulses: its injectors' mean flows at their static flow.</summary>
    private static (double OverTime, double OverFlow) Pulsing(
        ReportedSolve solve,
        ImmutableArray<SystemState.InjectorResult> injectors,
        int stage
    )
    {
        (FuelSystem system, SolverState state) = (solve.System, solve.State);
        int first = state.Path.First[stage];
        Span<double> flows = stackalloc double[system.Stages[stage].Seats.Length];
        Span<double> shares = stackalloc double[flows.Length];
        for (int i = 0; i < flows.Length; i++)
        {
            int seat = first + i;
            bool always =
                injectors[seat].Pulse.IsHeldOpen || state.Point.Command.Kind == FuelCommand.CommandKind.AllOpen;
            flows[i] = state.StaticFlow(seat);
            shares[i] = always ? 1 : Math.Clamp(solve.InjectorFlows[seat] / flows[i], 0, 1);
        }

        return PulsingLoss.Of(flows, shares, system.Stages[stage].FiringGroups ?? 1);
    }

    private static ImmutableArray<SystemState.PumpResult> Pumps(ReportedSolve solve)
    {
        (FuelSystem system, SolverState state) = (solve.System, solve.State);
        var results = ImmutableArray.CreateBuilder<SystemState.PumpResult>(state.PumpRises.Length);
        for (int i = 0; i < system.Network.Lines.Length; i++)
        {
            if (system.Network.Lines[i].Part is not Pump)
            {
                continue;
            }

            int pump = results.Count;
            results.Add(
                new SystemState.PumpResult(
                    system.Network.Lines[i].Name,
                    SiUnits.ElectricPotential(state.FeedVolts[state.Path.Feeds[i]]),
                    SiUnits.ElectricCurrent(state.PumpAmperes[pump]),
                    SiUnits.VolumeFlow(solve.LineFlows[i]),
                    SiUnits.Pressure(state.PumpRises[pump]),
                    solve.ConditionOf(i) is Network.LineCondition.Stalled or Network.LineCondition.DeadHeaded,
                    Greatest((Pump)system.Network.Lines[i].Part, state, pump, solve.LineFlows[i])
                )
            );
        }

        return results.MoveToImmutable();
    }

    /// <summary>The flow by the principle that gives more, where it is not known which one the pump has.</summary>
    private static VolumeFlow? Greatest(Pump pump, SolverState state, int index, double flow) =>
        pump.Principle == Pump.WorkingPrinciple.NotKnown
        && state.Pumps[index].FlowAt(state.PumpRises[index], Math.Max(pump.DensityRatio(state.Density), 1)) is { } other
            ? SiUnits.VolumeFlow(Math.Max(other * (state.Shifts?.PumpFlow ?? 1), flow))
            : null;

    private static ImmutableArray<SystemState.RegulatorResult> Regulators(ReportedSolve solve)
    {
        (FuelSystem system, SolverState state) = (solve.System, solve.State);
        var results = ImmutableArray.CreateBuilder<SystemState.RegulatorResult>();
        for (int i = 0; i < system.Network.Lines.Length; i++)
        {
            Line line = system.Network.Lines[i];
            if (line.Part is not IRegulator regulator)
            {
                continue;
            }

            results.Add(
                new SystemState.RegulatorResult(
                    line.Name,
                    StateOf(solve.ConditionOf(i)),
                    regulator.IsReducing,
                    Known(solve.NodePressures[system.Network.PlaceOf(line.From)]),
                    Known(solve.NodePressures[system.Network.PlaceOf(line.To)]),
                    new GaugePressure(ReferenceReading.PortPressure(regulator.Reference, state.InputsOf(i))),
                    SiUnits.VolumeFlow(Math.Max(solve.LineFlows[i], 0))
                )
            );
        }

        return results.ToImmutable();
    }

    private static GaugePressure? Known(double pascals) => double.IsNaN(pascals) ? null : new GaugePressure(pascals);

    private static RegulatorCondition StateOf(Network.LineCondition condition) =>
        condition switch
        {
            Network.LineCondition.Regulating => RegulatorCondition.Regulating,
            Network.LineCondition.FullyOpen => RegulatorCondition.FullyOpen,
            _ => RegulatorCondition.Seated,
        };

    /// <summary>Air and fuel of each chamber, and the mean that one sensor sees: total air over total fuel.</summary>
    private static (
        ImmutableArray<PredictedMixture.ChamberMixture> Chambers,
        Lambda? Mean,
        Lambda? IfOilUnburned
    ) Mixture(ReportedSolve solve)
    {
        (FuelSystem system, SolverState state) = (solve.System, solve.State);
        if (state.AirMass == 0)
        {
            return ([], null, null);
        }

        double[] fuel = new double[system.Engine.Chambers];
        ChamberFuel.Fill(state, solve.InjectorFlows, fuel);
        double[] air = new double[fuel.Length];
        Array.Fill(air, state.AirMass);
        return (
            [.. fuel.Select((mass, i) => PredictedMixture.ChamberMixture.Of(i + 1, state.AirMass, mass, system.Fuel))],
            PredictedMixture.ChamberMixture.MeanOf(air, fuel, system.Fuel.StoichiometricRatio.Si),
            PredictedMixture.ChamberMixture.MeanOf(air, fuel, system.Fuel.StoichiometricWithoutOilSi)
        );
    }
}
