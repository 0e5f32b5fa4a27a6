using UnitsNet;

namespace FuelMath;

/// <summary>The tables that belong to no single stage: fuel, regulators, settings, operating points.</summary>
internal static class CommonTables
{
    private const double Bar = 1e5;

    internal static IEnumerable<SheetTable> All(SystemAssessment assessment)
    {
        FuelSystem system = assessment.System;
        yield return Densities(assessment);
        if (system.Network.Lines.Any(l => l.Part is IRegulator))
        {
            yield return Regulators(system);
        }

        if (system.Staging is { } staging && system.Stages.Length > 1)
        {
            yield return SheetTable.Of(
                "staging",
                "Staging",
                "Beyond it the later stage takes what is over, never less than its least repeatable pulse; then both rise together.",
                [SheetTable.Column.Words("stage that joins"), SheetTable.Column.Numbers("duty of the first", "%", 1)],
                [
                    [system.Stages[1].Name, 100 * staging.TransitionDutyCycle.InSi()],
                ]
            );
        }

        yield return Points(assessment);
        if (system.Banks.Any(b => b > 1))
        {
            yield return BankTable.Of(assessment);
        }

        if (!assessment.Shares.IsEmpty)
        {
            yield return ScatterTable.Of(assessment);
        }
    }

    private static SheetTable Densities(SystemAssessment assessment)
    {
        FuelSystem system = assessment.System;
        IEnumerable<object?[]> told = system
            .Stages.Select(s => (s.Belief!.Fuel, s.Belief!.FuelTemperature, Use: $"told, {s.Name}"))
            .Select(t => Density(t.Fuel, t.FuelTemperature, t.Use));
        IEnumerable<object?[]> fitted = assessment
            .Points.GroupBy(p => p.Point.Fuel.InSi())
            .OrderBy(g => g.Key)
            .Select(g =>
                Density(
                    system.Fuel,
                    g.First().Point.Fuel,
                    $"in the tank: {string.Join("; ", g.Select(p => p.Point.Name))}"
                )
            );
        return SheetTable.Of(
            "fuel",
            $"Fuel: {system.Fuel.Name}",
            $"Stoichiometric air-fuel ratio {system.Fuel.StoichiometricRatio} by mass, from the composition (none stated). Densities are from correlations, a few tenths of a percent. Vapor pressure: {system.Fuel.VaporPressure.Origin}{(system.Fuel.EthanolClass is { } sold ? $"; the most that E85 class {sold.Number} allows" : "")}.",
            [
                SheetTable.Column.Words("used for"),
                SheetTable.Column.Words("fuel"),
                SheetTable.Column.Numbers("at", "degC", 1),
                SheetTable.Column.Numbers("density", "kg/m3", 1),
                SheetTable.Column.Numbers("vapor pressure", "bar", 3),
            ],
            told.Concat(fitted)
        );
    }

    private static object?[] Density(FuelMath.Fuel fuel, Temperature at, string use)
    {
        return
        [
            use,
            fuel.Name,
            SiUnits.CelsiusFromKelvins(at.InSi()),
            Known(() => fuel.DensityAt(at).InSi()),
            Known(() => fuel.VaporPressureAt(at).Si / Bar),
        ];
    }

    /// <summary>A property, or nothing where it is refused.</summary>
    private static double? Known(Func<double> property)
    {
        try
        {
            return property();
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return null;
        }
    }

    private static SheetTable Regulators(FuelSystem system) =>
        SheetTable.Of(
            "regulators",
            "Regulators, and what each stage was told of its rail",
            $"Told: {string.Join("; ", system.Stages.Select(s => $"{s.Name} {Words(s.Belief!.RailReference)}"))}.",
            [
                SheetTable.Column.Words("regulator"),
                SheetTable.Column.Words("reference"),
                SheetTable.Column.Numbers("ratio", "-", 2),
                SheetTable.Column.Numbers("set", "bar", 2),
                SheetTable.Column.Numbers("at flow", "L/h", 0),
            ],
            system.Network.Lines.Where(l => l.Part is IRegulator).Select(l => Regulator(l.Name, (IRegulator)l.Part))
        );

