using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>Combinations of catalog formulas whose inputs are quantities that users know.</summary>
internal static class SheetFormulas
{
    /// <summary>Friction loss in a straight hose from the flow.</summary>
    internal static FormulaInfo HoseLoss { get; } =
        FormulaInfo.Of(
            default(HoseLossFormula),
            "HoseLoss",
            "The pressure lost to friction in a straight hose",
            FormulaInfo.FormulaTopic.Hoses,
            [
                Of("Friction.Velocity", "volumeFlow"),
                Of("Friction.PressureLoss", "bore"),
                Of("Friction.PressureLoss", "length"),
                Of("Friction.PressureLoss", "roughness"),
                Of("Friction.PressureLoss", "density"),
                Of("Friction.PressureLoss", "dynamicViscosity"),
            ],
            [],
            [],
            FormulaCatalog.Named("Friction.PressureLoss").Result,
            FormulaCatalog.Named("Friction.PressureLoss").Sources,
            new(
                [1e-6, 0.004, 1, 0, 740, 0.0005],
                128 * 0.0005 * 1e-6 / (Math.PI * 0.004 * 0.004 * 0.004 * 0.004),
                1e-9,
                new DataSource("White-2003", "section 6.4, laminar flow: 128 mu L Q / (pi d^4), by hand")
            )
        );

    /// <summary>The voltage drop in copper, supply and return.</summary>
    internal static FormulaInfo WireDrop { get; } =
        FormulaInfo.Of(
            default(WireDropFormula),
            "WireDrop",
            "The voltage lost in copper wire, there and back",
            FormulaInfo.FormulaTopic.Wiring,
            [
                Of("PumpPower.Electric", "current"),
                Of("WireResistance.Resistance", "length"),
                Of("WireResistance.Resistance", "area"),
                Of("WireResistance.Resistance", "temperatureCelsius"),
            ],
            [],
            [],
            Of("PumpPower.Electric", "voltage").Quantity,
            [.. FormulaCatalog.Named("WireResistance.Resistance").Sources, new DataSource("Definition", "Ohm's law")],
            new(
                [10, 2, 2.5e-6, 20],
                10 * 2 * 2 * 1.7241e-8 / 2.5e-6,
                1e-4,
                new DataSource("NBS-Handbook-100", "1.7241e-8 ohm m at 20 degC, by hand")
            )
        );

    /// <summary>The mass of a pulse from its commanded width.</summary>
    internal static FormulaInfo PulseMass { get; } =
        FormulaInfo.Of(
            default(PulseMassFormula),
            "PulseMass",
            "The mass of an injector pulse from its width, in the linear range",
            FormulaInfo.FormulaTopic.Injectors,
            [
                Of("Pulse.Mass", "staticMassFlow"),
                Of("Pulse.EffectiveWidth", "width"),
                Of("Pulse.EffectiveWidth", "deadTime"),
            ],
            [],
            [],
            FormulaCatalog.Named("Pulse.Mass").Result,
            FormulaCatalog.Named("Pulse.Mass").Sources,
            new(
                [0.006, 0.0025, 0.0009],
                9.6e-6,
                1e-12,
                new DataSource("SAE-J1832", "straight line: 6 g/s for 1.6 ms, by hand")
            )
        );

    private static FormulaInfo.Argument Of(string formula, string argument) =>
        FormulaCatalog.Named(formula).Arguments.First(a => a.Name == argument);

    private readonly struct HoseLossFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            Friction.PressureLoss(Friction.Velocity(a[0], a[1]), a[1], a[2], a[3], a[4], a[5]);
    }

    private readonly struct WireDropFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            2
            * a[0]
            * WireResistance.Resistance(
                T.Of(WireResistance.CopperResistivity),
                T.Of(WireResistance.CopperCoefficient),
                a[1],
                a[2],
                a[3]
            );
    }

    private readonly struct PulseMassFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Pulse.Mass(a[0], Pulse.EffectiveWidth(a[1], a[2]), T.Of(0));
    }
}
