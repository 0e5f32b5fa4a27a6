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

    /// <summary>A limit that other arguments narrow, as their pages say, is not refused each time: so many calls must agree.</summary>
    private const int Agreeing = 5;

    /// <summary>Far above the tolerance of an edge, 1e-9, and far below what any limit is rounded to.</summary>
    private const double Beyond = 1e-6;

    [Fact]
    public void Limits_ThatRefusalsState_AreTakenAndNothingBeyond()
    {
        var caller = Bundled.Caller(20261129);
        Dictionary<string, Tally> tallies = [];
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

        int held = tallies.Values.Count(t => t.IsHeld);
        output.WriteLine($"{held} of {tallies.Count} limits held");
        Assert.True(held > 300, $"only {held} limits");
        Offenders.None(tallies.Values.SelectMany(t => t.Against()));

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
                || tallies.GetValueOrDefault(id).IsHeld
                || With(given, limit, refusal.Unit) is not { } at
            )
            {
                return;
            }

            // The limit went through a unit: an excluded one is tried at the next twelfth digit.
            at = isExcluded ? With(given, limit + (side * 1e-12 * Math.Abs(limit)), refusal.Unit) ?? at : at;
            double size = Math.Max(Math.Abs(refusal.Minimum ?? 0), Math.Abs(refusal.Maximum ?? 0));
            double step =
                Beyond
                * (
                    limit != 0 ? Math.Abs(limit)
                    : size > 0 ? size
                    : 1
                );
            tallies[id] = tallies
                .GetValueOrDefault(id)
                .With(
                    IsRefused(outcome.With(place, at)) == isExcluded
                        ? null
                        : $"{id}: {(isExcluded ? "takes" : "refuses")} its own limit: {outcome.With(place, at).Shown} [{refusal.Message}]",
                    With(given, limit + (side * step), refusal.Unit) is not { } outside
                    || outcome.With(place, outside).Thrown is not null
                        ? null
                        : $"{id}: takes what lies beyond its limit: {outcome.With(place, outside).Shown} [{refusal.Message}]"
                );

            bool IsRefused(CallOutcome again) =>
                again.Thrown is RefusedValueException { Refusal: { } other }
                && other.What == refusal.What
                && (side < 0 ? other.Minimum : other.Maximum) is { } same
                && Math.Abs(same - limit) <= 1e-9 * Math.Max(Math.Abs(limit), 1e-9);
        }
    }

    /// <summary>How often a limit was met, and how often it was not what its words said.</summary>
    private readonly record struct Tally(int Calls, int At, int Outside, string? WordsAt, string? WordsOutside)
    {
        /// <summary>Whether a call took the limit, and a call nothing beyond it.</summary>
        internal bool IsHeld => Calls > At && Calls > Outside;

        internal Tally With(string? at, string? outside) =>
            new(
                Calls + 1,
                At + (at is null ? 0 : 1),
                Outside + (outside is null ? 0 : 1),
                at ?? WordsAt,
                outside ?? WordsOutside
            );

        internal IEnumerable<string> Against() =>
            Calls < Agreeing
                ? []
                : new[] { At == Calls ? WordsAt : null, Outside == Calls ? WordsOutside : null }.OfType<string>();
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
