namespace FuelMath;

/// <summary>A property that still needs the sentence which says what it means.</summary>
internal readonly struct Undescribed<TProperty>
{
    private readonly Func<string, TProperty> describe;

    internal Undescribed(Func<string, TProperty> describe) => this.describe = describe;

    /// <summary>Gives the sentence for the schema and the page of all properties.</summary>
    internal TProperty Says(string description) => describe(description);
}
