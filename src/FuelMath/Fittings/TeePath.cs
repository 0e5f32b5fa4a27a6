namespace FuelMath;

/// <summary>A way through a tee or wye. Run and combined leg lie in one line; the branch stands at an angle.</summary>
public enum TeePath
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
