namespace FuelMath.ShopTests;

public sealed partial class LeakSuspects
{
    /// <summary>Where a closed line may lose pressure. A gauge can't distinguish them.</summary>
    public enum SuspectKind
    {
        /// <summary>A joint, a hose or a seal leaks to the outside: a fire hazard.</summary>
        Outside,

        /// <summary>A pump's check valve lets fuel back into the tank.</summary>
        CheckValve,

        /// <summary>An injector's seat leaks into the engine and may fill a cylinder or the sump.</summary>
        InjectorSeat,

        /// <summary>A relief valve's seat lets fuel back into the tank.</summary>
        ReliefSeat,

        /// <summary>A bypass regulator's seat lets fuel into the return.</summary>
        RegulatorSeat,

        /// <summary>A regulator's diaphragm lets fuel into its reference hose, and so into the engine.</summary>
        RegulatorDiaphragm,
    }
}
