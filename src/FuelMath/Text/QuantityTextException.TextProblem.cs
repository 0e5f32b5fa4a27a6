namespace FuelMath;

public sealed partial class QuantityTextException
{
    /// <summary>The problems of a text that should be a number and a unit.</summary>
    public enum TextProblem
    {
        /// <summary>The text is blank or does not start with a number.</summary>
        MissingNumber,

        /// <summary>
        /// The number is not written as digits, decimal separator and exponent; group separators are not read.
        /// </summary>
        BadNumber,

        /// <summary>The number is not finite, or too large or too small to be represented.</summary>
        NotRepresentable,

        /// <summary>No unit follows the number.</summary>
        MissingUnit,

        /// <summary>No kind of quantity has this unit.</summary>
        UnknownUnit,

        /// <summary>The unit belongs to another kind of quantity.</summary>
        WrongKind,

        /// <summary>An absolute pressure or temperature lies below zero.</summary>
        BelowZero,

        /// <summary>The text is longer than any quantity needs to be.</summary>
        TooLong,

        /// <summary>
        /// The text is ambiguous: a gallon, a pressure without reference, a comma that may be decimal or group.
        /// </summary>
        Ambiguous,
    }
}
