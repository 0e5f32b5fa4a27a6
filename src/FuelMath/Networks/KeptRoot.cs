using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// The root of an implicit law, kept for a link between iterations, so that it converges together with the flows.
/// </summary>
internal struct KeptRoot<T>
    where T : struct, IScalar<T>
{
    /// <summary>The root: of the last iteration, then of this one.</summary>
    internal T Root;

    /// <summary>Whether it was used in this iteration; it may be used once.</summary>
    internal bool IsUsed;
}
