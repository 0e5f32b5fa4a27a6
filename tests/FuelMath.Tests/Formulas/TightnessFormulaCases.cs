using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The formulas of closed volumes, leaks, flushing and heated tanks for the matrix of readings.</summary>
/// <remarks>Differences of two logarithms lose a digit or two where pressures are close: 64 units leave room for that.</remarks>
internal static class TightnessFormulaCases
{
    internal static IReadOnlyList<FormulaCase> All { get; } =
    [
        new Compliance(),
        new Released(),
        new Leaked(),
        new Laminar(),
        new Orifice(),
        new Residue(),
        new Exchanges(),
        new Settled(),
        new Later(),
        new Adiabatic(),
        new Draining(),
    ];

    private sealed class Compliance()
        : FormulaCase("PressureDecay.Compliance", 0, (1e-4, 1e-2), (8e8, 2e9), (0, 1e-8), (0, 1e-5), (1e5, 1e6))
    {
        internal override T At<T>(T[] a) => PressureDecay.Compliance(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class Released()
        : FormulaCase(
            "PressureDecay.ReleasedVolume",
            0,
            (1e-4, 1e-2),
            (8e8, 2e9),
            (0, 1e-8),
            (0, 5),
            (3e5, 6e5),
            (1e5, 2.9e5)
        )
    {
        internal override T At<T>(T[] a) => PressureDecay.ReleasedVolume(a[0], a[1], a[2], a[3], a[4], a[5]);
    }

    private sealed class Leaked()
        : FormulaCase(
            "PressureDecay.LeakedVolume",
            0,
            (1e-4, 1e-2),
            (8e8, 2e9),
            (0, 1e-8),
            (8e-4, 1.3e-3),
            (0, 5),
            (3e5, 6e5),
            (270, 320),
            (1e5, 2.9e5),
            (270, 320)
        )
    {
        internal override T At<T>(T[] a) =>
            PressureDecay.LeakedVolume(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7], a[8]);
    }

    private sealed class Laminar()
        : FormulaCase(
            "PressureDecay.LaminarFallTime",
            64,
            (1e-4, 1e-2),
            (8e8, 2e9),
            (0, 1e-8),
            (0, 5),
            (3e5, 6e5),
            (1.2e5, 2.9e5),
            (9e4, 1.05e5),
            (2e-12, 1e-9)
        )
    {
        internal override T At<T>(T[] a) =>
            PressureDecay.LaminarFallTime(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7]);
    }

    private sealed class Orifice()
        : FormulaCase(
            "PressureDecay.OrificeFallTime",
            0,
            (1e-4, 1e-2),
            (8e8, 2e9),
            (0, 1e-8),
            (0, 5),
            (3e5, 6e5),
            (1.2e5, 2.9e5),
            (9e4, 1.05e5),
            (1e-11, 1e-9)
        )
    {
        internal override T At<T>(T[] a) =>
            PressureDecay.OrificeFallTime(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7]);
    }

    private sealed class Residue() : FormulaCase("PressureDecay.MixedResidue", 8, (0, 10))
    {
        internal override T At<T>(T[] a) => PressureDecay.MixedResidue(a[0]);
    }

    private sealed class Exchanges() : FormulaCase("PressureDecay.MixedExchanges", 8, (1e-4, 0.9))
    {
        internal override T At<T>(T[] a) => PressureDecay.MixedExchanges(a[0]);
    }

    private sealed class Settled() : FormulaCase("TankHeating.SettledTemperature", 0, (250, 320), (0, 500), (1, 50))
    {
        internal override T At<T>(T[] a) => TankHeating.SettledTemperature(a[0], a[1], a[2]);
    }

    private sealed class Later()
        : FormulaCase(
            "TankHeating.TemperatureAfter",
            64,
            (270, 330),
            (250, 320),
            (0, 500),
            (1, 50),
            (1e4, 1e5),
            (0, 1e4)
        )
    {
        internal override T At<T>(T[] a) => TankHeating.TemperatureAfter(a[0], a[1], a[2], a[3], a[4], a[5]);
    }

    private sealed class Adiabatic()
        : FormulaCase("TankHeating.DrainingAdiabatic", 64, (270, 330), (0, 500), (5e4, 1e5), (1, 20), (0, 2000))
    {
        internal override T At<T>(T[] a) => TankHeating.DrainingAdiabatic(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class Draining()
        : FormulaCase(
            "TankHeating.DrainingTemperature",
            64,
            (270, 330),
            (250, 320),
            (0, 500),
            (1, 50),
            (5e4, 1e5),
            (1, 20),
            (0, 2000)
        )
    {
        internal override T At<T>(T[] a) => TankHeating.DrainingTemperature(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }
}
