namespace FuelMath.ShopTests;

/// <summary>Where a closed line may lose pressure. A gauge cannot tell them apart.</summary>
public enum LeakSuspectKind
{
    /// <summary>A joint, a hose or a seal lets fuel out: the one that sets cars on fire.</summary>
    Outside,

    /// <summary>A pump's check valve lets fuel back into the tank.</summary>
    CheckValve,

    /// <summary>An injector's seat lets fuel into the engine: it fills a cylinder or the sump.</summary>
    InjectorSeat,

    /// <summary>A relief valve's seat lets fuel back into the tank.</summary>
    ReliefSeat,

    /// <summary>A bypass regulator's seat lets fuel into the return.</summary>
    RegulatorSeat,

    /// <summary>A regulator's diaphragm lets fuel into its reference hose, and so into the engine.</summary>
    RegulatorDiaphragm,
}
