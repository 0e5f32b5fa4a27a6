namespace FuelMath.Statistics;

/// <summary>The values of one output in many trials, sorted.</summary>
internal sealed class TrialNumbers
{
    private readonly double[] sorted;

    /// <param name="values">Two or more finite numbers; sorted in place and kept.</param>
    internal TrialNumbers(double[] values)
    {
        // In the order of the trials, so that the sums do not depend on the division among threads.
        var sample = new Sample(values);
        (Mean, StandardDeviation) = (sample.Mean, sample.StandardDeviation);
        Array.Sort(values);
        sorted = values;
    }

    /// <summary>Source: [JCGM-101] section 7.6, equation 16.</summary>
    internal double Mean { get; }

    /// <summary>Source: [JCGM-101] section 7.6, equation 17.</summary>
    internal double StandardDeviation { get; }

    /// <summary>The quantile of the trials: linear between those at (r - 1/2) / M.</summary>
    /// <remarks>Source: [JCGM-101] sections 7.5 and D.2.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The trials are too few for a quantile so near an end.</exception>
    internal double At(UnitsNet.Ratio share)
    {
        double edge = 0.5 / sorted.Length;
        double place = (Guard.InRange(share, share.InSi(), edge, 1 - edge, SiUnits.Ratio) - edge) * sorted.Length;
        int below = Math.Min((int)place, sorted.Length - 2);
        return sorted[below] + ((place - below) * (sorted[below + 1] - sorted[below]));
    }
}
