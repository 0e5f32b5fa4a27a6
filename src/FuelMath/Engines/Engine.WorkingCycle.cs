namespace FuelMath;

public sealed partial class Engine
{
    /// <summary>How often a chamber takes in air.</summary>
    public enum WorkingCycle
    {
        /// <summary>Every cylinder once in two turns of the crankshaft.</summary>
        FourStroke,

        /// <summary>Every cylinder once in each turn of the crankshaft.</summary>
        TwoStroke,

        /// <summary>Every rotor once in each turn of the eccentric shaft: its three chambers take turns.</summary>
        Rotary,
    }
}
