using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Tests.Formulas;

/// <summary>
/// Every formula of the library, so that each can be read in every scalar. The constants of correlations that ask for
/// plain ones are those of iso-octane or round numbers: readings are compared with each other, not with the world.
/// </summary>
/// <remarks>
/// Where a lane may differ from a real number by some units in the last place: its logarithm differs by one and its
/// exponential by two. A factor 1/x2 doubles what x has (8 leaves room for the fit before); a power or an exponential
/// multiplies it by its exponent, up to 20 (64); an exponential of an exponential does both, and the coefficients of a
/// cubic cancel to a thirtieth of themselves (512).
/// </remarks>
internal static class FormulaCases
{
    internal static IReadOnlyList<FormulaCase> All { get; } =
    [
        new FrictionVelocity(),
        new FrictionReynolds(),
        new FrictionLaminarFactor(),
        new FrictionColebrookFactor(),
        new FrictionSwameeJainFactor(),
        new FrictionHaalandFactor(),
        new FrictionSerghidesFactor(),
        new FrictionFullyRoughFactor(),
        new FrictionFactor(),
        new FrictionFactorWithCubicPassage(),
        new FrictionPressureLoss(),
        new OrificeMassFlow(),
        new OrificeVolumeFlow(),
        new OrificeCarriedMassFlow(),
        new OrificeCarriedVolumeFlow(),
        new OrificePowerLawMassFlow(),
        new OrificeApproachFactor(),
        new PulseEffectiveWidth(),
        new PulseMass(),
        new PulseDutyCycle(),
        new PulseMeanMassFlow(),
        new PulseQuadraticLossFactor(),
        new MinorLossPressureLoss(),
        new MinorLossSuddenExpansion(),
        new MinorLossSuddenContraction(),
        new MinorLossCarriedCoefficient(),
        new MinorLossStraightLength(),
        new HydrostaticsColumnPressure(),
        new PorousMediumPressureLoss(),
        new CombustionOxygenDemand(),
        new CombustionStoichiometricAirFuelRatio(),
        new CombustionLambda(),
        new CombustionBlendByMass(),
        new CombustionMassFraction(),
        new ThermalExpansionLinearVolume(),
        new ThermalExpansionGasolineCoefficient(),
        new ThermalExpansionProductCoefficient(),
        new ThermalExpansionLubricantCoefficient(),
        new ThermalExpansionVolumeCorrection(),
        new ThermalExpansionGasolineVolumeCorrection(),
        new ThermalExpansionEthanolDensity(),
        new ThermalExpansionSaturatedLiquidDensity(),
        new VaporPressureFromReid(),
        new VaporPressureAntoine(),
        new ConductorAwgDiameter(),
        new ConductorAwgFromArea(),
        new ConductorArea(),
        new ConductorResistance(),
        new ConductorCarriedResistance(),
        new ConductorTemperatureFromResistance(),
        new DisplacementCylinder(),
        new DisplacementRotorChamber(),
        new EngineAirAirDensity(),
        new EngineAirAirMassPerEvent(),
        new EngineAirFuelMass(),
        new EngineAirEventsPerSecond(),
        new EngineAirFuelFlowFromPower(),
        new EngineAirHarmonicMeanLambda(),
        new BypassValveHeldPressure(),
        new BypassValveSpringForce(),
        new BypassValveFullyOpenCoefficient(),
        new BypassValveFullyOpenLoss(),
        new PetroleumViscosityRelative(),
        new PetroleumViscosityKinematic(),
        new PetroleumViscosityBlendingIndex(),
        new PetroleumViscosityFromBlendingIndex(),
        new PumpPowerHydraulic(),
        new PumpPowerElectric(),
        new SaturatedLiquidViscosity(),
        .. CurvedFrictionCases.All,
        .. PlumbingFormulaCases.All,
        .. TightnessFormulaCases.All,
        .. FittingFormulaCases.All,
        .. FuelFormulaCases.All,
        .. PulseFormulaCases.All,
    ];

    internal static FormulaCase Named(string name) => All.Single(c => c.Name == name);

