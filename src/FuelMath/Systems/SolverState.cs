namespace FuelMath;

/// <summary>What moves while a state is sought, in SI numbers. Belongs to one solve at a time: <see cref="Begin"/>.</summary>
internal sealed partial class SolverState
{
    /// <summary>A round after one that changed more than this need not solve its path to the end.</summary>
    private const double Rough = 1e-5;

    private readonly FuelSystem system;
    private readonly StageModel[] fitted;
    private readonly double[] lastMiss;
    private readonly double[] lastVolts;

    /// <summary>Room for the solves of a system, one after another.</summary>
    /// <param name="path">The system.</param>
    internal SolverState(SystemPath path)
    {
        system = path.System;
        Path = path;
        int stages = system.Stages.Length;
        int seats = path.Seats.Length;
        Periods = new double[stages];
        Widths = new CommandedWidths(path, stages);
        Models = new StageModel[stages];
        DischargePressures = new double[seats];
        DifferentialPressures = new double[seats];
        TrueDifferences = new double[seats];
        SeatPressures = new double[seats];
        Coefficients = new double[seats];
        Commanded = new double[seats];
        Readings = Array.ConvertAll(path.Parts, p => p.Reading());
        Pumps = [.. Readings.OfType<PumpReading>()];
        PumpRises = new double[path.Pumps.Length];
        PumpAmperes = new double[path.Pumps.Length];
        int feeds = system.Power.Feeds.Length + 1;
        (FeedAmperes, FeedVolts, lastMiss, lastVolts) = (
            new double[feeds],
            new double[feeds],
            new double[feeds],
            new double[feeds]
        );
        fitted = [.. path.Injectors.Select((all, s) => new StageModel(all, 0, path.PulsesPerChamber[s]))];
        believed = [.. system.Stages.Select((stage, s) => ModelOf(stage.Belief, path.PulsesPerChamber[s]))];
        Banks = path.BankCount > 1 ? new BankModels(path) : null;
    }

    /// <summary>Begins a solve; nothing of the last one is left.</summary>
    /// <param name="point">The point.</param>
    /// <param name="shifts">How its inputs differ from the description; null where they do not.</param>
    /// <exception cref="ArgumentException">The command does not fit the system.</exception>
    /// <exception cref="OutsideTableException">The fuel or the engine is not described at these conditions.</exception>
    /// <exception cref="UnknownPropertyException">The fuel's viscosity is not known.</exception>
    internal void Begin(OperatingPoint point, InputShifts? shifts)
    {
        (Rounds, Iterations, IsRough, Blocked) = (0, 0, false, -1);
        (Change, SlowestName) = (double.PositiveInfinity, "");
        system.CheckCommand(point.Command, nameof(point));
        (Point, Shifts) = (point, shifts);
        Density = system.Fuel.DensityAt(point.Fuel).InSi() * (shifts?.Density ?? 1);
        Viscosity = system.Fuel.ViscosityAt(point.Fuel).InSi();
        bool turns = point.Speed.InSi() > 0;
        BelievedAirMass = turns
            ? system.Engine.AirMassPerChamberCycle(point.Speed, point.Air.Manifold, point.Air.Charge).InSi()
            : 0;
        AirMass = BelievedAirMass * point.Air.DryShare;
        (InjectorVolts, SourceVolts, InjectorConductance) = (point.Supply.InSi(), point.Supply.InSi(), 0);
        Array.Fill(FeedVolts, point.Supply.InSi());
        Array.Fill(lastMiss, double.NaN);
        Array.Fill(lastVolts, double.NaN);
        Widths.Clear();
        ManifoldGauge = point.Air.Manifold.Si - point.Air.Ambient.Si;
        for (int s = 0; s < fitted.Length; s++)
        {
            InjectorStage stage = system.Stages[s];

            // An engine that stands still meters nothing; a period of one second serves the static test.
            Periods[s] = turns ? 1 / system.Engine.InjectionsPerSecond(point.Speed, stage.PulsesPerCycle).InSi() : 1;
            fitted[s].Begin(Periods[s]);
            believed[s]?.Begin(Periods[s]);
            if (shifts is not null)
            {
                fitted[s].Shift(shifts.InjectorFlow.AsSpan(Path.First[s], stage.Seats.Length), shifts.DeadTime);
            }
        }

        Banks?.Begin(Periods, shifts);
        for (int seat = 0; seat < DischargePressures.Length; seat++)
        {
            InjectorStage stage = system.Stages[Path.Stages[seat]];
            DischargePressures[seat] = stage.DischargeGaugeSi(point);
            // Only where the solution is searched for from.
            DifferentialPressures[seat] = stage.Belief?.ToldSi(DischargePressures[seat]) is { } told and > 0
                ? told
                : (stage.Belief?.DifferentialPressure ?? stage.Seats[0].Injector.Rating.DifferentialPressure).InSi();
        }
    }

