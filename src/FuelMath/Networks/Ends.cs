namespace FuelMath;

/// <summary>A link's place in the network: its ends, and where the matrix holds what it does.</summary>
internal readonly struct Ends(int link, int from, int to, int up, int down)
{
    internal readonly int Link = link;
    internal readonly int From = from;
    internal readonly int To = to;

    /// <summary>Where the matrix holds by how much the upstream pressure moves the balance of the other end.</summary>
    internal readonly int Up = up;

    /// <summary>Where the matrix holds by how much the downstream pressure moves the balance of the other end.</summary>
    internal readonly int Down = down;
}
