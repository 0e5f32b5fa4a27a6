using System.Text.Json.Nodes;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Documents;

/// <summary>Sensors by bank, and what is uncertain, in a document: there and back, and what is refused.</summary>
public sealed class BankAndUncertainDocumentTests
{
    private static readonly string Car = TestFiles.System("circuit-car");

    [Fact]
    public void WriteThenRead_Banks_GivesTheSame()
    {
        FuelSystem car = SystemDocument.Read(With("banks", "[[1, 3, 5], [2, 4, 6]]"));

        Assert.Equal([1, 2, 1, 2, 1, 2], car.Banks.AsEnumerable());
        FuelSystem back = SystemDocument.Read(SystemDocument.Write(car));
        Assert.Equal(car.Banks.AsEnumerable(), back.Banks);
        Assert.Equal(SystemDocument.Write(car), SystemDocument.Write(back));
    }

    [Fact]
    public void Read_WithoutBanks_HasOneSensor() =>
        Assert.Equal([1, 1, 1, 1, 1, 1], SystemDocument.Read(Car).Banks.AsEnumerable());

    [Theory]
    [InlineData("[[1, 2, 3], [4, 5]]")]
    [InlineData("[[1, 2, 3], [3, 4, 5, 6]]")]
    [InlineData("[[1, 2, 3], [4, 5, 6, 7]]")]
    public void Read_BanksThatDoNotNameEachChamberOnce_SaysWhere(string banks) =>
        Assert.Equal("$.banks", Assert.Throws<DocumentException>(() => SystemDocument.Read(With("banks", banks))).Path);

    [Fact]
    public void WriteThenRead_EveryKindOfUncertainInput_GivesTheSame()
    {
        DataSource source = new("Workshop-class", "test");
        UncertainInput[] inputs =
        [
            UncertainInput.InjectorFlow(Ratio.FromPercent(2), SpreadShape.Normal, source),
            UncertainInput.EachInjectorFlow(Ratio.FromPercent(1), SpreadShape.Rectangular, source),
            UncertainInput.DeadTime(Duration.FromMilliseconds(0.04), SpreadShape.Triangular, source),
            UncertainInput.PumpFlow(Ratio.FromPercent(4), SpreadShape.Normal, source),
            UncertainInput.RegulatorSetPoint(Pressure.FromKilopascals(4), SpreadShape.Normal, source),
            UncertainInput.FuelDensity(Ratio.FromPercent(0.5), SpreadShape.Normal, source),
        ];
        FuelSystem car = SystemDocument.Read(Car).WithUncertainInputs(inputs);
        FuelSystem back = SystemDocument.Read(SystemDocument.Write(car));

        Assert.Equal(SystemDocument.Write(car), SystemDocument.Write(back));
        Assert.Equal(inputs.Select(i => i.Name), back.UncertainInputs.Select(i => i.Name));
        Assert.Equal(inputs.Select(i => i.Shape), back.UncertainInputs.Select(i => i.Shape));
        foreach ((UncertainInput told, UncertainInput read) in inputs.Zip(back.UncertainInputs))
        {
            Close.Within(
                1e-12,
                (double)told.StandardDeviation.Value,
                (double)read.StandardDeviation.ToUnit(told.StandardDeviation.Unit).Value
            );
        }
    }

    [Theory]
    [InlineData("pump flow", "60 %")]
    [InlineData("pump flow", "0 %")]
    [InlineData("regulator set point", "0 kPa")]
    [InlineData("dead time", "0 ms")]
    public void Read_AnUncertaintyThatCannotBe_SaysWhere(string kind, string deviation) =>
        Assert.Equal(
            "$.uncertain[0].standardDeviation",
            Assert
                .Throws<DocumentException>(() =>
                    SystemDocument.Read(
                        With(
                            "uncertain",
                            $$$"""[{"kind": "{{{kind}}}", "standardDeviation": "{{{deviation}}}", "source": {"key": "Workshop-class", "locator": "test"}}]"""
                        )
                    )
                )
                .Path
        );

    private static string With(string property, string json)
    {
        JsonObject root = JsonNode.Parse(Car)!.AsObject();
        root[property] = JsonNode.Parse(json);
        return root.ToJsonString();
    }
}
