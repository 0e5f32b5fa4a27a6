using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Formulas;

/// <summary>
/// Writes nodes as cells: a named step, a part that is used twice and a long part get cells of their own.
/// </summary>
internal sealed class SpreadsheetWriter(Func<int, string> place, int most)
{
    /// <summary>Up to this length a part that is used twice is repeated in place.</summary>
    private const int Short = 40;

    /// <summary>Spreadsheets allow 64 nested functions.</summary>
    private const int MostNested = 32;

    private readonly Dictionary<SpreadsheetNode, int> uses = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<SpreadsheetNode, Piece> pieces = new(ReferenceEqualityComparer.Instance);
    private readonly ImmutableArray<SpreadsheetText.Cell>.Builder cells =
        ImmutableArray.CreateBuilder<SpreadsheetText.Cell>();

    /// <summary>The precedence of a text: what may stand beside it without brackets.</summary>
    private enum Rank
    {
        Comparison,
        Sum,
        Product,
        Atom,
    }

    internal ImmutableArray<SpreadsheetText.Cell> Write(SpreadsheetNode root)
    {
        Count(root);
        Piece last = Read(root);
        if (root.Operation != SpreadsheetOperation.Step)
        {
            Place(last, null);
        }

        return cells.ToImmutable();
    }

    /// <summary>Writes nodes as one formula, with all steps inside.</summary>
    /// <exception cref="InvalidOperationException">It is longer, or nested deeper, than a cell takes.</exception>
    internal string WriteWhole(SpreadsheetNode root) => Whole(root).Text;

    private Piece Whole(SpreadsheetNode node)
    {
        if (pieces.TryGetValue(node, out Piece? known))
        {
            return known;
        }

        Piece piece = node.Operation switch
        {
            SpreadsheetOperation.Constant => new(Number(node.Number), Rank.Atom, 0),
            SpreadsheetOperation.Input => new(node.Name, Rank.Atom, 0),
            SpreadsheetOperation.Step => Whole(node.Operands[0]),
            _ => Join(node, [.. node.Operands.Select(Whole)]),
        };
        return piece.Text.Length <= most && piece.Nested <= MostNested
            ? pieces[node] = piece
            : throw new RefusedOperationException(
                RefusalCode.TooLong,
                $"One cell takes at most {most:most} characters and {MostNested:mostNested} functions inside each other: take several cells."
            );
    }

    /// <summary>A number written out in decimals; beyond 40 places as a product with a power of ten.</summary>
    internal static string Number(double value)
    {
        if (!double.IsFinite(value))
        {
            throw Guard.Outside(value, RefusalCode.NotFinite, "Must be finite: a sheet has no such number.");
        }

        (string digits, int exponent) = Split(Math.Abs(value).ToString("R", CultureInfo.InvariantCulture));
        string plain = exponent switch
        {
            > 40 or < -40 => $"{Decimal(digits, 0)}*POWER(10,{exponent.ToString(CultureInfo.InvariantCulture)})",
            _ => Decimal(digits, exponent),
        };
        bool bare = value >= 0 && exponent is >= -40 and <= 40;
        return bare ? plain : $"({(value < 0 ? "-" : "")}{plain})";
    }

    /// <summary>The digits of a number d1.d2d3... times ten to the power of the exponent, from its shortest text.</summary>
    private static (string Digits, int Exponent) Split(string text)
    {
        int e = text.IndexOf('E', StringComparison.Ordinal);
        string mantissa = e < 0 ? text : text[..e];
        int scale = e < 0 ? 0 : int.Parse(text[(e + 1)..], CultureInfo.InvariantCulture);
        int point = mantissa.IndexOf('.', StringComparison.Ordinal);
        int whole = point < 0 ? mantissa.Length : point;
        string all = mantissa.Replace(".", "", StringComparison.Ordinal);
        string digits = all.TrimStart('0');
        return digits.Length == 0 ? ("0", 0) : (digits.TrimEnd('0'), scale + whole - 1 - (all.Length - digits.Length));
    }

    /// <summary>Digits d1d2d3... as d1.d2d3... times ten to the power of the exponent.</summary>
    private static string Decimal(string digits, int exponent)
    {
        if (exponent < 0)
        {
            return $"0.{new string('0', -exponent - 1)}{digits}";
        }

        string whole = digits.PadRight(exponent + 1, '0');
        return whole.Length == exponent + 1 ? whole : $"{whole[..(exponent + 1)]}.{whole[(exponent + 1)..]}";
    }

    private void Count(SpreadsheetNode node)
    {
        if (uses.TryGetValue(node, out int seen))
        {
            uses[node] = seen + 1;
            return;
        }

        uses[node] = 1;
        foreach (SpreadsheetNode operand in node.Operands)
        {
            Count(operand);
        }
    }

    private Piece Read(SpreadsheetNode node)
    {
        if (pieces.TryGetValue(node, out Piece? known))
        {
            return known;
        }

        Piece piece = node.Operation switch
        {
            SpreadsheetOperation.Constant => new(Number(node.Number), Rank.Atom, 0),
            SpreadsheetOperation.Input => new(node.Name, Rank.Atom, 0),
            SpreadsheetOperation.Step => Place(Read(node.Operands[0]), node),
            _ => Compose(node),
        };
        if (uses[node] > 1 && piece.Text.Length > Short)
        {
            piece = Place(piece, null);
        }

        pieces[node] = piece;
        return piece;
    }

    /// <summary>
    /// Combines operands; the longest, or the deepest, moves to a cell of its own until the text is short enough.
    /// </summary>
    private Piece Compose(SpreadsheetNode node)
    {
        Piece[] parts = [.. node.Operands.Select(Read)];
        Piece whole = Join(node, parts);
        while (whole.Text.Length > most || whole.Nested > MostNested)
        {
            bool isLong = whole.Text.Length > most;
            int cut = Enumerable.Range(0, parts.Length).MaxBy(i => isLong ? parts[i].Text.Length : parts[i].Nested);
            parts[cut] = pieces[node.Operands[cut]] = Place(parts[cut], null);
            whole = Join(node, parts);
        }

        return whole;
    }

    private static Piece Join(SpreadsheetNode node, Piece[] parts)
    {
        int nested = parts.Max(p => p.Nested);
        return node.Operation switch
        {
            SpreadsheetOperation.Sum => new(
                $"{parts[0].In(Rank.Sum)}{node.Name}{parts[1].In(Rank.Product)}",
                Rank.Sum,
                nested
            ),
            SpreadsheetOperation.Product => new(
                $"{parts[0].In(Rank.Product)}{node.Name}{parts[1].In(Rank.Atom)}",
                Rank.Product,
                nested
            ),
            SpreadsheetOperation.Negative => new($"(-{parts[0].In(Rank.Atom)})", Rank.Atom, nested),
            SpreadsheetOperation.Less => new(
                $"{parts[0].In(Rank.Sum)}<{parts[1].In(Rank.Sum)}",
                Rank.Comparison,
                nested
            ),
            _ => new($"{node.Name}({string.Join(",", parts.Select(p => p.Text))})", Rank.Atom, nested + 1),
        };
    }

    private Piece Place(Piece piece, SpreadsheetNode? step)
    {
        string reference = place(cells.Count);
        cells.Add(new(reference, piece.Text, step?.Symbol, step?.Source));
        return new(reference, Rank.Atom, 0);
    }

    private sealed record Piece(string Text, Rank Rank, int Nested)
    {
        /// <summary>The text for a place that needs at least this rank.</summary>
        internal string In(Rank least) => Rank < least ? $"({Text})" : Text;
    }
}
