using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Closed lines at their limits, and against closed forms.</summary>
public sealed class TightnessEdgeTests
{
    private static readonly ClosedLine Line = new(0.5, 20, 0, 4, 60);

    private static readonly ClosedVolume.Uncertainty Exact = new(
        default,
        default,
        default,
        default,
        default,
        Volume.Zero
    );

    /// <summary>Vacuum itself is no pressure of a line.</summary>
    [Fact]
    public void Released_ToVacuum_IsRefused()
    {
        ClosedVolume volume = Line.Volume;
        GaugePressure Gauge(double kilopascals) => new(Pressure.FromKilopascals(kilopascals));

        Words.Refused<ArgumentOutOfRangeException>(
            "after",
            "-100 kPa",
            () => volume.ReleasedBetween(Line.Start, Gauge(-100))
        );
        Assert.True(volume.ReleasedBetween(Line.Start, Gauge(-99.9)) > Volume.Zero);
    }

    /// <summary>
    /// By the gas law: 20 cm³ of gas at 100 kPa hold 2 J; at 130 kPa they are 15.4 cm³. Half a liter cooled by 20 K shrinks by
    /// about 13 cm³ (1.3 ‰ per kelvin), which leaves 2 J x 303 / 323 in 28.4 cm³, 66 kPa: above the 58 kPa of the vapor at 30 °C,
    /// though below the 105 kPa that it had at 50 °C. With 5 cm³ it is 47 kPa after 10 K, and the vapor at 40 °C has about 80.
    /// </summary>
    [Fact]
    public void PressureRiseFor_Cooling_StopsAtTheVaporPressureOfTheColdFuel()
    {
        GaugePressure start = new(Pressure.FromKilopascals(30));
        ClosedLine line = new(0.5, 0, 20, 0.3, 1);

        Pressure fall = line.At(50).PressureRiseFor(start, TemperatureDelta.FromKelvins(-20));

        Assert.InRange(130 + fall.Kilopascals, 63, 70);
        Words.Says(
            "the vapor",
            Assert.Throws<NoSolutionException>(() =>
                (line with { Gas = 5 }).At(50).PressureRiseFor(start, TemperatureDelta.FromKelvins(-10))
            )
        );
    }

    /// <summary>Readings and volume agree in temperature to a millionth: 0.29 mK at 20 °C.</summary>
    [Theory]
    [InlineData(20.00028, true)]
    [InlineData(19.99972, true)]
    [InlineData(20.00031, false)]
    [InlineData(19.99969, false)]
    public void Constructor_TemperatureNearThatOfTheVolume_IsTakenWithinAMillionth(double celsius, bool taken)
    {
        DecayTest Make() =>
            new(
                Line.Volume,
                ClosedLine.Reading(0, Line.Start, celsius),
                ClosedLine.Reading(5, Line.Start),
                Uncertainty(0.1)
            );

        if (taken)
        {
            Assert.Equal(Line.Start, Make().Before.Pressure);
        }
        else
        {
            Words.Refused<ArgumentException>("before", () => _ = Make());
        }
    }

    /// <summary>Three standard uncertainties above the floor, and at least a kilopascal, count as the floor.</summary>
    [Theory]
    [InlineData(2, 5.99, true)]
    [InlineData(2, 6.01, false)]
    [InlineData(0.1, 0.99, true)]
    [InlineData(0.1, 1.01, false)]
    [InlineData(0, 0.99, true)]
    [InlineData(0, 1.01, false)]
    public void IsAtFloor_NearAmbient_IsWhatTheGaugeCanTell(double uncertainty, double kilopascals, bool expected)
    {
        DecayTest test = new(
            Line.Volume,
            ClosedLine.Reading(0, Line.Start),
            ClosedLine.Reading(5, new(Pressure.FromKilopascals(kilopascals))),
            Uncertainty(uncertainty)
        );

        Assert.Equal(expected, test.IsAtFloor);
    }

    /// <summary>A limit that rate and uncertainty just reach is kept; one that the rate less its uncertainty just reaches is not shown to be exceeded.</summary>
    [Fact]
    public void Judge_AtTheLimitsOfTheUncertainty_GoesEachWay()
    {
        DecayTest test = new(
            Line.Volume,
            ClosedLine.Reading(0, Line.Start),
            ClosedLine.Reading(10, new(Pressure.FromBars(3.9))),
            Uncertainty(0.5)
        );
        double rate = test.Rate.CubicMetersPerSecond;
        double expanded = test.ExpandedUncertainty.CubicMetersPerSecond;
        DecayTest.Outcome Against(double limit) => test.Judge(VolumeFlow.FromCubicMetersPerSecond(limit));

        Assert.InRange(expanded, 1e-3 * rate, 0.9 * rate);
        Assert.Equal(DecayTest.Outcome.Passes, Against(rate + expanded));
        Assert.Equal(DecayTest.Outcome.Undecided, Against((rate + expanded) * (1 - 1e-12)));
        Assert.Equal(DecayTest.Outcome.Undecided, Against(rate - expanded));
        Assert.Equal(DecayTest.Outcome.Fails, Against((rate - expanded) * (1 - 1e-12)));
    }

