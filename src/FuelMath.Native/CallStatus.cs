namespace FuelMath.Native;

/// <summary>What a call returns; every number but zero is a refusal whose words <c>fuelmath_message</c> gives.</summary>
internal enum CallStatus
{
    /// <summary>There is a result.</summary>
    Fine = 0,

    /// <summary>More or fewer arguments than the formula has.</summary>
    Count = 1,

    /// <summary>An argument is outside its range, or not a number.</summary>
    OutsideRange = 2,

    /// <summary>An argument is outside a range that depends on other arguments.</summary>
    OutsideBound = 3,

    /// <summary>The arguments have no finite result.</summary>
    NoResult = 4,

    /// <summary>The call itself is wrong: no such formula, a null pointer, a negative count.</summary>
    Call = 5,

    /// <summary>A document is refused.</summary>
    Document = 6,

    /// <summary>A system is refused, or has no solution.</summary>
    System = 7,

    /// <summary>A mistake inside the library.</summary>
    Failure = 8,
}
