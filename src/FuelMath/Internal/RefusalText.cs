using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The sentence of a refusal. Every hole has a role, as in <c>{count:value}</c>, so that whatever the words show is data of the
/// <see cref="Refusal"/>, too.
/// </summary>
/// <remarks>
/// Roles: value; least, most, above, below, exactly (limits of the value); given, allowed, other, part, node, index. Any other
/// word names a further fact. Numbers of the kind of the refused quantity are shown in its unit.
/// </remarks>
[InterpolatedStringHandler]
internal sealed partial class RefusalText
{
    private readonly List<Piece> pieces = [];
    private readonly IQuantity? like;
    private readonly Enum? unit;

    /// <summary>Called by the compiler.</summary>
    public RefusalText(int literalLength, int formattedCount) => _ = (literalLength, formattedCount);

    /// <summary>Called by the compiler, for words about a refused value.</summary>
    public RefusalText(int literalLength, int formattedCount, object value)
        : this(literalLength, formattedCount)
    {
        like = value as IQuantity;
        unit = like is null ? null : TradeUnit.Of(like);
    }

    private RefusalText(IEnumerable<Piece> pieces) => this.pieces.AddRange(pieces);

    public static implicit operator RefusalText(string text) => new([new(text)]);

    /// <summary>Called by the compiler.</summary>
    public void AppendLiteral(string text) => pieces.Add(new(text));

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(IQuantity quantity, string format)
    {
        bool isLike = like is not null && quantity.GetType() == like.GetType();
        pieces.Add(new(isLike ? Amount.In(quantity, unit!) : Amount.Of(quantity), format));
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(double number, string format) => pieces.Add(new(new Amount(number, ""), format));

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(Amount amount, string format) => pieces.Add(new(amount, format));

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(IAmount value, string format) => AppendFormatted(value.Amount, format);

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(string text, string format) => pieces.Add(new(text, format));

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(IEnumerable<string> names, string format) => Listed(names, format, AppendFormatted);

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(IEnumerable<int> numbers, string format) =>
        Listed(numbers, format, (number, role) => AppendFormatted(NumberEcho.Of(number), role));

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(IEnumerable<Amount> amounts, string format) => Listed(amounts, format, AppendFormatted);

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<TChoice>(TChoice choice, string format)
        where TChoice : struct, Enum => AppendFormatted(choice.ToString(), format);

    /// <summary>The words. A value that would read as its limit is shown with the digits that tell them apart.</summary>
    public override string ToString()
    {
        string[] limits = [.. pieces.FindAll(p => IsLimit(p.Role)).ConvertAll(p => p.Text)];
        var text = new StringBuilder();
        foreach (Piece piece in pieces)
        {
            bool hides = piece is { Role: "value", Amount: not null, IsWritten: false } && limits.Contains(piece.Text);
            text.Append(hides ? piece.Finer(limits) : piece.Text);
        }

        return text.ToString();
    }

    /// <summary>The rule of a value, as a sentence: "Must be ...; it was ...".</summary>
    internal static RefusalText Sentence(RefusalText allowed, Amount value) =>
        new([new("Must be "), .. allowed.pieces, new("; it was "), new(value, "value"), new(".")]);

    /// <summary>The same with its amounts changed.</summary>
    internal RefusalText Select(Func<Amount, Amount> change) =>
        new(
            pieces.ConvertAll(p =>
                p.Amount is not { } amount || p.IsWritten ? p
                : p.Text.Length == 0 ? new(change(amount), p.Role!, "")
                : new Piece(change(amount), p.Role!)
            )
        );

    /// <summary>With an amount that the words do not show as a number.</summary>
    internal RefusalText With(Amount amount, string role) => new([.. pieces, new(amount, role, "")]);

    /// <summary>With a text that the words do not show.</summary>
    internal RefusalText With(string text, string role) => new([.. pieces, new(text, role, "")]);

    /// <summary>Words after these.</summary>
    internal RefusalText Then(RefusalText more) => new([.. pieces, .. more.pieces]);

    /// <summary>
    /// The same in the unit that the value is written in, with the value as it is written. Numbers in other units stay.
    /// </summary>
    internal RefusalText AsWritten(string unit, Func<double, double> convert, string newUnit, string written) =>
        new(
            pieces.ConvertAll(p =>
                p.Amount is not { } amount || amount.Unit != unit ? p
                : p.Role == "value" ? new(new Amount(convert(amount.Number), newUnit), p.Role!, written)
                : p.Text.Length == 0 ? new(new Amount(convert(amount.Number), newUnit), p.Role!, "")
                : new Piece(new Amount(convert(amount.Number), newUnit), p.Role!)
            )
        );

    /// <summary>The refusal that these words show.</summary>
    internal Refusal ToRefusal(
        RefusalKind kind,
        RefusalCode code,
        string what,
        string message,
        string? part = null,
        Exception? cause = null
    )
    {
        Piece? value = Last("value");
        Piece? least = Last("least") ?? Last("above") ?? Last("exactly");
        Piece? most = Last("most") ?? Last("below") ?? Last("exactly");
        (string[] parts, string[] given, string[] other) = (Texts("part"), Texts("given"), Texts("other"));
        string unit = (value ?? least ?? most)?.Amount?.Unit ?? "";
        return new(kind, code, what, message)
        {
            Part = part ?? parts.FirstOrDefault(),
            Parts = [.. parts.Prepend(part!).Where(p => p is not null).Distinct()],
            Node = Texts("node").FirstOrDefault(),
            Value = value?.Amount?.Number,
            Minimum = least?.Amount?.Number,
            Maximum = most?.Amount?.Number,
            IsMinimumExcluded = Last("above") is not null,
            IsMaximumExcluded = Last("below") is not null,
            Unit = unit,
            Given = given.Length > 0 ? string.Join(", ", given) : null,
            Other = other.Length > 0 ? string.Join(", ", other) : null,
            Allowed = [.. Texts("allowed")],
            Index = (int?)Last("index")?.Amount?.Number,
            Cause = cause is null ? null : Refusal.Of(cause),
            Facts =
            [
                .. pieces
                    .FindAll(p => p.Role is { } role && !Roles.Contains(role))
                    .ConvertAll(p => new Refusal.Fact(p.Role!, p.Data, p.Amount?.Number, p.Amount?.Unit ?? "")),
            ],
        };
    }

    /// <summary>The roles that are properties of a <see cref="Refusal"/>; others are facts.</summary>
    internal static ImmutableArray<string> Roles { get; } =
    ["value", "least", "most", "above", "below", "exactly", "given", "allowed", "other", "part", "node", "index"];

    /// <summary>Whether something has a role.</summary>
    internal bool Has(string role) => Last(role) is not null;

    private static bool IsLimit(string? role) => role is "least" or "most" or "above" or "below" or "exactly";

    private string[] Texts(string role) => [.. pieces.FindAll(p => p.Role == role).ConvertAll(p => p.Data.Trim('"'))];

    private Piece? Last(string role) => pieces.FindLast(p => p.Role == role);

    private void Listed<T>(IEnumerable<T> items, string role, Action<T, string> append)
    {
        bool isFirst = true;
        foreach (T item in items)
        {
            if (!isFirst)
            {
                AppendLiteral(", ");
            }

            append(item, role);
            isFirst = false;
        }
    }
}
