namespace FuelMath.Exercises;

/// <summary>What a way gives, in the unit of the answer, and how far an answer may be from it.</summary>
internal readonly record struct ExerciseResult(double Value, double Tolerance)
{
    internal bool Fits(double answer) => Math.Abs(answer - Value) <= Tolerance;

    /// <summary>How far another result is, in the wider of both tolerances; zero when there is none.</summary>
    internal double Apart(ExerciseResult other) =>
        double.IsFinite(Value) && double.IsFinite(other.Value) && double.IsFinite(Tolerance + other.Tolerance)
            ? Math.Abs(Value - other.Value) / Math.Max(Tolerance, other.Tolerance)
            : 0;
}
