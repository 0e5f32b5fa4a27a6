namespace FuelMath.Bench;

/// <summary>What readings say of an injector against a limit.</summary>
public enum BenchVerdict
{
    /// <summary>Within the limit.</summary>
    Accepted,

    /// <summary>Beyond the limit.</summary>
    Rejected,

    /// <summary>The readings are too short or too coarse to say: read longer or finer.</summary>
    Undecided,
}
