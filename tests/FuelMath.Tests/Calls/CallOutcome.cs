using System.Globalization;
using System.Reflection;

namespace FuelMath.Tests.Calls;

/// <summary>A call and what came of it.</summary>
internal sealed record CallOutcome(MethodBase Method, object?[] Arguments, object? Result, Exception? Thrown)
{
    /// <summary>The object it was called on; null for a constructor and a static member.</summary>
    internal object? Target { get; init; }

    internal string Shown => $"{Method.DeclaringType!.Name}.{Method.Name}({string.Join(", ", Arguments.Select(Text))})";

    private static string Text(object? value) =>
        value switch
        {
            null => "null",
            double number => number.ToString("R", CultureInfo.InvariantCulture),
            UnitsNet.IQuantity quantity => quantity.ToString("G17", CultureInfo.InvariantCulture),
            string text => $"\"{text}\"",
            _ => value.GetType().Name,
        };
}
