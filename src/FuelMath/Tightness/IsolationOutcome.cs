namespace FuelMath.ShopTests;

/// <summary>What the gauge did once a suspect was shut off.</summary>
public enum IsolationOutcome
{
    /// <summary>It falls as before: the suspect does not leak.</summary>
    FallsAsBefore,

    /// <summary>It falls more slowly: the suspect leaks, and something else does, too.</summary>
    FallsMoreSlowly,

    /// <summary>It stands still: the suspect is the only one that leaks.</summary>
    StandsStill,
}
