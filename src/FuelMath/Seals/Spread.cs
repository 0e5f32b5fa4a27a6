using UnitsNet;

namespace FuelMath.Joints;

/// <summary>The effect of tolerances on a result: at the worst, and by root-sum-square.</summary>
internal readonly struct Spread
{
    internal TolerancedLength.Band<Length> ToLength() => new(this, SiUnits.Length, Millimeters);

    internal TolerancedLength.Band<Ratio> ToRatio() => new(this, SiUnits.Ratio, Percent);

    internal static string Millimeters(double length) => FormattableString.Invariant($"{length * 1e3:0.00} mm");

    internal static string Percent(double fraction) => FormattableString.Invariant($"{fraction * 100:0.0} %");

    private Spread(double nominal, double worstLeast, double worstGreatest, double half)
    {
        Nominal = nominal;
        WorstLeast = Math.Min(worstLeast, nominal);
        WorstGreatest = Math.Max(worstGreatest, nominal);
        LikelyLeast = Math.Max(WorstLeast, nominal - half);
        LikelyGreatest = Math.Min(WorstGreatest, nominal + half);
    }

    internal double Nominal { get; }

    internal double WorstLeast { get; }

    internal double WorstGreatest { get; }

    internal double LikelyLeast { get; }

    internal double LikelyGreatest { get; }

    /// <summary>
    /// The worst cases are those of the corners, where every dimension is at one of its limits; the likely ones are the
    /// root of the sum of squares of each dimension's half effect, limited to the worst.
    /// </summary>
    internal static Spread Of(Func<double[], double> result, params ReadOnlySpan<TolerancedLength> measures)
    {
        var at = new double[measures.Length];
        double least = double.PositiveInfinity;
        double greatest = double.NegativeInfinity;
        for (int corner = 0; corner < 1 << measures.Length; corner++)
        {
            for (int i = 0; i < at.Length; i++)
            {
                at[i] = measures[i].NominalSi + ((corner >> i & 1) == 0 ? -1 : 1) * measures[i].ToleranceSi;
            }

            double value = result(at);
            (least, greatest) = (Math.Min(least, value), Math.Max(greatest, value));
        }

        double squares = 0;
        for (int i = 0; i < at.Length; i++)
        {
            for (int k = 0; k < at.Length; k++)
            {
                at[k] = measures[k].NominalSi;
            }

            at[i] += measures[i].ToleranceSi;
            double above = result(at);
            at[i] -= 2 * measures[i].ToleranceSi;
            double half = (above - result(at)) / 2;
            squares += half * half;
        }

        for (int k = 0; k < at.Length; k++)
        {
            at[k] = measures[k].NominalSi;
        }

        return new(result(at), least, greatest, Math.Sqrt(squares));
    }
}
