namespace FuelMath.Statistics;

/// <summary>How the possible values of an input lie about its best estimate.</summary>
public enum SpreadShape
{
    /// <summary>
    /// A bell without ends: a mean of repeats, a calibration. Source: [JCGM-101] section 6.4.7.
    /// </summary>
    Normal,

    /// <summary>
    /// Everywhere alike between two limits, and nowhere else: a tolerance of which no more is known. Its standard
    /// deviation is its half width over the root of 3. Source: [JCGM-101] section 6.4.2.
    /// </summary>
    Rectangular,

    /// <summary>
    /// Most in the middle, falling straight to two limits. Its standard deviation is its half width over the root of 6.
    /// Source: [JCGM-101] section 6.4.5.
    /// </summary>
    Triangular,

    /// <summary>
    /// Most near two limits: a sine of unknown phase, such as a temperature that a thermostat cycles. Its standard
    /// deviation is its half width over the root of 2. Source: [JCGM-101] section 6.4.6.
    /// </summary>
    ArcSine,
}
