using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What a line was made from, where that knows more than its part does.</summary>
internal interface ILineOrigin
{
    /// <summary>What there is to act on, whatever flows.</summary>
    ImmutableArray<Finding> Check();
}
