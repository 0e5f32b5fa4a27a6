namespace FuelMath.Networks;

/// <summary>A link's place in the network: its ends, and where the matrix holds the four elements between them.</summary>
internal readonly struct Ends(int link, int from, int to, int fromFrom, int fromTo, int toFrom, int toTo)
{
    internal readonly int Link = link;
    internal readonly int From = from;
    internal readonly int To = to;
    internal readonly int FromFrom = fromFrom;
    internal readonly int FromTo = fromTo;
    internal readonly int ToFrom = toFrom;
    internal readonly int ToTo = toTo;
}
