using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The formulas of curved pipes for the matrix of readings.</summary>
internal static class CurvedFrictionCases
{
    internal static IReadOnlyList<FormulaCase> All { get; } =
    [
        new Dean(),
        new White(),
        new MoriNakayama(),
        new Schmidt(),
        new Critical(),
        new Turbulent(),
        new Addition(),
        new Any(),
        new Loss(),
    ];

    private sealed class Dean() : FormulaCase("CurvedFriction.DeanNumber", 0, (1, 1e5), (1 / 300.0, 1 / 16.4))
    {
        internal override T At<T>(T[] a) => CurvedFriction.DeanNumber(a[0], a[1]);
    }

    private sealed class White() : FormulaCase("CurvedFriction.WhiteLaminarRatio", 64, (12, 2000))
    {
        internal override T At<T>(T[] a) => CurvedFriction.WhiteLaminarRatio(a[0]);
    }

    private sealed class MoriNakayama() : FormulaCase("CurvedFriction.MoriNakayamaLaminarRatio", 0, (43, 2000))
    {
        internal override T At<T>(T[] a) => CurvedFriction.MoriNakayamaLaminarRatio(a[0]);
    }

    private sealed class Schmidt() : FormulaCase("CurvedFriction.SchmidtLaminarRatio", 64, (100, 5000), (0.01, 0.2))
    {
        internal override T At<T>(T[] a) => CurvedFriction.SchmidtLaminarRatio(a[0], a[1]);
    }

    private sealed class Critical() : FormulaCase("CurvedFriction.ItoCriticalReynolds", 64, (1 / 860.0, 1 / 7.0))
    {
        internal override T At<T>(T[] a) => CurvedFriction.ItoCriticalReynolds(a[0]);
    }

    private sealed class Turbulent()
        : FormulaCase("CurvedFriction.ItoTurbulentFactor", 0, (4000, 80000), (1 / 300.0, 1 / 16.4))
    {
        internal override T At<T>(T[] a) => CurvedFriction.ItoTurbulentFactor(a[0], a[1]);
    }

    private sealed class Addition() : FormulaCase("CurvedFriction.ItoTurbulentAddition", 0, (1 / 300.0, 1 / 16.4))
    {
        internal override T At<T>(T[] a) => CurvedFriction.ItoTurbulentAddition(a[0]);
    }

    /// <summary>Turbulent throughout: where it changes over, the slope jumps.</summary>
    private sealed class Any()
        : FormulaCase("CurvedFriction.Factor", 64, (10000, 80000), (0, 0.05), (1 / 300.0, 1 / 16.4))
    {
        internal override T At<T>(T[] a) => CurvedFriction.Factor(a[0], a[1], a[2]);
    }

    /// <summary>Turbulent throughout, for the same reason.</summary>
    private sealed class Loss()
        : FormulaCase(
            "CurvedFriction.PressureLoss",
            64,
            (4, 6),
            (0.008, 0.01),
            (0.5, 5),
            (0, 1e-4),
            (0.17, 2.3),
            (700, 800),
            (4e-4, 6e-4)
        )
    {
        internal override T At<T>(T[] a) => CurvedFriction.PressureLoss(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }
}
