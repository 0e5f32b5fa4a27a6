using System.Collections.Immutable;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class DocumentExamples
{
    private const string OperatingList = """
        {
          "document": "operating list",
          "version": "1",
          "points": [
            {
              "name": "cruise",
              "speed": "3200 rpm",
              "manifold": "70 kPa absolute",
              "ambient": "101.3 kPa absolute",
              "charge": "40 degC",
              "fuel": "40 degC",
              "supply": "14 V",
              "command": {"kind": "hold lambda", "lambda": 1}
            }
          ]
        }

        """;

    [Fact]
    public void QuantityText()
    {
        #region QuantityText
        VolumeFlow flow = QuantityKinds.VolumeFlow.Parse("980 cm3/min", null);
        GaugePressure rail = PressureKinds.Gauge.Parse("3.0 bar gauge", null);
        string text = QuantityKinds.VolumeFlow.Format(flow, "L/h", "0.0", null); // 58.8 L/h
        bool read = QuantityKinds.PressureDifference.TryParse("3,5 bar", null, out _); // false: not 35 bar
        #endregion

        Assert.Equal("58.8 L/h", text);
        Assert.False(read);
        Assert.Equal(300, rail.AboveAmbient.Kilopascals, 9);
    }

    [Fact]
    public void SystemRoundTrip()
    {
        string path = Path.Combine(Checkout.Root, "docs/samples/Assessment/data/time-trial-car.json");

        #region SystemDocument
        FuelSystem car = SystemDocument.ReadFile(path);
        FuelSystem cleaned = car.WithInjectors(
            "primaries",
            car.Stages[0].Seats.Select(s => s.Injector.WithFlowScale("cleaned", Ratio.FromPercent(103), car.Source))
        );
        string text = SystemDocument.Write(cleaned); // ... "name": "cleaned" ...
        #endregion

        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
        Assert.Contains("\"name\": \"cleaned\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Refusal()
    {
        string list = File.ReadAllText("data/time-trial-car-points.json");

        #region Refusal
        string incomplete = list.Replace("70 kPa absolute", "70 kPa", StringComparison.Ordinal);
        string where = "";
        try
        {
            OperatingListDocument.Read(incomplete);
        }
        catch (DocumentException problem)
        {
            where = $"{problem.Path}, line {problem.Line}: {problem.Allowed}"; // "$.points[3].manifold, line 38: ..."
        }
        #endregion

        Assert.StartsWith(
            "$.points[3].manifold, line 38: \"kPa\" is a unit of pressure difference; allowed for absolute pressure are",
            where,
            StringComparison.Ordinal
        );
        Assert.Equal(OperatingList, OperatingListDocument.Write(OperatingListDocument.Read(OperatingList)));
    }

    [Fact]
    public void PipeProblem()
    {
        #region NetworkDocument
        Network network = NetworkDocument.Read(
            """
            {
              "document": "network",
              "version": "2",
              "conditions": {"density": "998 kg/m3", "kinematicViscosity": "1.0 mm2/s"},
              "nodes": [
                {"kind": "fixed pressure", "name": "tank", "pressure": "0 kPa gauge", "elevation": "10 m"},
                {"kind": "junction", "name": "tap", "elevation": "0 m", "draw": "0.2 L/s"}
              ],
              "lines": [
                {
                  "name": "line", "from": "tank", "to": "tap",
                  "pipe": {"length": "30 m", "bore": "20 mm", "roughness": "0.01 mm", "lossCoefficient": 2.5,
                           "friction": "Colebrook, straight passage"}
                }
              ]
            }
            """
        );
        GaugePressure atTap = network.Solve().PressureAt("tap"); // 88.3 kPa gauge, of 97.9 kPa at rest
        #endregion

        // Colebrook by hand: f = 0.029848, loss 9.560 kPa.
        Assert.Equal(88.310, atTap.AboveAmbient.Kilopascals, 0.001);
    }

    [Fact]
    public void ReadABenchRecord()
    {
        #region BenchDocument
        const string json = """
            {
              "document": "bench record",
              "version": "1",
              "name": "training stand",
              "injectors": [
                {
                  "name": "L",
                  "now": {
                    "staticFlow": [
                      {
                        "collected": {"kind": "volume", "amount": "280.9 cm3", "resolution": "0.1 cm3"},
                        "collectionTime": "1 min",
                        "conditions": {
                          "differentialPressure": "3 bar",
                          "fluid": "n-heptane",
                          "fluidTemperature": "20.3 degC",
                          "source": {"key": "Workshop-class", "locator": "training stand, bench report"}
                        }
                      }
                    ]
                  }
                }
              ]
            }
            """;

        BenchRecord record = BenchDocument.Read(json);
        StaticFlowReading reading = record.Injector("L").Now.StaticFlow[0]; // 280.9 cm³/min
        string text = BenchDocument.Write(record);
        #endregion

        Assert.Equal(280.9, reading.VolumeFlow.CubicCentimetersPerMinute, 1e-9);
        Assert.Contains("\"3 bar\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void LinePlanFile()
    {
        #region LinePlanDocument
        LinePlan plan = LinePlanDocument.Read(
            """
            {
              "document": "line plan",
              "version": "1",
              "name": "feed",
              "pieces": [
                {"kind": "from port", "name": "pump outlet", "end": {"kind": "O-ring boss", "dash": 6, "gender": "female"}},
                {
                  "kind": "adapter",
                  "name": "boss to flare -6",
                  "first": {"kind": "O-ring boss", "dash": 6, "gender": "male"},
                  "second": {"kind": "37 degree flare", "dash": 6, "gender": "male"},
                  "loss": {
                    "name": "its passage",
                    "bore": "7.2 mm",
                    "lossCoefficient": 0.1,
                    "basis": "supplied",
                    "source": {"key": "Workshop-class", "locator": "invented"}
                  }
                },
                {"kind": "to port", "name": "rail inlet", "end": {"kind": "37 degree flare", "dash": 6, "gender": "female"}}
              ]
            }
            """
        );
        ImmutableArray<LinePlan.BillRow> toBuy = plan.Bill; // 1 x boss to flare -6
        #endregion

        Assert.True(plan.AllSeal);
        Assert.Equal("1 x boss to flare -6", Assert.Single(toBuy).ToString());
    }
}
