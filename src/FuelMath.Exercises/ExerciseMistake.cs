namespace FuelMath.Exercises;

/// <summary>A typical mistake and its explanation for the learner.</summary>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public sealed class ExerciseMistake
{
    /// <summary>Describes a mistake.</summary>
    /// <param name="name">The mistake, for example <c>square root forgotten</c>.</param>
    /// <param name="reason">Why it is wrong, one or two sentences for the learner.</param>
    /// <exception cref="ArgumentException">A text is blank.</exception>
    public ExerciseMistake(string name, string reason)
    {
        ExerciseChecks.NotBlank(name);
        ExerciseChecks.NotBlank(reason);
        (Name, Reason) = (name, reason);
    }

    /// <summary>The mistake.</summary>
    public string Name { get; }

    /// <summary>Why it is wrong.</summary>
    public string Reason { get; }

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
