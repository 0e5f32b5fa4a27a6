using UnitsNet;

namespace FuelMath;

/// <summary>What the inside of a regulator measures: diaphragm, seat, and what it loses when open to its stop.</summary>
/// <remarks>
/// A maker publishes them seldom. <see cref="Estimated"/> stands in for them, and results that rest on it say so.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/RegulatorExamples.cs" region="Estimated" />
/// </example>
/// <seealso href="../guide/regulators.html">Regulators</seealso>
public sealed partial class RegulatorMechanics
{
    /// <summary>Diaphragm and seat of the estimate, in mm².</summary>
    internal const double UsualDiaphragm = 700;

    internal const double UsualSeat = 20;

    /// <summary>Loss of the estimate in kPa, at a flow in L/h.</summary>
    internal const double UsualOpenLoss = 30;

    internal const double UsualOpenFlow = 250;

    /// <summary>What the held pressure of the estimate moves by, Pa, over a step of flow, m³/s.</summary>
    internal const double UsualStepSi = 5000;

    internal const double UsualStepFlowSi = 100e-3 / 3600;

    /// <summary>Sets down measures.</summary>
    /// <param name="diaphragm">Effective area of the diaphragm; greater than zero.</param>
    /// <param name="seat">Area of the seat; greater than zero, smaller than the diaphragm.</param>
    /// <param name="fullyOpen">What it loses when open to its stop.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public RegulatorMechanics(Area diaphragm, Area seat, Restriction fullyOpen)
        : this(diaphragm, seat, fullyOpen, null) { }

    private RegulatorMechanics(Area diaphragm, Area seat, Restriction fullyOpen, string? basis)
    {
        (DiaphragmSi, SeatSi) = ReadingChecks.Areas(diaphragm, seat);
        OpenCoefficientSi = ReadingChecks.OpenCoefficient(fullyOpen);
        (Diaphragm, Seat, FullyOpen, EstimateBasis) = (diaphragm, seat, fullyOpen, basis);
    }

    /// <summary>
    /// Measures of a usual regulator for a rail: a diaphragm of 700 mm², a seat of 20 mm², 30 kPa at 250 L/h of gasoline when
    /// fully open. Source: [Common-practice] no single work; 400 mm² to 1300 mm², 10 mm² to 40 mm² and 10 kPa to 60 kPa are met.
    /// </summary>
    /// <remarks>
    /// What they decide while the regulator holds its pressure is small: the seat's share of the diaphragm, 1 % to 5 %, is how
    /// much a change of the return pressure, or of the supply of a reducing type, moves the rail. The open loss decides from
    /// which flow on a bypass type holds no longer, and a reducing one starves: measure it where a finding turns on that.
    /// </remarks>
    public static RegulatorMechanics Estimated =>
        Usual.AsEstimate(
            "diaphragm 700 mm2, seat 20 mm2, 30 kPa at 250 L/h when fully open: common practice, no source"
        );

    /// <summary>The same measures without the mark, for a system that marks its estimates itself.</summary>
    internal static RegulatorMechanics Usual { get; } =
        new(
            Area.FromSquareMillimeters(UsualDiaphragm),
            Area.FromSquareMillimeters(UsualSeat),
            new Restriction(
                Pressure.FromKilopascals(UsualOpenLoss),
                VolumeFlow.FromLitersPerHour(UsualOpenFlow),
                Density.FromKilogramsPerCubicMeter(745)
            )
        );

    /// <summary>Effective area of the diaphragm.</summary>
    public Area Diaphragm { get; }

    /// <summary>Area of the seat.</summary>
    public Area Seat { get; }

    /// <summary>What it loses when open to its stop.</summary>
    public Restriction FullyOpen { get; }

    /// <summary>The basis of the estimate; null when the measures are not an estimate.</summary>
    public string? EstimateBasis { get; }

    internal double DiaphragmSi { get; }

    internal double SeatSi { get; }

    /// <summary>Loss per density and flow squared, 1/m⁴.</summary>
    internal double OpenCoefficientSi { get; }

    /// <summary>How much of a pressure on the seat acts on the rail: seat over what is left of the diaphragm.</summary>
    internal double Influence => SeatSi / (DiaphragmSi - SeatSi);

    /// <summary>The same measures, marked as an estimate: results that depend on them say so.</summary>
    /// <param name="basis">The basis of the estimate, one clause; not blank.</param>
    /// <returns>The measures.</returns>
    /// <exception cref="ArgumentException"><paramref name="basis"/> is blank.</exception>
    public RegulatorMechanics AsEstimate(string basis) => new(Diaphragm, Seat, FullyOpen, Guard.Name(basis));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"diaphragm {Diaphragm}, seat {Seat}, open {FullyOpen}");
}
