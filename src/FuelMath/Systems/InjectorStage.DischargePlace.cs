namespace FuelMath;

public sealed partial class InjectorStage
{
    /// <summary>Where an injector stage sprays into, which sets the pressure behind its tips.</summary>
    public enum DischargePlace
    {
        /// <summary>The manifold, behind the throttle.</summary>
        Manifold,

        /// <summary>Ambient air, as ahead of the throttle of an engine without a compressor, or at a bench.</summary>
        Ambient,
    }
}
