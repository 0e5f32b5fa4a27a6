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

        if (typeof(T) == typeof(Lane) || typeof(T) == typeof(WideLane))
        {
            T result = default;
            Run(arguments, new Span<T>(ref result));
            return result;
        }

        if (typeof(T) == typeof(Dual<Real>))
        {
            return Unsafe.BitCast<Dual<Real>, T>(At(MemoryMarshal.Cast<T, Dual<Real>>(arguments)));
        }

        return AtAny(arguments);
    }

    /// <summary>Several vectors of rows, the arguments of each side by side.</summary>
    internal void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
        where T : struct, IScalar<T>
    {
        if (typeof(T) == typeof(Lane))
        {
            Run(MemoryMarshal.Cast<T, Lane>(arguments), MemoryMarshal.Cast<T, Lane>(results));
        }
        else if (typeof(T) == typeof(WideLane))
        {
            Run(MemoryMarshal.Cast<T, WideLane>(arguments), MemoryMarshal.Cast<T, WideLane>(results));
        }
        else
        {
            throw new NotSupportedException($"{typeof(T)} is no vector.");
        }
    }

    internal abstract Real At(ReadOnlySpan<Real> arguments);

    internal abstract void Run(ReadOnlySpan<Lane> arguments, Span<Lane> results);

    internal abstract void Run(ReadOnlySpan<WideLane> arguments, Span<WideLane> results);

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

        [MethodImpl(MethodImplOptions.AggressiveOptimization)]
        internal override void Run(ReadOnlySpan<Lane> arguments, Span<Lane> results) => Each(arguments, results);

        [MethodImpl(MethodImplOptions.AggressiveOptimization)]
        internal override void Run(ReadOnlySpan<WideLane> arguments, Span<WideLane> results) =>
            Each(arguments, results);

        internal override Dual<Real> At(ReadOnlySpan<Dual<Real>> arguments) => formula.At(arguments);

        internal override T AtAny<T>(ReadOnlySpan<T> arguments) => formula.At(arguments);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Each<T>(ReadOnlySpan<T> arguments, Span<T> results)
            where T : struct, IScalar<T>
        {
            TFormula own = formula;
            int count = arguments.Length / results.Length;
            for (int i = 0; i < results.Length; i++)
            {
                results[i] = own.At(arguments.Slice(i * count, count));
            }
        }
    }
}
