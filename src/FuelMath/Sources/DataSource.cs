namespace FuelMath;

/// <summary>Where a number comes from: a work listed in <c>docs/sources.md</c> and a place in it.</summary>
/// <remarks>
/// Every type that holds measured or tabulated data requires one, so that a result can be traced to its source. Two are
/// equal when key and locator are.
/// </remarks>
/// <seealso href="../sources.html">Sources</seealso>
public sealed class DataSource : IEquatable<DataSource>
{
    /// <summary>Creates a source from a work and a place in it.</summary>
    /// <param name="key">The key of the work, for example <c>Workshop-class</c>; not blank.</param>
    /// <param name="locator">The table, figure, page, equation or row; not blank.</param>
    /// <exception cref="ArgumentException">Either is null or blank, or has control characters.</exception>
    public DataSource(string key, string locator)
    {
        Key = Guard.OneLine(Guard.NotBlank(key), nameof(key));
        Locator = Guard.OneLine(Guard.NotBlank(locator), nameof(locator));
    }

    /// <summary>The key of the work.</summary>
    public string Key { get; }

    /// <summary>The table, figure, page, equation or row inside the work.</summary>
    public string Locator { get; }

    /// <inheritdoc />
    public bool Equals(DataSource? other) => other is not null && other.Key == Key && other.Locator == Locator;

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as DataSource);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Key, Locator);

    /// <summary>Formats the source as <c>[key] locator</c>.</summary>
    /// <returns>The formatted source.</returns>
    public override string ToString() => $"[{Key}] {Locator}";
}
