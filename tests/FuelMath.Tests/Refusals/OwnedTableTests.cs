using FuelMath.Tests.Controllers;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Refusals;

/// <summary>A table that belongs to a part names it, and answers in the unit that it was asked in, or in one of the trade.</summary>
public sealed class OwnedTableTests
{
    private static readonly Pump Pump = Workshop.Pump(1);
    private static readonly Injector Injector = Trade.Injector(500);
    private static readonly Fuel Fuel = StandardFuels.PumpGasoline.WithName("race fuel");

    [Fact]
    public void CurveOfAPump_NamesThePump()
    {
        Outside(Pump.Name, "pressure rise", 20, "bar", () => Pump.Curves[0].FlowAt(Pressure.FromBars(20)));
        Outside(Pump.Name, "flow", 9000, "L/h", () => Pump.Curves[0].RiseAt(VolumeFlow.FromLitersPerHour(9000)));
        PumpCurve between = Pump.CurveAt(Pump.Curves[0].Voltage);
        Outside(
            Pump.Name,
            "pressure rise",
            300,
            "psi",
            () => between.CurrentAt(Pressure.FromPoundsForcePerSquareInch(300))
        );
    }

    /// <summary>A flow in m³/s, as results of the library are, is answered in L/h.</summary>
    [Fact]
    public void CurveOfAPump_AskedInSi_AnswersInAUnitOfTheTrade()
    {
        Outside(Pump.Name, "flow", 3600, "L/h", () => Pump.Curves[0].RiseAt(VolumeFlow.FromCubicMetersPerSecond(1e-3)));
        Outside(Pump.Name, "pressure rise", 2000, "kPa", () => Pump.Curves[0].FlowAt(Pressure.FromPascals(2e6)));
    }

    [Fact]
    public void TablesOfAnInjector_NameTheInjector()
    {
        Outside(
            Injector.Name,
            "voltage at the injector",
            18,
            "V",
            () => Injector.DeadTime.At(ElectricPotential.FromVolts(18), Pressure.FromBars(3))
        );
        Refused(Injector.Name, -1, "bar", () => Injector.Rating.MassFlowAt(Pressure.FromBars(-1), Thin));
        Injector measured = Injector.WithRating(
            "measured",
            Injector.Rating.WithExponent(
                new MeasuredExponent(
                    Ratio.FromPercent(50),
                    Pressure.FromBars(2),
                    Pressure.FromBars(4),
                    OutsideRange.Refuse,
                    Workshop.Invented
                )
            )
        );
        Outside(
            "measured",
            "differential pressure",
            5,
            "bar",
            () => measured.StaticMassFlow(Pressure.FromBars(5), Thin)
        );
    }

    [Fact]
    public void PropertyOfAFuel_NamesTheFuel()
    {
        Outside(Fuel.Name, "temperature", 300, "°C", () => Fuel.DensityAt(Temperature.FromDegreesCelsius(300)));
        Outside(Fuel.Name, "temperature", 500, "°F", () => Fuel.Density.At(Temperature.FromDegreesFahrenheit(500)));
        Outside(Fuel.Name, "temperature", 226.85, "°C", () => Fuel.DensityAt(Temperature.FromKelvins(500)));
    }

    /// <summary>Absolute zero is not zero on a scale of Celsius or Fahrenheit. Source: [NIST-SP-811] the two scales.</summary>
    [Theory]
    [InlineData(-300, -273.15, true)]
    [InlineData(-500, -459.67, false)]
    public void TemperatureBelowAbsoluteZero_IsRefusedInItsScale(double number, double zero, bool celsius)
    {
        Temperature cold = celsius ? Temperature.FromDegreesCelsius(number) : Temperature.FromDegreesFahrenheit(number);

        Refusal refusal = Refusal.Of(Assert.Throws<RefusedValueException>(() => Guard.Positive(cold, cold.InSi())))!;

        Assert.True(refusal.IsMinimumExcluded);
        Close.Within(1e-9, zero, refusal.Minimum!.Value);
        Close.Within(1e-9, number, refusal.Value!.Value);
    }

    private static Density Thin => Density.FromKilogramsPerCubicMeter(740);

    private static void Outside(string part, string what, double value, string unit, Func<object?> code)
    {
        Refusal refusal = Refusal.Of(Assert.Throws<OutsideTableException>(code))!;
        Assert.Equal((part, what, unit), (refusal.Part, refusal.What, refusal.Unit));
        Close.Within(1e-9, value, refusal.Value!.Value);
        Assert.True(refusal.Value < refusal.Minimum || refusal.Value > refusal.Maximum);
        Assert.Contains($"'{part}'", refusal.Message, StringComparison.Ordinal);
    }

    private static void Refused(string part, double value, string unit, Func<object?> code)
    {
        Refusal refusal = Refusal.Of(Assert.Throws<ArgumentOutOfRangeException>(code))!;
        Assert.Equal((part, unit, 0), (refusal.Part, refusal.Unit, refusal.Minimum));
        Close.Within(1e-9, value, refusal.Value!.Value);
    }
}
