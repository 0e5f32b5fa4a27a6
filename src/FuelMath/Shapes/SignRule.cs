using System.Text.RegularExpressions;

namespace FuelMath;

/// <summary>The sign of a number in a document: one rule for reader and schema.</summary>
internal static class SignRule
{
    private const string Number = @"([0-9]+\.?[0-9]*|\.[0-9]+)([eE][+-]?[0-9]+)?";
    private const string Zero = @"(0+\.?0*|\.0+)([eE][+-]?[0-9]+)?";
    private const string NotNegative = $@"(\+?{Number}|-{Zero})";
    private const string Positive = $@"\+?(?=[0-9.]*[1-9]){Number}";

    internal static bool Allows(this Sign sign, double number) =>
        sign switch
        {
            Sign.Positive => number > 0,
            Sign.NotNegative => number >= 0,
            _ => true,
        };

    /// <summary>The end of a schema's name, empty where any sign is allowed.</summary>
    internal static string NameEnd(this Sign sign) =>
        sign switch
        {
            Sign.Positive => "-above-zero",
            Sign.NotNegative => "-from-zero",
            _ => "",
        };

    /// <summary>The same for a sentence.</summary>
    internal static string Words(this Sign sign) => sign.NameEnd().Replace('-', ' ');

    /// <summary>What a schema says of a number.</summary>
    internal static IEnumerable<(string, JsonText)> Limits(this Sign sign) =>
        sign switch
        {
            Sign.Positive => [("exclusiveMinimum", JsonText.Of(0))],
            Sign.NotNegative => [("minimum", JsonText.Of(0))],
            _ => [],
        };

    /// <summary>What a schema says of a number with a unit behind it, in a text.</summary>
    internal static string Pattern(this Sign sign, UnitKind kind)
    {
        string units = Spellings(kind.Units);
        string number = sign switch
        {
            Sign.Positive => Positive,
            Sign.NotNegative => NotNegative,
            _ when kind.NeverNegative => NotNegative,
            _ => $"[+-]?{Number}",
        };
        string warm = Spellings(kind.Units.Where(u => u.HasOffset));
        return sign == Sign.Any && kind.NeverNegative && warm.Length > 0
            ? $@"^\s*({number}\s*({units})|-{Number}\s*({warm}))\s*$"
            : $@"^\s*{number}\s*({units})\s*$";
    }

    /// <summary>The exception of a guard that meets this number.</summary>
    internal static RefusedValueException Refused(this Sign sign, string name, object value, Amount amount) =>
        new(
            RefusalCode.OutOfRange,
            RefusalText.Sentence(
                sign == Sign.Positive ? Guard.AboveZero(amount.Unit) : Guard.FromZero(amount.Unit),
                amount
            ),
            value,
            name
        );

    // Regex.Escape escapes spaces, which is an error in the patterns of schemas.
    private static string Spellings(IEnumerable<Unit> units) =>
        string.Join('|', units.SelectMany(u => u.Spellings).Select(Regex.Escape))
            .Replace(@"\ ", " ", StringComparison.Ordinal);
}
