namespace FuelMath;

/// <summary>The side whose pressure a regulator holds, known to the compiler.</summary>
internal interface IHeldSide
{
    /// <summary>Whether it is the upstream one.</summary>
    static abstract bool IsUpstream { get; }
}

/// <summary>The side of a bypass regulator.</summary>
internal readonly struct UpstreamSide : IHeldSide
{
    /// <inheritdoc />
    public static bool IsUpstream => true;
}

/// <summary>The side of a reducing regulator.</summary>
internal readonly struct DownstreamSide : IHeldSide
{
    /// <inheritdoc />
    public static bool IsUpstream => false;
}
