using System.Collections.Immutable;

namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>
    /// The assessment of one operating point: as described, and as measured where the injectors were measured.
    /// </summary>
    public sealed class PointAssessment
    {
        private PointAssessment(OperatingPoint point, ImmutableArray<AssessedState> states)
        {
            (Point, States) = (point, states);
            Verdict = Verdict.Together(states.Select(Counted));
            Deciding = states.MaxBy(s => Counted(s).Kind)!;
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

        /// <summary>The state with given injectors.</summary>
        /// <param name="basis">The basis.</param>
        /// <returns>The state; null when there is none with this basis.</returns>
        public AssessedState? Of(StateBasis basis) => States.FirstOrDefault(s => s.Basis == basis);

        /// <summary>Formats the point and its verdict as one line.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{Point.Name}{(Verdict.Kind == Verdict.Outcome.Holds ? "" : AssessedState.Words(Deciding.Basis))}: {Verdict}";

        internal static PointAssessment Of(FuelSystem system, OperatingPoint point, FuelSystem? measured)
        {
            var states = ImmutableArray.CreateBuilder<AssessedState>();
            states.Add(AssessedState.Of(system, point, StateBasis.AsDescribed));
            if (measured is not null)
            {
                states.Add(AssessedState.Of(measured, point, StateBasis.AsMeasured));
                if (point.Command is { Kind: FuelCommand.CommandKind.HoldLambda, Lambda: { } lambda })
                {
                    states.Add(
                        AssessedState.Of(
                            measured,
                            point.WithCommand(FuelCommand.OpenLoop(lambda)),
                            StateBasis.AsMeasuredUncorrected
                        )
                    );
                }
            }

            return new(point, states.ToImmutable());
        }

        /// <summary>The verdict of a state in its point: a danger that needs a failed sensor is a warning.</summary>
        internal static Verdict Counted(AssessedState state) =>
            state.Basis == StateBasis.AsMeasuredUncorrected
                ? Verdict.Of(
                    state.Verdict.Findings.Select(f =>
                        f.Severity == Severity.Danger ? f.WithSeverity(Severity.Warning) : f
                    )
                )
                : state.Verdict;
    }
}
