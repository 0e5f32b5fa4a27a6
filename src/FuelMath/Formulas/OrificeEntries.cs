using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Orifice"/> in the catalog.</summary>
internal static class OrificeEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [
        MassFlow(),
        VolumeFlow(),
        CarriedMassFlow(),
        CarriedVolumeFlow(),
        PowerLawMassFlow(),
        PowerLawPressureLoss(),
        ApproachFactor(),
    ];

    private static FormulaInfo MassFlow() =>
        FormulaInfo.Of(
            default(MassFlowFormula),
            "Orifice.MassFlow",
            "The mass flow through a small opening",
            FormulaInfo.FormulaTopic.Openings,
            [
                K.Number.Within(0, 2).Given("dischargeCoefficient", Symbols.DischargeCoefficient, 0.3, 1),
                K.Area.Given("area", Symbols.Area, 1e-9, 1e-6),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.DifferentialPressure.Given("differentialPressure", Symbols.DifferentialPressure, 1000, 1e6),
            ],
            [],
            [],
            K.MassFlow.Gives(Symbols.MassFlow),
            [Orifice.MassFlowSource],
            new(
                [0.8, 1.9634954084936206e-7, 720, 300000],
                0.00326483886,
                2e-9,
                new DataSource("Definition", "hole of 0.5 mm, by hand to nine digits")
            )
        );

    private readonly struct MassFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Orifice.MassFlow(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo VolumeFlow() =>
        FormulaInfo.Of(
            default(VolumeFlowFormula),
            "Orifice.VolumeFlow",
            "The volume flow through a small opening",
            FormulaInfo.FormulaTopic.Openings,
            [
                K.Number.Within(0, 2).Given("dischargeCoefficient", Symbols.DischargeCoefficient, 0.3, 1),
                K.Area.Given("area", Symbols.Area, 1e-9, 1e-6),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.DifferentialPressure.Given("differentialPressure", Symbols.DifferentialPressure, 1000, 1e6),
            ],
            [],
            [],
            K.VolumeFlow.Gives(Symbols.VolumeFlow),
            [Orifice.VolumeFlowSource],
            new(
                [0.8, 1.9634954084936206e-7, 720, 300000],
                4.534498416666666e-6,
                2e-9,
                new DataSource("Definition", "hole of 0.5 mm, by hand to nine digits")
            )
        );

    private readonly struct VolumeFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Orifice.VolumeFlow(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo CarriedMassFlow() =>
        FormulaInfo.Of(
            default(CarriedMassFlowFormula),
            "Orifice.CarriedMassFlow",
            "A rated mass flow carried to another pressure and density",
            FormulaInfo.FormulaTopic.Openings,
            [
                K.MassFlow.Given("referenceMassFlow", Symbols.ReferenceMassFlow, 0.0001, 0.1),
                K
                    .DifferentialPressure.Within(1, 1e9)
                    .Given("referenceDifferentialPressure", Symbols.ReferenceDifferentialPressure, 1000, 1e6),
                K.Density.Given("referenceDensity", Symbols.ReferenceDensity, 600, 1000),
                K.DifferentialPressure.Given("differentialPressure", Symbols.DifferentialPressure, 1000, 1e6),
                K.Density.Given("density", Symbols.Density, 600, 1000),
            ],
            [],
            [],
            K.MassFlow.Gives(Symbols.MassFlow),
            [Orifice.CarriedMassFlowSource],
            new(
                [0.01, 300000, 700, 400000, 700],
                0.01154700538,
                1e-9,
                new DataSource("Definition", "root of four thirds, by hand")
            )
        );

    private readonly struct CarriedMassFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Orifice.CarriedMassFlow(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo CarriedVolumeFlow() =>
        FormulaInfo.Of(
            default(CarriedVolumeFlowFormula),
            "Orifice.CarriedVolumeFlow",
            "A rated volume flow carried to another pressure and density",
            FormulaInfo.FormulaTopic.Openings,
            [
                K.InjectorFlow.Given("referenceVolumeFlow", Symbols.ReferenceVolumeFlow, 1e-7, 0.0001),
                K
                    .DifferentialPressure.Within(1, 1e9)
                    .Given("referenceDifferentialPressure", Symbols.ReferenceDifferentialPressure, 1000, 1e6),
                K.Density.Given("referenceDensity", Symbols.ReferenceDensity, 600, 1000),
                K.DifferentialPressure.Given("differentialPressure", Symbols.DifferentialPressure, 1000, 1e6),
                K.Density.Given("density", Symbols.Density, 600, 1000),
            ],
            [],
            [],
            K.InjectorFlow.Gives(Symbols.VolumeFlow),
            [Orifice.CarriedVolumeFlowSource],
            new(
                [1e-5, 300000, 700, 400000, 700],
                1.154700538e-5,
                1e-9,
                new DataSource("Definition", "root of four thirds, by hand")
            )
        );

    private readonly struct CarriedVolumeFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Orifice.CarriedVolumeFlow(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo PowerLawMassFlow() =>
        FormulaInfo.Of(
            default(PowerLawMassFlowFormula),
            "Orifice.PowerLawMassFlow",
            "A rated mass flow carried by a measured power of pressure",
            FormulaInfo.FormulaTopic.Openings,
            [
                K.MassFlow.Given("referenceMassFlow", Symbols.ReferenceMassFlow, 0.0001, 0.1),
                K
                    .DifferentialPressure.Within(1, 1e9)
                    .Given("referenceDifferentialPressure", Symbols.ReferenceDifferentialPressure, 1000, 1e6),
                K.Density.Given("referenceDensity", Symbols.ReferenceDensity, 600, 1000),
                K
                    .DifferentialPressure.Within(1, 1e9)
                    .Given("differentialPressure", Symbols.DifferentialPressure, 1000, 1e6),
                K.Density.Given("density", Symbols.Density, 600, 1000),
            ],
            [],
            [new FormulaInfo.Constant("exponent", "", PowerLawMassFlowFormula.Exponent)],
            K.MassFlow.Gives(Symbols.MassFlow),
            [Orifice.PowerLawMassFlowSource, new DataSource("Definition", "of a power law")],
            new(
                [0.01, 300000, 700, 400000, 700],
                0.011714299005715254,
                1e-12,
                new DataSource("Definition", "four thirds to the power 0.55, to 20 digits apart from this library")
            )
        );

    private readonly struct PowerLawMassFlowFormula : IFormula
    {
        internal const double Exponent = 0.55;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Orifice.PowerLawMassFlow(a[0], a[1], a[2], a[3], a[4], Exponent);
    }

    private static FormulaInfo PowerLawPressureLoss() =>
        FormulaInfo.Of(
            default(PowerLawPressureLossFormula),
            "Orifice.PowerLawPressureLoss",
            "The pressure that a measured power law takes for a volume flow",
            FormulaInfo.FormulaTopic.Openings,
            [
                K.VolumeFlow.Within(-1, 1).Given("volumeFlow", Symbols.VolumeFlow, 1e-5, 1e-3),
                K.VolumeFlow.Within(1e-12, 1).Given("referenceVolumeFlow", Symbols.ReferenceVolumeFlow, 1e-5, 1e-3),
                K
                    .DifferentialPressure.Within(1, 1e9)
                    .Given("referenceDifferentialPressure", Symbols.ReferenceDifferentialPressure, 1000, 1e6),
                K.Density.Given("referenceDensity", Symbols.ReferenceDensity, 600, 1000),
                K.Density.Given("density", Symbols.Density, 600, 1000),
            ],
            [],
            [new FormulaInfo.Constant("exponent", "", PowerLawPressureLossFormula.Exponent)],
            K.DifferentialPressure.Gives(Symbols.PressureLoss),
            [Orifice.PowerLawPressureLossSource, new DataSource("Definition", "of a power law")],
            new(
                [4e-5, 2e-5, 300000, 700, 700],
                1057909.5059952254,
                1e-12,
                new DataSource("Definition", "two to the power 1/0.55, to 20 digits apart from this library")
            )
        );

    private readonly struct PowerLawPressureLossFormula : IFormula
    {
        internal const double Exponent = 0.55;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Orifice.PowerLawPressureLoss(a[0], a[1], a[2], a[3], a[4], Exponent);
    }

    private static FormulaInfo ApproachFactor() =>
        FormulaInfo.Of(
            default(ApproachFactorFormula),
            "Orifice.ApproachFactor",
            "What the flow ahead of an opening adds to its flow",
            FormulaInfo.FormulaTopic.Openings,
            [
                K
                    .Number.Within(0, 0.99)
                    .Given("diameterRatio", "rd", "diameter of the opening over that of the pipe", 0.05, 0.9),
            ],
            [],
            [],
            K.Number.Gives(Orifice.ApproachFactorResult),
            [Orifice.ApproachFactorSource],
            new([0.5], 1.0327955589886444, 1e-14, new DataSource("Definition", "root of sixteen fifteenths, by hand"))
        );

    private readonly struct ApproachFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Orifice.ApproachFactor(a[0]);
    }
}
