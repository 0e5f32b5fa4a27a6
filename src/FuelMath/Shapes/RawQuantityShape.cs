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
        : this(kind, new QuantityShape<T>(kind, otherwise), units) { }

    private RawQuantityShape(QuantityKind<T> kind, QuantityShape<T> plain, ImmutableArray<(string, Enum)> units) =>
        (this.kind, this.plain, this.units) = (kind, plain, units);

    /// <summary>The same, greater than zero.</summary>
    internal RawQuantityShape<T> Positive => new(kind, plain.Positive, units);

    /// <summary>The same, zero or more.</summary>
    internal RawQuantityShape<T> NotNegative => new(kind, plain.NotNegative, units);

    internal override string Wanted => plain.Wanted;

    internal override T Read(JsonItem item)
    {
        T value = plain.Read(item);
        return
            WrittenQuantity.Of(item.Text, kind.Kind) is var (number, found)
            && units.FirstOrDefault(u => u.Symbol == found.Symbol).Unit is { } unit
            ? SiUnits.FromNumber<T>(number, unit)
            : value;
    }

    internal override DocumentException? RefuseSign(JsonItem item) => plain.RefuseSign(item);

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
