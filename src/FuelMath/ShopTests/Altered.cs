using FuelMath.Internal;
using FuelMath.Pumps;
using FuelMath.Systems;

namespace FuelMath.ShopTests;

/// <summary>A system with one thing changed, and the search for how much of it explains a reading.</summary>
internal static class Altered
{
    /// <summary>Halvings of a range, enough for nine digits.</summary>
    private const int Halvings = 40;

    /// <summary>Every pump delivers a share of what it should at each pressure.</summary>
    internal static FuelSystem WithPumpShare(FuelSystem system, double share)
    {
        var wear = new PumpWear(SiUnits.Ratio(share), default, SiUnits.Pressure(1e5));
        FuelPlan plan = new(
            system.Plan.Nodes,
            system.Plan.Lines.Select(l =>
                l.Pump is { } pump ? new FuelLine(l.Name, l.From, l.To, pump.Worn(pump.Name, wear)) : l
            )
        );
        return new(
            system.Name,
            system.Fuel,
            system.Engine,
            plan,
            system.Stages,
            system.Staging,
            system.Power,
            system.Limits,
            system.Source
        );
    }

    internal static OperatingPoint WithSupply(OperatingPoint point, double volts) =>
        new(
            point.Name,
            point.Speed,
            point.Manifold,
            point.Ambient,
            point.Charge,
            point.Fuel,
            SiUnits.ElectricPotential(volts),
            point.Command
        );

    /// <summary>Where a function that rises takes a value inside a range; null when it does not, or the data do not reach.</summary>
    internal static double? Search(Func<double, double?> rising, double target, double low, double high)
    {
        double? top = rising(high);
        if (top is null || top < target)
        {
            return null;
        }

        // The lower end of a range may lie outside of a part's data: what cannot be said counts as too low.
        double? bottom = rising(low);
        if (bottom is { } least && least > target)
        {
            return null;
        }

        bool reached = bottom is not null;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            double? value = rising(middle);
            reached |= value is { } v && v < target;
            (low, high) = value is null || value < target ? (middle, high) : (low, middle);
        }

        return reached ? high : null;
    }

    /// <summary>A value of a solved system; null where the parts' data do not reach or there is no state.</summary>
    internal static double? Of(FuelSystem system, OperatingPoint point, Func<SystemState, double> value)
    {
        try
        {
            return value(system.Solve(point));
        }
        catch (OutsideTableException)
        {
            return null;
        }
        catch (NoSolutionException)
        {
            return null;
        }
    }
}
