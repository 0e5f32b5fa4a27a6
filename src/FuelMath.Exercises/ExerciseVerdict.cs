namespace FuelMath.Exercises;

/// <summary>What a reply is.</summary>
public enum ExerciseVerdict
{
    /// <summary>Right within the tolerance.</summary>
    Right,

    /// <summary>Right as far as it goes, but written with fewer digits than asked for.</summary>
    TooFewDigits,

    /// <summary>What one or more of the template's mistakes lead to.</summary>
    KnownMistake,

    /// <summary>Right but for a factor that a wrong conversion of units leaves.</summary>
    WrongFactor,

    /// <summary>Wrong in a way that is not known.</summary>
    Wrong,

    /// <summary>A number without a unit.</summary>
    MissingUnit,

    /// <summary>A quantity of another kind, or a pressure against another reference.</summary>
    WrongKind,

    /// <summary>A text with two meanings, or none; nothing is marked.</summary>
    NotRead,
}
