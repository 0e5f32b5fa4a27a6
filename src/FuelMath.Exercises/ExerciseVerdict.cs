namespace FuelMath.Exercises;

/// <summary>The verdicts on a reply.</summary>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public enum ExerciseVerdict
{
    /// <summary>Right within the tolerance.</summary>
    Right,

    /// <summary>Right, but with fewer digits than requested.</summary>
    TooFewDigits,

    /// <summary>The result of one or more of the template's mistakes.</summary>
    KnownMistake,

    /// <summary>Right except for a factor from a wrong unit conversion.</summary>
    WrongFactor,

    /// <summary>Wrong for an unknown reason.</summary>
    Wrong,

    /// <summary>A number without a unit.</summary>
    MissingUnit,

    /// <summary>Another kind of quantity, or a pressure with another reference.</summary>
    WrongKind,

    /// <summary>An ambiguous text or no quantity; not marked.</summary>
    NotRead,
}
