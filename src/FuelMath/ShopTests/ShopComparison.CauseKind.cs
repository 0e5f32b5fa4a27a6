namespace FuelMath.ShopTests;

public sealed partial class ShopComparison
{
    /// <summary>The kinds of causes when a shop test differs from its prediction.</summary>
    public enum CauseKind
    {
        /// <summary>The voltage at the pump: the source, or its wiring.</summary>
        PumpVoltage,

        /// <summary>A pump that delivers less than its curve, worn or drawing air; or more.</summary>
        PumpFlow,

        /// <summary>Fuel that leaves between pump and test: a check valve, a relief valve, a joint.</summary>
        LostFuel,

        /// <summary>A restriction between tank and rail.</summary>
        FeedRestriction,

        /// <summary>A regulator that holds another pressure.</summary>
        SetPoint,

        /// <summary>A restriction in the return.</summary>
        ReturnRestriction,

        /// <summary>The resistance of a wire or a contact.</summary>
        WireResistance,

        /// <summary>A pump that draws another current than its curve.</summary>
        PumpCurrent,

        /// <summary>The gas in a closed line.</summary>
        TrappedGas,
    }
}
