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
        Allowed = string.Join(", ", Symbols);
    }

    internal string Name { get; }

    /// <summary>Whether SI numbers below zero are invalid: absolute pressure, temperature.</summary>
    internal bool NeverNegative { get; }

    internal ImmutableArray<Unit> Units { get; }

    internal Unit SiUnit => Units[0];

    /// <summary>
    /// The greatest SI number accepted, either sign; the unit library may have a smaller range than a double.
    /// </summary>
    internal double Most { get; init; } = double.MaxValue;

    /// <summary>The least SI number other than zero that is accepted, either sign.</summary>
    internal double Least { get; init; }

    /// <summary>Whether an SI number is finite and within range.</summary>
    internal bool Holds(double si) => Math.Abs(si) <= Most && (si == 0 || Math.Abs(si) >= Least);

    /// <summary>The symbols of all units, for messages.</summary>
    internal string Allowed { get; }

    /// <summary>The symbols of all units.</summary>
    internal IEnumerable<string> Symbols => Units.Each(u => u.Symbol);

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
