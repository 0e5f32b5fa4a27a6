using System.Collections.Immutable;

namespace FuelMath.Exercises;

/// <summary>A marked reply: the verdict, the mistakes that fit, and what to tell the learner.</summary>
public sealed class ExerciseMarking
{
    internal ExerciseMarking(
        ExerciseVerdict verdict,
        string text,
        ImmutableArray<ExerciseMistake> mistakes,
        double? deviation
    ) => (Verdict, Text, Mistakes, Deviation) = (verdict, text, mistakes, deviation);

    /// <summary>Whether the reply is right, or how it is not.</summary>
    public ExerciseVerdict Verdict { get; }

    /// <summary>What the learner is told.</summary>
    public string Text { get; }

    /// <summary>All mistakes that lead to the reply; empty unless the verdict is <see cref="ExerciseVerdict.KnownMistake"/>.</summary>
    public ImmutableArray<ExerciseMistake> Mistakes { get; }

    /// <summary>How far the reply is from the answer, as a share of the answer; positive when too great; null when it was not read.</summary>
    public double? Deviation { get; }

    /// <summary>Gives the text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}
