using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Generators of wires and circuits.</summary>
public static class WiringArbitraries
{
    public static Arbitrary<Wire> Wires() => AnyWire().ToArbitrary();

    public static Arbitrary<Harness> Harnesses() =>
        (
            from there in Gen.Choose(0, 3)
            from back in Gen.Choose(0, 3)
            from supply in AnyWire().ArrayOf(there)
            from ground in AnyWire().ArrayOf(back)
            from milliohms in Gen.Choose(1, 200)
            select new Harness(supply, ground, milliohms)
        ).ToArbitrary();

    private static Gen<Wire> AnyWire() =>
        from gauge in Gen.Choose(-3, 24)
        from centimeters in Gen.Choose(5, 1000)
        from celsius in Gen.Choose(-40, 150)
        select new Wire(gauge, centimeters, celsius);
}

/// <summary>A wire by gauge, length in cm and temperature in °C.</summary>
public readonly record struct Wire(int Gauge, double Centimeters, double Degrees)
{
    public WireSize Size => WireSize.FromAwg(Gauge);

    public Length Length => Length.FromCentimeters(Centimeters);

    public Temperature Temperature => Temperature.FromDegreesCelsius(Degrees);

    public Conductor ToConductor() => new(Size, Length, Temperature);
}

/// <summary>Wires there and back, and contacts in mΩ.</summary>
public sealed record Harness(Wire[] Supply, Wire[] Ground, double Milliohms)
{
    public Circuit ToCircuit() =>
        new(
            "generated",
            Supply.Select(w => w.ToConductor()),
            Ground.Select(w => w.ToConductor()),
            ElectricResistance.FromMilliohms(Milliohms)
        );
}
