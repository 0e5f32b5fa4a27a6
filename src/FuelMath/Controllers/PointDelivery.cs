using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// The stages at one point: the widths that the controller commands for a mass, and the mass delivered. SI numbers.
/// </summary>
internal sealed class PointDelivery
{
    private readonly FittedInjectors set;
    private readonly MixturePoint point;
    private readonly StageModel[] believed;
    private readonly double[] transitions;
    private readonly double[][] flows;
    private readonly double[][] deadTimes;

    internal PointDelivery(FittedInjectors set, MixturePoint point)
    {
        (this.set, this.point) = (set, point);
        int stages = set.Stages.Length;
        believed = new StageModel[stages];
        (flows, deadTimes) = (new double[stages][], new double[stages][]);
        transitions = [.. set.Transitions.Select(t => t.TransitionDutyCycle.InSi())];
        UnitsNet.Density density = set.Fuel.DensityAt(point.Injectors.FuelTemperature);
        for (int s = 0; s < stages; s++)
        {
            FittedInjectors.Stage stage = set.Stages[s];
            ControllerBelief belief = stage.Belief;
            UnitsNet.Pressure pressure = point.Injectors.DifferentialPressures[s];
            believed[s] = new StageModel(
                [belief.Injector],
                point.Cycle.InSi() / stage.PulsesPerCycle,
                stage.PulsesPerCycle
            );
            believed[s]
                .Set(
                    [point.BelievedPressure(s, belief).InSi()],
                    belief.Fuel.DensityAt(belief.FuelTemperature).InSi(),
                    point.AtController.InSi(),
                    true
                );
            flows[s] = [.. stage.Fitted.Select(i => i.Rating.MassFlowSiAt(pressure, density))];
            deadTimes[s] = [.. stage.Fitted.Select(i => i.DeadTime.SiAt(point.Injectors.Voltage, pressure))];
        }

        // One map for all chambers: the controller uses their mean air and the believed fuel.
        double air = Enumerable.Range(0, set.ChamberCount).Average(point.AirSi) * point.BelievedAirRatio.InSi();
        BelievedMass = air / (set.Stages[0].Belief.Fuel.StoichiometricRatio.Si * point.Target.Si);
    }

    /// <summary>The fuel per chamber and cycle intended by the controller, uncorrected, kg.</summary>
    internal double BelievedMass { get; }

    /// <summary>The widths that the controller commands for a mass.</summary>
    internal double[] WidthsFor(double mass)
    {
        double[] widths = new double[believed.Length];
        StageSplit.Widths(believed, transitions, mass, widths);
        return widths;
    }

    /// <summary>The pulse of an injector, stage and chamber counted from 0.</summary>
    internal Injector.PulseResult Pulse(int stage, int chamber, double width) =>
        set.Stages[stage]
            .Fitted[chamber]
            .PulseAt(width, believed[stage].Period, flows[stage][chamber], deadTimes[stage][chamber]);

    /// <summary>The mass delivered to a chamber in a cycle, kg.</summary>
    internal double FuelOf(int chamber, double[] widths)
    {
        double fuel = 0;
        for (int s = 0; s < widths.Length; s++)
        {
            fuel += widths[s] > 0 ? Pulse(s, chamber, widths[s]).MassSi * set.Stages[s].PulsesPerCycle : 0;
        }

        return fuel;
    }

    /// <summary>
    /// The mean static flow of the fitted injectors over that of the believed one, at the point's own conditions.
    /// </summary>
    internal double FlowRatio(int stage, double believedFlow) => flows[stage].Average() / believedFlow;

    /// <summary>The factor at which chambers together get the fuel they need, within limits.</summary>
    internal (double Factor, bool IsAtLimit) Correction(int[] chambers, double low, double high)
    {
        double needed = chambers.Sum(point.AirSi) / (set.Fuel.StoichiometricRatio.Si * point.Target.Si);
        double FuelAt(double factor)
        {
            double[] widths = WidthsFor(factor * BelievedMass);
            return chambers.Sum(c => FuelOf(c, widths));
        }

        // Numbers within this relative distance of a limit count as inside.
        const double Near = 1e-9;
        if (FuelAt(high) < needed * (1 - Near))
        {
            return (high, true);
        }

        return FuelAt(low) > needed * (1 + Near) ? (low, true) : (Rising.Root(FuelAt, needed, low, high), false);
    }

    /// <summary>The same without the controller's limits; at a limit where no correction gives that fuel.</summary>
    internal (double Factor, bool IsAtLimit) UnlimitedCorrection(int[] chambers) => Correction(chambers, 1e-3, 1e3);

    internal PredictedMixture Report(bool isClosedLoop, Func<int[], BankCommand> command)
    {
        var chambers = new PredictedMixture.ChamberMixture[set.ChamberCount];
        var banks = ImmutableArray.CreateBuilder<PredictedMixture.BankMixture>();
        var checks = new MixtureChecks(set, point);
        foreach (int bank in set.Banks.Distinct().Order())
        {
            int[] own = [.. Enumerable.Range(0, set.ChamberCount).Where(c => set.Banks[c] == bank)];
            BankCommand given = command(own);
            double[] fuel = [.. own.Select(c => FuelOf(c, given.Widths))];
            for (int i = 0; i < own.Length; i++)
            {
                chambers[own[i]] = PredictedMixture.ChamberMixture.Of(
                    own[i] + 1,
                    point.AirSi(own[i]),
                    fuel[i],
                    set.Fuel
                );
            }

            double[] air = [.. own.Select(point.AirSi)];
            FuelMath.Lambda? lambda = PredictedMixture.ChamberMixture.MeanOf(
                air,
                fuel,
                set.Fuel.StoichiometricRatio.Si
            );
            var mixture = new PredictedMixture.BankMixture(
                bank,
                [.. own.Select(c => c + 1)],
                lambda,
                PredictedMixture.ChamberMixture.MeanOf(air, fuel, set.Fuel.StoichiometricWithoutOilSi),
                SiUnits.Ratio(given.Factor),
                lambda is { } seen ? SiUnits.Ratio(seen.Si / point.Target.Si) : null,
                given.IsAtLimit,
                [.. given.Widths.Select(SiUnits.Duration)]
            );
            banks.Add(mixture);
            checks.LookAtBank(
                mixture,
                isClosedLoop,
                given.IsAtLimit && UnlimitedCorrection(own) is (var needed, false) ? needed : null
            );
            checks.LookAtPulses(this, own, given.Widths);
        }

        checks.LookAtChambers(chambers, banks);
        return new(point, isClosedLoop, [.. chambers], banks.ToImmutable(), checks.Found);
    }
}
