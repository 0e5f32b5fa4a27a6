using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>The pulse width of each stage and the flow of each injector, with one row for each injector.</summary>
internal sealed class InjectorRows
{
    private static readonly (string Name, SheetUnit Unit)[] Heads =
    [
        ("Chamber", SheetUnit.None),
        ("Pressure at its node", SheetUnit.Gauge),
        ("It sprays against", SheetUnit.Gauge),
        ("Pressure across it", SheetUnit.Difference),
        ("Rated flow", SheetUnit.GramsPerSecond),
        ("Rated at", SheetUnit.Difference),
        ("Rated with", SheetUnit.Density),
        ("Static flow", SheetUnit.GramsPerSecond),
        ("Dead time", SheetUnit.Milliseconds),
        ("Short-pulse correction", SheetUnit.Milliseconds),
        ("Pulse width", SheetUnit.Milliseconds),
        ("Effective width", SheetUnit.Milliseconds),
        ("Mass of a pulse", SheetUnit.Milligrams),
        ("Duty cycle", SheetUnit.Percent),
        ("Fuel in a cycle", SheetUnit.Milligrams),
        ("the same as solved", SheetUnit.Milligrams),
    ];

    private readonly StateRows rows;
    private readonly FuelSystem system;
    private readonly SystemState state;
    private readonly RailRows rail;
    private readonly MixtureRows mixture;
    private readonly SpreadsheetText discharge;
    private readonly SpreadsheetText density;
    private readonly Dictionary<string, (string Width, string Period)> stages = [];
    private readonly ToldStage?[] told;
    private readonly int first;

    internal InjectorRows(
        StateRows rows,
        FuelSystem system,
        SystemState state,
        RailRows rail,
        MixtureRows mixture,
        SpreadsheetText discharge,
        SpreadsheetText density
    )
    {
        (this.rows, this.system, this.state, this.rail, this.mixture) = (rows, system, state, rail, mixture);
        (this.discharge, this.density) = (discharge, density);
        Pulsing = state.Injectors.Any(IsPulsing) ? [.. state.Injectors.Where(IsPulsing)] : state.Injectors;

        // The rows of the injectors are below those of the stages, which refer to them.
        told = [.. state.Stages.Select(s => ToldStage.Of(system, state, s, mixture))];
        first = rows.Sheet.Row + told.Sum(t => t is null ? 5 : 5 + ToldStage.Rows) + 3;
        for (int i = 0; i < told.Length; i++)
        {
            stages[state.Stages[i].Name] = Stage(state.Stages[i], told[i]);
        }

        rows.Sheet.Skip();
        rows.Sheet.Add(CellLook.Head, ["Injector", .. Heads.Select(h => h.Name)]);
        rows.Sheet.Add(CellLook.Head, ["", .. Heads.Select(h => h.Unit.Name)]);
        if (rows.Sheet.Row != first)
        {
            throw new InvalidOperationException($"The injectors start in row {rows.Sheet.Row}, not in {first}.");
        }

        for (int i = 0; i < state.Injectors.Length; i++)
        {
            Injector(i);
        }
    }

    /// <summary>The injectors that deliver in pulses; all injectors where none does.</summary>
    internal ImmutableArray<SystemState.InjectorResult> Pulsing { get; }

    /// <summary>The cells of pulse width and duty cycle of a stage; null where it has none.</summary>
    internal (string Width, string DutyCycle)? Of(string stage) =>
        Enumerable.Range(0, state.Injectors.Length).Where(i => state.Injectors[i].Stage == stage).ToArray()
            is [var i, ..]
        && mixture.Turns
            ? (Sheet.At('L', first + i), Sheet.At('O', first + i))
            : null;

    /// <summary>The fuel that a chamber gets in a cycle, kg.</summary>
    internal SpreadsheetText FuelOf(int chamber) =>
        Sum(i => state.Injectors[i].Seat.Chamber == chamber, i => In('P', i));

    private static bool IsPulsing(SystemState.InjectorResult injector) => injector.Pulse.Mass.Si() > 0;

    private InjectorStage StageOf(string name) => system.Stages.First(s => s.Name == name);

    private SpreadsheetText Sum(Func<int, bool> where, Func<int, SpreadsheetText> of) =>
        Enumerable
            .Range(0, state.Injectors.Length)
            .Where(where)
            .Select(of)
            .Aggregate(SpreadsheetText.Of(0), (sum, x) => sum + x);

    /// <summary>A number of an injector's row, in SI units.</summary>
    private SpreadsheetText In(char column, int injector) =>
        Heads[column - 'B'].Unit.Read(Sheet.At(column, first + injector));

