using System.Collections.Immutable;

namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>One finding of an assessment, listed once with every place where it holds.</summary>
    /// <remarks>
    /// A danger that exists only while a sensor fails is a warning, as in the verdict, and is omitted where the same is
    /// found with the sensor. A finding with the measured injectors is added to the same finding with the described
    /// ones only where its value differs and it is a danger, or was one before the sensor counted.
    /// </remarks>
    public sealed class GroupedFinding
    {
        private GroupedFinding(ImmutableArray<Occurrence> occurrences) => Occurrences = occurrences;

        /// <summary>Where it holds, in the order of the points; one or more.</summary>
        public ImmutableArray<Occurrence> Occurrences { get; }

        /// <summary>The code of the finding.</summary>
        public FindingCode Code => First.Code;

        /// <summary>The severity.</summary>
        public Severity Severity => First.Severity;

        /// <summary>Its own verdict.</summary>
        public Verdict.Outcome Kind => Verdict.KindOf(First);

        /// <summary>The part, stage, node or chamber that it concerns.</summary>
        public string Part => First.Part;

        /// <summary>What was found.</summary>
        public string What => First.What;

        /// <summary>The source of the limit.</summary>
        public DataSource LimitSource => First.LimitSource;

        /// <summary>The action to take.</summary>
        public string Action => First.Action;

        /// <summary>Whether it states that something could not be judged.</summary>
        public bool IsNotKnown => First.IsNotKnown;

        private Finding First => Occurrences[0].Finding;

        /// <summary>Formats the finding as one line: severity, finding and places.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{Severity}: {What} ({string.Join("; ", Occurrences.Select(o => $"{o.Place}: {o.Finding.Value}"))}). {Action}";

        internal static ImmutableArray<GroupedFinding> Of(IReadOnlyCollection<Occurrence> all) =>
            [
                .. all.GroupBy(o =>
                        (o.Finding.Code, o.Finding.Severity, o.Finding.IsNotKnown, o.Finding.Part, o.Finding.What)
                    )
                    .Select(g => new GroupedFinding([.. g.GroupBy(o => o.Place).SelectMany(Told)]))
                    .OrderByDescending(f => f.Kind)
                    .ThenByDescending(f => f.Severity),
            ];

        /// <summary>The occurrences to list at one place: the first, and further dangers with another value.</summary>
        private static IEnumerable<Occurrence> Told(IEnumerable<Occurrence> atOnePlace)
        {
            Occurrence[] all = [.. atOnePlace];
            return all[0].Finding.Severity == Severity.Danger || all[0].Basis is { } basis && IsUncorrected(basis)
                ? all.DistinctBy(o => o.Finding.Value)
                : all.Take(1);
        }
    }
}