    private static object?[] Regulator(string name, IRegulator regulator) =>
        [
            name,
            regulator.Reference.ToString().ToLowerInvariant(),
            regulator.FollowedRatio?.InSi(),
            regulator.SetDifferentialPressure.InSi() / Bar,
            regulator.SetFlow.InSi() * 3.6e6,
        ];

    private static string Words(RailPressure.Reference reference) =>
        reference switch
        {
            RailPressure.Reference.Manifold => "follows the manifold",
            RailPressure.Reference.Fixed => "fixed against ambient",
            _ => "measured by a sensor",
        };

    private static SheetTable Points(SystemAssessment assessment) =>
        SheetTable.Of(
            "points",
            assessment.Shares.IsEmpty
                ? "Operating points: predicted, steady (no uncertainty computed: verify with a gauge)"
                : "Operating points: predicted, steady (uncertainty in a table of its own: verify with a gauge)",
            $"Lambda reached: as one sensor sees it with the injectors as described. Leanest: of all chambers and of all injectors looked at, also if a sensor that holds the mixture fails, and if no oil of a premix burns. Told and across: pressure across the injectors as told to stage 1, and the least of all. Stages: {string.Join(", ", Numbered(assessment.System).Select(s => $"{s.Number} {s.Name}"))}; one without a width is shut. Reserve: what the pumps could still give at the pressure that must hold.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("verdict"),
                SheetTable.Column.Numbers("asked", "lambda", 3),
                SheetTable.Column.Numbers("reached", "lambda", 3),
                SheetTable.Column.Numbers("leanest", "lambda", 3),
                SheetTable.Column.Numbers("told", "bar", 2),
                SheetTable.Column.Numbers("across", "bar", 2),
                .. Numbered(assessment.System).Select(s => SheetTable.Column.Numbers($"width {s.Number}", "ms", 3)),
                .. Numbered(assessment.System).Select(s => SheetTable.Column.Numbers($"duty {s.Number}", "%", 1)),
                SheetTable.Column.Numbers("drawn", "L/h", 1),
                SheetTable.Column.Numbers("reserve", "L/h", 1),
            ],
            assessment.Points.Select(p => Point(assessment.System, p))
        );

    private static IEnumerable<(string Number, string Name)> Numbered(FuelSystem system) =>
        system.Stages.Select((s, i) => ((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), s.Name));

    private static object?[] Point(FuelSystem system, SystemAssessment.PointAssessment point)
    {
        string verdict = Verdict.Words(point.Verdict.Kind);
        double? asked = point.Point.Command.Lambda?.ToRatio();
        if (point.Of(SystemAssessment.StateBasis.AsDescribed)?.State is not { } state)
        {
            return
            [
                point.Point.Name,
                verdict,
                asked,
                .. Enumerable.Repeat<object?>(null, 6 + (2 * system.Stages.Length)),
            ];
        }

        double? leanest = point
            .States.SelectMany(s => s.State is { } one ? one.Chambers.AsEnumerable() : [])
            .Max(c => c.LambdaIfOilUnburned?.ToRatio());
        InjectorStage first = system.Stages[0];
        Pressure? told = first.Belief!.DifferentialPressureAt(
            first.Discharge == InjectorStage.DischargePlace.Manifold
                ? point.Point.Air.Manifold
                : point.Point.Air.Ambient,
            point.Point.Air.Ambient
        );
        return
        [
            point.Point.Name,
            verdict,
            asked,
            state.Lambda?.ToRatio(),
            leanest,
            told?.InSi() / Bar,
            state.Injectors.Min(i => i.DifferentialPressure.InSi()) / Bar,
            .. state.Stages.Select(s => s.IsShut ? null : (object?)(s.PulseWidth.InSi() * 1e3)),
            .. state.Stages.Select(s => s.IsShut ? null : (object?)(100 * s.DutyCycle.InSi())),
            state.Injectors.Sum(i => i.MeanFlow.InSi()) * 3.6e6,
            state.PumpReserve?.InSi() * 3.6e6,
        ];
    }
}
