using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public static partial class PartChoices
{
    /// <summary>One part of a list, held against a demand: its margin, and why it does not do.</summary>
    /// <typeparam name="TPart">What kind of part.</typeparam>
    /// <remarks>Made by <see cref="PartChoices"/>.</remarks>
    public sealed class Choice<TPart>
    {
        internal Choice(TPart part, Ratio? margin, IEnumerable<string> reasons) =>
            (Part, Margin, Reasons) = (part, margin, [.. reasons]);

        /// <summary>The part.</summary>
        public TPart Part { get; }

        /// <summary>
        /// How much more it could carry, as a share of the demand; below zero when it can't; null when its data do not
        /// say.
        /// </summary>
        public Ratio? Margin { get; }

        /// <summary>Why it does not do; empty when it does.</summary>
        public ImmutableArray<string> Reasons { get; }

        /// <summary>Whether it does.</summary>
        public bool IsAccepted => Reasons.IsEmpty;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Part}: {Margin}");
    }
}
