using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>A quantity of a reading: number and unit are kept and written as they were read.</summary>
internal sealed class RawQuantityShape<T> : Shape<T>
    where T : struct, IQuantity
{
    private readonly QuantityKind<T> kind;
    private readonly QuantityShape<T> plain;
    private readonly ImmutableArray<(string Symbol, Enum Unit)> units;

    /// <summary>
    /// Creates a shape from the kind, the units that are kept, and the unit for values in any other unit.
    /// </summary>
    internal RawQuantityShape(QuantityKind<T> kind, string otherwise, params ImmutableArray<(string, Enum)> units)
    {
        (this.kind, this.units) = (kind, units);
        plain = new(kind, otherwise);
    }

    internal override string Wanted => plain.Wanted;

    internal override T Read(JsonItem item)
    {
        T value = plain.Read(item);
        ReadOnlySpan<char> text = item.Text.AsSpan().Trim();
        foreach ((string symbol, Enum unit) in units)
        {
            foreach (string spelling in kind.Kind.Find(symbol)!.Spellings)
            {
                if (
                    text.EndsWith(spelling, StringComparison.Ordinal)
                    && double.TryParse(
                        text[..^spelling.Length],
                        NumberStyles.Float,
                        CultureInfo.InvariantCulture,
                        out double number
                    )
                )
                {
                    return SiUnits.FromNumber<T>(number, unit);
                }
            }
        }

        return value;
    }

    internal override JsonText Write(T value)
    {
        foreach ((string symbol, Enum unit) in units)
        {
            if (value.Unit.Equals(unit))
            {
                string number = value.NumberIn(unit).ToString("R", CultureInfo.InvariantCulture);
                return JsonText.Of($"{number} {symbol}");
            }
        }

        return plain.Write(value);
    }

    internal override JsonText Schema(SchemaDefinitions definitions) => plain.Schema(definitions);
}
