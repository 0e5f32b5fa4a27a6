using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Tests.Formulas;

/// <summary>The formulas of fuels, tanks and air, for the matrix of <see cref="FormulaCases"/>.</summary>
internal static class FuelFormulaCases
{
    internal static IReadOnlyList<FormulaCase> All { get; } =
    [
        new CombustionFuelFraction(),
        new CombustionEquivalenceRatio(),
        new CombustionAirFuelRatioFromScale(),
        new CombustionAirFuelRatioFromFuelFraction(),
        new CombustionMeanByVolume(),
        new HeatingValueHigher(),
        new HeatingValueLower(),
        new PremixBalanceOilFraction(),
        new PremixBalanceOil(),
        new PremixBalanceMissingOil(),
        new PremixBalanceMissingFuel(),
        new VaporPressureWagner(),
        new VaporPressureWagnerOriginal(),
        new SaturatedLiquidHeatCapacity(),
        new SaturatedLiquidHeatCapacityNearCritical(),
        new AlcoholTableDensity(),
        new AlcoholTableMixedVolume(),
        new LiquidElasticityIsentropicModulus(),
        new LiquidElasticitySoundSpeed(),
        new LiquidElasticityDensityUnderPressure(),
        new TankBalanceContentAfter(),
        new TankBalanceAddedVolume(),
        new TankBalanceFirstVolume(),
        new TankBalanceContentFromSignal(),
        new TankBalanceApparentContent(),
        new FuelChangeRatiosMassRatioAtEqualLambda(),
        new FuelChangeRatiosMassRatioAtEqualPower(),
        new FuelChangeRatiosVolumeRatio(),
        new FuelChangeRatiosOpenTimeRatio(),
        new SuctionPressureAboveBoiling(),
        new SuctionNetPositiveSuctionHead(),
        new AtmosphereModelGeopotentialAltitude(),
        new AtmosphereModelTemperature(),
        new AtmosphereModelPressure(),
        new AtmosphereModelWaterVaporPressure(),
        new AtmosphereModelMoistAirDensity(),
        new AtmosphereModelDryAirDensity(),
    ];

    private sealed class CombustionFuelFraction() : FormulaCase("Combustion.FuelFraction", 0, (1, 40))
    {
        internal override T At<T>(T[] a) => Combustion.FuelFraction(a[0]);
    }

    private sealed class CombustionEquivalenceRatio() : FormulaCase("Combustion.EquivalenceRatio", 0, (1, 40), (5, 35))
    {
        internal override T At<T>(T[] a) => Combustion.EquivalenceRatio(a[0], a[1]);
    }

    private sealed class CombustionAirFuelRatioFromScale()
        : FormulaCase("Combustion.AirFuelRatioFromScale", 0, (8, 25), (13, 16), (5, 35))
    {
        internal override T At<T>(T[] a) => Combustion.AirFuelRatioFromScale(a[0], a[1], a[2]);
    }

    private sealed class CombustionAirFuelRatioFromFuelFraction()
        : FormulaCase("Combustion.AirFuelRatioFromFuelFraction", 0, (0.01, 0.9))
    {
        internal override T At<T>(T[] a) => Combustion.AirFuelRatioFromFuelFraction(a[0]);
    }

    private sealed class CombustionMeanByVolume()
        : FormulaCase("Combustion.MeanByVolume", 0, (0.1, 0.9), (0.1, 0.9), (650, 900), (650, 900), (5, 16), (5, 16))
    {
        internal override T At<T>(T[] a) => Combustion.MeanByVolume<T>(a.AsSpan(0, 2), a.AsSpan(2, 2), a.AsSpan(4, 2));
    }

