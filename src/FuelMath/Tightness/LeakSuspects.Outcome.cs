namespace FuelMath.ShopTests;

public sealed partial class LeakSuspects
{
    /// <summary>The behavior of the gauge after a suspect was isolated.</summary>
    public enum Outcome
    {
        /// <summary>The pressure falls as before: the suspect does not leak.</summary>
        FallsAsBefore,

        /// <summary>It falls more slowly: the suspect and something else leak.</summary>
        FallsMoreSlowly,

        /// <summary>It holds: the suspect is the only leak.</summary>
        StandsStill,
    }
}
