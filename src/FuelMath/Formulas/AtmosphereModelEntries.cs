using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="AtmosphereModel"/> in the catalog.</summary>
internal static class AtmosphereModelEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [GeopotentialAltitude(), Temperature(), Pressure(), WaterVaporPressure(), MoistAirDensity(), DryAirDensity()];

    private static FormulaInfo GeopotentialAltitude() =>
        FormulaInfo.Of(
            default(GeopotentialAltitudeFormula),
            "AtmosphereModel.GeopotentialAltitude",
            "The geopotential altitude of a height",
            FormulaInfo.FormulaTopic.Atmosphere,
            [K.Altitude.Within(-2000, 11019).Given("height", "h", "height above sea level", -2000, 11000)],
            [],
            [],
            K.Altitude.Gives(AtmosphereModel.Geopotential),
            [AtmosphereModel.GeopotentialAltitudeSource],
            new(
                [2000],
                1999.370947130308,
                1e-14,
                new DataSource("ISO-2533", "geopotential altitude, 1999.37 m, by hand")
            )
        );

    private readonly struct GeopotentialAltitudeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AtmosphereModel.GeopotentialAltitude(a[0]);
    }

    private static FormulaInfo Temperature() =>
        FormulaInfo.Of(
            default(TemperatureFormula),
            "AtmosphereModel.Temperature",
            "The temperature of the standard atmosphere",
            FormulaInfo.FormulaTopic.Atmosphere,
            [K.Altitude.Within(-2000, 11000).Given("geopotentialAltitude", "H", "geopotential altitude", -2000, 11000)],
            [],
            [],
            K.Temperature.Gives(AtmosphereModel.StandardT),
            [AtmosphereModel.TemperatureSource],
            new([5000], 255.65, 1e-14, new DataSource("ISO-2533", "table, 5 km"))
        );

    private readonly struct TemperatureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AtmosphereModel.Temperature(a[0]);
    }

    private static FormulaInfo Pressure() =>
        FormulaInfo.Of(
            default(PressureFormula),
            "AtmosphereModel.Pressure",
            "The pressure of the standard atmosphere",
            FormulaInfo.FormulaTopic.Atmosphere,
            [K.Altitude.Within(-2000, 11000).Given("geopotentialAltitude", "H", "geopotential altitude", -2000, 11000)],
            [],
            [],
            K.AbsolutePressure.Gives(AtmosphereModel.StandardP),
            [AtmosphereModel.PressureSource],
            new([5000], 54019.9, 2e-6, new DataSource("ISO-2533", "table, 5 km, six digits, from memory"))
        );

    private readonly struct PressureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AtmosphereModel.Pressure(a[0]);
    }

    private static FormulaInfo WaterVaporPressure() =>
        FormulaInfo.Of(
            default(WaterVaporPressureFormula),
            "AtmosphereModel.WaterVaporPressure",
            "The vapor pressure of water at saturation",
            FormulaInfo.FormulaTopic.Atmosphere,
            [K.Temperature.Within(273, 333).Given("temperature", Symbols.AbsoluteTemperature, 273, 333)],
            [],
            [],
            K.AbsolutePressure.Gives(AtmosphereModel.WaterPressure),
            [AtmosphereModel.WaterVaporPressureSource],
            new(
                [293.15],
                2339.2,
                0.002,
                new DataSource("CIPM-2007", "appendix A1.1, against steam tables at 20 degrees Celsius, from memory")
            )
        );

    private readonly struct WaterVaporPressureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AtmosphereModel.WaterVaporPressure(a[0]);
    }

    private static FormulaInfo MoistAirDensity() =>
        FormulaInfo.Of(
            default(MoistAirDensityFormula),
            "AtmosphereModel.MoistAirDensity",
            "The density of moist air",
            FormulaInfo.FormulaTopic.Atmosphere,
            [
                K.AbsolutePressure.Given("absolutePressure", "p", "absolute pressure", 50000, 110000),
                K.Temperature.Given("temperature", Symbols.AbsoluteTemperature, 250, 330),
                K
                    .AbsolutePressure.Within(0, 1e6)
                    .Given("waterPressure", "pw", "partial pressure of water vapor", 0, 10000),
            ],
            [],
            [],
            K.Density.Gives(AtmosphereModel.MoistDensity),
            [AtmosphereModel.MoistAirDensitySource],
            new(
                [101325, 293.15, 1228.1],
                1.199,
                0.0015,
                new DataSource("CRC-Handbook", "moist air with a dew point of 10 degrees Celsius, four digits")
            )
        );

    private readonly struct MoistAirDensityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AtmosphereModel.MoistAirDensity(a[0], a[1], a[2]);
    }

    private static FormulaInfo DryAirDensity() =>
        FormulaInfo.Of(
            default(DryAirDensityFormula),
            "AtmosphereModel.DryAirDensity",
            "The mass of dry air in a volume of moist air",
            FormulaInfo.FormulaTopic.Atmosphere,
            [
                K.AbsolutePressure.Given("absolutePressure", "p", "absolute pressure", 50000, 110000),
                K.Temperature.Given("temperature", Symbols.AbsoluteTemperature, 250, 330),
                K
                    .AbsolutePressure.Within(0, 1e6)
                    .Given("waterPressure", "pw", "partial pressure of water vapor", 0, 10000),
            ],
            [],
            [],
            K.Density.Gives(AtmosphereModel.DryDensity),
            [AtmosphereModel.DryAirDensitySource],
            new([101325, 288.15, 0], 1.225, 1e-6, new DataSource("ISO-2533", "sea level, without water"))
        );

    private readonly struct DryAirDensityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AtmosphereModel.DryAirDensity(a[0], a[1], a[2]);
    }
}
