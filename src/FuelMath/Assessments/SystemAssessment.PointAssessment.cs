using System.Collections.Immutable;

namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>
    /// The assessment of one operating point: as described, and as measured where the injectors were measured; where a sensor
    /// holds the mixture, each with the sensor and if it fails.
    /// </summary>
    public sealed class PointAssessment
    {
        private readonly ImmutableArray<(AssessedState State, Verdict Verdict)> counted;

        private PointAssessment(OperatingPoint point, ImmutableArray<AssessedState> states)
        {
            (Point, States) = (point, states);
            counted = [.. states.Select(s => (s, Counted(s)))];
            Verdict = Verdict.Together(counted.Select(c => c.Verdict));
            Deciding = counted.MaxBy(c => c.Verdict.Kind).State;
        }

        /// <summary>The operating point.</summary>
        public OperatingPoint Point { get; }

        /// <summary>Every state that was judged, as described first.</summary>
        public ImmutableArray<AssessedState> States { get; }

        /// <summary>
        /// Their common verdict. A danger that exists only when a sensor fails is a warning: act first, so that the
        /// engine
        /// does not depend on a sensor.
        /// </summary>
        public Verdict Verdict { get; }

        /// <summary>The state that determines the verdict; the first of equals.</summary>
        public AssessedState Deciding { get; }

        /// <summary>Its findings as they count in the verdict, each with its state.</summary>
        internal IEnumerable<Occurrence> Occurrences =>
            counted.SelectMany(c => c.Verdict.Findings.Select(f => new Occurrence(Point.Name, c.State.Basis, f)));

        /// <summary>The state with given injectors.</summary>
        /// <param name="basis">The basis.</param>
        /// <returns>The state; null when there is none with this basis.</returns>
        public AssessedState? Of(StateBasis basis) => States.FirstOrDefault(s => s.Basis == basis);

        /// <summary>Formats the point and its verdict as one line.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{Point.Name}{(Verdict.Kind == Verdict.Outcome.Holds ? "" : AssessedState.Words(Deciding.Basis))}: {Verdict}";

        internal static PointAssessment Of(FuelSystem system, OperatingPoint point, FuelSystem? measured) =>
            new(
                point,
                [
                    .. StatesOf(system, point, StateBasis.AsDescribed, StateBasis.AsDescribedUncorrected),
                    .. measured is null
                        ? []
                        : StatesOf(measured, point, StateBasis.AsMeasured, StateBasis.AsMeasuredUncorrected),
                ]
            );

        /// <summary>
        /// The state of a system and, where a sensor holds the mixture, the one if the sensor fails: the controller then gives
        /// what it was told to be right for the same lambda, with its own air, fuel and injectors.
        /// </summary>
        private static IEnumerable<AssessedState> StatesOf(
            FuelSystem system,
            OperatingPoint point,
            StateBasis basis,
            StateBasis uncorrected
        )
        {
            yield return AssessedState.Of(system, point, basis);
            if (point.Command is { Kind: FuelCommand.CommandKind.HoldLambda, Lambda: { } lambda })
            {
                yield return AssessedState.Of(system, point.WithCommand(FuelCommand.OpenLoop(lambda)), uncorrected);
            }
        }

        /// <summary>
        /// The verdict of a state in its point. Of one that a failed sensor leaves only what is not found with the sensor
        /// counts, and a danger as a warning.
        /// </summary>
        private Verdict Counted(AssessedState state) =>
            IsUncorrected(state.Basis)
                ? Verdict.Of(state.Verdict.Findings.Select(f => f.IfSensorFails()).Where(f => !IsFoundWithSensor(f)))
                : state.Verdict;

        private bool IsFoundWithSensor(Finding one) =>
            States.Any(s =>
                !IsUncorrected(s.Basis)
                && s.Verdict.Findings.Any(f => f.Code == one.Code && f.Part == one.Part && f.Severity >= one.Severity)
            );
    }
}
