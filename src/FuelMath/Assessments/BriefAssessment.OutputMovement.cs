using UnitsNet;

namespace FuelMath;

public sealed partial class BriefAssessment
{
    /// <summary>How an answer at an operating point changes over the range of one estimate.</summary>
    public sealed class OutputMovement
    {
        internal OutputMovement(
            Output output,
            string point,
            double value,
            double? atLeast,
            double? atGreatest,
            double limit
        )
        {
            (Output, Point) = (output, point);
            (Value, Limit) = (SiUnits.Ratio(value), SiUnits.Ratio(limit));
            AtLeast = atLeast is { } least ? SiUnits.Ratio(least) : null;
            AtGreatest = atGreatest is { } greatest ? SiUnits.Ratio(greatest) : null;
            Weight = atLeast is { } a && atGreatest is { } b ? WeightOf(value, a, b, limit) : double.PositiveInfinity;
            Movement =
                atLeast is null || atGreatest is null
                    ? null
                    : SiUnits.Ratio(Math.Abs(atGreatest.Value - atLeast.Value));
        }

        /// <summary>The answer.</summary>
        public Output Output { get; }

        /// <summary>The operating point, by its name.</summary>
        public string Point { get; }

        /// <summary>The answer with every estimate at its value.</summary>
        public Ratio Value { get; }

        /// <summary>The answer at the low end of the range; null where none was found.</summary>
        public Ratio? AtLeast { get; }

        /// <summary>The answer at the high end of the range; null where none was found.</summary>
        public Ratio? AtGreatest { get; }

        /// <summary>Its limit.</summary>
        public Ratio Limit { get; }

        /// <summary>The answer at the high end minus that at the low end; null where an end has no answer.</summary>
        public Ratio? Movement { get; }

        /// <summary>
        /// Whether the estimate alone can reverse the judgment: the limit lies between the answer and that at an end,
        /// or
        /// an end has no answer.
        /// </summary>
        public bool TurnsJudgement => Weight >= 1;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Output} at {Point}: {Value} against {Limit}");

        /// <summary>
        /// Movement of an end towards the limit, over the distance to the limit; infinite where an end has no answer.
        /// </summary>
        internal double Weight { get; }

        private static double WeightOf(double value, double atLeast, double atGreatest, double limit)
        {
            double way = limit - value;
            double most = Math.Max(Towards(atLeast), Towards(atGreatest));
            return most <= 0 ? 0
                : way == 0 ? double.PositiveInfinity
                : most / Math.Abs(way);

            double Towards(double end) => way >= 0 ? end - value : value - end;
        }
    }
}
