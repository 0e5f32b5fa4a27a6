using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A network holds pumps whose curves have humps, in places where its states can't all be searched for.</summary>
/// <remarks>
/// In each region that nodes of fixed pressure part from the rest, one curve may have a hump: see
/// <see cref="Network.SolveAll"/>.
/// </remarks>
public sealed class HumpedCurvesException : ArgumentException, IExplained
{
    internal HumpedCurvesException(string message, string paramName, ImmutableArray<string> pumps)
        : base(message, paramName) => Pumps = pumps;

    /// <summary>The lines of the pumps.</summary>
    public ImmutableArray<string> Pumps { get; }

    /// <inheritdoc />
    Refusal IExplained.Refusal =>
        new(RefusalKind.Network, "the states of the network", Message) { Part = Pumps[0], Parts = Pumps };
}
