using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="TankHeating"/> in the catalog.</summary>
internal static class TankHeatingEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [SettledTemperature(), TemperatureAfter(), DrainingAdiabatic(), DrainingTemperature()];

    private static FormulaInfo.Argument Start =>
        K.Temperature.Given("start", "T0", "temperature at the start", 270, 330);

    private static FormulaInfo.Argument Ambient =>
        K.Temperature.Given("ambient", "Ta", "temperature of the air", 250, 320);

    private static FormulaInfo.Argument Power => K.Power.Given("power", "P", "heat that comes in", 0, 500);

    private static FormulaInfo.Argument Loss =>
        K.HeatLoss.Given("loss", "U", "heat lost for each kelvin above ambient", 1, 50);

    private static ImmutableArray<FormulaInfo.Argument> Draining =>
        [
            K.HeatCapacity.Given("heatCapacity", "C0", "heat capacity of fuel and tank at the start", 50000, 100000),
            K.HeatLoss.Given("drain", "d", "heat capacity that leaves in a unit of time", 1, 20),
            K.Seconds.Given("time", "t", "time", 0, 2000),
        ];

    private static FormulaInfo SettledTemperature() =>
        FormulaInfo.Of(
            default(SettledTemperatureFormula),
            "TankHeating.SettledTemperature",
            "The temperature at which a heated tank settles",
            FormulaInfo.FormulaTopic.Heat,
            [Ambient, Power, Loss],
            [],
            [],
            K.Temperature.Gives(TankHeating.Settled),
            [TankHeating.SettledTemperatureSource],
            new([293.15, 100, 5], 313.15, 1e-14, new DataSource("Definition", "20 K above, by hand"))
        );

    private readonly struct SettledTemperatureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankHeating.SettledTemperature(a[0], a[1], a[2]);
    }

    private static FormulaInfo TemperatureAfter() =>
        FormulaInfo.Of(
            default(TemperatureAfterFormula),
            "TankHeating.TemperatureAfter",
            "The temperature of a heated tank after a time",
            FormulaInfo.FormulaTopic.Heat,
            [
                Start,
                Ambient,
                Power,
                Loss,
                K.HeatCapacity.Given("heatCapacity", "C", "heat capacity of fuel and tank", 10000, 100000),
                K.Seconds.Given("time", "t", "time", 0, 10000),
            ],
            [],
            [],
            K.Temperature.Gives(TankHeating.Later),
            [TankHeating.TemperatureAfterSource],
            new(
                [283.15, 283.15, 800, 1e-5, 84000, 2625],
                308.15,
                1e-6,
                new DataSource("NCERT-Exemplar-11", "immersion heater, 20 kg of water by 25 K")
            )
        );

    private readonly struct TemperatureAfterFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankHeating.TemperatureAfter(a[0], a[1], a[2], a[3], a[4], a[5]);
    }

    private static FormulaInfo DrainingAdiabatic() =>
        FormulaInfo.Of(
            default(DrainingAdiabaticFormula),
            "TankHeating.DrainingAdiabatic",
            "The temperature of a tank that empties and loses no heat",
            FormulaInfo.FormulaTopic.Heat,
            [Start, Power, .. Draining],
            [FormulaInfo.Bound.Above("heatCapacity", 1, ["drain", "time"], [])],
            [],
            K.Temperature.Gives(TankHeating.Later),
            [TankHeating.DrainingAdiabaticSource],
            new(
                [300, 100, 10000, 10, 500],
                306.9314718055995,
                1e-13,
                new DataSource("Definition", "ten times the logarithm of two above 300 K, by hand")
            )
        );

    private readonly struct DrainingAdiabaticFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankHeating.DrainingAdiabatic(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo DrainingTemperature() =>
        FormulaInfo.Of(
            default(DrainingTemperatureFormula),
            "TankHeating.DrainingTemperature",
            "The temperature of a heated tank that empties",
            FormulaInfo.FormulaTopic.Heat,
            [Start, Ambient, Power, Loss, .. Draining],
            [FormulaInfo.Bound.Above("heatCapacity", 1, ["drain", "time"], [])],
            [],
            K.Temperature.Gives(TankHeating.Later),
            [TankHeating.DrainingTemperatureSource],
            new(
                [320, 290, 100, 10, 10000, 10, 500],
                310,
                1e-13,
                new DataSource("Definition", "half of the difference of 20 K to 300 K, by hand")
            )
        );

    private readonly struct DrainingTemperatureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankHeating.DrainingTemperature(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }
}
