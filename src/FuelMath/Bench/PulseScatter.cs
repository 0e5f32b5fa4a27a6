using UnitsNet;

namespace FuelMath.Bench;

/// <summary>How pulses scatter about their line, which decides how much each reading counts.</summary>
/// <remarks>
/// <para>
/// A reading counts by the number of its pulses over the variance of one. Where long pulses scatter more, in proportion
/// to their mass, equal weights let them speak too loudly: the standard error of the static flow comes out too small, and
/// the interval of the dead time too long. Only the ratio of the two parts counts; how large the scatter is, the readings say.
/// </para>
/// <para>
/// Source: [Draper-Smith-1998] chapter 5, weights.
/// </para>
/// </remarks>
public sealed class PulseScatter
{
    private readonly double constant;
    private readonly double proportional;

    private PulseScatter(double constant, double proportional) =>
        (this.constant, this.proportional) = (constant, proportional);

    /// <summary>The same mass, whatever the width: what is lost or gained once a pulse, and a coarse scale.</summary>
    public static PulseScatter Constant { get; } = new(1, 0);

    /// <summary>The same share of the mass: pressure, speed and flow that wander from reading to reading.</summary>
    public static PulseScatter Proportional { get; } = new(0, 1);

    /// <summary>Both at once; their variances add.</summary>
    /// <param name="constant">The standard deviation of a pulse that does not change with its width; greater than zero.</param>
    /// <param name="proportional">That which grows with its mass, as a share of it; greater than zero.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
    public static PulseScatter FromParts(Mass constant, Ratio proportional) =>
        new(Guard.Positive(constant, constant.InSi()), Guard.Positive(proportional, proportional.InSi()));

    /// <summary>Whether the mass of a pulse plays a part.</summary>
    internal bool DependsOnMass => proportional > 0;

    /// <summary>How much a reading counts: its pulses over the variance of one, up to a factor that all share.</summary>
    /// <param name="mass">The mass of a pulse, as a share of the largest; greater than zero.</param>
    /// <param name="largest">The largest mass, kg.</param>
    /// <param name="pulses">How many there were.</param>
    internal double Weight(double mass, double largest, int pulses)
    {
        (double fixedPart, double part) = (constant / largest, proportional * mass);
        double whole = DependsOnMass ? (fixedPart * fixedPart) + (part * part) : 1;
        return pulses * (DependsOnMass ? Unit(largest) / whole : 1);
    }

    /// <summary>The variance at the largest mass, so that weights are of order one.</summary>
    private double Unit(double largest) => (constant / largest * (constant / largest)) + (proportional * proportional);
}
