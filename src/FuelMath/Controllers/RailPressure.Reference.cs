namespace FuelMath;

public sealed partial class RailPressure
{
    /// <summary>The reference of the rail as believed by a controller.</summary>
    public enum Reference
    {
        /// <summary>
        /// The rail follows the manifold, or wherever the injectors discharge: the pressure difference entered holds at
        /// every point.
        /// </summary>
        Manifold,

        /// <summary>
        /// The rail is fixed relative to ambient pressure: boost reduces the pressure difference entered, and vacuum
        /// increases it.
        /// </summary>
        Fixed,

        /// <summary>
        /// A sensor measures the pressure across the injectors; the difference entered is that of the flow data.
        /// </summary>
        Measured,
    }
}
