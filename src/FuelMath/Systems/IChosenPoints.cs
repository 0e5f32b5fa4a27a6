namespace FuelMath;

/// <summary>Points that can be taken from several runs with different pumps running.</summary>
/// <typeparam name="TSelf">The points themselves.</typeparam>
internal interface IChosenPoints<TSelf> : ISystemPoints
{
    /// <summary>Takes a point over from another run, with sentences on why it is the one, made when they are read.</summary>
    void Take(int point, TSelf from, IEnumerable<string> remarks);
}
