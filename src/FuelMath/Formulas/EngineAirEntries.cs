using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="EngineAir"/> in the catalog.</summary>
internal static class EngineAirEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [AirDensity(), AirMassPerEvent(), FuelMass(), EventsPerSecond(), FuelFlowFromPower(), HarmonicMeanLambda()];

    private static FormulaInfo AirDensity() =>
        FormulaInfo.Of(
            default(AirDensityFormula),
            "EngineAir.AirDensity",
            "The density of dry air",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.AbsolutePressure.Given("absolutePressure", "p", "absolute pressure", 20000, 400000),
                K.Temperature.Given("temperature", Symbols.AbsoluteTemperature, 230, 400),
            ],
            [],
            [],
            K.Density.Gives(Symbols.AirDensity),
            [EngineAir.AirDensitySource],
            new([101325, 288.15], 1.225, 1e-6, new DataSource("ISO-2533", "sea level"))
        );

    private readonly struct AirDensityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => EngineAir.AirDensity(a[0], a[1]);
    }

    private static FormulaInfo AirMassPerEvent() =>
        FormulaInfo.Of(
            default(AirMassPerEventFormula),
            "EngineAir.AirMassPerEvent",
            "The air mass of one intake event",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.ChamberVolume.Given("displacementPerEvent", "Vd", "displacement that one event fills", 5e-5, 0.001),
                K.Fraction.Within(0, 5).Given("volumetricEfficiency", "ve", "volumetric efficiency", 0.2, 1.2),
                K.Density.Within(0, 1000).Given("airDensity", Symbols.AirDensity, 0.3, 4),
            ],
            [],
            [],
            K.Mass.Gives(Symbols.AirMass),
            [EngineAir.AirMassPerEventSource],
            new(
                [0.0005, 0.9, 1.2],
                0.00054,
                1e-14,
                new DataSource("Definition", "half a liter at 90 % of 1.2 kg/m3, by hand")
            )
        );

    private readonly struct AirMassPerEventFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => EngineAir.AirMassPerEvent(a[0], a[1], a[2]);
    }

    private static FormulaInfo FuelMass() =>
        FormulaInfo.Of(
            default(FuelMassFormula),
            "EngineAir.FuelMass",
            "The fuel mass for an air mass and a lambda",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Mass.Given("airMass", Symbols.AirMass, 1e-5, 0.003),
                K.Number.Within(0.1, 100).Given("stoichiometricRatio", Symbols.StoichiometricRatio, 6, 16),
                K.Number.Within(0.01, 100).Given("lambda", Symbols.Lambda, 0.6, 1.5),
            ],
            [],
            [],
            K.Mass.Gives(Symbols.FuelMass),
            [EngineAir.FuelMassSource],
            new(
                [0.00054, 14.7, 0.9],
                4.0816326530612245e-5,
                1e-14,
                new DataSource("Definition", "0.54 g over 13.23, by hand")
            )
        );

    private readonly struct FuelMassFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => EngineAir.FuelMass(a[0], a[1], a[2]);
    }

    private static FormulaInfo EventsPerSecond() =>
        FormulaInfo.Of(
            default(EventsPerSecondFormula),
            "EngineAir.EventsPerSecond",
            "The events per second at a shaft speed",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.RotationalSpeed.Given("speedRadPerSecond", "omega", "shaft speed", 20, 1500),
                K
                    .Number.Within(0.01, 100)
                    .Given("eventsPerRevolution", "ke", "events per revolution of that shaft", 0.5, 4),
            ],
            [],
            [],
            K.Frequency.Gives(Symbols.EventsPerSecond),
            [EngineAir.EventsPerSecondSource],
            new([628.3185307179587, 0.5], 50, 1e-14, new DataSource("Definition", "four-stroke at 6000 1/min, by hand"))
        );

    private readonly struct EventsPerSecondFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => EngineAir.EventsPerSecond(a[0], a[1]);
    }

    private static FormulaInfo FuelFlowFromPower() =>
        FormulaInfo.Of(
            default(FuelFlowFromPowerFormula),
            "EngineAir.FuelFlowFromPower",
            "The fuel flow that a power asks for",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Power.Given("power", "P", "brake power", 1000, 1e6),
                K.Consumption.Given(
                    "brakeSpecificFuelConsumption",
                    "bsfc",
                    "brake specific fuel consumption",
                    5e-8,
                    2e-7
                ),
            ],
            [],
            [],
            K.FuelFlow.Gives(Symbols.FuelFlow),
            [EngineAir.FuelFlowFromPowerSource],
            new(
                [100000, 7.603467348022017e-8],
                0.0075,
                0.02,
                new DataSource(
                    "Heywood-1988",
                    "section 2.8, best consumption of a spark-ignition engine, two digits, from memory"
                )
            )
        );

    private readonly struct FuelFlowFromPowerFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => EngineAir.FuelFlowFromPower(a[0], a[1]);
    }

    private static FormulaInfo HarmonicMeanLambda() =>
        FormulaInfo.Of(
            default(HarmonicMeanLambdaFormula),
            "EngineAir.HarmonicMeanLambda",
            "The lambda that one sensor sees behind four chambers with equal air",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Number.Within(0.01, 100).Given("firstLambda", "lambda1", "lambda of the first chamber", 0.5, 1.5),
                K.Number.Within(0.01, 100).Given("secondLambda", "lambda2", "lambda of the second chamber", 0.5, 1.5),
                K.Number.Within(0.01, 100).Given("thirdLambda", "lambda3", "lambda of the third chamber", 0.5, 1.5),
                K.Number.Within(0.01, 100).Given("fourthLambda", "lambda4", "lambda of the fourth chamber", 0.5, 1.5),
            ],
            [],
            [],
            K.Number.Gives(Symbols.Lambda),
            [EngineAir.HarmonicMeanLambdaSource],
            new(
                [0.9, 1.1, 1, 1],
                0.9949748743718592,
                1e-14,
                new DataSource("Definition", "four over the sum of the inverses, by hand")
            )
        );

    private readonly struct HarmonicMeanLambdaFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => EngineAir.HarmonicMeanLambda(a);
    }
}
