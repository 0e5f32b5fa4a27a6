namespace FuelMath;

/// <summary>
/// A part in one solve of one point: it turns what is said of the point into the settings of its law. It writes plain
/// numbers and knows no scalar, so that several points at once cost it nothing.
/// </summary>
/// <remarks>Mutable: belongs to one solve.</remarks>
internal abstract class PartReading
{
    /// <summary>Whether its settings stay the same in all rounds of a point.</summary>
    internal virtual bool IsSteady => false;

    /// <summary>Goes to a point and round, which may be a guess: outside the part's data their ends are held.</summary>
    internal virtual void Set(in PointInputs at) { }

    /// <summary>Refuses a point that is no guess, where the part has no data.</summary>
    /// <exception cref="OutsideTableException">It has none there.</exception>
    internal virtual void Judge(in PointInputs at) { }

    /// <summary>Writes the settings of its law, as many as it has.</summary>
    internal abstract void Write(in PointInputs at, Span<double> settings);
}
