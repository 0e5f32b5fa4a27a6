namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>One place where a finding holds.</summary>
    /// <remarks>Created by a <see cref="SystemAssessment"/>.</remarks>
    public sealed class Occurrence
    {
        internal Occurrence(string place, StateBasis? basis, Finding finding) =>
            (Place, Basis, Finding) = (place, basis, finding);

        /// <summary>The name of the operating point, or of the stage whose injectors were on the bench.</summary>
        public string Place { get; }

        /// <summary>The injectors of the state; null for a bench result, which has no operating point.</summary>
        public StateBasis? Basis { get; }

        /// <summary>The finding with its value there.</summary>
        public Finding Finding { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Place}: {Finding}");
    }
}
