using System.Collections.Immutable;

namespace FuelMath.Exercises;

/// <summary>A marked reply: the verdict, the matching mistakes, and the text for the learner.</summary>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public sealed class ExerciseMarking
{
    internal ExerciseMarking(
        ExerciseVerdict verdict,
        string text,
        ImmutableArray<ExerciseMistake> mistakes,
        double? deviation
    ) => (Verdict, Text, Mistakes, Deviation) = (verdict, text, mistakes, deviation);

    /// <summary>The verdict on the reply.</summary>
    public ExerciseVerdict Verdict { get; }

    /// <summary>The text for the learner.</summary>
    public string Text { get; }

    /// <summary>All mistakes that lead to the reply; empty unless the verdict is <see cref="ExerciseVerdict.KnownMistake"/>.</summary>
    public ImmutableArray<ExerciseMistake> Mistakes { get; }

    /// <summary>
    /// The relative deviation of the reply from the answer; positive when too large; null when it was not read.
    /// </summary>
    public double? Deviation { get; }

    /// <summary>Gives the text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}
