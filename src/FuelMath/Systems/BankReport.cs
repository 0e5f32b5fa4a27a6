using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Makes the <see cref="BankResult"/>s of a settled solve.</summary>
internal static class BankReport
{
    internal static ImmutableArray<BankResult> Of(
        FuelSystem system,
        SolverState state,
        ImmutableArray<PredictedMixture.ChamberMixture> chambers
    )
    {
        if (chambers.IsEmpty)
        {
            return [];
        }

        var results = ImmutableArray.CreateBuilder<BankResult>(state.Path.BankCount);
        for (int bank = 0; bank < state.Path.BankCount; bank++)
        {
            results.Add(
                new BankResult(
                    bank + 1,
                    [.. chambers.Select(c => c.Chamber).Where(c => system.Banks[c - 1] == bank + 1)],
                    MeanOf(system, chambers, bank + 1, system.Fuel.StoichiometricRatio.Si),
                    MeanOf(system, chambers, bank + 1, system.Fuel.StoichiometricWithoutOilSi),
                    Correction(system, state, bank),
                    [.. state.Widths.OfBank(bank).ToArray().Select(SiUnits.Duration)]
                )
            );
        }

        return results.MoveToImmutable();
    }

    /// <summary>Total air over total fuel of a bank, counted from 1; null where there is none.</summary>
    private static Lambda? MeanOf(
        FuelSystem system,
        ImmutableArray<PredictedMixture.ChamberMixture> chambers,
        int bank,
        double stoichiometric
    )
    {
        PredictedMixture.ChamberMixture[] own = [.. chambers.Where(c => system.Banks[c.Chamber - 1] == bank)];
        return own.Length == 0
            ? null
            : PredictedMixture.ChamberMixture.MeanOf(
                [.. own.Select(c => c.Air.InSi())],
                [.. own.Select(c => c.Fuel.InSi())],
                stoichiometric
            );
    }

    /// <summary>
    /// The fuel that the controller takes the bank's widths to give, over what it would have given without a sensor; null
    /// without one, and where its belief is not known or gives none.
    /// </summary>
    private static UnitsNet.Ratio? Correction(FuelSystem system, SolverState state, int bank)
    {
        if (
            state.Point.Command is not { Kind: FuelCommand.CommandKind.HoldLambda, Lambda: { } asked }
            || system.Stages.Any(s => s.Belief is null)
        )
        {
            return null;
        }

        double given = 0;
        try
        {
            for (int s = 0; s < system.Stages.Length; s++)
            {
                double width = state.Widths.OfBank(bank)[s];
                given += width > 0 ? state.Believed(s, guessed: false).MassAt(width) : 0;
            }
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return null;
        }

        double meant = state.BelievedAirMass / (system.Stages[0].Belief!.Fuel.StoichiometricRatio.Si * asked.Si);
        return SiUnits.Ratio(given / meant);
    }
}
