namespace FuelMath;

/// <summary>One place where a finding holds.</summary>
/// <remarks>Made by a <see cref="SystemAssessment"/>.</remarks>
public sealed class FindingOccurrence
{
    internal FindingOccurrence(string place, StateBasis? basis, Finding finding) =>
        (Place, Basis, Finding) = (place, basis, finding);

    /// <summary>The operating point's name, or the stage whose injectors were on the bench.</summary>
    public string Place { get; }

    /// <summary>Which injectors it was found with; null where it is about the bench and no operating point.</summary>
    public StateBasis? Basis { get; }

    /// <summary>The finding with its value there.</summary>
    public Finding Finding { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Place}: {Finding}");
}
