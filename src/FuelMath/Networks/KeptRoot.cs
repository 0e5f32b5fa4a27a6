using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The root of an implicit law, kept for a link between iterations: it converges along with the flows.</summary>
internal struct KeptRoot<T>
    where T : struct, IScalar<T>
{
    /// <summary>The root: of the last iteration, then of this one.</summary>
    internal T Root;

    /// <summary>Whether it was asked for in this iteration; it serves one.</summary>
    internal bool IsUsed;
}
