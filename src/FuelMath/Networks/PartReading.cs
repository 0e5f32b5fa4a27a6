namespace FuelMath;

/// <summary>
/// A part in one solve of one point: it converts the inputs of the point to the settings of its law, in plain numbers.
/// </summary>
/// <remarks>Mutable: belongs to one solve.</remarks>
internal abstract class PartReading
{
    /// <summary>Whether its settings are the same in all rounds of a point.</summary>
    internal virtual bool IsSteady => false;

    /// <summary>
    /// Sets the point and round, which may be an iterate: outside the part's data their ends are held.
    /// </summary>
    internal virtual void Set(in PointInputs at) { }

    /// <summary>Refuses a final point outside the part's data.</summary>
    /// <exception cref="OutsideTableException">The point is outside the data.</exception>
    internal virtual void Judge(in PointInputs at) { }

    /// <summary>Writes the settings of its law.</summary>
    internal abstract void Write(in PointInputs at, Span<double> settings);
}
