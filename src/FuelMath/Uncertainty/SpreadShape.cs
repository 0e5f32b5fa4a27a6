namespace FuelMath.Statistics;

/// <summary>The distribution of the possible values of an input about its best estimate.</summary>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public enum SpreadShape
{
    /// <summary>Normal: for a mean of repeats or a calibration. Source: [JCGM-101] section 6.4.7.</summary>
    Normal,

    /// <summary>
    /// Uniform between two limits: for a tolerance of which no more is known. Its standard deviation is its half width
    /// over the root of 3. Source: [JCGM-101] section 6.4.2.
    /// </summary>
    Rectangular,

    /// <summary>
    /// Greatest in the middle, falling linearly to two limits. Its standard deviation is its half width over the root
    /// of 6. Source: [JCGM-101] section 6.4.5.
    /// </summary>
    Triangular,

    /// <summary>
    /// Greatest near two limits: for a sine of unknown phase, such as a temperature cycled by a thermostat. Its
    /// standard deviation is its half width over the root of 2. Source: [JCGM-101] section 6.4.6.
    /// </summary>
    ArcSine,
}