    internal SystemPath Path { get; }

    /// <summary>How this point's inputs differ from the description; null where they do not.</summary>
    internal InputShifts? Shifts { get; private set; }

    internal OperatingPoint Point { get; private set; } = null!;

    internal double Density { get; private set; }

    internal double Viscosity { get; private set; }

    /// <summary>Dry air of one chamber in one cycle, kg.</summary>
    internal double AirMass { get; private set; }

    /// <summary>What a controller takes it for that knows of no humidity, kg.</summary>
    internal double BelievedAirMass { get; private set; }

    /// <summary>Manifold pressure counted from ambient, Pa.</summary>
    internal double ManifoldGauge { get; private set; }

    internal double[] Periods { get; }

    internal CommandedWidths Widths { get; }

    /// <summary>The injectors bank by bank; null where one sensor stands behind all.</summary>
    internal BankModels? Banks { get; }

    internal StageModel[] Models { get; }

    internal double[] DischargePressures { get; }

    /// <summary>Pressure across each injector as the pulses take it; greater than zero.</summary>
    internal double[] DifferentialPressures { get; }

    /// <summary>Pressure across each injector in the last solution; may be negative where it is shut.</summary>
    internal double[] TrueDifferences { get; }

    /// <summary>Gauge pressure at the node of each injector in the last solution, Pa.</summary>
    internal double[] SeatPressures { get; }

    /// <summary>Mean volume flow over root of pressure, m³/s/sqrt(Pa).</summary>
    internal double[] Coefficients { get; }

    /// <summary>The mean flow at which each is held; infinite where only the pressure limits it.</summary>
    internal double[] Commanded { get; }

    internal PumpReading[] Pumps { get; }

    internal double[] PumpRises { get; }

    internal double[] PumpAmperes { get; }

    /// <summary>The parts as they are read in this solve; null for those that do not change.</summary>
    internal PartReading?[] Readings { get; }

    /// <summary>What a part is told in this round.</summary>
    internal PointInputs InputsOf(int part)
    {
        int seat = part - Path.Lines;
        return new()
        {
            Manifold = ManifoldGauge,
            Tank = seat < 0 ? Path.Tanks[part] : 0,
            PumpVolts = seat < 0 ? FeedVolts[Path.Feeds[part]] : 0,
            PumpFlowScale = Shifts?.PumpFlow ?? 1,
            Density = Density,
            HeldShift = Shifts?.SetPoint ?? 0,
            DrawCoefficient = seat < 0 ? 0 : Coefficients[seat],
            DrawCommanded = seat < 0 ? 0 : Commanded[seat],
        };
    }

    /// <summary>The share of the time that a stage's injectors are told to be open; the greatest of all banks.</summary>
    internal double DutyCycle(int stage) => Math.Min(Widths.Longest(stage) / Periods[stage], 1);

