using System.Globalization;
using System.Runtime.InteropServices;
using FuelMath.Formulas;

namespace FuelMath.Native;

/// <summary>The C interface: what <c>include/fuelmath.h</c> declares.</summary>
/// <remarks>
/// Safe to call from several threads. No call throws into the host, reads more numbers than the formula has arguments, or
/// keeps a pointer.
/// </remarks>
internal static unsafe class Exports
{
    /// <summary>How many formulas there are.</summary>
    [UnmanagedCallersOnly(EntryPoint = "fuelmath_count")]
    public static int Count()
    {
        try
        {
            return FormulaCatalog.All.Length;
        }
        catch (Exception exception)
        {
            return -(int)LastMessage.Keep(exception);
        }
    }

    /// <summary>A formula as JSON: the bytes that it needs, less than zero for a refusal.</summary>
    [UnmanagedCallersOnly(EntryPoint = "fuelmath_describe")]
    public static int Describe(int formula, byte* text, int capacity)
    {
        try
        {
            return Find(formula) is { } found
                ? NativeText.Copy(found.ToJson(), text, capacity)
                : -(int)NoFormula(formula);
        }
        catch (Exception exception)
        {
            return -(int)LastMessage.Keep(exception);
        }
    }

    /// <summary>One checked call.</summary>
    [UnmanagedCallersOnly(EntryPoint = "fuelmath_call")]
    public static int Call(int formula, int units, double* arguments, int count, double* result)
    {
        try
        {
            if (Find(formula) is not { } found)
            {
                return (int)NoFormula(formula);
            }

            if (units is not ((int)FormulaInfo.CallUnits.Si or (int)FormulaInfo.CallUnits.Customary))
            {
                return (int)Refuse($"units must be 0 (SI) or 1 (customary); it was {units}.");
            }

            if (result is null || count < 0 || (arguments is null && count > 0))
            {
                return (int)Refuse($"arguments and result must not be null, nor count negative; it was {count}.");
            }

            var given = new ReadOnlySpan<double>(arguments, count);
            if (found.TryCalculate((FormulaInfo.CallUnits)units, given, out double value, out FormulaRefusal? refusal))
            {
                *result = value;
                return (int)CallStatus.Fine;
            }

            return (int)LastMessage.Keep(refusal!);
        }
        catch (Exception exception)
        {
            return (int)LastMessage.Keep(exception);
        }
    }

    /// <summary>A formula down columns, in SI units.</summary>
    [UnmanagedCallersOnly(EntryPoint = "fuelmath_column")]
    public static int Column(
        int formula,
        double** columns,
        double* numbers,
        int count,
        long rows,
        double* results,
        long* badRows,
        long* firstBadRow
    )
    {
        try
        {
            if (Find(formula) is not { } found)
            {
                return (int)NoFormula(formula);
            }

            return (int)(
                count == found.Arguments.Length
                    ? ColumnCall.Run(found, columns, numbers, rows, results, badRows, firstBadRow)
                    : LastMessage.Keep(
                        CallStatus.Count,
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"{found.Name} must have {found.Arguments.Length} arguments; it has {count}."
                        )
                    )
            );
        }
        catch (Exception exception)
        {
            return (int)LastMessage.Keep(exception);
        }
    }

    /// <summary>Why the last refused call of this thread was refused.</summary>
    [UnmanagedCallersOnly(EntryPoint = "fuelmath_message")]
    public static int Message(byte* text, int capacity)
    {
        try
        {
            return NativeText.Copy(LastMessage.Text, text, capacity);
        }
        catch (Exception exception)
        {
            return -(int)LastMessage.Keep(exception);
        }
    }

#if !FORMULAS_ONLY
    /// <summary>A system at operating points: verdict, findings and tables as JSON.</summary>
    [UnmanagedCallersOnly(EntryPoint = "fuelmath_solve")]
    public static int Solve(byte* system, int systemBytes, byte* points, int pointsBytes, byte* answer, int capacity)
    {
        try
        {
            if (system is null || points is null || systemBytes < 0 || pointsBytes < 0)
            {
                return -(int)Refuse($"The documents must not be null, nor their sizes negative.");
            }

            string text = SystemAnswer.Of(
                new ReadOnlySpan<byte>(system, systemBytes).ToArray(),
                new ReadOnlySpan<byte>(points, pointsBytes).ToArray()
            );
            return NativeText.Copy(text, answer, capacity);
        }
        catch (Exception exception)
        {
            return -(int)LastMessage.Keep(exception);
        }
    }
#endif

    private static FormulaInfo? Find(int formula) =>
        (uint)formula < (uint)FormulaCatalog.All.Length ? FormulaCatalog.All[formula] : null;

    private static CallStatus NoFormula(int formula) =>
        Refuse($"formula must be from 0 to {FormulaCatalog.All.Length - 1}; it was {formula}.");

    private static CallStatus Refuse(FormattableString why) =>
        LastMessage.Keep(CallStatus.Call, why.ToString(CultureInfo.InvariantCulture));
}
