namespace FuelMath;

/// <summary>
/// What a table is called when it refuses: what it holds and the part that it belongs to. The words are put together only then,
/// because a table is read far more often than it refuses.
/// </summary>
/// <param name="what">What it holds, for example "Density"; or what the part is, for example "Filter".</param>
/// <param name="whose">What stands between that and the name of the part, for example " of fuel"; empty for a part itself.</param>
/// <param name="part">The name of the part; null where it belongs to none yet.</param>
internal readonly struct TableLabel(string what, string whose, string? part)
{
    private readonly RefusalText? ready;

    private TableLabel(RefusalText ready)
        : this("", "", null) => this.ready = ready;

    public static implicit operator TableLabel(string what) => new(what, "", null);

    public static implicit operator TableLabel(RefusalText ready) => new(ready);

    internal RefusalText Text
    {
        get
        {
            if (part is null)
            {
                return ready ?? what;
            }

            RefusalText held = whose.Length == 0 ? what : (RefusalText)$"{what:property}";
            return held.Then(whose).Then($" '{part:part}'");
        }
    }
}