    private sealed class FrictionVelocity() : FormulaCase("Friction.Velocity", 0, (-1e-3, 1e-3), (2e-3, 0.05))
    {
        internal override T At<T>(T[] a) => Friction.Velocity(a[0], a[1]);
    }

    private sealed class FrictionReynolds()
        : FormulaCase("Friction.Reynolds", 0, (-10, 10), (2e-3, 0.05), (600, 1000), (2e-4, 0.1))
    {
        internal override T At<T>(T[] a) => Friction.Reynolds(a[0], a[1], a[2], a[3]);
    }

    private sealed class FrictionLaminarFactor() : FormulaCase("Friction.LaminarFactor", 0, (0.01, 2000))
    {
        internal override T At<T>(T[] a) => Friction.LaminarFactor(a[0]);
    }

    private sealed class FrictionColebrookFactor() : FormulaCase("Friction.ColebrookFactor", 8, (4000, 1e11), (0, 0.05))
    {
        internal override T At<T>(T[] a) => Friction.ColebrookFactor(a[0], a[1]);
    }

    private sealed class FrictionSwameeJainFactor()
        : FormulaCase("Friction.SwameeJainFactor", 64, (5000, 1e8), (1e-6, 0.01))
    {
        internal override T At<T>(T[] a) => Friction.SwameeJainFactor(a[0], a[1]);
    }

    private sealed class FrictionHaalandFactor() : FormulaCase("Friction.HaalandFactor", 64, (4000, 1e8), (1e-6, 0.05))
    {
        internal override T At<T>(T[] a) => Friction.HaalandFactor(a[0], a[1]);
    }

    private sealed class FrictionSerghidesFactor()
        : FormulaCase("Friction.SerghidesFactor", 64, (4000, 1e8), (4e-5, 0.05))
    {
        internal override T At<T>(T[] a) => Friction.SerghidesFactor(a[0], a[1]);
    }

    private sealed class FrictionFullyRoughFactor() : FormulaCase("Friction.FullyRoughFactor", 8, (1e-6, 0.05))
    {
        internal override T At<T>(T[] a) => Friction.FullyRoughFactor(a[0]);
    }

    private sealed class FrictionFactor() : FormulaCase("Friction.Factor", 8, (10, 1e8), (0, 0.05))
    {
        internal override T At<T>(T[] a) => Friction.Factor(a[0], a[1]);
    }

    private sealed class FrictionFactorWithCubicPassage()
        : FormulaCase("Friction.FactorWithCubicPassage", 512, (10, 1e8), (0, 0.05))
    {
        internal override T At<T>(T[] a) => Friction.FactorWithCubicPassage(a[0], a[1]);
    }

    private sealed class FrictionPressureLoss()
        : FormulaCase("Friction.PressureLoss", 8, (-8, 8), (2e-3, 0.05), (0.1, 5), (0, 1e-4), (600, 1000), (2e-4, 0.1))
    {
        internal override T At<T>(T[] a) => Friction.PressureLoss(a[0], a[1], a[2], a[3], a[4], a[5]);
    }

    private sealed class OrificeMassFlow()
        : FormulaCase("Orifice.MassFlow", 0, (0.3, 1), (1e-9, 1e-6), (600, 1000), (1e3, 1e6))
    {
        internal override T At<T>(T[] a) => Orifice.MassFlow(a[0], a[1], a[2], a[3]);
    }

    private sealed class OrificeVolumeFlow()
        : FormulaCase("Orifice.VolumeFlow", 0, (0.3, 1), (1e-9, 1e-6), (600, 1000), (1e3, 1e6))
    {
        internal override T At<T>(T[] a) => Orifice.VolumeFlow(a[0], a[1], a[2], a[3]);
    }

