using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Pumps that warm the tank, and fuel that may boil once the engine stands.</summary>
public sealed class TankWarmingTests
{
    private static readonly FuelSystem OnEthanol = Workshop.Four().WithFuel(StandardFuels.Ethanol);

    private static readonly SystemState Running = OnEthanol.Solve(Workshop.Point(3000, 80, Workshop.Hold(1)));

    [Fact]
    public void FromState_TakesTheElectricalPowerAndWhatIsBurned()
    {
        TankWarming.Bounds bounds = Bounds(OnEthanol, Running, 20);
        TankWarming tank = bounds.Most;

        Close.Within(
            1e-12,
            Running.Pumps[0].Voltage.Volts * Running.Pumps[0].Current.Amperes,
            (double)tank.Power.Watts
        );
        Assert.Equal(bounds.ElectricalPower, tank.Power);
        Close.Within(1e-12, Running.Stages[0].MeanFlow.KilogramsPerSecond, tank.Burned.KilogramsPerSecond);

        // At the temperature of the air nothing is lost yet: P/(m c) a minute.
        double specific = StandardFuels.Ethanol.HeatCapacity.At(Workshop.Celsius(20)).JoulesPerKilogramKelvin;
        Close.Within(1e-9, (double)tank.Power.Watts * 60 / (20 * specific), tank.RisePerMinute.Kelvins);
        Close.Within(1e-9, 293.15 + ((double)tank.Power.Watts / 2), tank.SettledTemperature.Kelvins);
    }

    /// <summary>
    /// The engine burns most of what the pump draws: step by step, fuel leaves the tank, takes up the pump's heat, and what
    /// is not burned comes back warmer. That is the lower bound; with all the power kept the tank gets several times as much.
    /// </summary>
    [Fact]
    public void FromState_HeatThatIsBurned_DoesNotComeBack()
    {
        SystemState power = OnEthanol.Solve(Workshop.Point(6000, 180, Workshop.Hold(0.9)));
        TankWarming.Bounds bounds = Bounds(OnEthanol, power, 30);
        double drawn = power.FlowThrough("pump").CubicMetersPerSecond;
        double returned = power.FlowThrough("return hose").CubicMetersPerSecond;
        double density = OnEthanol.Fuel.DensityAt(Workshop.Celsius(20)).KilogramsPerCubicMeter;
        double specific = StandardFuels.Ethanol.HeatCapacity.At(Workshop.Celsius(20)).JoulesPerKilogramKelvin;
        double watts = (double)bounds.ElectricalPower.Watts;

        const double step = 0.05;
        (double mass, double kelvins) = (30, 293.15);
        for (int i = 0; i < 300 / step; i++)
        {
            double warmer = watts / (drawn * density * specific);
            double heat = (returned * density * specific * warmer) - (2 * (kelvins - 293.15));
            kelvins += heat * step / (mass * specific);
            mass -= (drawn - returned) * density * step;
        }

        Close.Within(1e-9, returned / drawn, bounds.ReturnedShare.DecimalFractions);
        Assert.InRange(bounds.ReturnedShare.DecimalFractions, 0.01, 0.7);

        // Euler's steps of 1/6000 of the time: some 1e-4 of the rise.
        double rise = bounds.Least.TemperatureAfter(Duration.FromMinutes(5)).Kelvins - 293.15;
        Assert.Equal(kelvins - 293.15, rise, 1e-3 * rise);
        double most = bounds.Most.TemperatureAfter(Duration.FromMinutes(5)).Kelvins - 293.15;
        Close.Within(1e-6, most * bounds.ReturnedShare.DecimalFractions, rise);
    }

    /// <summary>Nothing burned: all that is drawn comes back, and the bounds meet.</summary>
    [Fact]
    public void FromState_NothingBurned_BoundsMeet()
    {
        TankWarming.Bounds bounds = Bounds(OnEthanol, OnEthanol.Solve(Workshop.Point(0, 100, FuelCommand.Cut)), 20);

        Close.Within(1e-9, 1, bounds.ReturnedShare.DecimalFractions);
        Close.Within(1e-9, (double)bounds.Most.Power.Watts, (double)bounds.Least.Power.Watts);
    }

    private static TankWarming.Bounds Bounds(FuelSystem system, SystemState state, double kilograms) =>
        TankWarming.Bounds.FromState(
            system,
            state,
            Mass.FromKilograms(kilograms),
            new TankCooling(Workshop.Celsius(20), Power.FromWatts(10), TemperatureDelta.FromKelvins(5))
        );

    /// <summary>There and back, with and without a draining tank; the settled temperature is approached and not passed.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(30)]
    public void TimeTo_OfATemperatureAfter_IsThatTime(double gramsPerSecond)
    {
        TankWarming tank = Tank(gramsPerSecond);
        double last = 293.15;
        foreach (double minutes in new[] { 1.0, 5, 9 })
        {
            Temperature later = tank.TemperatureAfter(Duration.FromMinutes(minutes));

            Assert.InRange(later.Kelvins, last, tank.SettledTemperature.Kelvins);
            Close.Within(1e-8, minutes, tank.TimeTo(later).Minutes);
            last = later.Kelvins;
        }
    }

    /// <summary>The less is left in the tank, the faster it warms.</summary>
    [Fact]
    public void TemperatureAfter_ADrainingTank_IsWarmer() =>
        Assert.True(
            Tank(30).TemperatureAfter(Duration.FromMinutes(9)) > Tank(0).TemperatureAfter(Duration.FromMinutes(9))
        );