    private (string Width, string Period) Stage(SystemState.StageResult stage, ToldStage? told)
    {
        rows.Head($"Stage '{stage.Name}'");
        InjectorStage described = StageOf(stage.Name);
        SystemState.InjectorResult[] own = [.. state.Injectors.Where(i => i.Stage == stage.Name)];
        string period = mixture.Turns
            ? rows.Result(
                "time from one pulse to the next",
                mixture.Cycle / described.PulsesPerCycle,
                SheetUnit.Milliseconds,
                string.Create(CultureInfo.InvariantCulture, $"{described.PulsesPerCycle} in a working cycle")
            )
            : rows.SolvedResult(
                "time from one pulse to the next",
                stage.Period.Si(),
                SheetUnit.Milliseconds,
                "the engine stands"
            );
        double fuel = own.Sum(i => i.Pulse.Mass.Si()) * described.PulsesPerCycle;
        double all = state.Injectors.Sum(i => i.Pulse.Mass.Si() * StageOf(i.Stage).PulsesPerCycle);
        bool isLive =
            mixture.Wanted is not null
            && fuel > 0
            && !own.Any(i => i.Pulse.IsHeldOpen || i.Pulse.EffectiveWidth.Si() <= 0);
        if (told is not null)
        {
            return (told.Write(rows, discharge), period);
        }

        SpreadsheetText share = rows.Solved(
            "share of the fuel that this stage delivers",
            all > 0 ? fuel / all : 0,
            SheetUnit.Percent,
            system.Stages.Length == 1 ? "one stage" : "the controller's staging at this point"
        );
        if (!isLive)
        {
            string why =
                stage.IsShut ? "shut"
                : stage.IsHeldOpen ? "held open"
                : mixture.Wanted is null ? "as commanded, or as the controller reckons"
                : "where widths reach their limits";
            return (rows.SolvedResult("pulse width", stage.PulseWidth.Si(), SheetUnit.Milliseconds, why), period);
        }

        bool Own(int i) => state.Injectors[i].Stage == stage.Name;
        SpreadsheetText wanted = mixture.Wanted!.Value * share / described.PulsesPerCycle;
        SpreadsheetText late = Sum(Own, i => In('I', i) * (In('J', i) - In('K', i)));
        return (
            rows.Result(
                "pulse width",
                (wanted + late) / Sum(Own, i => In('I', i)),
                SheetUnit.Milliseconds,
                "one width for all of the stage, so that they deliver the fuel wanted together"
            ),
            period
        );
    }

    private void Injector(int index)
    {
        SystemState.InjectorResult injector = state.Injectors[index];
        InjectorStage stage = StageOf(injector.Stage);
        FlowRating rating = injector.Seat.Injector.Rating;
        Injector.PulseResult pulse = injector.Pulse;
        int row = rows.Sheet.Add(CellLook.Words, $"{injector.Stage}: {injector.Seat.Injector.Name}");
        double against = state.PressureAt(injector.Seat.Node).Si() - injector.DifferentialPressure.Si();
        Put('B', row, Cell.Of(injector.Seat.Chamber, CellLook.Plain));
        Live('C', row, SheetUnit.Gauge.Read(rail[injector.Seat.Node]));
        if (stage.Discharge == InjectorStage.DischargePlace.Manifold)
        {
            Live('D', row, discharge);
        }
        else
        {
            Solved('D', row, against);
        }

        Live('E', row, In('C', index) - In('D', index));
        Solved('F', row, rating.StaticMassFlow.Si());
        Solved('G', row, rating.DifferentialPressure.Si());
        Solved('H', row, rating.FluidDensity.Si());
        Live('I', row, StaticFlow(rating, In('F', index), In('G', index), In('H', index), In('E', index), density));
        Solved('J', row, pulse.DeadTime.Si());
        double effective = pulse.EffectiveWidth.Si();
        Solved(
            'K',
            row,
            effective > 0 && !pulse.IsHeldOpen ? injector.Seat.Injector.Correction.At(pulse.EffectiveWidth).Si() : 0
        );
        (string width, string period) = stages[injector.Stage];
        SpreadsheetText time = SheetUnit.Milliseconds.Read(period);
        Live('L', row, SheetUnit.Milliseconds.Read(width));
        Live('M', row, Pulse.EffectiveWidth(In('L', index), In('J', index)));
        Live(
            'N',
            row,
            pulse.IsHeldOpen ? In('I', index) * time
                : effective > 0 ? Pulse.Mass(In('I', index), In('M', index), In('K', index))
                : SpreadsheetText.Of(0)
        );
        Live('O', row, Pulse.DutyCycle(In('L', index), time));
        Live('P', row, In('N', index) * stage.PulsesPerCycle);
        Solved('Q', row, pulse.Mass.Si() * stage.PulsesPerCycle);
    }

    /// <summary>The flow of a rating converted to another pressure and density, kg/s.</summary>
    internal static SpreadsheetText StaticFlow(
        FlowRating rating,
        SpreadsheetText rated,
        SpreadsheetText ratedAt,
        SpreadsheetText ratedDensity,
        SpreadsheetText across,
        SpreadsheetText density
    ) =>
        rating.Exponent is { } exponent
            ? Orifice.PowerLawMassFlow(rated, ratedAt, ratedDensity, across, density, exponent.Exponent.Si())
            : Orifice.CarriedMassFlow(rated, ratedAt, ratedDensity, across, density);

    private void Live(char column, int row, SpreadsheetText si) =>
        Put(
            column,
            row,
            Cell.Live(
                Heads[column - 'B'].Unit.Show(si).ToFormula(),
                column is 'L' or 'N' or 'O' ? CellLook.LiveResult : CellLook.Live
            )
        );

    private void Solved(char column, int row, double si) =>
        Put(column, row, Cell.Of(Heads[column - 'B'].Unit.Show(si), CellLook.Solved));

    private void Put(char column, int row, Cell cell) => rows.Sheet.Put(column, row, cell);
}
