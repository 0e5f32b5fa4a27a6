using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Checks that observations belong to a set of injectors and hold readings.</summary>
internal static class ObservedChecks
{
    internal static void Shape(FittedInjectors set, MixtureObservation observation)
    {
        Count(observation, "pressure", observation.BelievedDifferentialPressures.Length, set.Stages.Length, "stage");
        if (!observation.ChamberAir.IsEmpty)
        {
            Count(observation, "air share", observation.ChamberAir.Length, set.ChamberCount, "chamber");
        }

        foreach (MixtureObservation.BankReading bank in observation.Banks)
        {
            Count(observation, "pulse width", bank.PulseWidths.Length, set.Stages.Length, "stage");
            if (!set.Banks.Contains(bank.Bank))
            {
                throw Wrong(
                    RefusalCode.NotOneOf,
                    $"'{observation.Name:part}' must name banks of the set ({set.Banks.Distinct().Order():allowed}); it names {bank.Bank:value}."
                );
            }

            if (bank is { HasSensor: true, Observed: null })
            {
                Correction(set, observation, bank);
            }
        }

        foreach (MixtureObservation.ChamberReading chamber in observation.Chambers)
        {
            if (chamber.Chamber > set.ChamberCount)
            {
                throw Wrong(
                    RefusalCode.OutOfRange,
                    $"'{observation.Name:part}' must name chambers from {1:least} to {set.ChamberCount:most}; it names {chamber.Chamber:value}."
                );
            }

            if (!observation.Banks.Any(b => b.Bank == set.Banks[chamber.Chamber - 1]))
            {
                throw Wrong(
                    RefusalCode.Missing,
                    $"'{observation.Name:part}' must give the pulse widths of bank {set.Banks[chamber.Chamber - 1]:bank}, to which chamber {chamber.Chamber:chamber} belongs."
                );
            }
        }

        if (observation.Chambers.IsEmpty && !observation.Banks.Any(b => b.HasSensor))
        {
            throw Wrong(
                RefusalCode.SensorNeeded,
                $"'{observation.Name:part}' must have a sensor: it holds no reading of lambda or correction."
            );
        }
    }

    /// <summary>Checks that the intended fuel mass follows from the widths.</summary>
    internal static void Widths(MixtureObservation observation, MixtureObservation.BankReading bank, StageModel[] told)
    {
        bool all(Func<StageModel, double, bool> of) =>
            told.Zip(bank.WidthsSi).Where(p => p.Second > 0).All(p => of(p.First, p.Second));
        if (all((stage, width) => width <= stage.SmallestWidth * (1 + Guard.EdgeTolerance)))
        {
            throw Wrong(
                RefusalCode.PulsesTooShort,
                $"'{observation.Name:part}' must have pulses of bank {bank.Bank:bank} longer than the smallest that repeats, {told.Select(t => Amount.Milliseconds(t.SmallestWidth)):above}; they were {bank.WidthsSi.Select(Amount.Milliseconds):value}: at the smallest one they no longer show how much fuel was meant."
            );
        }

        if (all((stage, width) => width > stage.LargestWidth * (1 + Guard.EdgeTolerance)))
        {
            throw Wrong(
                RefusalCode.PulsesTooLong,
                $"'{observation.Name:part}' must have pulses of bank {bank.Bank:bank} after which the injectors close, up to {told.Select(t => Amount.Milliseconds(t.LargestWidth)):most}; they were {bank.WidthsSi.Select(Amount.Milliseconds):value}: held open they no longer show how much fuel was meant."
            );
        }
    }

    /// <summary>Checks that the presumed set gives fuel for every reading, and that no table refuses.</summary>
    internal static void Predicted(FittedInjectors set, IEnumerable<SeenMixture> readings)
    {
        foreach (SeenMixture reading in readings)
        {
            ObservedState state = reading.State;
            for (int s = 0; s < set.Stages.Length; s++)
            {
                foreach (int chamber in reading.Chambers)
                {
                    Injector injector = set.Stages[s].Fitted[chamber];
                    UnitsNet.Pressure pressure = SiUnits.Pressure(state.Pressures[s]);
                    _ = injector.DeadTime.SiAt(state.Observation.AtInjectors, pressure);
                    _ = injector.Rating.MassFlowSiAt(pressure, SiUnits.Density(state.Density));
                }
            }

            if (!(MixturePrediction.Fuel<Real>(set, reading, default, 1).Value > 0))
            {
                throw Wrong(
                    RefusalCode.NoFuel,
                    $"'{state.Observation.Name:part}' must have pulses that outlast the presumed dead time; those of {reading.Place:place}, {reading.Widths.Select(Amount.Milliseconds):value}, give no fuel."
                );
            }
        }
    }

    private static void Correction(
        FittedInjectors set,
        MixtureObservation observation,
        MixtureObservation.BankReading bank
    )
    {
        (double low, double high) = (set.Limits.LowestCorrection.InSi(), set.Limits.HighestCorrection.InSi());
        const double slack = 1e-6;
        if (bank.CorrectionSi <= low * (1 + slack) || bank.CorrectionSi >= high * (1 - slack))
        {
            throw Wrong(
                RefusalCode.CorrectionAtLimit,
                $"'{observation.Name:part}' must give the lambda that bank {bank.Bank:bank} showed: its correction, {Amount.Percent(bank.CorrectionSi):value}, is at the limit of {Amount.Percent(low):above} to {Amount.Percent(high):below} and doesn't show how much was needed."
            );
        }
    }

    private static void Count(MixtureObservation observation, string what, int given, int needed, string of)
    {
        if (given != needed)
        {
            throw Wrong(
                RefusalCode.Count,
                $"'{observation.Name:part}' must give one {what:subject} for each {of:each}, {needed:exactly} in all; it gives {given:value}."
            );
        }
    }

    private static RefusedArgumentException Wrong(
        RefusalCode code,
        RefusalText sentence,
        string paramName = "observations"
    ) => new(code, sentence, paramName);
}
