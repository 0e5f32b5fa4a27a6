using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A network holds pumps whose curves have humps, in places where its states can't all be searched for.</summary>
/// <remarks>
/// In each region that nodes of fixed pressure part from the rest, one curve may have a hump: see
/// <see cref="Network.SolveAll"/>.
/// </remarks>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class HumpedCurvesException : ArgumentException, IExplained
{
    internal HumpedCurvesException(RefusalText sentence, string paramName, ImmutableArray<string> pumps)
        : base(sentence.ToString(), paramName)
    {
        Pumps = pumps;
        Refusal = sentence.ToRefusal(
            RefusalKind.Network,
            RefusalCode.CurveHumped,
            "the states of the network",
            sentence.ToString()
        );
    }

    /// <summary>The lines of the pumps.</summary>
    public ImmutableArray<string> Pumps { get; }

    Refusal IExplained.Refusal => Refusal;

    private Refusal Refusal { get; }
}
