namespace FuelMath;

public sealed partial class Verdict
{
    /// <summary>The kinds of verdicts, the best first.</summary>
    public enum Outcome
    {
        /// <summary>Everything that matters was judged, and nothing needs action.</summary>
        Holds,

        /// <summary>Act before relying on the result.</summary>
        ActFirst,

        /// <summary>Something that matters could not be judged.</summary>
        NotKnown,

        /// <summary>Do not run the engine like this.</summary>
        DoNotRun,
    }
}
