using System.Runtime.CompilerServices;
using R = FuelMath.Formulas.ColumnRanges;

namespace FuelMath.Formulas;

/// <summary>The mass of injector pulses over whole columns. SI units.</summary>
/// <remarks>
/// <para>
/// The formulas of <see cref="Pulse"/> in the widest vectors of the machine. Without a logarithm, each row is
/// bit-identical to <see cref="Real"/> on every machine.
/// </para>
/// <para>
/// A column of results may be one of the inputs, row by row. It must not overlap one partly. All inputs are checked
/// before the first result is written.
/// </para>
/// </remarks>
public static class PulseColumns
{
    /// <summary>The mass of each row's pulse inside the linear range: static flow x max(0, width - dead time).</summary>
    /// <param name="staticMassFlow">Mass flow when held open of each row, kg/s; 0 to 10 000.</param>
    /// <param name="width">Pulse width as commanded of each row, s; 0 to 1e6.</param>
    /// <param name="deadTime">Dead time of each row, s; 0 to 1e6.</param>
    /// <param name="mass">Receives the mass of each row, kg.</param>
    /// <remarks>
    /// Below the linear range a real injector delivers more or less than this; no correction is applied. Source:
    /// [SAE-J1832] the straight line through the linear range.
    /// </remarks>
    /// <exception cref="ArgumentException">The columns have unequal lengths, or overlap partly.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or NaN.</exception>
    public static void Mass(
        ReadOnlySpan<double> staticMassFlow,
        ReadOnlySpan<double> width,
        ReadOnlySpan<double> deadTime,
        Span<double> mass
    )
    {
        ColumnChecks.Shape(staticMassFlow, nameof(staticMassFlow), mass, nameof(mass));
        ColumnChecks.Shape(width, nameof(width), mass, nameof(mass));
        ColumnChecks.Shape(deadTime, nameof(deadTime), mass, nameof(mass));
        ColumnChecks.InRange(staticMassFlow, 0, R.LargestMassFlow, "kg/s");
        ColumnChecks.InRange(width, 0, R.LargestTime, "s");
        ColumnChecks.InRange(deadTime, 0, R.LargestTime, "s");
        ColumnRunner.Run(default(Row), staticMassFlow, width, deadTime, mass);
    }

    internal readonly struct Row : IRowFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(T a, T b, T c)
            where T : struct, IScalar<T> => Pulse.Mass(a, Pulse.EffectiveWidth(b, c), T.Of(0));
    }
}
