namespace FuelMath;

public sealed partial class InjectorDraw
{
    /// <summary>The behavior of an opening when the downstream pressure is higher.</summary>
    public enum Backflow
    {
        /// <summary>It closes: nothing flows backwards.</summary>
        Prevented,

        /// <summary>It flows backwards by the same law.</summary>
        Allowed,
    }
}
