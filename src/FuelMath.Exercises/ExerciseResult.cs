namespace FuelMath.Exercises;

/// <summary>The result of a solution in the unit of the answer, and its tolerance.</summary>
internal readonly record struct ExerciseResult(double Value, double Tolerance)
{
    internal bool Fits(double answer) => Math.Abs(answer - Value) <= Tolerance;

    /// <summary>
    /// The distance to another result, in the larger of both tolerances; zero when there is no distance.
    /// </summary>
    internal double Apart(ExerciseResult other) =>
        double.IsFinite(Value) && double.IsFinite(other.Value) && double.IsFinite(Tolerance + other.Tolerance)
            ? Math.Abs(Value - other.Value) / Math.Max(Tolerance, other.Tolerance)
            : 0;
}
