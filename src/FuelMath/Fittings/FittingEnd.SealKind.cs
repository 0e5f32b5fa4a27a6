namespace FuelMath;

public sealed partial class FittingEnd
{
    /// <summary>The kind of seal.</summary>
    public enum SealKind
    {
        /// <summary>Cones of metal pressed together.</summary>
        MetalCones,

        /// <summary>An O-ring pressed into the chamfer of a port.</summary>
        ORingInChamfer,

        /// <summary>Taper threads with sealant on them.</summary>
        ThreadsWithSealant,

        /// <summary>Taper threads that crush into each other.</summary>
        CrushedThreads,

        /// <summary>O-rings of a coupler around a tube end.</summary>
        ORingsOnTube,

        /// <summary>A hose clamped on a barb.</summary>
        ClampedHose,

        /// <summary>Soft washers between flat faces.</summary>
        WashersOnFaces,

        /// <summary>A washer with rubber bonded into it, on a flat face.</summary>
        BondedWasher,

        /// <summary>The flared end of a tube pressed on a seat.</summary>
        FlaredTube,
    }
}
