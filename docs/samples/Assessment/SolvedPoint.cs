namespace FuelMath.Samples.Assessment;

/// <summary>An operating point with its state, or with the reason why there is none.</summary>
internal sealed record SolvedPoint(OperatingPoint Point, SystemState? State, Exception? Refusal)
{
    internal static SolvedPoint Of(FuelSystem system, OperatingPoint point)
    {
        try
        {
            return new(point, system.Solve(point), null);
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return new(point, null, refusal);
        }
    }
}
