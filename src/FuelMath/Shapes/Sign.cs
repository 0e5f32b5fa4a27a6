namespace FuelMath;

/// <summary>Which sign a number may have.</summary>
internal enum Sign
{
    /// <summary>Any.</summary>
    Any,

    /// <summary>Zero or more.</summary>
    NotNegative,

    /// <summary>More than zero.</summary>
    Positive,
}
