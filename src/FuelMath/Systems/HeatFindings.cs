using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Findings of a drive and the hot soak after it: boiling, and an empty tank.</summary>
/// <remarks>
/// The tank is taken with all of the pumps' heat (<see cref="TankWarming.Bounds.Most"/>), and the pressures of the state. Where the
/// vapor pressure is an estimate of known error, its upper bound is used. A hot soak is judged at the pressure of the state, which a
/// tight check valve holds, and also reported for when that has leaked away. Measure how warm a rail gets.
/// </remarks>
/// <seealso href="../guide/heat.html">Heat: the tank warms, the rail soaks</seealso>
public static class HeatFindings
{
    private static readonly DataSource Balance = new("Cengel-Boles-2015", "energy balance of a tank");
    private static readonly DataSource Boiling = new(
        "Definition",
        "fuel boils where its vapor pressure is that around it"
    );

    /// <summary>Checks a state and the drive at it.</summary>
    /// <param name="system">The system.</param>
    /// <param name="state">A state of it.</param>
    /// <param name="drive">How long, and with what in the tank.</param>
    /// <returns>The findings, the gravest first; may be empty.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The state is not one of this system.</exception>
    public static ImmutableArray<Finding> Of(FuelSystem system, SystemState state, Drive drive)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(drive);
        if (system.Fuel.VaporPressure.IsNegligible)
        {
            return [];
        }

        IEnumerable<Finding> found = [.. Tank(system, state, drive), .. Soak(system, state, drive)];
        return [.. found.OrderByDescending(f => f.Severity)];
    }

    private static IEnumerable<Finding> Tank(FuelSystem system, SystemState state, Drive drive)
    {
        TankWarming most;
        string? unknown = null;
        try
        {
            most = TankWarming.Bounds.FromState(system, state, drive.FuelMass, drive.Cooling).Most;
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            (most, unknown) = (null!, ExceptionText.Sentence(refusal).Trim().TrimEnd('.'));
        }

        if (unknown is not null)
        {
            yield return NotKnown(
                system,
                state.Point.Fuel,
                "How warm the tank gets in this drive is not known",
                unknown
            );
            yield break;
        }

        if (most.TimeToEmpty is { } empty && empty.InSi() <= drive.Time.InSi())
        {
            yield return Finding
                .Of(
                    FindingCode.TankEmpties,
                    Severity.Warning,
                    "tank",
                    "The tank is empty before the drive ends",
                    Minutes(empty),
                    Minutes(drive.Time),
                    Balance,
                    "Fill more, or drive less; a pump that sucks air starves the engine."
                )
                .WithQuantities(empty, drive.Time);
            yield break;
        }

        Temperature warm = most.TemperatureAfter(drive.Time);
        string value = $"up to {Show.Celsius(warm.InSi())}, from {Show.Celsius(state.Point.Fuel.InSi())}";
        if (Vapor(system, warm) is not { } vapor)
        {
            yield return NotKnown(
                system,
                warm,
                "Whether fuel boils as the tank warms in this drive is not known",
                value
            );
            yield break;
        }

        (double pressure, string node) = system
            .Network.Nodes.Where(n => !state.Network.CutOffNodeNames.Contains(n.Name))
            .Select(n => (state.PressureAt(n.Name).ToAbsolute(state.Point.Air.Ambient).Si, n.Name))
            .Min();
        double limit = system.Limits.VaporMarginDifference.InSi();
        double margin = pressure - vapor;
        if (margin < limit)
        {
            yield return Finding
                .Of(
                    FindingCode.TankWarmingBoils,
                    margin <= 0 ? Severity.Danger : Severity.Warning,
                    node,
                    $"As the tank warms in this drive, fuel {(margin <= 0 ? "boils" : "comes near boiling")} at '{node}'",
                    Shown.Bar(margin).As(n => $"{value}: {n} {(margin <= 0 ? "below" : "above")} its vapor pressure"),
                    Shown.Bar(limit).As(n => $"at least {n} above"),
                    system.Limits.SourceOf(Limits.Kind.VaporMargin),
                    "Carry more fuel, slow the pump at small demand, cool the return, or use a less volatile fuel."
                )
                .WithQuantities(SiUnits.Pressure(margin), system.Limits.VaporMarginDifference);
        }
    }

    private static IEnumerable<Finding> Soak(FuelSystem system, SystemState state, Drive drive)
    {
        if (drive.SoakTemperature is not { } hot)
        {
            yield break;
        }

        if (Vapor(system, hot) is not { } vapor)
        {
            yield return NotKnown(
                system,
                hot,
                "Whether fuel boils in the rail at hot soak is not known",
                Show.Celsius(hot.InSi())
            );
            yield break;
        }

        (double pressure, string node) = system
            .Stages.SelectMany(s => s.Seats)
            .Select(s => (state.PressureAt(s.Node).ToAbsolute(state.Point.Air.Ambient).Si, s.Node))
            .Min();
        bool held = vapor < pressure;
        if (vapor < state.Point.Air.Ambient.Si)
        {
            yield break;
        }

        yield return Finding
            .Of(
                FindingCode.HotSoakBoils,
                held ? Severity.Note : Severity.Warning,
                node,
                held
                    ? $"At hot soak, fuel at '{node}' boils once its pressure has leaked away"
                    : $"At hot soak, fuel at '{node}' boils under the pressure that it had",
                Shown.Bar(vapor).As(n => $"vapor pressure {n} absolute at {Show.Celsius(hot.InSi())}"),
                Shown
                    .Bar(held ? state.Point.Air.Ambient.Si : pressure)
                    .As(n => held ? $"ambient {n} absolute" : $"{n} absolute"),
                Boiling,
                "Prime before a hot start until the rail holds its pressure; keep the check valve tight and heat away from the rail."
            )
            .WithQuantities(
                SiUnits.Pressure(vapor),
                held ? state.Point.Air.Ambient.AboveVacuum : SiUnits.Pressure(pressure)
            );
    }

    /// <summary>The most that the vapor pressure may be, Pa; null above its data.</summary>
    private static double? Vapor(FuelSystem system, Temperature temperature)
    {
        LiquidVaporPressure known = system.Fuel.VaporPressure;
        if (!known.IsKnown || temperature.InSi() > known.Law.Highest * (1 + Guard.EdgeTolerance))
        {
            return null;
        }

        Temperature at = SiUnits.Temperature(Math.Clamp(temperature.InSi(), known.Law.Lowest, known.Law.Highest));
        return known.At(at).Si * (1 + known.ErrorAt(at).InSi());
    }

    private static Finding NotKnown(FuelSystem system, Temperature temperature, string what, string value) =>
        Finding
            .Of(
                FindingCode.VaporNotChecked,
                temperature.InSi() > VaporFindings.Hot ? Severity.Warning : Severity.Note,
                system.Fuel.Name,
                what,
                value,
                "a vapor pressure at this temperature",
                Boiling,
                "Measure the vapor pressure of this fuel at this temperature, or keep the fuel cool."
            )
            .AsNotKnown();

    private static string Minutes(Duration time) =>
        Guard.Show(
            SiUnits.Duration(time.InSi()).ToUnit(UnitsNet.Units.DurationUnit.Minute),
            UnitsNet.Units.DurationUnit.Minute
        );
}
