namespace FuelMath;

/// <summary>Limits on the cost of reading a document. A real system needs a hundredth of each.</summary>
internal static class DocumentLimits
{
    internal const int Bytes = 1024 * 1024;

    internal const int Depth = 32;

    /// <summary>Values in one list, or properties in one object.</summary>
    internal const int Items = 4096;

    /// <summary>Values in the whole document.</summary>
    internal const int Values = 100_000;

    /// <summary>Bytes in one text, property name or number.</summary>
    internal const int TextBytes = 2000;
}
