namespace FuelMath;

/// <summary>What a first answer is about: a number that a limit is held against.</summary>
public enum BriefAnswer
{
    /// <summary>The largest duty cycle of the injectors; the limit is the most.</summary>
    DutyCycle,

    /// <summary>By how much the leanest chamber is above the lambda asked for, negative where it is rich; the limit is the most.</summary>
    LeanDeviation,

    /// <summary>What the pump could still give over what is drawn; the limit is the least.</summary>
    PumpReserve,
}
