using System.Globalization;

namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>A state of a system at a point, or its refusal, and the verdict.</summary>
    /// <remarks>
    /// A refusal gives the verdict "not known": missing data never give "holds". What happens when a sensor fails is not known
    /// either where nobody said what the controller was told; a note says so.
    /// </remarks>
    public sealed class AssessedState
    {
        private static readonly DataSource Rule = new("Definition", "only a state that was found can be judged");

        private AssessedState(StateBasis basis, SystemState? state, Exception? refusal, Verdict verdict) =>
            (Basis, State, Refusal, Verdict) = (basis, state, refusal, verdict);

        /// <summary>The injectors of the state, and whether a sensor corrects.</summary>
        public StateBasis Basis { get; }

        /// <summary>The state; null when it was refused.</summary>
        public SystemState? State { get; }

        /// <summary>The refusal where there is no state; else null.</summary>
        public Exception? Refusal { get; }

        /// <summary>Its own verdict.</summary>
        public Verdict Verdict { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Basis}: {Verdict}");

        internal static AssessedState Of(FuelSystem system, OperatingPoint point, StateBasis basis)
        {
            if (IsUncorrected(basis) && system.MissingBelief(nameof(system)) is { } missing)
            {
                return new(basis, null, missing, Verdict.Of([NotTold(missing)]));
            }

            try
            {
                SystemState state = system.Solve(point);
                Verdict verdict = point.Drive is { } drive
                    ? Verdict.Of([.. state.Findings, .. HeatFindings.Of(system, state, drive)])
                    : state.Verdict;
                return new(basis, state, null, verdict);
            }
            catch (Exception refusal) when (refusal is IRefusal)
            {
                return new(basis, null, refusal, Verdict.Of([Refused(refusal, basis)]));
            }
        }

        /// <summary>Only a note: while the sensor works the mixture is known.</summary>
        private static Finding NotTold(Exception missing) =>
            new Finding(
                FindingCode.SensorFailureNotJudged,
                Severity.Note,
                "mixture",
                "The mixture is not judged: nobody said what the controller was told",
                ExceptionText.Sentence(missing).Trim().TrimEnd('.'),
                "what the controller was told of every stage",
                Rule,
                "Describe what the controller was told, so that a lean engine behind the correction shows."
            ).AsNotKnown();

        private static Finding Refused(Exception refusal, StateBasis basis)
        {
            if (refusal is NoSolutionException dry && FuelMath.Refusal.Of(dry)?.Code == RefusalCode.NoFuelPasses)
            {
                // It is known what happens: the rail does not exceed what injectors spray against.
                return new Finding(
                    FindingCode.ChamberWithoutFuel,
                    Severity.Danger,
                    dry.Where.Length > 0 ? dry.Where : "state",
                    $"No fuel passes the injectors{Words(basis)}",
                    dry.Reason.Trim().TrimEnd('.'),
                    "a pressure above it",
                    Rule,
                    "Do not run: the engine gets no fuel. Find why the rail has no pressure: pump, voltage, restriction, or what the controller was told of the rail."
                );
            }

            (string part, string what, string value, string limit) = refusal switch
            {
                NoSolutionException none => (
                    none.Where.Length > 0 ? none.Where : "state",
                    $"No steady state was found{Words(basis)}",
                    none.Reason.Trim().TrimEnd('.'),
                    "a steady state"
                ),
                OutsideTableException outside => (
                    FuelMath.Refusal.Of(outside)?.Part ?? outside.Table,
                    $"The data do not reach this point{Words(basis)}",
                    string.Create(CultureInfo.InvariantCulture, $"{outside.Table}: {outside.Axis} {outside.Value:g6}"),
                    string.Create(CultureInfo.InvariantCulture, $"{outside.Minimum:g6} to {outside.Maximum:g6}")
                ),
                _ => (
                    "state",
                    $"A property is not known at this point{Words(basis)}",
                    ExceptionText.Sentence(refusal).Trim().TrimEnd('.'),
                    "a description"
                ),
            };
            return new Finding(
                FindingCode.StateRefused,
                Severity.Warning,
                part,
                what,
                value,
                limit,
                Rule,
                "Nothing is known of this point until there is a state: give the data that are missing, or change the system."
            ).AsNotKnown();
        }

        /// <summary>The words that a text adds to name the injectors.</summary>
        internal static string Words(StateBasis basis) => IsMeasured(basis) ? " with the injectors as measured" : "";
    }
}
