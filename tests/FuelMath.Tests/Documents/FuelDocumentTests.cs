using System.Text;
using UnitsNet;

namespace FuelMath.Tests.Documents;

/// <summary>Each way to describe a fuel, there and back.</summary>
public sealed class FuelDocumentTests
{
    private static readonly DataSource Source = new("Workshop-class", "test");

    public static TheoryData<string> Names => [.. Fuels().Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void WriteThenRead_Fuel_GivesTheSameTextAndProperties(string name)
    {
        Fuel fuel = Fuels()[name];
        string text = FuelShape.Part.Write(fuel).Render();
        Fuel back = FuelShape.Part.Read(JsonTree.Read(Encoding.UTF8.GetBytes(text)));
        Assert.Equal(text, FuelShape.Part.Write(back).Render());
        Assert.Equal(fuel.Name, back.Name);
        Temperature at = SiUnits.Temperature(298.15);
        Assert.Equal(fuel.DensityAt(at).InSi(), back.DensityAt(at).InSi());
        Assert.Equal(fuel.ViscosityAt(at).InSi(), back.ViscosityAt(at).InSi());
        Assert.Equal(fuel.StoichiometricRatio, back.StoichiometricRatio);
        Assert.Equal(fuel.LowerHeatingValue is not null, back.LowerHeatingValue is not null);
        Assert.Equal(fuel.VaporPressure.IsKnown, back.VaporPressure.IsKnown);
        Assert.Equal(fuel.Sources.AsEnumerable(), back.Sources);
        Assert.Equal(fuel.Estimates.AsEnumerable(), back.Estimates);
        Assert.Equal(fuel.Cautions.AsEnumerable(), back.Cautions);
    }

    [Fact]
    public void Write_StandardFuel_IsItsName() =>
        Assert.Equal("\"pump gasoline\"\n", FuelShape.Part.Write(StandardFuels.PumpGasoline).Render());

    [Fact]
    public void Read_OwnFuelWithDensitiesThatRise_SaysWhere()
    {
        string text = FuelShape
            .Part.Write(Fuels()["own"])
            .Render()
            .Replace("\"700 kg/m3\"", "\"800 kg/m3\"", StringComparison.Ordinal);
        var error = Assert.Throws<DocumentException>(() =>
            FuelShape.Part.Read(JsonTree.Read(Encoding.UTF8.GetBytes(text)))
        );
        Assert.Equal("$.density.densities", error.Path);
        Assert.Equal("Density must fall from point to point; at index 1 it does not.", error.Allowed);
    }

    [Fact]
    public void Read_E85OfAClass_KeepsIt()
    {
        string text = FuelShape.Part.Write(Fuels()["E85 of a class"]).Render();
        Fuel back = FuelShape.Part.Read(JsonTree.Read(Encoding.UTF8.GetBytes(text)));
        Assert.Equal(3, back.EthanolClass!.Number);
        string odd = text.Replace("\"class\": 3", "\"class\": 5", StringComparison.Ordinal);
        Assert.Equal(
            "$.class",
            Assert.Throws<DocumentException>(() => FuelShape.Part.Read(JsonTree.Read(Encoding.UTF8.GetBytes(odd)))).Path
        );
    }

    // What a document does not hold may not be lost in silence.
    [Fact]
    public void Write_OwnFuelWithAHeatCapacity_Refuses()
    {
        Fuel fuel = Fuels()["own"]
            .WithHeatCapacity(
                "warm",
                LiquidHeatCapacity.FromPoints(
                    [SiUnits.Temperature(273.15), SiUnits.Temperature(313.15)],
                    [SiUnits.SpecificEntropy(2000), SiUnits.SpecificEntropy(2200)],
                    new DataSource("Workshop-class", "test fuel")
                )
            );

        Words.Says("'warm'", Assert.Throws<ArgumentException>(() => FuelShape.Part.Write(fuel)));
    }

    private static Dictionary<string, Fuel> Fuels()
    {
        Temperature cold = SiUnits.Temperature(273.15);
        Temperature hot = SiUnits.Temperature(333.15);
        Fuel gasoline = StandardFuels.Gasoline(
            SiUnits.Density(733),
            PressureKinds.Absolute.Parse("8 psi absolute", null)
        );
        Fuel oil = StandardFuels.TwoStrokeOilOf(
            "an oil",
            SiUnits.Density(881),
            QuantityKinds.KinematicViscosity.Parse("61 mm2/s", null),
            QuantityKinds.KinematicViscosity.Parse("9.1 mm2/s", null),
            Source
        );
        Fuel Own(string name, LiquidVaporPressure vapor, SpecificEnergy? heat, string[] words) =>
            new(
                name,
                ElementalComposition.FromFormula(7, 13, 0, 0, 0),
                LiquidDensity.FromPoints([cold, hot], [SiUnits.Density(761), SiUnits.Density(700)], Source),
                LiquidViscosity.FromPoints(
                    [cold, hot],
                    [SiUnits.DynamicViscosity(0.7e-3), SiUnits.DynamicViscosity(0.4e-3)],
                    Source
                ),
                vapor,
                heat,
                Source,
                words,
                words
            );

        return new()
        {
            ["ethanol"] = StandardFuels.Ethanol,
            ["gasoline"] = gasoline,
            ["oil"] = oil,
            ["volume blend"] = FuelBlend.ByVolume(
                "E85",
                cold,
                [new(gasoline, SiUnits.Ratio(0.15)), new(StandardFuels.Ethanol, SiUnits.Ratio(0.85))]
            ),
            ["named gasoline"] = gasoline.WithName("premium"),
            ["E85"] = StandardFuels.E85(gasoline, SiUnits.Ratio(0.71)).WithName("from the pump"),
            ["E85 of a class"] = StandardFuels.E85(gasoline, SiUnits.Ratio(0.6), E85Class.FromNumber(3)),
            ["mass blend"] = FuelBlend.ByMass(
                "mix",
                [new(gasoline, SiUnits.Ratio(1 / 3.0)), new(StandardFuels.Toluene, SiUnits.Ratio(2 / 3.0))]
            ),
            ["premix"] = PremixRatio.FromParts(33).ToFuel("premix", gasoline, oil, cold),
            ["own"] = Own("own", LiquidVaporPressure.Unknown("never measured."), null, []),
            ["own, known"] = Own(
                "own",
                LiquidVaporPressure.FromPoints(
                    [cold, hot],
                    [new(SiUnits.Pressure(2e4)), new(SiUnits.Pressure(1.2e5))],
                    Source
                ),
                SiUnits.SpecificEnergy(43e6),
                ["A sentence."]
            ),
        };
    }
}