    /// <summary>Voltage at the pumps: of those that share a feed, then at each with one of its own, V.</summary>
    internal double[] FeedVolts { get; }

    /// <summary>Current through the same feeds in the last round, A.</summary>
    internal double[] FeedAmperes { get; }

    internal double InjectorVolts { get; set; }

    /// <summary>Voltage between the terminals of the source, which the controller measures, V.</summary>
    internal double SourceVolts { get; set; }

    /// <summary>Duty cycle over coil resistance, summed over all injectors, in the last round, S.</summary>
    internal double InjectorConductance { get; set; }

    /// <summary>The largest relative change of the round.</summary>
    internal double Change { get; private set; } = double.PositiveInfinity;

    /// <summary>What changed most.</summary>
    internal string SlowestName { get; private set; } = "";

    /// <summary>Rounds begun.</summary>
    internal int Rounds { get; private set; }

    /// <summary>Newton iterations on the fuel path over all rounds.</summary>
    internal int Iterations { get; set; }

    /// <summary>Whether the path of this round need not be solved to the end; such a round is never the last.</summary>
    internal bool IsRough { get; private set; }

    internal void StartRound(bool isLast)
    {
        Rounds++;
        IsRough = Change > Rough && !isLast;
        Change = 0;
    }

    internal void Note(double now, double before, double scale, string name)
    {
        double change = Math.Abs(now - before) / Math.Abs(scale);
        if (!(change <= Change))
        {
            (Change, SlowestName) = (change, name);
        }
    }

    /// <summary>Moves the voltage of a feed to where a chord through the last two rounds meets what follows from it.</summary>
    /// <param name="feed">Which.</param>
    /// <param name="follows">The voltage that followed from the one of the round.</param>
    internal void MovePumpVolts(int feed, double follows)
    {
        double now = FeedVolts[feed];
        double miss = follows - now;
        double chord = now - (miss * (now - lastVolts[feed]) / (miss - lastMiss[feed]));
        bool between = chord > Math.Min(now, follows) && chord < Math.Max(now, follows);
        (lastMiss[feed], lastVolts[feed]) = (miss, now);

        // More voltage draws more current, so that the answer lies between the two; a chord that leaves them is not used.
        FeedVolts[feed] = between ? chord : follows;
    }

    internal bool IsPulsed =>
        Point.Command.Kind is not (FuelCommand.CommandKind.Cut or FuelCommand.CommandKind.AllOpen);

    /// <summary>The injector that no fuel can pass, because its node is not above the pressure it sprays against; -1 for none.</summary>
    internal int Blocked { get; set; } = -1;

    /// <summary>A stage with its fitted injectors at the pressures and voltage of the round.</summary>
    internal StageModel Fitted(int stage)
    {
        int first = Path.First[stage];
        fitted[stage]
            .Guess(
                DifferentialPressures.AsSpan(first, system.Stages[stage].Seats.Length),
                Density,
                InjectorVolts,
                IsPulsed
            );
        return fitted[stage];
    }

    /// <summary>Refuses injectors whose data the pressures and the voltage of an answer do not reach.</summary>
    /// <exception cref="OutsideTableException">They do not reach there.</exception>
    /// <exception cref="NoSolutionException">No voltage is left at an injector, or its dead time would be negative.</exception>
    internal void JudgeInjectors()
    {
        for (int seat = 0; seat < TrueDifferences.Length; seat++)
        {
            if (TrueDifferences[seat] > 0)
            {
                int stage = Path.Stages[seat];
                fitted[stage].Judge(seat - Path.First[stage], DifferentialPressures[seat], InjectorVolts, IsPulsed);
            }
        }
    }

    /// <summary>Volume flow of an injector that is held open, m³/s, in the last round.</summary>
    internal double StaticFlow(int seat)
    {
        int stage = Path.Stages[seat];
        return fitted[stage].StaticMassFlow(seat - Path.First[stage]) / Density;
    }
}
