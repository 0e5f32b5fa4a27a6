namespace FuelMath.Tests.Formulas;

/// <summary>What the matrix of readings has to know of a formula beyond its entry in the catalog.</summary>
internal static class FormulaTolerances
{
    /// <summary>
    /// By how many units in the last place a lane may differ from a real number; none for a formula without logarithm,
    /// exponential or power.
    /// </summary>
    /// <remarks>
    /// The logarithm of a lane differs by one and its exponential by two. A factor 1/x2 doubles what x has (8 leaves room
    /// for the fit before); a power or an exponential multiplies it by its exponent, up to 20 (64); an exponential of an
    /// exponential does both, and the coefficients of a cubic cancel to a thirtieth of themselves (512). Differences of two
    /// logarithms lose a digit or two where pressures are close: 64.
    /// </remarks>
    private static readonly Dictionary<string, int> UlpsOf = new()
    {
        ["VaporPressure.Wagner"] = 64,
        ["VaporPressure.WagnerOriginal"] = 64,
        ["LiquidElasticity.DensityUnderPressure"] = 8,
        ["AtmosphereModel.Pressure"] = 64,
        ["AtmosphereModel.WaterVaporPressure"] = 64,
        ["Friction.ColebrookFactor"] = 8,
        ["Friction.SwameeJainFactor"] = 64,
        ["Friction.HaalandFactor"] = 64,
        ["Friction.SerghidesFactor"] = 64,
        ["Friction.FullyRoughFactor"] = 8,
        ["Friction.Factor"] = 8,
        ["Friction.FactorWithCubicPassage"] = 512,
        ["Friction.PressureLoss"] = 8,
        ["Orifice.PowerLawMassFlow"] = 64,
        ["Orifice.PowerLawPressureLoss"] = 64,
        ["ThermalExpansion.VolumeCorrection"] = 4,
        ["ThermalExpansion.GasolineVolumeCorrection"] = 4,
        ["ThermalExpansion.SaturatedLiquidDensity"] = 16,
        ["VaporPressure.FromReid"] = 64,
        ["VaporPressure.Antoine"] = 64,
        ["WireResistance.AwgDiameter"] = 8,
        ["WireResistance.AwgFromArea"] = 8,
        ["PetroleumViscosity.Relative"] = 16,
        ["PetroleumViscosity.Kinematic"] = 512,
        ["PetroleumViscosity.BlendingIndex"] = 64,
        ["PetroleumViscosity.FromBlendingIndex"] = 512,
        ["SaturatedLiquid.Viscosity"] = 512,
        ["PressureDecay.LaminarFallTime"] = 64,
        ["PressureDecay.MixedResidue"] = 8,
        ["PressureRise.Compliance"] = 8,
        ["PressureRise.PressedInVolume"] = 64,
        ["PressureDecay.MixedExchanges"] = 8,
        ["TankHeating.TemperatureAfter"] = 64,
        ["TankHeating.DrainingAdiabatic"] = 64,
        ["TankHeating.DrainingTemperature"] = 64,
        ["CurvedFriction.WhiteLaminarRatio"] = 64,
        ["CurvedFriction.SchmidtLaminarRatio"] = 64,
        ["CurvedFriction.ItoCriticalReynolds"] = 64,
        ["CurvedFriction.Factor"] = 64,
        ["CurvedFriction.PressureLoss"] = 64,
        ["BendLoss.RoundedBend"] = 64,
        ["SealFit.SectionReduction"] = 64,
        ["LiquidElasticity.PetroleumCompressibility"] = 64,
        ["LiquidElasticity.GasolineModulus"] = 64,
        ["PetroleumViscosity.Gasoline"] = 64,
        ["VaporPressure.GasolineWithEthanol"] = 64,
    };

    /// <summary>Where a formula jumps with its first argument, so that no difference across has a meaning.</summary>
    private static readonly Dictionary<string, double[]> JumpsOf = new()
    {
        ["ThermalExpansion.ProductCoefficient"] = [770, 787.5, 839],
        ["TeeLoss.CombiningBranch"] = [0.4],
        ["SealFit.SectionReduction"] = [0, 0.03],
    };

    internal static IEnumerable<string> Names => UlpsOf.Keys.Concat(JumpsOf.Keys);

    internal static int Ulps(string name) => UlpsOf.GetValueOrDefault(name);

    internal static double[] Jumps(string name) => JumpsOf.GetValueOrDefault(name, []);

    /// <summary>The size of the terms of a difference that may come near zero: its rounding is theirs.</summary>
    internal static double Terms(string name) => name == "WireResistance.AwgFromArea" ? 36 : 0;
}
