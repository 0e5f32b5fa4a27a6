namespace FuelMath;

/// <summary>Where pressure may leak inside a part, besides its joints.</summary>
[Flags]
internal enum LeakPlaces
{
    /// <summary>Nowhere.</summary>
    None = 0,

    /// <summary>A check valve that lets fuel back.</summary>
    CheckValve = 1,

    /// <summary>The seat of a bypass regulator.</summary>
    BypassSeat = 2,

    /// <summary>The diaphragm of a regulator.</summary>
    Diaphragm = 4,

    /// <summary>The seat of a relief valve.</summary>
    ReliefSeat = 8,
}
