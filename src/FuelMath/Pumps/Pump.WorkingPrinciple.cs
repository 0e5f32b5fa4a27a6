namespace FuelMath;

public sealed partial class Pump
{
    /// <summary>
    /// A pump's principle of operation, which decides how its curve depends on the density of the fluid.
    /// </summary>
    public enum WorkingPrinciple
    {
        /// <summary>
        /// Not known: the delivery in a fluid of another density lies between those of the other two.
        /// </summary>
        NotKnown,

        /// <summary>
        /// Displaces a volume per revolution (gerotor, roller cell, vane, gear, diaphragm): at the same pressure rise
        /// the
        /// flow does not depend on density.
        /// </summary>
        Displacement,

        /// <summary>
        /// Accelerates the fluid (turbine, regenerative, side channel, centrifugal): at the same flow the pressure rise
        /// is
        /// proportional to density.
        /// </summary>
        Rotodynamic,
    }
}
