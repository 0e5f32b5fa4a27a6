namespace FuelMath;

/// <summary>
/// One observation of a set in SI numbers, with the fuel intended by the controller and so its believed air.
/// </summary>
internal sealed class ObservedState
{
    private readonly FittedInjectors set;
    private readonly double pressureRise;
    private readonly int pulseFactor;

    internal ObservedState(FittedInjectors set, MixtureObservation observation, int index)
        : this(set, observation, index, 0, 1)
    {
        ObservedChecks.Shape(set, observation);
        foreach (MixtureObservation.BankReading bank in observation.Banks)
        {
            ObservedChecks.Widths(observation, bank, Believed());
        }
    }

    private ObservedState(
        FittedInjectors set,
        MixtureObservation observation,
        int index,
        double pressureRise,
        int pulseFactor
    )
    {
        (this.set, this.pressureRise, this.pulseFactor) = (set, pressureRise, pulseFactor);
        (Observation, Index) = (observation, index);
        Pressures = [.. observation.PresumedPressures.Select(p => p.InSi() + pressureRise)];
        Boost = observation.Manifold.Si - observation.Ambient.Si;
        Density = set.Fuel.DensityAt(observation.FuelTemperature).InSi();
        Volts = observation.AtInjectors.InSi();
        Cycle = observation.Cycle.InSi();
        Target = observation.Target.Si;
        int[] pulses = [.. set.Stages.Select(s => s.PulsesPerCycle * pulseFactor)];
        (Pulses, Periods) = (pulses, [.. pulses.Select(p => Cycle / p)]);
    }

    internal MixtureObservation Observation { get; }

    /// <summary>The index of the observation.</summary>
    internal int Index { get; }

    /// <summary>Presumed pressure across the injectors of each stage, Pa.</summary>
    internal double[] Pressures { get; }

    /// <summary>Gauge pressure of the manifold, Pa.</summary>
    internal double Boost { get; }

    internal double Density { get; }

    internal double Volts { get; }

    internal double Cycle { get; }

    internal double Target { get; }

    /// <summary>Pulses of each stage in a cycle, and the time between two of them, s.</summary>
    internal int[] Pulses { get; }

    internal double[] Periods { get; }

    internal double Manifold => Observation.Manifold.Si;

    /// <summary>Cycles per second, as a measure of speed.</summary>
    internal double Speed => 1 / Cycle;

    /// <summary>The readings of this observation.</summary>
    internal IEnumerable<SeenMixture> Readings()
    {
        foreach (MixtureObservation.BankReading bank in Observation.Banks.Where(b => b.HasSensor))
        {
            double seen = (bank.Observed?.Si ?? Target) / Target;
            yield return Reading(bank, Chambers(bank.Bank), seen, bank.UncertaintySi, $"bank {bank.Bank}");
        }

        foreach (MixtureObservation.ChamberReading chamber in Observation.Chambers)
        {
            yield return OfChamber(chamber.Chamber - 1, chamber.Observed.Si / Target, chamber.UncertaintySi);
        }
    }

    /// <summary>A reading of one chamber, counted from 0.</summary>
    internal SeenMixture OfChamber(int chamber, double seen, double uncertainty)
    {
        MixtureObservation.BankReading bank = Observation.Banks.First(b => b.Bank == set.Banks[chamber]);
        return Reading(bank, [chamber], seen, uncertainty, $"chamber {chamber + 1}");
    }

    /// <summary>
    /// The same point with a higher pressure that is also entered in the controller, or with the fuel in more pulses.
    /// </summary>
    internal ObservedState After(double rise, int pulses) => new(set, Observation, Index, rise, pulses);

    private int[] Chambers(int bank) => [.. Enumerable.Range(0, set.ChamberCount).Where(c => set.Banks[c] == bank)];

    private SeenMixture Reading(
        MixtureObservation.BankReading bank,
        int[] chambers,
        double seen,
        double uncertainty,
        string place
    )
    {
        double commanded = Commanded(bank);
        double[] widths = bank.WidthsSi;
        if (pressureRise != 0 || pulseFactor != 1)
        {
            widths = new double[widths.Length];
            double[] transitions = [.. set.Transitions.Select(t => t.TransitionDutyCycle.InSi())];
            StageSplit.Widths(Believed(), transitions, commanded, widths);
        }

        double air = commanded / bank.CorrectionSi * set.Stages[0].Belief.Fuel.StoichiometricRatio.Si * Target;
        double shares = Observation.ChamberAir.IsEmpty
            ? chambers.Length
            : chambers.Sum(c => Observation.ChamberAir[c].InSi());
        return new(this, place, chambers, widths, air * shares, Math.Log(seen), uncertainty);
    }

    /// <summary>The fuel per chamber and cycle intended by the controller, correction included, kg.</summary>
    private double Commanded(MixtureObservation.BankReading bank)
    {
        StageModel[] told = Believed(0, 1);
        double mass = 0;
        for (int s = 0; s < told.Length; s++)
        {
            mass += bank.WidthsSi[s] > 0 ? told[s].MassAt(bank.WidthsSi[s]) : 0;
        }

        return mass;
    }

    private StageModel[] Believed() => Believed(pressureRise, pulseFactor);

    /// <summary>The stages as believed by the controller.</summary>
    private StageModel[] Believed(double rise, int factor)
    {
        var stages = new StageModel[set.Stages.Length];
        for (int s = 0; s < stages.Length; s++)
        {
            ControllerBelief belief = set.Stages[s].Belief;
            int pulses = set.Stages[s].PulsesPerCycle * factor;
            stages[s] = new StageModel([belief.Injector], Cycle / pulses, pulses);
            stages[s]
                .Set(
                    [Observation.BelievedDifferentialPressures[s].InSi() + rise],
                    belief.Fuel.DensityAt(belief.FuelTemperature).InSi(),
                    Observation.AtController.InSi(),
                    true
                );
        }

        return stages;
    }
}