    [Fact]
    public void TemperatureAfter_AnEmptyTank_IsRefused()
    {
        TankWarming tank = Tank(30);

        Close.Within(1e-12, 20 / 0.03, tank.TimeToEmpty!.Value.Seconds);
        Words.Refused<ArgumentOutOfRangeException>(
            "time",
            "11.1111 m, 12 m",
            () => tank.TemperatureAfter(Duration.FromMinutes(12))
        );
        Assert.Null(Tank(0).TimeToEmpty);
    }

    [Fact]
    public void TimeTo_WhereItDoesNotCome_SaysWhereItStops()
    {
        var error = Assert.Throws<NoSolutionException>(() => Tank(0).TimeTo(Workshop.Celsius(200)));

        Words.Says("20 °C, 95 °C, 200 °C", error);
    }

    [Fact]
    public void Constructor_UnknownHeatCapacity_SaysWhy() =>
        Assert.Throws<UnknownPropertyException>(() =>
            new TankWarming(
                StandardFuels.TwoStrokeOil,
                Mass.FromKilograms(20),
                Workshop.Celsius(20),
                new TankCooling(Workshop.Celsius(20), Power.FromWatts(10), TemperatureDelta.FromKelvins(5)),
                Power.FromWatts(150),
                default
            )
        );

    /// <summary>At the temperature that is told, the fuel's vapor pressure is the pressure.</summary>
    [Fact]
    public void HotSoak_BoilingTemperature_HasThatVaporPressure()
    {
        FuelSystem hot = Workshop.Four().WithFuel(Tightness.ClosedLine.Hot);
        SystemState state = hot.Solve(Workshop.Point(0, 100, FuelCommand.Cut, fuelCelsius: 20));

        HotSoak[] nodes = [.. HotSoak.Of(hot, state)];

        Assert.Equal(hot.Network.Nodes.Select(n => n.Name), nodes.Select(n => n.Node));
        HotSoak tank = nodes[0];
        Close.Within(1e-9, 100, hot.Fuel.VaporPressureAt(tank.BoilingTemperature!.Value).AboveVacuum.Kilopascals);
        Assert.Equal(tank.BoilingTemperature, tank.BoilingTemperatureAtAmbient);
        Close.Within(1e-9, tank.BoilingTemperature.Value.Kelvins - 293.15, tank.Margin!.Value.Kelvins);

        // The rail, at 4 bar absolute, is above what the vapor pressure is known for: it is not guessed at.
        HotSoak rail = nodes.Single(n => n.Node == "rail end");
        Assert.Null(rail.BoilingTemperature);
        Assert.Null(rail.Margin);
        Assert.Equal(tank.BoilingTemperature, rail.BoilingTemperatureAtAmbient);
    }

    /// <summary>
    /// Gasoline of 60 kPa Reid and its blends boil in the rail between 95 and 120 °C, an estimate: 8 to 11 % of the vapor pressure,
    /// which rises by 2.0 to 2.9 % a kelvin there, are 3 to 5 K.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    [InlineData(85)]
    public void HotSoak_RailAtFourBar_HasAMarginOfKnownSize(double ethanol)
    {
        Fuel fuel =
            ethanol > 0
                ? FuelBlend.ByVolume(
                    "blend",
                    Workshop.Celsius(15),
                    [
                        new(StandardFuels.Ethanol, Ratio.FromPercent(ethanol)),
                        new(StandardFuels.PumpGasoline, Ratio.FromPercent(100 - ethanol)),
                    ]
                )
                : StandardFuels.PumpGasoline;
        FuelSystem system = Workshop.Four().WithFuel(fuel);
        SystemState state = system.Solve(Workshop.Point(0, 100, FuelCommand.Cut, fuelCelsius: 20));

        foreach (HotSoak node in HotSoak.Of(system, state))
        {
            double boils = node.BoilingTemperature!.Value.DegreesCelsius;
            Close.Within(1e-9, boils - 20, node.Margin!.Value.Kelvins);
            Assert.InRange(node.MarginError!.Value.Kelvins, 0, 6);
            if (node.Node == "rail end")
            {
                Assert.InRange(boils, 95, 120);
                Assert.InRange(node.MarginError.Value.Kelvins, 3, 6);
            }
        }
    }

    [Fact]
    public void HotSoak_UnknownVaporPressure_SaysWhy()
    {
        FuelSystem unknown = Workshop
            .Four()
            .WithFuel(
                StandardFuels.PumpGasoline.WithVaporPressure(
                    "secret",
                    LiquidVaporPressure.Unknown("nobody measured it.")
                )
            );
        SystemState state = unknown.Solve(Workshop.Point(0, 100, FuelCommand.Cut));

        Assert.Contains(
            "nobody measured it.",
            Assert.Throws<UnknownPropertyException>(() => HotSoak.Of(unknown, state)).Message
        );
    }

    // 20 kg of ethanol with 150 W, and 2 W lost for each kelvin: settles 75 K above the air.
    private static TankWarming Tank(double gramsPerSecond) =>
        new(
            StandardFuels.Ethanol,
            Mass.FromKilograms(20),
            Workshop.Celsius(20),
            new TankCooling(Workshop.Celsius(20), Power.FromWatts(10), TemperatureDelta.FromKelvins(5)),
            Power.FromWatts(150),
            MassFlow.FromGramsPerSecond(gramsPerSecond)
        );
}
