using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>What each input adds to the uncertainty of a leak, against tests with that input off by a small part of it.</summary>
public sealed class DecayContributionTests
{
    private const double Small = 1e-4;

    private static readonly ClosedVolume.Uncertainty Exact = new(
        default,
        default,
        default,
        default,
        default,
        Volume.Zero
    );

    /// <summary>
    /// An input that is off by its standard uncertainty moves the rate by its contribution: a slope, here from both sides. The
    /// first reading is at minute 5, so that times are not counted from zero.
    /// </summary>
    [Theory]
    [InlineData("volume of fuel", 0.05, 0)]
    [InlineData("bulk modulus", 0.15, 1)]
    [InlineData("swelling of the walls", 0.3, 2)]
    [InlineData("trapped gas", 0.2, 3)]
    [InlineData("pressure before", 600, 4)]
    [InlineData("pressure after", 600, 5)]
    [InlineData("temperature after", 0.05, 6)]
    public void Contribution_OfAnInput_IsWhatItMovesTheRateBy(string name, double uncertainty, int input)
    {
        DecayTest test = Of(
            new(
                Pressure.FromPascals(600),
                TemperatureDelta.FromKelvins(0.05),
                Duration.FromSeconds(2),
                new(
                    Ratio.FromPercent(5),
                    Ratio.FromPercent(15),
                    Ratio.FromPercent(30),
                    default,
                    default,
                    Volume.FromCubicCentimeters(0.2)
                )
            )
        );
        double[] more = new double[7];
        double[] less = new double[7];
        (more[input], less[input]) = (Small * uncertainty, -Small * uncertainty);
        DecayTest.Uncertainty none = new(Pressure.Zero, default, Duration.Zero, Exact);
        double change = (Rate(Of(none, more)) - Rate(Of(none, less))) / (2 * Small);

        Close.Within(
            1e-4,
            Math.Abs(change),
            test.Contributions.Single(c => c.Input == name).Uncertainty.CubicMillimetersPerSecond
        );
    }

    /// <summary>Two readings of a clock that is off by 2 s each: root 2 times 2 of 600 s, whenever the first was.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(700)]
    public void Contribution_OfTime_IsThatOfTheTimeBetween(double start)
    {
        DecayTest test = Of(new(Pressure.Zero, default, Duration.FromSeconds(2), Exact), new double[7], start);

        DecayTest.Contribution only = Assert.Single(test.Contributions);
        Close.Within(1e-9, Rate(test) * Math.Sqrt(2) * 2 / 600, only.Uncertainty.CubicMillimetersPerSecond);
    }

    private static double Rate(DecayTest test) => test.Rate.CubicMillimetersPerSecond;

    /// <summary>Ten minutes of half a liter that falls from 4 to 3.5 bar and warms by a tenth of a kelvin.</summary>
    private static DecayTest Of(DecayTest.Uncertainty uncertainty, double[]? off = null, double start = 5)
    {
        off ??= new double[7];
        Fuel fuel = ClosedLine.Hot.WithBulkModulus(
            "gasoline",
            LiquidBulkModulus.FromPoints(
                [Temperature.FromDegreesCelsius(-10), Temperature.FromDegreesCelsius(80)],
                [Pressure.FromGigapascals(1.3 * (1 + off[1])), Pressure.FromGigapascals(1.3 * (1 + off[1]))],
                new DataSource("Workshop-class", "test")
            )
        );
        ClosedVolume volume = new(
            fuel,
            Temperature.FromDegreesCelsius(20),
            Volume.FromLiters(0.5 * (1 + off[0])),
            new ClosedVolume.ElasticWalls(Compressibility.FromInversePascals(20e-10 * (1 + off[2])), default),
            Volume.FromCubicCentimeters(3 + off[3]),
            ClosedLine.Ambient
        );
        return new(
            volume,
            ClosedLine.Reading(start, new(Pressure.FromPascals(4e5 + off[4]))),
            ClosedLine.Reading(start + 10, new(Pressure.FromPascals(3.5e5 + off[5])), 20.1 + off[6]),
            uncertainty
        );
    }
}
