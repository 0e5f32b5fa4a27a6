using UnitsNet;

namespace FuelMath;

/// <summary>
/// The fuel trim of one injector that serves a list of points best, from its flow and its dead time together, and the largest
/// departure that remains at one of them.
/// </summary>
/// <remarks>
/// A trim multiplies the fuel asked of that injector. What a dead time of its own asks for changes with the width, so one
/// number can't serve all points: it stands in the middle of what they ask for.
/// </remarks>
internal sealed class InjectorTrim
{
    private InjectorTrim(double trim, double before, double remains) =>
        (Trim, Before, Remains) = (trim, before, remains);

    /// <summary>The share of fuel to add.</summary>
    internal double Trim { get; }

    /// <summary>Without it: the departure of largest size from the fuel asked for.</summary>
    internal double Before { get; }

    /// <summary>With it: the departure of largest size that is left.</summary>
    internal double Remains { get; }

    /// <summary>The trim of an injector; null when none of the points can be metered.</summary>
    /// <param name="entered">What the controller is to be told of all.</param>
    /// <param name="fitted">The injector.</param>
    /// <param name="uses">Pulses that are asked of it, each at its conditions.</param>
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

    /// <summary>By how much more the controller must ask so that the injector gives what is wanted.</summary>
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
