namespace FuelMath;

internal sealed partial class RefusalText
{
    /// <summary>Plain words, a text with a role, or an amount with a role.</summary>
    private sealed class Piece
    {
        internal Piece(string text, string? role = null)
            : this(text, role, text) { }

        internal Piece(string data, string? role, string text) => (Data, Role, Text) = (data, role, text);

        internal Piece(Amount amount, string role)
            : this(amount.Text(), role) => Amount = amount;

        internal Piece(Amount amount, string role, string written)
            : this(amount.Text(), role, written) => (Amount, IsWritten) = (amount, true);

        /// <summary>What the data hold.</summary>
        internal string Data { get; }

        /// <summary>What the words show.</summary>
        internal string Text { get; }

        internal string? Role { get; }

        internal Amount? Amount { get; }

        /// <summary>Whether the text is the caller's own.</summary>
        internal bool IsWritten { get; }

        /// <summary>The amount with as many digits as tell it apart from others.</summary>
        internal string Finer(string[] others) =>
            Array.Find(Array.ConvertAll(NumberEcho.Finer, f => Amount!.Value.Text(f)), t => !others.Contains(t))
            ?? Text;
    }
}
