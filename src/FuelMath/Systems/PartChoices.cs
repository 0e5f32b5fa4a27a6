using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Which of a list of pumps, hoses or filters are sufficient for a demand, with margins; for a wire see <see cref="FuelMath.WireChoice"/>.</summary>
/// <remarks>
/// A first choice: each part is compared with the demand by itself. Sufficient ones come first, ordered by
/// rising margin (no larger than needed), then the others with their reasons, the nearest first. A whole
/// <see cref="FuelSystem"/> then solves the parts together. Makers' data come first.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/EverydayPartExamples.cs" region="ChoosePump" />
/// </example>
/// <seealso href="../start/questions.html">Everyday questions</seealso>
public static partial class PartChoices
{
    private const double Far = 1e4;

    /// <summary>Compares pumps with a flow at a pressure rise and a voltage.</summary>
    /// <param name="pumps">The list; one or more.</param>
    /// <param name="demand">The flow, required return flow included; greater than zero.</param>
    /// <param name="pressureRise">From the pump's inlet to its outlet: rail pressure and the losses on the way; greater than zero.</param>
    /// <param name="atTerminals">Voltage at the pump; greater than zero.</param>
    /// <param name="leastMargin">What must be to spare, as a share of the demand; not negative. Common practice: 15 %.</param>
    /// <returns>The choices.</returns>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static ImmutableArray<Choice<Pump>> Pumps(
        IEnumerable<Pump> pumps,
        VolumeFlow demand,
        Pressure pressureRise,
        ElectricPotential atTerminals,
        Ratio leastMargin
    )
    {
        double drawn = Guard.Positive(demand, demand.InSi());
        Guard.Positive(pressureRise, pressureRise.InSi());
        Guard.Positive(atTerminals, atTerminals.InSi());
        Guard.NotNegative(leastMargin, leastMargin.InSi());
        return Ordered(
            pumps,
            nameof(pumps),
            pump =>
            {
                try
                {
                    double margin = (pump.CurveAt(atTerminals).FlowAt(pressureRise).InSi() / drawn) - 1;
                    return Held(pump, margin, leastMargin, []);
                }
                catch (OutsideTableException outside)
                {
                    return new(pump, null, [$"its data do not reach there: {ExceptionText.Sentence(outside)}"]);
                }
            }
        );
    }

    /// <summary>Compares hoses with a flow by the velocity in them.</summary>
    /// <param name="hoses">The list; one or more.</param>
    /// <param name="demand">What flows; greater than zero.</param>
    /// <param name="greatestVelocity">
    /// The limit; greater than zero. Common practice: 4 m/s on the pressure side, 1.2 m/s ahead of a pump.
    /// </param>
    /// <param name="leastMargin">What must be to spare, as a share of the demand; not negative.</param>
    /// <returns>The choices.</returns>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static ImmutableArray<Choice<Hose>> Hoses(
        IEnumerable<Hose> hoses,
        VolumeFlow demand,
        Speed greatestVelocity,
        Ratio leastMargin
    )
    {
        Guard.Positive(demand, demand.InSi());
        double most = Guard.Positive(greatestVelocity, greatestVelocity.InSi());
        Guard.NotNegative(leastMargin, leastMargin.InSi());
        return Ordered(
            hoses,
            nameof(hoses),
            hose => Held(hose, (most / hose.VelocityAt(demand).InSi()) - 1, leastMargin, [])
        );
    }

    /// <summary>Compares filters with a flow by the greatest flow of their test and their pressure loss.</summary>
    /// <param name="filters">The list; one or more.</param>
    /// <param name="demand">What flows; greater than zero.</param>
    /// <param name="fuel">The fuel; its viscosity must be known.</param>
    /// <param name="temperature">Its temperature.</param>
    /// <param name="greatestLoss">The most pressure that a filter may take at the demand; greater than zero.</param>
    /// <param name="leastMargin">What must be to spare of the test's greatest flow, as a share of the demand; not negative.</param>
    /// <returns>The choices.</returns>
    /// <exception cref="ArgumentNullException">The list or the fuel is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="UnknownPropertyException">The fuel's viscosity is not known.</exception>
    public static ImmutableArray<Choice<Filter>> Filters(
        IEnumerable<Filter> filters,
        VolumeFlow demand,
        Fuel fuel,
        Temperature temperature,
        Pressure greatestLoss,
        Ratio leastMargin
    )
    {
        ArgumentNullException.ThrowIfNull(fuel);
        double flow = Guard.Positive(demand, demand.InSi());
        double most = Guard.Positive(greatestLoss, greatestLoss.InSi());
        Guard.NotNegative(leastMargin, leastMargin.InSi());
        Density density = fuel.DensityAt(temperature);
        DynamicViscosity viscosity = fuel.ViscosityAt(temperature);
        return Ordered(
            filters,
            nameof(filters),
            filter =>
            {
                double loss = filter.LossAt(demand, density, viscosity).InSi();
                return Held(
                    filter,
                    (filter.GreatestFlow.InSi() / flow) - 1,
                    leastMargin,
                    loss > most * (1 + Guard.EdgeTolerance)
                        ?
                        [
                            $"it takes {Guard.Show(SiUnits.Pressure(loss), greatestLoss.Unit)}, limit {Guard.Show(greatestLoss, greatestLoss.Unit)}",
                        ]
                        : []
                );
            }
        );
    }

    private static Choice<TPart> Held<TPart>(TPart part, double margin, Ratio least, string[] others) =>
        new(
            part,
            SiUnits.Ratio(margin),
            margin < least.InSi() - Guard.EdgeTolerance
                ?
                [
                    $"its margin is {FuelMath.Show.Percent(margin)}, {FuelMath.Show.Percent(least.InSi())} are asked for",
                    .. others,
                ]
                : others
        );

    private static ImmutableArray<Choice<TPart>> Ordered<TPart>(
        IEnumerable<TPart> parts,
        string paramName,
        Func<TPart, Choice<TPart>> hold
    )
        where TPart : class
    {
        ArgumentNullException.ThrowIfNull(parts, paramName);
        Choice<TPart>[] all = [.. Lists.NoNulls(parts, paramName).Select(hold)];
        Guard.AtLeast(1, all.Length, "A choice", paramName);
        return
        [
            .. all.Where(c => c.IsAccepted).OrderBy(c => c.Margin!.Value.InSi()),
            .. all.Where(c => !c.IsAccepted).OrderByDescending(c => c.Margin?.InSi() ?? -Far),
        ];
    }
}
