namespace FuelMath;

/// <summary>
/// The curve of a pump for a solver at changing voltages, in a reused buffer: bit-identical to
/// <see cref="Pump.CurveAt(UnitsNet.ElectricPotential)"/>, without a new curve for each.
/// </summary>
/// <remarks>
/// An iterate of a solver may lie outside the data, where the ends are held; <see cref="JudgeVoltage"/> and
/// <see cref="JudgeRise"/> refuse a solution that does. Mutable: belongs to one solve.
/// </remarks>
internal sealed class PumpReading(Pump pump) : PartReading
{
    private readonly double leastVolts = pump.LeastVoltage.InSi();
    private readonly double greatestVolts = pump.GreatestVoltage.InSi();
    private PumpCurve? whole;
    private double volts;
    private Piece[] scaled = [];
    private int count;
    private double[] rises = [];
    private double[] flows = [];
    private double[] riseSlopes = [];
    private double[] currents = [];
    private double[] currentSlopes = [];
    private Piece[] riseOverFlow = [];
    private Piece[] currentOverRise = [];
    private Piece[] raised = [];
    private int raisedCount;
    private double density;
    private double riseFactor = 1;
    private (double Volts, double Rise)? lastOutside;

    /// <summary>The basis of the curve where it is an estimate; null when it was measured.</summary>
    internal string? EstimateBasis { get; private set; }

    /// <summary>Whether the voltage lies between two measured ones.</summary>
    internal bool IsBetweenVoltages => whole is null;

    /// <summary>Pressure rise in Pa over flow in m³/s, piece by piece.</summary>
    internal ReadOnlySpan<Piece> RiseOverFlow => riseFactor == 1 ? Measured : raised.AsSpan(0, raisedCount);

    private ReadOnlySpan<Piece> Measured =>
        whole is null ? riseOverFlow.AsSpan(0, count + 1) : whole.RiseOverFlow.Pieces;

    private PumpCurve Whole => whole ?? pump.CurveAt(SiUnits.ElectricPotential(volts));

    /// <summary>Sets the voltage, or the nearest one within the data.</summary>
    /// <param name="atTerminals">Voltage at the terminals of the pump or its controller, V.</param>
    internal void Set(double atTerminals)
    {
        Read(atTerminals);
        if (riseFactor == 1)
        {
            return;
        }

        ReadOnlySpan<Piece> measured = Measured;
        raisedCount = measured.Length;
        raised = raised.Length < raisedCount ? new Piece[raisedCount] : raised;
        for (int i = 0; i < raisedCount; i++)
        {
            raised[i] = measured[i].Scaled(riseFactor);
        }
    }

    private void Read(double atTerminals)
    {
        volts = Math.Clamp(atTerminals, leastVolts, greatestVolts);
        if (pump.Drive != PumpDrive.Direct || pump.Between(SiUnits.ElectricPotential(volts)) is not { } interval)
        {
            whole = pump.CurveAt(SiUnits.ElectricPotential(volts));
            EstimateBasis = whole.EstimateBasis;
            return;
        }

        (whole, EstimateBasis) = (null, interval.EstimateBasis);
        count = interval.Count;
        if (flows.Length < count)
        {
            (rises, flows, riseSlopes) = (new double[count], new double[count], new double[count]);
            (currents, currentSlopes) = (new double[count], new double[count]);
            (riseOverFlow, currentOverRise) = (new Piece[count + 1], new Piece[count + 1]);
        }

        Span<double> rise = rises.AsSpan(0, count);
        Span<double> flow = flows.AsSpan(0, count);
        Span<double> riseSlope = riseSlopes.AsSpan(0, count);
        Span<double> current = currents.AsSpan(0, count);
        Span<double> currentSlope = currentSlopes.AsSpan(0, count);
        interval.Read(volts, rise, flow, riseSlope, current, currentSlope);
        MonotoneCubic.Fill(rise, current, currentSlope, currentOverRise);

        // Flow falls as the pressure rise grows: over flow the points are in reverse order.
        flow.Reverse();
        rise.Reverse();
        riseSlope.Reverse();
        MonotoneCubic.Fill(flow, rise, riseSlope, riseOverFlow);
        rise.Reverse();
    }

