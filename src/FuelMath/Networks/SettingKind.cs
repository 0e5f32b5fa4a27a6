namespace FuelMath;

/// <summary>The kind of a law's settings: what a batch or a buffer may change.</summary>
internal enum SettingKind
{
    /// <summary>No settings for callers.</summary>
    None,

    /// <summary>The coefficient and the commanded flow of injectors.</summary>
    Command,

    /// <summary>The pressure on the spring side of a regulator.</summary>
    Reference,

    /// <summary>The curve of a pump.</summary>
    Curve,
}
