using FsCheck;
using FsCheck.Fluent;

namespace FuelMath.Tests.Text;

/// <summary>Numbers over the whole range of doubles, and every unit of every kind.</summary>
public static class TextArbitraries
{
    public static Arbitrary<QuantityReadingProperties.FiniteNumber> Numbers() =>
        Gen.OneOf(
                ArbMap.Default.GeneratorFor<long>().Select(BitConverter.Int64BitsToDouble),
                ArbMap.Default.GeneratorFor<int>().Select(i => i / 1024.0),
                from mantissa in ArbMap.Default.GeneratorFor<int>()
                from fraction in Gen.Choose(0, int.MaxValue)
                from exponent in Gen.Choose(-12, 9)
                select (mantissa % 10 + fraction / (double)int.MaxValue) * Math.Pow(10, exponent)
            )
            .Where(double.IsFinite)
            .Select(x => new QuantityReadingProperties.FiniteNumber(x))
            .ToArbitrary();

    public static Arbitrary<QuantityReadingProperties.KindAndUnit> Units() =>
        Gen.Elements(
                UnitTable.All.SelectMany(k => k.Units.Select(u => new QuantityReadingProperties.KindAndUnit(k, u)))
            )
            .ToArbitrary();
}
