namespace FuelMath;

/// <content>What must fit together.</content>
public sealed partial class FuelSystem
{
    /// <summary>Refuses a command that this system can't carry out.</summary>
    /// <exception cref="ArgumentException">
    /// It gives pulse widths for another number of stages, or a controller must compute them that was told nothing.
    /// </exception>
    internal void CheckCommand(FuelCommand command, string paramName)
    {
        command.CheckStages(Stages.Length, paramName);
        if (command.Kind == FuelCommand.CommandKind.OpenLoop)
        {
            CheckBeliefs(paramName);
        }
    }

    /// <summary>Refuses a system of which nobody said what the controller was told.</summary>
    internal void CheckBeliefs(string paramName)
    {
        if (MissingBelief(paramName) is { } missing)
        {
            throw missing;
        }
    }

    /// <summary>The refusal of a system of which nobody said what the controller was told; null where it was said.</summary>
    internal RefusedArgumentException? MissingBelief(string paramName) =>
        Stages.FirstOrDefault(s => s.Belief is null) is { } untold
            ? new(
                RefusalCode.Missing,
                $"Stage '{untold.Name:part}' must have what the controller was told of it (WithBelief, \"{"belief":missing}\" in a document); it has none.",
                paramName
            )
            : null;

    private void CheckPower()
    {
        string[] pumps = [.. Network.Lines.Where(l => l.Part.IsPump).Select(l => l.Name)];
        if (Power.Feeds.FirstOrDefault(f => !pumps.Contains(f.Line)) is { } stray)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"The supply feeds a pump '{stray.Line:given}' by itself, which is none of: {pumps:allowed}.",
                "power"
            );
        }
    }

    private void CheckStages()
    {
        if (Stages.Length is < 1 or > 2)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be {1:least} stage, or primaries and secondaries, {2:most}; {Stages.Length:value} stages given.",
                "stages"
            );
        }

        if (Stages.Length == 2 != Staging is not null)
        {
            throw Staging is null
                ? new RefusedArgumentException(
                    RefusalCode.Missing,
                    "Two stages need a rule of staging, by which they share the fuel; none was given.",
                    "staging"
                )
                : new RefusedArgumentException(
                    RefusalCode.NotNeeded,
                    "A rule of staging is for two stages, which share the fuel by it; there is one stage.",
                    "staging"
                );
        }

        if (Stages.Length == 2 && Stages[0].Name == Stages[1].Name)
        {
            throw new RefusedArgumentException(
                RefusalCode.Duplicate,
                $"Stage names must be unique; '{Stages[0].Name:given}' is there twice.",
                "stages"
            );
        }

        var nodes = Network.Nodes.Select(n => n.Name).ToHashSet(StringComparer.Ordinal);
        foreach (InjectorStage stage in Stages)
        {
            foreach (InjectorStage.Seat seat in stage.Seats)
            {
                if (!nodes.Contains(seat.Node))
                {
                    throw new RefusedArgumentException(
                        RefusalCode.NotThere,
                        $"Stage '{stage.Name:part}' has an injector at node '{seat.Node:node}', which is not among: {nodes:allowed}.",
                        "stages"
                    );
                }

                if (seat.Chamber > Engine.Chambers)
                {
                    throw new RefusedArgumentException(
                        RefusalCode.OutOfRange,
                        $"Stage '{stage.Name:part}' feeds chamber {seat.Chamber:value}; the engine has {Engine.Chambers:most}.",
                        "stages"
                    );
                }
            }

            for (int chamber = 1; chamber <= Engine.Chambers; chamber++)
            {
                int fed = stage.Seats.Count(s => s.Chamber == chamber);
                if (fed == 0 || fed != stage.Seats.Length / Engine.Chambers)
                {
                    throw new RefusedArgumentException(
                        RefusalCode.ChambersNotAlike,
                        $"Stage '{stage.Name:part}' must feed all {Engine.Chambers:chambers} chambers alike; chamber {chamber:chamber} has {fed:value} of {stage.Seats.Length:injectors} injectors.",
                        "stages"
                    );
                }
            }
        }
    }
}
