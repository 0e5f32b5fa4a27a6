namespace FuelMath;

public sealed partial class Tee
{
    /// <summary>A path through a tee or wye. Run and combined leg are in line; the branch is at an angle.</summary>
    public enum Path
    {
        /// <summary>From the combined leg straight on, while some of the flow leaves into the branch.</summary>
        DividingRun,

        /// <summary>From the combined leg into the branch.</summary>
        DividingBranch,

        /// <summary>Along the run into the combined leg, while the branch joins.</summary>
        CombiningRun,

        /// <summary>From the branch into the combined leg.</summary>
        CombiningBranch,
    }
}