    private sealed class OrificeCarriedMassFlow()
        : FormulaCase("Orifice.CarriedMassFlow", 0, (1e-4, 0.1), (1e3, 1e6), (600, 1000), (1e3, 1e6), (600, 1000))
    {
        internal override T At<T>(T[] a) => Orifice.CarriedMassFlow(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class OrificeCarriedVolumeFlow()
        : FormulaCase("Orifice.CarriedVolumeFlow", 0, (1e-7, 1e-4), (1e3, 1e6), (600, 1000), (1e3, 1e6), (600, 1000))
    {
        internal override T At<T>(T[] a) => Orifice.CarriedVolumeFlow(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class OrificePowerLawMassFlow()
        : FormulaCase("Orifice.PowerLawMassFlow", 64, (1e-4, 0.1), (1e3, 1e6), (600, 1000), (1e3, 1e6), (600, 1000))
    {
        internal override T At<T>(T[] a) => Orifice.PowerLawMassFlow(a[0], a[1], a[2], a[3], a[4], 0.55);
    }

    private sealed class OrificeApproachFactor() : FormulaCase("Orifice.ApproachFactor", 0, (0.05, 0.9))
    {
        internal override T At<T>(T[] a) => Orifice.ApproachFactor(a[0]);
    }

    private sealed class PulseEffectiveWidth() : FormulaCase("Pulse.EffectiveWidth", 0, (0, 0.02), (2e-4, 3e-3))
    {
        internal override T At<T>(T[] a) => Pulse.EffectiveWidth(a[0], a[1]);
    }

    private sealed class PulseMass() : FormulaCase("Pulse.Mass", 0, (1e-3, 0.1), (0, 0.02), (-1e-3, 1e-3))
    {
        internal override T At<T>(T[] a) => Pulse.Mass(a[0], a[1], a[2]);
    }

    private sealed class PulseDutyCycle() : FormulaCase("Pulse.DutyCycle", 0, (0, 0.02), (5e-3, 0.2))
    {
        internal override T At<T>(T[] a) => Pulse.DutyCycle(a[0], a[1]);
    }

    private sealed class PulseMeanMassFlow() : FormulaCase("Pulse.MeanMassFlow", 0, (1e-6, 1e-4), (1, 200))
    {
        internal override T At<T>(T[] a) => Pulse.MeanMassFlow(a[0], a[1]);
    }

    private sealed class PulseQuadraticLossFactor() : FormulaCase("Pulse.QuadraticLossFactor", 0, (0.01, 1))
    {
        internal override T At<T>(T[] a) => Pulse.QuadraticLossFactor(4, a[0]);
    }

    private sealed class MinorLossPressureLoss()
        : FormulaCase("MinorLoss.PressureLoss", 0, (0, 10), (600, 1000), (-10, 10))
    {
        internal override T At<T>(T[] a) => MinorLoss.PressureLoss(a[0], a[1], a[2]);
    }

    private sealed class MinorLossSuddenExpansion() : FormulaCase("MinorLoss.SuddenExpansion", 0, (0, 1))
    {
        internal override T At<T>(T[] a) => MinorLoss.SuddenExpansion(a[0]);
    }

    private sealed class MinorLossSuddenContraction() : FormulaCase("MinorLoss.SuddenContraction", 0, (0, 1))
    {
        internal override T At<T>(T[] a) => MinorLoss.SuddenContraction(a[0]);
    }

    private sealed class MinorLossCarriedCoefficient()
        : FormulaCase("MinorLoss.CarriedCoefficient", 0, (0.1, 10), (2e-3, 0.05), (2e-3, 0.05))
    {
        internal override T At<T>(T[] a) => MinorLoss.CarriedCoefficient(a[0], a[1], a[2]);
    }

    private sealed class MinorLossStraightLength()
        : FormulaCase("MinorLoss.StraightLength", 0, (0.01, 0.1), (0.1, 5), (2e-3, 0.05))
    {
        internal override T At<T>(T[] a) => MinorLoss.StraightLength(a[0], a[1], a[2]);
    }

    private sealed class HydrostaticsColumnPressure()
        : FormulaCase("Hydrostatics.ColumnPressure", 0, (600, 1000), (-10, 10))
    {
        internal override T At<T>(T[] a) => Hydrostatics.ColumnPressure(a[0], Hydrostatics.StandardGravity, a[1]);
    }

    private sealed class PorousMediumPressureLoss()
        : FormulaCase("PorousMedium.PressureLoss", 0, (1e9, 1e12), (1e9, 1e12), (2e-4, 0.1), (600, 1000), (-1e-3, 1e-3))
    {
        internal override T At<T>(T[] a) => PorousMedium.PressureLoss(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class CombustionOxygenDemand()
        : FormulaCase("Combustion.OxygenDemand", 0, (0, 1), (0, 1), (0, 1), (0, 1))
    {
        internal override T At<T>(T[] a) => Combustion.OxygenDemand(a[0], a[1], a[2], a[3]);
    }

    private sealed class CombustionStoichiometricAirFuelRatio()
        : FormulaCase("Combustion.StoichiometricAirFuelRatio", 0, (0.3, 0.9), (0.1, 0.25), (0, 0.5), (0.22, 0.24))
    {
        internal override T At<T>(T[] a) => Combustion.StoichiometricAirFuelRatio(a[0], a[1], a[2], a[3]);
    }

    private sealed class CombustionLambda() : FormulaCase("Combustion.Lambda", 0, (1e-5, 1e-3), (1e-6, 1e-4), (6, 16))
    {
        internal override T At<T>(T[] a) => Combustion.Lambda(a[0], a[1], a[2]);
    }

    private sealed class CombustionBlendByMass() : FormulaCase("Combustion.BlendByMass", 0, (0, 1), (6, 16), (6, 16))
    {
        internal override T At<T>(T[] a) => Combustion.BlendByMass(a[0], a[1], a[2]);
    }

    private sealed class CombustionMassFraction()
        : FormulaCase("Combustion.MassFraction", 0, (0, 1), (600, 1000), (600, 1000))
    {
        internal override T At<T>(T[] a) => Combustion.MassFraction(a[0], a[1], a[2]);
    }

    private sealed class ThermalExpansionLinearVolume()
        : FormulaCase("ThermalExpansion.LinearVolume", 0, (1e-4, 2e-3), (-50, 80))
    {
        internal override T At<T>(T[] a) => ThermalExpansion.LinearVolume(a[0], a[1]);
    }

    private sealed class ThermalExpansionGasolineCoefficient()
        : FormulaCase("ThermalExpansion.GasolineCoefficient", 0, (653, 770))
    {
        internal override T At<T>(T[] a) => ThermalExpansion.GasolineCoefficient(a[0]);
    }

    private sealed class ThermalExpansionProductCoefficient()
        : FormulaCase("ThermalExpansion.ProductCoefficient", 0, (653, 1075))
    {
        internal override double[] Jumps => [770, 787.5, 839];

        internal override T At<T>(T[] a) => ThermalExpansion.ProductCoefficient(a[0]);
    }

    private sealed class ThermalExpansionLubricantCoefficient()
        : FormulaCase("ThermalExpansion.LubricantCoefficient", 0, (800, 1164))
    {
        internal override T At<T>(T[] a) => ThermalExpansion.LubricantCoefficient(a[0]);
    }

    private sealed class ThermalExpansionVolumeCorrection()
        : FormulaCase("ThermalExpansion.VolumeCorrection", 4, (8e-4, 1.4e-3), (-18, 90))
    {
        internal override T At<T>(T[] a) => ThermalExpansion.VolumeCorrection(a[0], a[1]);
    }

    private sealed class ThermalExpansionGasolineVolumeCorrection()
        : FormulaCase("ThermalExpansion.GasolineVolumeCorrection", 4, (653, 770), (-18, 90))
    {
        internal override T At<T>(T[] a) => ThermalExpansion.GasolineVolumeCorrection(a[0], a[1]);
    }

    private sealed class ThermalExpansionEthanolDensity() : FormulaCase("ThermalExpansion.EthanolDensity", 0, (-20, 40))
    {
        internal override T At<T>(T[] a) => ThermalExpansion.EthanolDensity(a[0]);
    }

    private sealed class ThermalExpansionSaturatedLiquidDensity()
        : FormulaCase("ThermalExpansion.SaturatedLiquidDensity", 16, (250, 400))
    {
        internal override T At<T>(T[] a) =>
            ThermalExpansion.SaturatedLiquidDensity(0.114, 590, 0.274, 543.8, 0.2847, a[0]);
    }

    private sealed class VaporPressureFromReid() : FormulaCase("VaporPressure.FromReid", 64, (4e4, 1e5), (277, 311))
    {
        internal override T At<T>(T[] a) => VaporPressure.FromReid(a[0], a[1]);
    }

    private sealed class VaporPressureAntoine()
        : FormulaCase("VaporPressure.Antoine", 64, (8.9, 10.4), (1200, 1700), (-60, -30), (270, 350))
    {
        internal override T At<T>(T[] a) => VaporPressure.Antoine(a[0], a[1], a[2], a[3]);
    }

    private sealed class ConductorAwgDiameter() : FormulaCase("Conductor.AwgDiameter", 8, (-3, 40))
    {
        internal override T At<T>(T[] a) => Conductor.AwgDiameter(a[0]);
    }

    private sealed class ConductorAwgFromArea() : FormulaCase("Conductor.AwgFromArea", 8, (1e-7, 5e-5))
    {
        /// <inheritdoc />
        internal override double Terms => 36;

        internal override T At<T>(T[] a) => Conductor.AwgFromArea(a[0]);
    }

    private sealed class ConductorArea() : FormulaCase("Conductor.Area", 0, (1e-4, 0.02))
    {
        internal override T At<T>(T[] a) => Conductor.Area(a[0]);
    }

    private sealed class ConductorCarriedResistance()
        : FormulaCase("Conductor.CarriedResistance", 0, (0.5, 20), (3e-3, 5e-3), (-40, 120), (-40, 120))
    {
        internal override T At<T>(T[] a) => Conductor.CarriedResistance(a[0], a[1], a[2], a[3]);
    }

    private sealed class ConductorTemperatureFromResistance()
        : FormulaCase("Conductor.TemperatureFromResistance", 0, (0.5, 20), (3e-3, 5e-3), (-40, 120), (0.5, 20))
    {
        internal override T At<T>(T[] a) => Conductor.TemperatureFromResistance(a[0], a[1], a[2], a[3]);
    }

    private sealed class ConductorResistance()
        : FormulaCase("Conductor.Resistance", 0, (1.6e-8, 3e-8), (3e-3, 5e-3), (0.1, 10), (1e-7, 1e-4), (-40, 120))
    {
        internal override T At<T>(T[] a) => Conductor.Resistance(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class DisplacementCylinder() : FormulaCase("Displacement.Cylinder", 0, (0.03, 0.12), (0.03, 0.12))
    {
        internal override T At<T>(T[] a) => Displacement.Cylinder(a[0], a[1]);
    }

    private sealed class DisplacementRotorChamber()
        : FormulaCase("Displacement.RotorChamber", 0, (0.01, 0.02), (0.08, 0.12), (0.05, 0.1))
    {
        internal override T At<T>(T[] a) => Displacement.RotorChamber(a[0], a[1], a[2]);
    }

    private sealed class EngineAirAirDensity() : FormulaCase("EngineAir.AirDensity", 0, (2e4, 4e5), (230, 400))
    {
        internal override T At<T>(T[] a) => EngineAir.AirDensity(a[0], a[1]);
    }

    private sealed class EngineAirAirMassPerEvent()
        : FormulaCase("EngineAir.AirMassPerEvent", 0, (5e-5, 1e-3), (0.2, 1.2), (0.3, 4))
    {
        internal override T At<T>(T[] a) => EngineAir.AirMassPerEvent(a[0], a[1], a[2]);
    }

    private sealed class EngineAirFuelMass() : FormulaCase("EngineAir.FuelMass", 0, (1e-5, 3e-3), (6, 16), (0.6, 1.5))
    {
        internal override T At<T>(T[] a) => EngineAir.FuelMass(a[0], a[1], a[2]);
    }

    private sealed class EngineAirEventsPerSecond() : FormulaCase("EngineAir.EventsPerSecond", 0, (20, 1500), (0.5, 4))
    {
        internal override T At<T>(T[] a) => EngineAir.EventsPerSecond(a[0], a[1]);
    }

    private sealed class EngineAirFuelFlowFromPower()
        : FormulaCase("EngineAir.FuelFlowFromPower", 0, (1e3, 1e6), (5e-8, 2e-7))
    {
        internal override T At<T>(T[] a) => EngineAir.FuelFlowFromPower(a[0], a[1]);
    }

    private sealed class EngineAirHarmonicMeanLambda()
        : FormulaCase("EngineAir.HarmonicMeanLambda", 0, (0.5, 1.5), (0.5, 1.5), (0.5, 1.5), (0.5, 1.5))
    {
        internal override T At<T>(T[] a) => EngineAir.HarmonicMeanLambda<T>(a);
    }

    private sealed class BypassValveHeldPressure()
        : FormulaCase(
            "BypassValve.HeldPressure",
            0,
            (10, 500),
            (-1e5, 3e5),
            (0, 1e5),
            (5e-4, 3e-3),
            (1e-5, 1e-4),
            (1e8, 1e9),
            (0, 1e-4)
        )
    {
        internal override T At<T>(T[] a) => BypassValve.HeldPressure(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }

    private sealed class BypassValveSpringForce()
        : FormulaCase("BypassValve.SpringForce", 0, (1e5, 6e5), (0, 1e-4), (1e8, 1e9), (5e-4, 3e-3), (1e-5, 1e-4))
    {
        internal override T At<T>(T[] a) => BypassValve.SpringForce(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class BypassValveFullyOpenCoefficient()
        : FormulaCase("BypassValve.FullyOpenCoefficient", 0, (1e3, 1e5), (600, 1000), (1e-5, 1e-3))
    {
        internal override T At<T>(T[] a) => BypassValve.FullyOpenCoefficient(a[0], a[1], a[2]);
    }

    private sealed class BypassValveFullyOpenLoss()
        : FormulaCase("BypassValve.FullyOpenLoss", 0, (1e9, 1e11), (600, 1000), (-1e-3, 1e-3))
    {
        internal override T At<T>(T[] a) => BypassValve.FullyOpenLoss(a[0], a[1], a[2]);
    }

    private sealed class PetroleumViscosityRelative() : FormulaCase("PetroleumViscosity.Relative", 16, (273.15, 373.15))
    {
        internal override T At<T>(T[] a) => PetroleumViscosity.Relative(4.6, a[0]);
    }

    private sealed class PetroleumViscosityKinematic() : FormulaCase("PetroleumViscosity.Kinematic", 512, (270, 380))
    {
        internal override T At<T>(T[] a) => PetroleumViscosity.Kinematic(313.15, 6e-5, 373.15, 8.5e-6, a[0]);
    }

    private sealed class PetroleumViscosityBlendingIndex()
        : FormulaCase("PetroleumViscosity.BlendingIndex", 64, (1e-6, 1e-3))
    {
        internal override T At<T>(T[] a) => PetroleumViscosity.BlendingIndex(a[0]);
    }

    private sealed class PetroleumViscosityFromBlendingIndex()
        : FormulaCase("PetroleumViscosity.FromBlendingIndex", 512, (0, 35))
    {
        internal override T At<T>(T[] a) => PetroleumViscosity.FromBlendingIndex(a[0]);
    }

    private sealed class PumpPowerHydraulic() : FormulaCase("PumpPower.Hydraulic", 0, (0, 1e6), (0, 1e-3))
    {
        internal override T At<T>(T[] a) => PumpPower.Hydraulic(a[0], a[1]);
    }

    private sealed class PumpPowerElectric() : FormulaCase("PumpPower.Electric", 0, (6, 16), (1, 30))
    {
        internal override T At<T>(T[] a) => PumpPower.Electric(a[0], a[1]);
    }

    private sealed class SaturatedLiquidViscosity() : FormulaCase("SaturatedLiquid.Viscosity", 512, (250, 400))
    {
        internal override T At<T>(T[] a) => SaturatedLiquid.Viscosity(-12.928, 1137.5, 0.25725, -3.6929e-28, 10, a[0]);
    }
}
