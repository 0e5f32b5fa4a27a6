using System.Globalization;
using System.Runtime.CompilerServices;

namespace FuelMath;

/// <summary>Checks that curves and grids share.</summary>
internal static class TableChecks
{
    internal static OutsideRange Known(
        OutsideRange outside,
        [CallerArgumentExpression(nameof(outside))] string paramName = ""
    ) =>
        outside is OutsideRange.Refuse or OutsideRange.HoldEnds or OutsideRange.Extend
            ? outside
            : throw Guard.NoChoice(outside, paramName);

    /// <summary>Whether points pass all checks of a curve, so that no message is needed.</summary>
    internal static bool MakeACurve(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        bool fine = x.Length >= 2 && x.Length == y.Length && IsSmall(x[0]) && IsSmall(x[^1]);
        for (int i = 0; fine && i < x.Length; i++)
        {
            fine = IsSmall(y[i]) && (i == 0 || x[i] > x[i - 1]);
        }

        return fine;
    }

    /// <summary>What a table says at a place; far out on a straight end it would not be a number.</summary>
    internal static double Number(double result, double place, string table, string paramName) =>
        double.IsFinite(result)
            ? result
            : throw Guard.OutOfRange(
                place,
                $"so near to the data of '{table:part}' that it has a finite value there",
                paramName
            );

    private static bool IsSmall(double number) => Math.Abs(number) <= Guard.Largest;

    internal static void Axis(double[] values, int minimum, string what, string paramName)
    {
        Guard.AtLeast(minimum, values.Length, what, paramName);
        Guard.AllFinite(values, what, paramName);
        Guard.StrictlyRising(values, what, paramName);
    }

    internal static void Same(int places, int values, string name, string paramName)
    {
        if (places != values)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"{name:part}: must have as many values as places, {places:exactly}; it has {values:value}.",
                paramName
            );
        }
    }

    /// <summary>Refuses points so close or values so large that a slope between them is not finite.</summary>
    internal static void Drawable(Piece[] pieces, string name, string paramName)
    {
        for (int i = 0; i < pieces.Length; i++)
        {
            if (!pieces[i].IsFinite)
            {
                throw new RefusedArgumentException(
                    RefusalCode.NotFinite,
                    $"{name:part}: the slopes must be finite; near index {Math.Max(0, i - 1):index} they are not.",
                    paramName
                );
            }
        }
    }

    internal static bool Ordered(double[] values, int sign)
    {
        for (int i = 1; i < values.Length; i++)
        {
            if (sign * values[i] <= sign * values[i - 1])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Where a table is evaluated: inside, or beyond as its owner chose; within the edge tolerance a place counts as
    /// the edge.
    /// </summary>
    internal static double Place(
        double[] axis,
        double value,
        OutsideRange outside,
        string table,
        string axisName,
        string paramName
    )
    {
        Guard.Finite(value, paramName);
        double first = axis[0];
        double last = axis[^1];
        if (value >= first && value <= last)
        {
            return value;
        }

        if (outside == OutsideRange.HoldEnds || Guard.IsWithin(value, first, last))
        {
            return Math.Clamp(value, first, last);
        }

        return outside == OutsideRange.Extend
            ? value
            : throw new OutsideTableException(table, axisName, value, first, last);
    }
}
