namespace FuelMath;

/// <summary>What the settings of a law are for: what a batch or a buffer may change of it.</summary>
internal enum SettingKind
{
    /// <summary>Nothing that a caller sets.</summary>
    None,

    /// <summary>The flow that injectors are commanded to, behind their coefficient.</summary>
    Command,

    /// <summary>The pressure on the spring side of a regulator.</summary>
    Reference,

    /// <summary>The curve of a pump.</summary>
    Curve,
}
