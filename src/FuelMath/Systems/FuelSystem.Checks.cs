namespace FuelMath;

/// <content>What must fit together.</content>
public sealed partial class FuelSystem
{
    private void CheckPower()
    {
        string[] pumps = [.. Network.Lines.Where(l => l.Part is Pump or StoppedPump).Select(l => l.Name)];
        if (Power.Feeds.FirstOrDefault(f => !pumps.Contains(f.Line)) is { } stray)
        {
            throw new RefusedArgumentException(
                $"The supply feeds a pump '{stray.Line}' by itself, which is none of: {string.Join(", ", pumps)}.",
                "power"
            );
        }
    }

    private void CheckStages()
    {
        if (Stages.Length is < 1 or > 2)
        {
            throw new RefusedArgumentException(
                $"Must be one stage, or primaries and secondaries; {Stages.Length} stages given.",
                "stages"
            );
        }

        if (Stages.Length == 2 != Staging is not null)
        {
            throw new RefusedArgumentException(
                $"Two stages need a rule by which they share the fuel, and one has none; {Stages.Length} given, {(Staging is null ? "without" : "with")} one.",
                "staging"
            );
        }

        if (Stages.Length == 2 && Stages[0].Name == Stages[1].Name)
        {
            throw new RefusedArgumentException(
                $"Stage names must be unique; '{Stages[0].Name}' is there twice.",
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
                        $"Stage '{stage.Name}' has an injector at node '{seat.Node}', which is not among: {string.Join(", ", nodes)}.",
                        "stages"
                    );
                }

                if (seat.Chamber > Engine.Chambers)
                {
                    throw new RefusedArgumentException(
                        $"Stage '{stage.Name}' feeds chamber {seat.Chamber}; the engine has {Engine.Chambers}.",
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
                        $"Stage '{stage.Name}' must feed all {Engine.Chambers} chambers alike; chamber {chamber} has {fed} of {stage.Seats.Length} injectors.",
                        "stages"
                    );
                }
            }
        }
    }
}
