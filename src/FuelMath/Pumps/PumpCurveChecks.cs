using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Checks of a pump's points beyond their order, with the reason in the message.</summary>
internal static class PumpCurveChecks
{
    /// <summary>With a hump or a flat part the curve could have several operating points with one system.</summary>
    internal static void FlowFalls(ImmutableArray<PumpCurve.Point> points, string paramName)
    {
        for (int i = 1; i < points.Length; i++)
        {
            if (!(points[i].Flow.InSi() < points[i - 1].Flow.InSi()))
            {
                throw new RefusedArgumentException(
                    RefusalCode.MustFall,
                    $"Flow must fall from point to point; at index {i:index} it goes from {points[i - 1].Flow:below} to {points[i].Flow.ToUnit(points[i - 1].Flow.Unit):value}. A curve with a hump or a flat can meet a system in several points.",
                    paramName
                );
            }
        }
    }

    /// <summary>Detects a wrong unit: hydraulic power can't exceed electric power.</summary>
    internal static void NoMorePowerOutThanIn(
        ElectricPotential voltage,
        ImmutableArray<PumpCurve.Point> points,
        string paramName
    )
    {
        for (int i = 0; i < points.Length; i++)
        {
            PumpCurve.Point p = points[i];
            double hydraulic = PumpPower.Hydraulic(new Real(p.PressureRise.InSi()), new Real(p.Flow.InSi())).Value;
            double electric = PumpPower.Electric(new Real(voltage.InSi()), new Real(p.Current.InSi())).Value;
            if (hydraulic > electric)
            {
                throw new RefusedArgumentException(
                    RefusalCode.MorePowerOutThanIn,
                    $"A pump can't give out more power than it takes in; at index {i:index} it gives {new Amount(hydraulic, "W"):value} to the fuel from {new Amount(electric, "W"):most}. Check the units of pressure, flow and current.",
                    paramName
                );
            }
        }
    }

    private static string Show(VolumeFlow flow) => Guard.Show(flow, flow.Unit);
}
