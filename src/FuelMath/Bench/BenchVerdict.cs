namespace FuelMath.Bench;

/// <summary>The verdict on readings of an injector against a limit.</summary>
/// <seealso href="../guide/bench.html">Bench</seealso>
public enum BenchVerdict
{
    /// <summary>Within the limit.</summary>
    Accepted,

    /// <summary>Beyond the limit.</summary>
    Rejected,

    /// <summary>
    /// The readings are too short or too coarse to decide: read for longer, or with a finer instrument.
    /// </summary>
    Undecided,
}
