namespace FuelMath;

/// <summary>A link's place in the network: its ends, and its slots in the matrix.</summary>
internal readonly struct Ends(int link, int from, int to, int up, int down)
{
    internal readonly int Link = link;
    internal readonly int From = from;
    internal readonly int To = to;

    /// <summary>The slot of the derivative of the downstream balance by the upstream pressure.</summary>
    internal readonly int Up = up;

    /// <summary>The slot of the derivative of the upstream balance by the downstream pressure.</summary>
    internal readonly int Down = down;
}
