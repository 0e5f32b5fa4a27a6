using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>One end of a fitting, hose, port or part: its form, size and gender, its thread, and how it seals.</summary>
/// <remarks>
/// <para>
/// Ends made by size have the thread of the standard. Any other end is described by its thread or diameter, from the
/// maker's drawing.
/// </para>
/// <para>
/// A thread does not identify an end: a flare, an O-ring boss and others share threads. Look at where it seals.
/// </para>
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed partial class FittingEnd
{
    private FittingEnd(
        EndForm form,
        EndGender gender,
        string size,
        ScrewThread? thread,
        Length diameter,
        DataSource source,
        string? tableSize
    )
    {
        TableSize = tableSize;
        Form = form;
        Gender = Guard.Known(gender);
        Size = size;
        Thread = thread;
        Diameter = diameter;
        Source = source;
    }

    /// <summary>Its form.</summary>
    public EndForm Form { get; }

    /// <summary>Its gender.</summary>
    public EndGender Gender { get; }

    /// <summary>Its size in the terms of the trade: a dash, a pipe size, a thread or a diameter.</summary>
    public string Size { get; }

    /// <summary>Its thread; null for quick connects and barbs.</summary>
    public ScrewThread? Thread { get; }

    /// <summary>Diameter of the tube end or bore of the hose where it has no thread; else that of the thread.</summary>
    public Length Diameter { get; }

    /// <summary>Its size in the table of its form, as text; null where it is described by its thread or diameter.</summary>
    internal string? TableSize { get; }

    /// <summary>What seals it.</summary>
    public SealKind Seal => EndWords.SealOf(Form);

    /// <summary>Where its thread or diameter comes from.</summary>
    public DataSource Source { get; }

    /// <summary>The end that it mates with: same form and size, other gender.</summary>
    public FittingEnd Mate =>
        new(
            Form,
            Gender == EndGender.Male ? EndGender.Female : EndGender.Male,
            Size,
            Thread,
            Diameter,
            Source,
            TableSize
        );

    /// <summary>An end of a flare of 37 degrees. Male is the cone outside; female the nut with the flared seat.</summary>
    /// <param name="dash">The dash size without its dash.</param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard does not have this size.</exception>
    public static FittingEnd Flare37(int dash, EndGender gender) =>
        Dash(
            EndForm.Flare37,
            gender,
            dash,
            EndTables.Of(EndTables.InchStraight, "Flare of 37 degrees", dash, nameof(dash))
        );

    /// <summary>An inch O-ring boss. Male is the stud with its O-ring; female the port with its chamfer.</summary>
    /// <param name="dash">The dash size without its dash.</param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard does not have this size.</exception>
    public static FittingEnd ORingBoss(int dash, EndGender gender) =>
        Dash(EndForm.ORingBoss, gender, dash, EndTables.Of(EndTables.InchStraight, "O-ring boss", dash, nameof(dash)));

    /// <summary>An end of a flare of 45 degrees. Male is the cone outside; female the nut with the flared tube in it.</summary>
    /// <param name="dash">The dash size without its dash: sixteenths of the tube's outside diameter.</param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard does not have this size.</exception>
    public static FittingEnd Flare45(int dash, EndGender gender) =>
        Dash(EndForm.Flare45, gender, dash, EndTables.Of(EndTables.Flare45, "Flare of 45 degrees", dash, nameof(dash)));

    /// <summary>A metric O-ring port or stud.</summary>
    /// <param name="threadMillimeters">Nominal thread diameter in whole millimeters: 14 for M14x1.5.</param>
    /// <param name="gender">Male is the stud, female the port.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard does not have this size.</exception>
    public static FittingEnd MetricORingPort(int threadMillimeters, EndGender gender) =>
        Table(
            EndForm.MetricORingPort,
            gender,
            EndTables.Of(EndTables.MetricPort, "Metric O-ring port", threadMillimeters, nameof(threadMillimeters)),
            EndTables.MetricPortSource,
            threadMillimeters.ToString(CultureInfo.InvariantCulture)
        );

    /// <summary>An end with American taper pipe thread, sealed with sealant.</summary>
    /// <param name="size">The pipe size, for example <c>1/4</c>.</param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table does not have this size.</exception>
    public static FittingEnd PipeTaper(string size, EndGender gender) =>
        Table(
            EndForm.PipeTaper,
            gender,
            EndTables.Of(EndTables.Npt, "NPT", size ?? "", nameof(size)),
            EndTables.NptSource,
            size!
        );

    /// <summary>An end with American dryseal taper pipe thread.</summary>
    /// <param name="size">The pipe size, for example <c>1/4</c>.</param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table does not have this size.</exception>
    public static FittingEnd PipeTaperDryseal(string size, EndGender gender) =>
        Table(
            EndForm.PipeTaperDryseal,
            gender,
            EndTables.Of(EndTables.Nptf, "NPTF", size ?? "", nameof(size)),
            EndTables.NptfSource,
            size!
        );

    /// <summary>An end with parallel Whitworth pipe thread, for a bonded washer.</summary>
    /// <param name="size">The pipe size, for example <c>1/4</c>.</param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table does not have this size.</exception>
    public static FittingEnd PipeParallelBonded(string size, EndGender gender) =>
        Table(
            EndForm.PipeParallelBonded,
            gender,
            EndTables.Of(EndTables.ParallelPipe, "ISO 228 thread", size ?? "", nameof(size)),
            EndTables.ParallelPipeSource,
            size!
        );

    /// <summary>An end with taper Whitworth pipe thread, sealed with sealant.</summary>
    /// <param name="size">The pipe size, for example <c>1/4</c>.</param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table does not have this size.</exception>
    public static FittingEnd PipeTaperWhitworth(string size, EndGender gender) =>
        Table(
            EndForm.PipeTaperWhitworth,
            gender,
            EndTables.Of(EndTables.TaperPipe, "ISO 7 thread", size ?? "", nameof(size)),
            EndTables.TaperPipeSource,
            size!
        );

    /// <summary>A threaded end of a size outside the tables here, or a banjo or brake-type flare.</summary>
    /// <param name="form">Its form; one with a thread.</param>
    /// <param name="gender">Gender of its thread: a banjo bolt or tube nut is male, its port female.</param>
    /// <param name="thread">Its thread, from the drawing.</param>
    /// <param name="source">Where that comes from.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentNullException">Thread or source is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The form has no thread.</exception>
    public static FittingEnd FromThread(EndForm form, EndGender gender, ScrewThread thread, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentNullException.ThrowIfNull(source);
        Guard.Known(form);
        return EndWords.HasThread(form)
            ? new(form, gender, thread.Designation, thread, thread.MajorDiameter, source, null)
            : throw Guard.Outside(form, RefusalCode.NotOneOf, $"Must be a form with a thread; it was {form:given}.");
    }

    /// <summary>A quick connect. Male is the tube end, female the coupler.</summary>
    /// <param name="tubeDiameter">
    /// Outside diameter of the tube end, measured or from the part's drawing; greater than zero. Within 0.06 mm of a
    /// standard size it is taken as that size: 6.3, 7.89, 8, 9.49, 9.89, 10, 11.8, 12.61, 14 or 15.82 mm, so that 7.94
    /// mm (5/16 inch) is 7.89.
    /// </param>
    /// <param name="gender">Its gender.</param>
    /// <returns>The end.</returns>
    /// <remarks>Source: [SAE-J2044] tube ends, from memory.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static FittingEnd QuickConnect(Length tubeDiameter, EndGender gender)
    {
        double given = Guard.Positive(tubeDiameter, tubeDiameter.InSi());
        double size = EndTables.QuickConnects.MinBy(s => Math.Abs(s - given));
        return Math.Abs(size - given) <= EndTables.QuickConnectSnap
            ? Plain(
                EndForm.QuickConnect,
                gender,
                SiUnits.Length(size),
                nameof(tubeDiameter),
                EndTables.QuickConnectSource
            )
            : Plain(EndForm.QuickConnect, gender, tubeDiameter, nameof(tubeDiameter), EndTables.CallerSource);
    }

    /// <summary>A barb for a hose with a clamp.</summary>
    /// <param name="hoseBore">Bore of the hose that it is made for; greater than zero.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bore is not greater than zero.</exception>
    public static FittingEnd HoseBarb(Length hoseBore) =>
        Plain(EndForm.HoseBarb, EndGender.Male, hoseBore, nameof(hoseBore), EndTables.CallerSource);

    /// <summary>The open end of a hose that goes on a barb.</summary>
    /// <param name="hoseBore">Its bore; greater than zero.</param>
    /// <returns>The end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bore is not greater than zero.</exception>
    public static FittingEnd OpenHose(Length hoseBore) =>
        Plain(EndForm.HoseBarb, EndGender.Female, hoseBore, nameof(hoseBore), EndTables.CallerSource);

    /// <summary>Formats gender, form and size.</summary>
    /// <returns>The text, for example <c>male 37 degree flare -6 (9/16-18 UNF)</c>.</returns>
    public override string ToString() =>
        Thread is null || Size == Thread.Designation
            ? $"{EndWords.Noun(this)} {Size}"
            : $"{EndWords.Noun(this)} {Size} ({Thread.Designation})";

    private static FittingEnd Dash(EndForm form, EndGender gender, int dash, ScrewThread thread) =>
        new(
            form,
            gender,
            FormattableString.Invariant($"-{dash}"),
            thread,
            thread.MajorDiameter,
            form switch
            {
                EndForm.Flare37 => EndTables.Flare37Source,
                EndForm.Flare45 => EndTables.Flare45Source,
                _ => EndTables.ORingBossSource,
            },
            dash.ToString(CultureInfo.InvariantCulture)
        );

    private static FittingEnd Table(
        EndForm form,
        EndGender gender,
        ScrewThread thread,
        DataSource source,
        string tableSize
    ) => new(form, gender, thread.Designation, thread, thread.MajorDiameter, source, tableSize);

    private static FittingEnd Plain(
        EndForm form,
        EndGender gender,
        Length diameter,
        string paramName,
        DataSource source
    )
    {
        double d = Guard.Positive(diameter, diameter.InSi(), paramName);
        return new(form, gender, FormattableString.Invariant($"{d * 1e3:0.##} mm"), null, diameter, source, null);
    }
}
