using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class EngineAirTests
{
    /// <summary>The standard atmosphere by geometric altitude: five digits of each, so that a density may be 3e-5 off.</summary>
    [Theory]
    [Trait("Source", "ISO-2533")]
    [InlineData(301.15, 127780, 1.4782)]
    [InlineData(288.15, 101320, 1.225)]
    [InlineData(275.15, 79501, 1.0066)]
    [InlineData(249.19, 47218, 0.66011)]
    [InlineData(236.22, 35652, 0.52579)]
    [InlineData(223.25, 26500, 0.41351)]
    [InlineData(284.900, 95461.289, 1.16727)]
    [InlineData(281.651, 89876.285, 1.11166)]
    [InlineData(268.659, 70121.162, 0.909254)]
    [InlineData(255.675, 54048.286, 0.736428)]
    public void AirDensity_StandardAtmosphere_Agrees(double temperature, double pressure, double density) =>
        Close.Within(6e-5, density, EngineAir.AirDensity(new Real(pressure), new Real(temperature)).Value);

    /// <summary>Sea level: 1.225 kg/m3 to all digits that define it.</summary>
    [Fact]
    [Trait("Source", "ISO-2533")]
    public void AirDensity_SeaLevel_Agrees() =>
        Close.Within(1e-6, 1.225, EngineAir.AirDensity(new Real(101_325), new Real(288.15)).Value);

    /// <summary>
    /// 0.45 lb/(hp h), about the best of a spark-ignition engine, is about 270 g/(kW h): 100 kW take 27 kg/h. From
    /// memory, two digits.
    /// </summary>
    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void FuelFlowFromPower_BestConsumption_Agrees()
    {
        double bsfc = 0.45 * 0.45359237 / (745.69987158227 * 3600);

        Close.Within(0.02, 27, EngineAir.FuelFlowFromPower(new Real(100e3), new Real(bsfc)).Value * 3600);
    }

    /// <summary>A four-stroke at 6000 1/min fires each cylinder 50 times a second.</summary>
    [Fact]
    public void EventsPerSecond_FourStrokeAtSixThousand_IsFifty() =>
        Close.Within(1e-15 * 2, 50, EngineAir.EventsPerSecond(new Real(6000 * Math.PI / 30), new Real(0.5)).Value);

    /// <summary>The whole chain by hand: half a liter at 90 % of 1.2 kg/m3, ratio 14.7, lambda 0.9.</summary>
    [Fact]
    public void FuelMass_HalfALiterOfAir_ByHand()
    {
        Real air = EngineAir.AirMassPerEvent(new Real(0.5e-3), new Real(0.9), new Real(1.2));

        Close.Within(1e-15 * 2, 0.54e-3, air.Value);
        Close.Within(1e-15 * 2, 0.54e-3 / 13.23, EngineAir.FuelMass(air, new Real(14.7), new Real(0.9)).Value);
    }

    /// <summary>Fuel for a lambda gives that lambda.</summary>
    [Fact]
    public void FuelMass_ThenLambda_IsWhatWasAsked() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
            {
                (double air, double ratio, double lambda) = (1e-4 + (1e-3 * u[0]), 6 + (10 * u[1]), 0.6 + u[2]);
                Real fuel = EngineAir.FuelMass(new Real(air), new Real(ratio), new Real(lambda));
                Close.Within(1e-15 * 3, lambda, Combustion.Lambda(new Real(air), fuel, new Real(ratio)).Value);
            }
        );

    /// <summary>Equal air, fuel of each cylinder: total air over the air that the total fuel needs.</summary>
    [Fact]
    public void HarmonicMeanLambda_UnequalCylinders_IsTotalAirOverTotalNeed() =>
        FormulaArbitraries.ForAll(
            4,
            u =>
            {
                double[] fuels = [.. u.Select(f => 20e-6 + (20e-6 * f))];
                double needed = fuels.Sum() * 14.7;
                Real[] lambdas = [.. fuels.Select(f => new Real(4e-4 / (f * 14.7)))];
                double mean = EngineAir.HarmonicMeanLambda<Real>(lambdas).Value;
                Close.Within(1e-14, 4 * 4e-4 / needed, mean);
                Assert.True(mean <= lambdas.Average(l => l.Value) * (1 + 1e-14));
            }
        );

    [Fact]
    public void HarmonicMeanLambda_NoCylinders_Refuses()
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => EngineAir.HarmonicMeanLambda<Real>([]));

        Words.Says("1, 0", refusal);
        Assert.Equal("lambdas", refusal.ParamName);
    }
}
