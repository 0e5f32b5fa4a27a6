using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Checks that observations belong to a set of injectors and hold readings.</summary>
internal static class ObservedChecks
{
    internal static void Shape(FittedInjectors set, MixtureObservation observation)
    {
        Count(observation, "pressure", observation.BelievedDifferentialPressures.Length, set.Stages.Length, "stages");
        if (!observation.ChamberAir.IsEmpty)
        {
            Count(observation, "air share", observation.ChamberAir.Length, set.ChamberCount, "chambers");
        }

        foreach (MixtureObservation.BankReading bank in observation.Banks)
        {
            Count(observation, "pulse width", bank.PulseWidths.Length, set.Stages.Length, "stages");
            if (!set.Banks.Contains(bank.Bank))
            {
                throw Wrong(
                    observation,
                    $"must name banks of the set ({string.Join(", ", set.Banks.Distinct().Order())}); it names {bank.Bank}"
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
                    observation,
                    $"must name chambers from 1 to {set.ChamberCount}; it names {chamber.Chamber}"
                );
            }

            if (!observation.Banks.Any(b => b.Bank == set.Banks[chamber.Chamber - 1]))
            {
                throw Wrong(
                    observation,
                    $"must give the pulse widths of bank {set.Banks[chamber.Chamber - 1]}, to which chamber {chamber.Chamber} belongs"
                );
            }
        }

        if (observation.Chambers.IsEmpty && !observation.Banks.Any(b => b.HasSensor))
        {
            throw Wrong(observation, "must have a sensor: it holds no reading of lambda or correction");
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
                observation,
                $"must have pulses of bank {bank.Bank} longer than the smallest that repeats, "
                    + $"{string.Join(", ", told.Select(t => Show.Milliseconds(t.SmallestWidth)))}; they were "
                    + $"{string.Join(", ", bank.WidthsSi.Select(Show.Milliseconds))}: at the smallest one they no longer show how much fuel was meant"
            );
        }

        if (all((stage, width) => width > stage.LargestWidth * (1 + Guard.EdgeTolerance)))
        {
            throw Wrong(
                observation,
                $"must have pulses of bank {bank.Bank} after which the injectors close, up to "
                    + $"{string.Join(", ", told.Select(t => Show.Milliseconds(t.LargestWidth)))}; they were "
                    + $"{string.Join(", ", bank.WidthsSi.Select(Show.Milliseconds))}: held open they no longer show how much fuel was meant"
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
                    state.Observation,
                    $"must have pulses that outlast the presumed dead time; those of {reading.Place}, "
                        + $"{string.Join(", ", reading.Widths.Select(Show.Milliseconds))}, give no fuel"
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
                observation,
                $"must give the lambda that bank {bank.Bank} showed: its correction, {Show.Percent(bank.CorrectionSi)}, is at the limit of "
                    + $"{Show.Percent(low)} to {Show.Percent(high)} and doesn't show how much was needed"
            );
        }
    }

    private static void Count(MixtureObservation observation, string what, int given, int needed, string of)
    {
        if (given != needed)
        {
            throw Wrong(
                observation,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"must give one {what} for each of {needed} {of}; it gives {given}"
                )
            );
        }
    }

    private static RefusedArgumentException Wrong(
        MixtureObservation observation,
        string what,
        string paramName = "observations"
    ) => new($"'{observation.Name}' {what}.", paramName);
}
