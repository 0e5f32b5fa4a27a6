using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A kind of quantity and the units it may be written in; the first is the SI unit itself.</summary>
internal sealed class UnitKind
{
    internal UnitKind(string name, bool neverNegative, params ImmutableArray<Unit> units)
    {
        Name = name;
        NeverNegative = neverNegative;
        Units = units;
        Allowed = string.Join(", ", units.Select(u => u.Symbol));
    }

    internal string Name { get; }

    /// <summary>Whether numbers below zero SI make no sense: absolute pressure, temperature.</summary>
    internal bool NeverNegative { get; }

    internal ImmutableArray<Unit> Units { get; }

    internal Unit SiUnit => Units[0];

    /// <summary>The symbols of all units, for messages.</summary>
    internal string Allowed { get; }

    internal Unit? Find(ReadOnlySpan<char> symbol)
    {
        foreach (Unit unit in Units)
        {
            if (unit.IsWritten(symbol))
            {
                return unit;
            }
        }

        return null;
    }
}
