using System.Globalization;
using FuelMath.Tests.House;
using UnitsNet;
using Xunit.Abstractions;

namespace FuelMath.Tests.Calls;

/// <summary>
/// A refusal says what is allowed. The same call with that very limit must not be refused for it, unless the refusal says that
/// the limit is excluded; and with a value just beyond the limit it must be refused.
/// </summary>
public sealed class StatedLimitTests(ITestOutputHelper output)
{
    private const int Times = 24;

    /// <summary>Limits that another argument narrows, as their pages say.</summary>
    private static readonly HashSet<string> Conditional =
    [
        // Zero only while no fuel is metered.
        "M:FuelMath.OperatingPoint.#ctor(System.String,UnitsNet.RotationalSpeed,FuelMath.IntakeAir,UnitsNet.Temperature,UnitsNet.ElectricPotential,FuelMath.FuelCommand) speed least",
        // What a regulator holds at no flow depends on its supply, and how much ethanol came out on the water.
        "M:FuelMath.ReducingRegulator.FullyOpenFlow(FuelMath.GaugePressure,FuelMath.GaugePressure,UnitsNet.Density) supply least",
        "M:FuelMath.WaterShakeOut.Read(UnitsNet.Volume,UnitsNet.Volume,UnitsNet.Volume,UnitsNet.Volume,UnitsNet.Temperature) water least",
        // Zero only where there is other fuel, or water.
        "M:FuelMath.PremixRatio.AfterAdding(UnitsNet.Volume,UnitsNet.Volume,UnitsNet.Volume) fuel least",
        "M:FuelMath.EthanolWater.FromVolumes(UnitsNet.Volume,UnitsNet.Volume,UnitsNet.Temperature) ethanol least",
    ];

    /// <summary>Far above the tolerance of an edge, 1e-9, and far below what any limit is rounded to.</summary>
    private const double Beyond = 1e-6;

    [Fact]
    public void Limits_ThatRefusalsState_AreTakenAndNothingBeyond()
    {
        // Always the same calls: some limits vanish for odd arguments, and nobody would look at those each time.
        var caller = Bundled.Caller(20261129);
        HashSet<string> seen = [];
        List<string> against = [];
        foreach (var method in PublicApi.Methods.Where(CallRules.IsCalled))
        {
            foreach (CallOutcome outcome in caller.Call(method, Times).ToArray())
            {
                if (
                    outcome.Thrown is RefusedValueException { Refusal: { } refusal } refused
                    && Array.FindIndex(outcome.Called.GetParameters(), p => p.Name == refused.ParamName)
                        is >= 0
                            and int place
                )
                {
                    Look(outcome, refusal, place, refusal.Minimum, -1, refusal.IsMinimumExcluded);
                    Look(outcome, refusal, place, refusal.Maximum, 1, refusal.IsMaximumExcluded);
                }
            }
        }

        output.WriteLine($"{seen.Count} limits");
        Assert.True(seen.Count > 300, $"only {seen.Count} limits");
        Offenders.None(against);

        void Look(CallOutcome outcome, Refusal refusal, int place, double? edge, int side, bool isExcluded)
        {
            string id = $"{DocumentationId.Of(outcome.Method)} {refusal.What} {(side < 0 ? "least" : "most")}";
            if (
                edge is not { } limit
                || !double.IsFinite(limit)
                || refusal.Minimum >= refusal.Maximum
                // A scale that falls while it gets warmer.
                || refusal.Unit.Contains("De", StringComparison.Ordinal)
                || outcome.Arguments[place] is not { } given
                || With(given, limit, refusal.Unit) is not { } at
                || Conditional.Contains(id)
                || !seen.Add(id)
            )
            {
                return;
            }

            // The limit went through a unit: an excluded one is tried at the next twelfth digit.
            at = isExcluded ? With(given, limit + (side * 1e-12 * Math.Abs(limit)), refusal.Unit) ?? at : at;
            string said = $"{outcome.With(place, at).Shown} [{refusal.Message}]";
            if (IsRefused(outcome.With(place, at)) != isExcluded)
            {
                against.Add($"{id}: {(isExcluded ? "takes" : "refuses")} its own limit: {said}");
            }

            double size = Math.Max(Math.Abs(refusal.Minimum ?? 0), Math.Abs(refusal.Maximum ?? 0));
            double step =
                Beyond
                * (
                    limit != 0 ? Math.Abs(limit)
                    : size > 0 ? size
                    : 1
                );
            if (
                With(given, limit + (side * step), refusal.Unit) is { } outside
                && outcome.With(place, outside).Thrown is null
            )
            {
                against.Add(
                    $"{id}: takes what lies beyond its limit: {outcome.With(place, outside).Shown} [{refusal.Message}]"
                );
            }

            bool IsRefused(CallOutcome again) =>
                again.Thrown is RefusedValueException { Refusal: { } other }
                && other.What == refusal.What
                && (side < 0 ? other.Minimum : other.Maximum) is { } same
                && Math.Abs(same - limit) <= 1e-9 * Math.Max(Math.Abs(limit), 1e-9);
        }
    }

    /// <summary>A value of the same kind, in the unit of the refusal; null where the kind itself does not allow it.</summary>
    private static object? With(object given, double number, string unit)
    {
        try
        {
            return Of(given, number, unit);
        }
        catch (Exception none) when (none is ArgumentException or UnitNotFoundException or AmbiguousUnitParseException)
        {
            return null;
        }
    }

    private static object? Of(object given, double number, string unit) =>
        given switch
        {
            double => number,
            int when number == Math.Truncate(number) && Math.Abs(number) < int.MaxValue => Convert.ToInt32(
                number,
                CultureInfo.InvariantCulture
            ),
            IQuantity quantity => In(quantity, number, unit),
            GaugePressure gauge => new GaugePressure((Pressure)In(gauge.AboveAmbient, number, unit)),
            AbsolutePressure absolute => new AbsolutePressure((Pressure)In(absolute.AboveVacuum, number, unit)),
            _ => null,
        };

    private static IQuantity In(IQuantity given, double number, string unit) =>
        Quantity.From(
            number,
            UnitsNetSetup
                .Default.UnitAbbreviations.GetUnitAbbreviations(
                    given.Unit.GetType(),
                    Convert.ToInt32(given.Unit, CultureInfo.InvariantCulture),
                    CultureInfo.InvariantCulture
                )
                .FirstOrDefault("") == unit
                ? given.Unit
                : UnitsNetSetup.Default.UnitParser.Parse(
                    unit.Split(' ')[0],
                    given.Unit.GetType(),
                    CultureInfo.InvariantCulture
                )
        );
}