    /// <inheritdoc />
    /// <exception cref="OutsideTableException">The density of the fluid of its test is not known.</exception>
    internal override void Set(in PointInputs at)
    {
        if (at.Density != density)
        {
            (density, riseFactor) = (at.Density, pump.RiseFactor(at.Density));
        }

        Set(at.PumpVolts);
    }

    /// <inheritdoc />
    internal override void Judge(in PointInputs at) => JudgeVoltage(at.PumpVolts);

    /// <inheritdoc />
    internal override void Write(in PointInputs at, Span<double> settings)
    {
        ReadOnlySpan<Piece> pieces = RiseOverFlow;
        if (at.PumpFlowScale != 1)
        {
            scaled = scaled.Length == pieces.Length ? scaled : new Piece[pieces.Length];
            for (int i = 0; i < scaled.Length; i++)
            {
                scaled[i] = pieces[i].Stretched(at.PumpFlowScale);
            }

            pieces = scaled;
        }

        PieceTable.Write(pieces, settings);
    }

    /// <summary>The current drawn, A; that of the nearest end where the rise lies outside the curve.</summary>
    /// <param name="rise">Outlet minus inlet pressure, Pa.</param>
    internal double CurrentAt(double rise)
    {
        double measured = rise / riseFactor;
        if (whole is not null)
        {
            Curve current = whole.CurrentOverRise;
            return riseFactor * current.At(Math.Clamp(measured, current.First, current.Last));
        }

        ReadOnlySpan<double> known = rises.AsSpan(0, count);
        double held = Math.Clamp(measured, known[0], known[^1]);
        return riseFactor * currentOverRise[MonotoneCubic.PieceAt(known, held)].At(held);
    }

    /// <summary>The flow at a rise if the rise at each flow had another factor; null outside the curve.</summary>
    internal double? FlowAt(double rise, double otherFactor)
    {
        PumpCurve curve = Whole;
        double measured = rise / otherFactor;
        return measured >= curve.CurrentOverRise.First && measured <= curve.CurrentOverRise.Last
            ? curve.RiseOverFlow.Inverse(measured)
            : null;
    }

    /// <summary>Refuses a voltage outside the data.</summary>
    /// <exception cref="OutsideTableException">The pump has no curve there.</exception>
    internal void JudgeVoltage(double atTerminals)
    {
        if (!(atTerminals >= leastVolts && atTerminals <= greatestVolts))
        {
            _ = pump.CurveAt(SiUnits.ElectricPotential(atTerminals));
        }
    }

    /// <summary>
    /// Refuses a pressure rise outside the curve. A curve that ends at no flow goes on: against more pressure the pump is
    /// stalled, its own valve is shut, and it draws the current of its last point.
    /// </summary>
    /// <exception cref="OutsideTableException">It lies outside the curve.</exception>
    internal void JudgeRise(double rise)
    {
        if (!Reaches(rise))
        {
            _ = Whole.CurrentAt(SiUnits.Pressure(rise / riseFactor));
        }
    }

    /// <summary>Notes a rise of a round that lies outside the curve: rounds may go on from there, and an answer may not.</summary>
    internal void NoteRise(double rise) => lastOutside = Reaches(rise) ? lastOutside : (volts, rise);

    /// <summary>
    /// Refuses rounds that do not settle, where they left the curve: its range changes at each measured voltage, so that
    /// they can go to and fro between a voltage with data and one without.
    /// </summary>
    /// <exception cref="OutsideTableException">They left it.</exception>
    internal void JudgeUnsettled()
    {
        if (lastOutside is { } outside)
        {
            Set(outside.Volts);
            JudgeRise(outside.Rise);
        }
    }

    private bool Reaches(double rise)
    {
        (double first, double last) = whole is null
            ? (rises[0], rises[count - 1])
            : (whole.CurrentOverRise.First, whole.CurrentOverRise.Last);
        double measured = rise / riseFactor;
        bool stalls = measured > last && (whole is null ? flows[0] : whole.RiseOverFlow.First) == 0;
        return (measured >= first && measured <= last) || stalls;
    }
}
