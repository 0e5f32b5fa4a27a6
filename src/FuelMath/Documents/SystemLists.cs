using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What a system's document lists at its root: each fuel and injector once, in the order of first use.</summary>
internal static class SystemLists
{
    internal static ImmutableArray<Injector> Injectors(FuelSystem system) =>
        Distinct("injectors", InjectorsUsed(system), i => i.Name, InjectorShape.Full, nameof(system));

    internal static ImmutableArray<Fuel> Fuels(FuelSystem system)
    {
        return Fuels(
            [
                system.Fuel,
                .. system.Stages.Select(s => s.Belief?.Fuel).OfType<Fuel>(),
                .. InjectorsUsed(system).Select(i => i.Rating.Fluid),
                .. system.Network.Lines.Select(l => l.Part).OfType<Pump>().Select(p => p.Fluid),
            ],
            nameof(system)
        );
    }

    /// <summary>Fuels that need an entry, each once; refuses two of one name that differ.</summary>
    internal static ImmutableArray<Fuel> Fuels(IEnumerable<Fuel> used, string paramName)
    {
        ImmutableArray<Fuel> listed = Distinct(
            "fuels",
            used.Where(f => !FuelShape.IsStandard(f)),
            f => f.Name,
            FuelShape.Full,
            paramName
        );
        return listed.FirstOrDefault(f => StandardFuelShapes.Words.Words.Contains(f.Name)) is { } taken
            ? throw new RefusedArgumentException(
                RefusalCode.Duplicate,
                $"A fuel must not be called '{taken.Name:given}', which is the name of one that the library knows.",
                paramName
            )
            : listed;
    }

    private static IEnumerable<Injector> InjectorsUsed(FuelSystem system) =>
        system.Stages.SelectMany(s =>
            (s.Belief is { } belief ? [belief.Injector] : Array.Empty<Injector>()).Concat(
                s.Seats.Select(t => t.Injector)
            )
        );

    private static ImmutableArray<T> Distinct<T>(
        string what,
        IEnumerable<T> values,
        Func<T, string> nameOf,
        Shape<T> shape,
        string paramName
    )
        where T : class
    {
        List<T> found = [];
        foreach (T value in values)
        {
            T? same = found.Find(f => nameOf(f) == nameOf(value));
            if (same is null)
            {
                found.Add(value);
            }
            else if (
                !ReferenceEquals(same, value)
                && !string.Equals(shape.Write(same).Render(), shape.Write(value).Render(), StringComparison.Ordinal)
            )
            {
                throw new RefusedArgumentException(
                    RefusalCode.Duplicate,
                    $"Two {what:subject} are called '{nameOf(value):given}' and differ, so that a document could not tell them apart.",
                    paramName
                );
            }
        }

        return [.. found];
    }
}
