using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace FuelMath;

/// <content>Checks of texts.</content>
internal static partial class Guard
{
    /// <summary>A text that says something.</summary>
    /// <exception cref="ArgumentNullException">There is none.</exception>
    internal static string NotBlank(
        [NotNull] string? value,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    )
    {
        ArgumentNullException.ThrowIfNull(value, paramName);
        return string.IsNullOrWhiteSpace(value)
            ? throw new RefusedArgumentException(RefusalCode.Blank, "Must not be blank.", paramName)
            : value;
    }

    internal static string Name(
        string value,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) =>
        string.IsNullOrWhiteSpace(value)
            ? throw new RefusedArgumentException(RefusalCode.Blank, "Must be a name, not blank.", paramName, part)
            : OneLine(value, paramName, part);

    /// <summary>A text without line breaks: a name with a line feed could forge a line of a report.</summary>
    internal static string OneLine(
        string value,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) =>
        Echo.ControlAt(value) is >= 0 and int at
            ? throw new RefusedArgumentException(
                RefusalCode.ControlCharacter,
                $"Must have no control characters; at index {at:index} it had {CodePoint(value[at]):given}.",
                paramName,
                part
            )
            : value;

    private static string CodePoint(char character) =>
        string.Create(CultureInfo.InvariantCulture, $"U+{(int)character:X4}");
}
