using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FuelMath.Formulas;

/// <summary>
/// A formula without its type parameter: one virtual call for the usual scalars, then the formula itself.
/// </summary>
internal abstract class FormulaReading
{
    /// <summary>Evaluates the formula in any scalar, by the fastest way for it.</summary>
    internal T Read<T>(ReadOnlySpan<T> arguments)
        where T : struct, IScalar<T>
    {
        // The compiler knows T and keeps only one of these branches.
        if (typeof(T) == typeof(Real))
        {
            return Unsafe.BitCast<Real, T>(At(MemoryMarshal.Cast<T, Real>(arguments)));
        }

        if (typeof(T) == typeof(Lane))
        {
            return Unsafe.BitCast<Lane, T>(At(MemoryMarshal.Cast<T, Lane>(arguments)));
        }

        if (typeof(T) == typeof(WideLane))
        {
            return Unsafe.BitCast<WideLane, T>(At(MemoryMarshal.Cast<T, WideLane>(arguments)));
        }

        if (typeof(T) == typeof(Dual<Real>))
        {
            return Unsafe.BitCast<Dual<Real>, T>(At(MemoryMarshal.Cast<T, Dual<Real>>(arguments)));
        }

        return AtAny(arguments);
    }

    internal abstract Real At(ReadOnlySpan<Real> arguments);

    internal abstract Lane At(ReadOnlySpan<Lane> arguments);

    internal abstract WideLane At(ReadOnlySpan<WideLane> arguments);

    internal abstract Dual<Real> At(ReadOnlySpan<Dual<Real>> arguments);

    /// <summary>Any scalar; a generic virtual call costs about ten times as much as the others.</summary>
    internal abstract T AtAny<T>(ReadOnlySpan<T> arguments)
        where T : struct, IScalar<T>;

    /// <summary>One formula, compiled for itself.</summary>
    internal sealed class Of<TFormula>(TFormula formula) : FormulaReading
        where TFormula : struct, IFormula
    {
        private readonly TFormula formula = formula;

        internal override Real At(ReadOnlySpan<Real> arguments) => formula.At(arguments);

        internal override Lane At(ReadOnlySpan<Lane> arguments) => formula.At(arguments);

        internal override WideLane At(ReadOnlySpan<WideLane> arguments) => formula.At(arguments);

        internal override Dual<Real> At(ReadOnlySpan<Dual<Real>> arguments) => formula.At(arguments);

        internal override T AtAny<T>(ReadOnlySpan<T> arguments) => formula.At(arguments);
    }
}
