using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

/// <content>The checks of a place on the axis of a table.</content>
internal static partial class Guard
{
    /// <summary>
    /// A value on the axis of a table with a tolerance at its edges; the returned number lies inside. The message uses
    /// the caller's unit.
    /// </summary>
    internal static double InTable<T>(
        TableLabel table,
        string axis,
        T value,
        double si,
        double min,
        double max,
        Func<double, T> fromSi,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    )
        where T : struct, IQuantity =>
        IsWithin(si, min, max)
            ? Math.Clamp(si, min, max)
            : throw OffTable(
                table,
                axis,
                Amount.Of(value),
                fromSi(min).NumberIn(TradeUnit.Of(value)),
                fromSi(max).NumberIn(TradeUnit.Of(value)),
                paramName
            );

    /// <summary>The same for a gauge or an absolute pressure, in the unit that these are shown in.</summary>
    internal static double PressureInTable<T>(
        TableLabel table,
        string axis,
        T value,
        double si,
        double min,
        double max,
        Func<double, T> fromSi,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    )
        where T : struct, IAmount =>
        IsWithin(si, min, max)
            ? Math.Clamp(si, min, max)
            : throw OffTable(
                table,
                axis,
                value.Amount,
                fromSi(min).Amount.Number,
                fromSi(max).Amount.Number,
                paramName
            );

    private static OutsideTableException OffTable(
        TableLabel table,
        string axis,
        Amount value,
        double min,
        double max,
        string paramName
    ) => new(table.Text, $"{axis} ({value.Unit})", value.Number, min, max, "", paramName);
}