    /// <summary>Readings without any uncertainty have a rate without any, and no contributions.</summary>
    [Fact]
    public void Contributions_OfExactReadings_AreNone()
    {
        DecayTest.Uncertainty none = new(Pressure.Zero, default, Duration.Zero, Exact);
        DecayTest test = new(
            Line.Volume,
            ClosedLine.Reading(0, Line.Start),
            ClosedLine.Reading(10, new(Pressure.FromBars(3.9))),
            none
        );

        Assert.Empty(test.Contributions);
        Assert.Equal(0, test.StandardUncertainty.CubicMetersPerSecond);
        Assert.Equal(DecayTest.Outcome.Passes, test.Judge(test.Rate));
        Assert.Equal(DecayTest.Outcome.Fails, test.Judge(test.Rate * (1 - 1e-12)));
    }

    /// <summary>
    /// A liter of gas from 100 to 400 kPa: quickly 1 - 4^(-1/1.4) of it, slowly three quarters. Source: [Cengel-Boles-2015] polytropic
    /// change of an ideal gas.
    /// </summary>
    [Fact]
    public void PrimeTime_OfGasAlone_IsThePolytropicFormula()
    {
        ClosedVolume volume = Filled(ClosedLine.Hot, 1e-6, 1000);

        PrimeTime time = PrimeTime.Of(
            Volume.Zero,
            volume,
            new(Pressure.FromBars(3)),
            VolumeFlow.FromLitersPerSecond(0.5),
            VolumeFlow.FromLitersPerSecond(0.25)
        );

        Close.Within(1e-5, (1 - Math.Pow(4, -1 / 1.4)) / 0.5, time.PressurizeAtLeast.Seconds);
        Close.Within(1e-5, 0.75 / 0.25, time.PressurizeAtMost.Seconds);
    }

    /// <summary>
    /// Fuel alone in rigid walls: V p / K. Quickly K is stiffer, by 1/Ks = 1/Kt - a² T / (rho c), Source: [Poling-2001], where the
    /// heat capacity is known, and by 1.35 at most where it is not.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void PrimeTime_OfFuelAlone_IsThatOfItsQuickModulus(bool isKnown)
    {
        Fuel fuel = isKnown
            ? ClosedLine.Hot
            : ClosedLine.Hot.WithHeatCapacity("nobody knows", LiquidHeatCapacity.Unknown("nobody measured it."));
        ClosedVolume volume = Filled(fuel, 1, 0);
        Temperature at = volume.Temperature;
        double slow = fuel.BulkModulus.BulkModulusAt(at).Pascals;
        double expansion = volume.FuelExpansion.PerKelvin;
        double quick = isKnown
            ? 1
                / (
                    (1 / slow)
                    - (
                        expansion
                        * expansion
                        * at.Kelvins
                        / (fuel.DensityAt(at).KilogramsPerCubicMeter * fuel.HeatCapacity.At(at).JoulesPerKilogramKelvin)
                    )
                )
            : 1.35 * slow;

        PrimeTime time = PrimeTime.Of(
            Volume.Zero,
            volume,
            new(Pressure.FromBars(3)),
            VolumeFlow.FromMillilitersPerSecond(50),
            VolumeFlow.FromMillilitersPerSecond(20)
        );

        Assert.InRange(quick / slow, 1.1, 1.7);
        Close.Within(1e-12, 1000 * 3e5 / quick / 50, time.PressurizeAtLeast.Seconds);
        Close.Within(1e-12, 1000 * 3e5 / slow / 20, time.PressurizeAtMost.Seconds);
    }

    /// <summary>As long as it takes to fall, so far has it fallen; and the three kinds of leak stop at the floor.</summary>
    [Fact]
    public void PressureAfter_TheTimeToFall_IsThatPressure()
    {
        ClosedVolume volume = (Line with { Gas = 3 }).Volume;
        VolumeFlow flow = VolumeFlow.FromCubicMillimetersPerSecond(1);
        GaugePressure bar = new(Pressure.FromBars(1));
        LeakPath[] paths = [LeakPath.Constant(flow), LeakPath.Narrow(flow, bar), LeakPath.Hole(flow, bar)];
        foreach (LeakPath path in paths)
        {
            foreach (double kilopascals in new[] { 399.9, 200, 10, 0.01 })
            {
                GaugePressure lower = new(Pressure.FromKilopascals(kilopascals));
                Duration time = path.TimeToFall(volume, Line.Start, lower);

                Close.WithinOf(
                    4e5,
                    1e-9,
                    lower.AboveAmbient.Pascals,
                    path.PressureAfter(volume, Line.Start, time).AboveAmbient.Pascals
                );
            }

            Assert.Equal(0, path.PressureAfter(volume, Line.Start, Duration.FromDays(30)).AboveAmbient.Pascals, 1e-3);
            Close.Within(1e-12, 4, path.PressureAfter(volume, Line.Start, Duration.Zero).AboveAmbient.Bars);
        }
    }

    private static ClosedVolume Filled(Fuel fuel, double liters, double cubicCentimetersOfGas) =>
        new(
            fuel,
            Temperature.FromDegreesCelsius(20),
            Volume.FromLiters(liters),
            new ClosedVolume.ElasticWalls(default, default),
            Volume.FromCubicCentimeters(cubicCentimetersOfGas),
            ClosedLine.Ambient
        );

    private static DecayTest.Uncertainty Uncertainty(double kilopascals) =>
        new(Pressure.FromKilopascals(kilopascals), default, Duration.Zero, Exact);
}
