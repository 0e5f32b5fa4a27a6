using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Quantities;

/// <summary>Generators of pressures and mixtures in the range of the trade, and a little beyond.</summary>
public static class QuantityArbitraries
{
    public static Arbitrary<AbsolutePressure> AbsolutePressures() =>
        Gen.Choose(0, 20_000_000)
            .Select(tenths => new AbsolutePressure(Pressure.FromPascals(tenths / 10.0)))
            .ToArbitrary();

    /// <summary>From a little above vacuum at any ambient pressure that <see cref="Ambients"/> gives, to 20 bar.</summary>
    public static Arbitrary<GaugePressure> GaugePressures() =>
        Gen.Choose(-490_000, 20_000_000)
            .Select(tenths => new GaugePressure(Pressure.FromPascals(tenths / 10.0)))
            .ToArbitrary();

    public static Arbitrary<Ambient> Ambients() =>
        Gen.Choose(500_000, 1_100_000)
            .Select(tenths => new Ambient(new AbsolutePressure(Pressure.FromPascals(tenths / 10.0))))
            .ToArbitrary();

    public static Arbitrary<Lambda> Lambdas() =>
        Gen.Choose(1, 10_000).Select(thousandths => Lambda.FromRatio(thousandths / 1000.0)).ToArbitrary();

    public static Arbitrary<AirFuelRatio> AirFuelRatios() =>
        Gen.Choose(300, 4000).Select(hundredths => AirFuelRatio.FromMassRatio(hundredths / 100.0)).ToArbitrary();
}

/// <summary>An ambient pressure between a high mountain and a deep valley, 50 to 110 kPa.</summary>
public readonly record struct Ambient(AbsolutePressure Pressure);
