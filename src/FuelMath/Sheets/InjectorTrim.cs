using UnitsNet;

namespace FuelMath;

/// <summary>
/// The fuel trim of one injector with the smallest greatest deviation over a list of points, from its flow and dead
/// time together, and that deviation.
/// </summary>
/// <remarks>
/// A trim multiplies the fuel requested of that injector. The correction for its own dead time changes with pulse
/// width, so that one number can't be exact at all points: it is the middle of the needed range.
/// </remarks>
internal sealed class InjectorTrim
{
    private InjectorTrim(double trim, double before, double remains) =>
        (Trim, Before, Remains) = (trim, before, remains);

    /// <summary>The fraction of fuel to add.</summary>
    internal double Trim { get; }

    /// <summary>The largest deviation from the requested fuel without trim.</summary>
    internal double Before { get; }

    /// <summary>The largest deviation from the requested fuel with the trim.</summary>
    internal double Remains { get; }

    /// <summary>The trim of an injector; null when none of the points can be metered.</summary>
    /// <param name="entered">The data to enter in the controller for all injectors.</param>
    /// <param name="fitted">The injector.</param>
    /// <param name="uses">The requested pulses, each at its conditions.</param>
    internal static InjectorTrim? Of(Injector entered, Injector fitted, IEnumerable<InjectorUse> uses)
    {
        InjectorUse[] metered = [.. uses.Where(u => Needed(entered, fitted, u) is not null)];
        if (metered.Length == 0)
        {
            return null;
        }

        double[] needed = [.. metered.Select(u => Needed(entered, fitted, u)!.Value)];
        double trim = (needed.Max() + needed.Min()) / 2;
        return Largest(entered, fitted, metered, 0) is { } before && Largest(entered, fitted, metered, trim) is { } left
            ? new(trim, before, left)
            : null;
    }

    private static double? Largest(Injector entered, Injector fitted, InjectorUse[] uses, double trim)
    {
        double?[] all = [.. uses.Select(u => u.Departure(entered, fitted, trim))];
        return all.Contains(null) ? null : all.MaxBy(d => Math.Abs(d!.Value));
    }

    /// <summary>The trim with which the injector gives the wanted fuel.</summary>
    private static double? Needed(Injector entered, Injector fitted, InjectorUse use)
    {
        try
        {
            Duration width = use.Width(fitted, 0);
            return (use.Mass(entered, width) / use.Wanted.InSi()) - 1;
        }
        catch (Exception refusal) when (refusal is OutsideTableException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }
}
