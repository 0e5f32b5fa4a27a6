using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace FuelMath.Tests.Text;

/// <summary>Written text reads back to the same bits, in every kind, unit and culture; other text is refused, not guessed.</summary>
[Properties(Arbitrary = [typeof(TextArbitraries)], MaxTest = 1000)]
public sealed class QuantityReadingProperties
{
    private static readonly NumberFormatInfo German = new()
    {
        NumberDecimalSeparator = ",",
        NumberGroupSeparator = ".",
    };

    [Property]
    public void WriteThenRead_GivesTheSameBits(FiniteNumber number, KindAndUnit place)
    {
        double si = place.Kind.NeverNegative ? Math.Abs(number.Value) : number.Value;
        if (!place.Kind.Holds(si))
        {
            return;
        }

        foreach (NumberFormatInfo format in new[] { NumberFormatInfo.InvariantInfo, German })
        {
            string text = QuantityReading.Write(si, place.Kind, place.Unit, format);
            Assert.Null(QuantityReading.Read(text, place.Kind, format, out double back));
            Assert.Equal(BitConverter.DoubleToInt64Bits(si + 0.0), BitConverter.DoubleToInt64Bits(back));
        }
    }

    [Property]
    public void Read_ShortDecimal_IsWrittenBackAsItWas(int digits, KindAndUnit place)
    {
        double number = (digits % 100_000 / 1000.0) + (place.Kind.NeverNegative ? 100 : 0);
        string text = string.Create(CultureInfo.InvariantCulture, $"{number} {place.Unit.Symbol}");
        Assert.Null(QuantityReading.Read(text, place.Kind, null, out double si));
        Assert.Equal(text, QuantityReading.Write(si, place.Kind, place.Unit, null));
    }

    [Property]
    public void Read_AnyText_GivesAFiniteNumberOrAProblem(string? text, KindAndUnit place)
    {
        QuantityTextException? problem = QuantityReading.Read(text, place.Kind, null, out double si);
        Assert.True(problem is null ? double.IsFinite(si) : problem.Kind == place.Kind.Name);
    }

    [Property]
    public void Read_UnitOfAnotherKind_IsRefused(KindAndUnit wanted, KindAndUnit given)
    {
        bool known = wanted.Kind.Find(given.Unit.Symbol) is not null;
        QuantityTextException? problem = QuantityReading.Read($"300 {given.Unit.Symbol}", wanted.Kind, null, out _);
        Assert.Equal(known ? null : QuantityTextException.TextProblem.WrongKind, problem?.Problem);
    }

    public sealed record FiniteNumber(double Value);

    public sealed class KindAndUnit
    {
        internal KindAndUnit(UnitKind kind, Unit unit) => (Kind, Unit) = (kind, unit);

        internal UnitKind Kind { get; }

        internal Unit Unit { get; }

        public override string ToString() => $"{Kind.Name} in {Unit.Symbol}";
    }
}