    private sealed class HeatingValueHigher()
        : FormulaCase("HeatingValue.Higher", 0, (0.3, 0.9), (0.1, 0.25), (0, 0.5), (0, 0.05), (0, 0.05))
    {
        internal override T At<T>(T[] a) => HeatingValue.Higher(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class HeatingValueLower() : FormulaCase("HeatingValue.Lower", 0, (2e7, 5e7), (0.05, 0.25))
    {
        internal override T At<T>(T[] a) => HeatingValue.Lower(a[0], a[1]);
    }

    private sealed class PremixBalanceOilFraction() : FormulaCase("PremixBalance.OilFraction", 0, (0.001, 1))
    {
        internal override T At<T>(T[] a) => PremixBalance.OilFraction(a[0]);
    }

    private sealed class PremixBalanceOil() : FormulaCase("PremixBalance.Oil", 0, (0.001, 0.1), (0.001, 1))
    {
        internal override T At<T>(T[] a) => PremixBalance.Oil(a[0], a[1]);
    }

    private sealed class PremixBalanceMissingOil()
        : FormulaCase("PremixBalance.MissingOil", 0, (0.01, 0.1), (0.01, 0.1), (0, 0.01), (0, 0.1))
    {
        internal override T At<T>(T[] a) => PremixBalance.MissingOil(a[0], a[1], a[2], a[3]);
    }

    private sealed class PremixBalanceMissingFuel()
        : FormulaCase("PremixBalance.MissingFuel", 0, (0.01, 0.1), (0.01, 0.1), (0, 0.01), (0, 0.1))
    {
        internal override T At<T>(T[] a) => PremixBalance.MissingFuel(a[0], a[1], a[2], a[3]);
    }

    private sealed class VaporPressureWagner() : FormulaCase("VaporPressure.Wagner", 64, (230, 375))
    {
        internal override T At<T>(T[] a) =>
            VaporPressure.Wagner(513.92, 6_132_000, -8.68587, 1.17831, -4.8762, 1.588, a[0]);
    }

    private sealed class VaporPressureWagnerOriginal() : FormulaCase("VaporPressure.WagnerOriginal", 64, (240, 375))
    {
        internal override T At<T>(T[] a) =>
            VaporPressure.WagnerOriginal(540.1, 2_732_370, -7.67468, 1.37068, -3.5362, -3.20243, a[0]);
    }

    private sealed class SaturatedLiquidHeatCapacity() : FormulaCase("SaturatedLiquid.HeatCapacity", 0, (230, 375))
    {
        internal override T At<T>(T[] a) => SaturatedLiquid.HeatCapacity(0.032042, 105_800, -362.23, 0.9379, 0, a[0]);
    }

    private sealed class SaturatedLiquidHeatCapacityNearCritical()
        : FormulaCase("SaturatedLiquid.HeatCapacityNearCritical", 0, (230, 375))
    {
        internal override T At<T>(T[] a) =>
            SaturatedLiquid.HeatCapacityNearCritical(0.100205, 540.2, 61.26, 314_410, 1824.6, -2547.9, a[0]);
    }

    private sealed class AlcoholTableDensity() : FormulaCase("AlcoholTable.Density", 0, (0.001, 1), (0.5, 40))
    {
        internal override T At<T>(T[] a) => AlcoholTable.Density(a[0], a[1]);
    }

    private sealed class AlcoholTableMixedVolume()
        : FormulaCase("AlcoholTable.MixedVolume", 0, (1e-5, 1e-2), (1e-5, 1e-2), (0.5, 40))
    {
        internal override T At<T>(T[] a) => AlcoholTable.MixedVolume(a[0], a[1], a[2]);
    }

    private sealed class LiquidElasticityIsentropicModulus()
        : FormulaCase(
            "LiquidElasticity.IsentropicModulus",
            0,
            (7e8, 2e9),
            (1e-4, 1.3e-3),
            (650, 900),
            (1500, 3000),
            (250, 350)
        )
    {
        internal override T At<T>(T[] a) => LiquidElasticity.IsentropicModulus(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class LiquidElasticitySoundSpeed()
        : FormulaCase("LiquidElasticity.SoundSpeed", 0, (7e8, 2e9), (650, 900))
    {
        internal override T At<T>(T[] a) => LiquidElasticity.SoundSpeed(a[0], a[1]);
    }

    private sealed class LiquidElasticityDensityUnderPressure()
        : FormulaCase("LiquidElasticity.DensityUnderPressure", 8, (650, 900), (7e8, 2e9), (0, 1e7))
    {
        internal override T At<T>(T[] a) => LiquidElasticity.DensityUnderPressure(a[0], a[1], a[2]);
    }

    private sealed class TankBalanceContentAfter()
        : FormulaCase("TankBalance.ContentAfter", 0, (0, 1), (1e-3, 0.1), (0, 1), (1e-3, 0.1))
    {
        internal override T At<T>(T[] a) => TankBalance.ContentAfter(a[0], a[1], a[2], a[3]);
    }

    private sealed class TankBalanceAddedVolume()
        : FormulaCase("TankBalance.AddedVolume", 0, (0, 0.3), (1e-3, 0.1), (0.7, 1), (0.35, 0.65))
    {
        internal override T At<T>(T[] a) => TankBalance.AddedVolume(a[0], a[1], a[2], a[3]);
    }

    private sealed class TankBalanceFirstVolume()
        : FormulaCase(
            "TankBalance.FirstVolume",
            0,
            (0, 0.3),
            (1e-3, 0.03),
            (0.7, 1),
            (0, 0.2),
            (0.3, 0.5),
            (0.05, 0.1),
            (0.95, 1.05),
            (0.95, 1.05)
        )
    {
        internal override T At<T>(T[] a) => TankBalance.FirstVolume(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7]);
    }

    private sealed class TankBalanceContentFromSignal()
        : FormulaCase("TankBalance.ContentFromSignal", 0, (60, 150), (40, 50), (150, 160))
    {
        internal override T At<T>(T[] a) => TankBalance.ContentFromSignal(a[0], a[1], a[2]);
    }

    private sealed class TankBalanceApparentContent()
        : FormulaCase("TankBalance.ApparentContent", 0, (5e-5, 1e-4), (5e-6, 1e-5), (1e-5, 2e-5))
    {
        internal override T At<T>(T[] a) => TankBalance.ApparentContent(a[0], a[1], a[2]);
    }

    private sealed class FuelChangeRatiosMassRatioAtEqualLambda()
        : FormulaCase("FuelChangeRatios.MassRatioAtEqualLambda", 0, (5, 16), (5, 16))
    {
        internal override T At<T>(T[] a) => FuelChangeRatios.MassRatioAtEqualLambda(a[0], a[1]);
    }

    private sealed class FuelChangeRatiosMassRatioAtEqualPower()
        : FormulaCase("FuelChangeRatios.MassRatioAtEqualPower", 0, (1e7, 5e7), (1e7, 5e7))
    {
        internal override T At<T>(T[] a) => FuelChangeRatios.MassRatioAtEqualPower(a[0], a[1]);
    }

    private sealed class FuelChangeRatiosVolumeRatio()
        : FormulaCase("FuelChangeRatios.VolumeRatio", 0, (0.3, 3), (650, 900), (650, 900))
    {
        internal override T At<T>(T[] a) => FuelChangeRatios.VolumeRatio(a[0], a[1], a[2]);
    }

    private sealed class FuelChangeRatiosOpenTimeRatio()
        : FormulaCase("FuelChangeRatios.OpenTimeRatio", 0, (0.3, 3), (650, 900), (650, 900))
    {
        internal override T At<T>(T[] a) => FuelChangeRatios.OpenTimeRatio(a[0], a[1], a[2]);
    }

    private sealed class SuctionPressureAboveBoiling()
        : FormulaCase("Suction.PressureAboveBoiling", 0, (5e4, 2e5), (650, 1000), (-2, 2), (0, 3e4), (0, 6e4))
    {
        internal override T At<T>(T[] a) => Suction.PressureAboveBoiling(a[0], a[1], 9.80665, a[2], a[3], a[4]);
    }

    private sealed class SuctionNetPositiveSuctionHead()
        : FormulaCase("Suction.NetPositiveSuctionHead", 0, (0, 2e5), (650, 1000))
    {
        internal override T At<T>(T[] a) => Suction.NetPositiveSuctionHead(a[0], a[1], 9.80665);
    }

    private sealed class AtmosphereModelGeopotentialAltitude()
        : FormulaCase("AtmosphereModel.GeopotentialAltitude", 0, (-2000, 11000))
    {
        internal override T At<T>(T[] a) => AtmosphereModel.GeopotentialAltitude(a[0]);
    }

    private sealed class AtmosphereModelTemperature() : FormulaCase("AtmosphereModel.Temperature", 0, (-2000, 11000))
    {
        internal override T At<T>(T[] a) => AtmosphereModel.Temperature(a[0]);
    }

    private sealed class AtmosphereModelPressure() : FormulaCase("AtmosphereModel.Pressure", 64, (-2000, 11000))
    {
        internal override T At<T>(T[] a) => AtmosphereModel.Pressure(a[0]);
    }

    private sealed class AtmosphereModelWaterVaporPressure()
        : FormulaCase("AtmosphereModel.WaterVaporPressure", 64, (273, 333))
    {
        internal override T At<T>(T[] a) => AtmosphereModel.WaterVaporPressure(a[0]);
    }

    private sealed class AtmosphereModelMoistAirDensity()
        : FormulaCase("AtmosphereModel.MoistAirDensity", 0, (5e4, 1.1e5), (250, 330), (0, 1e4))
    {
        internal override T At<T>(T[] a) => AtmosphereModel.MoistAirDensity(a[0], a[1], a[2]);
    }

    private sealed class AtmosphereModelDryAirDensity()
        : FormulaCase("AtmosphereModel.DryAirDensity", 0, (5e4, 1.1e5), (250, 330), (0, 1e4))
    {
        internal override T At<T>(T[] a) => AtmosphereModel.DryAirDensity(a[0], a[1], a[2]);
    }
}
