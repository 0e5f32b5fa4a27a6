namespace FuelMath;

/// <content>The same fuel with something else told of it.</content>
public sealed partial class Fuel
{
    /// <summary>The same fuel under a name of its own, with a vapor pressure that was measured.</summary>
    /// <param name="name">The new name; not blank.</param>
    /// <param name="vaporPressure">Its vapor pressure, measured on this very blend.</param>
    /// <returns>The fuel.</returns>
    /// <remarks>
    /// The only way to give a vapor pressure to blends with alcohols other than ethanol. In a further blend it is
    /// unknown again.
    /// </remarks>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="vaporPressure"/> is null.</exception>
    public Fuel WithVaporPressure(string name, LiquidVaporPressure vaporPressure) =>
        Copy(name, vaporPressure, HeatCapacity, BulkModulus, Oil, null);

    /// <summary>The same fuel under another name.</summary>
    /// <param name="name">The new name; not blank.</param>
    /// <returns>The fuel.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public Fuel WithName(string name) => Copy(name, VaporPressure, HeatCapacity, BulkModulus, Oil, Recipe);

    /// <summary>The same with the vapor pressure that a class allows; blended further, it is not known again.</summary>
    internal Fuel OfClass(E85Class ethanolClass, E85Recipe recipe) =>
        Copy(Name, VaporPressure.RaisedTo(ethanolClass), HeatCapacity, BulkModulus, Oil, recipe);

    /// <summary>The same fuel under a name of its own, with a heat capacity that was measured.</summary>
    /// <param name="name">The new name; not blank.</param>
    /// <param name="heatCapacity">Its heat capacity. Documents can't hold it and refuse such a fuel.</param>
    /// <returns>The fuel.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="heatCapacity"/> is null.</exception>
    public Fuel WithHeatCapacity(string name, LiquidHeatCapacity heatCapacity)
    {
        ArgumentNullException.ThrowIfNull(heatCapacity);
        return Copy(name, VaporPressure, heatCapacity, BulkModulus, Oil, null);
    }

    /// <summary>The same fuel under a name of its own, with a bulk modulus that was measured.</summary>
    /// <param name="name">The new name; not blank.</param>
    /// <param name="bulkModulus">Its isothermal bulk modulus. Documents can't hold it and refuse such a fuel.</param>
    /// <returns>The fuel.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="bulkModulus"/> is null.</exception>
    public Fuel WithBulkModulus(string name, LiquidBulkModulus bulkModulus)
    {
        ArgumentNullException.ThrowIfNull(bulkModulus);
        return Copy(name, VaporPressure, HeatCapacity, bulkModulus, Oil, null);
    }
}
