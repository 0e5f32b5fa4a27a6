using UnitsNet;

namespace FuelMath;

/// <summary>A screw thread: profile, major diameter and pitch.</summary>
/// <remarks>Two are equal when all their properties are.</remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed partial class ScrewThread : IEquatable<ScrewThread>
{
    // Our own rule, on the safe side: 3/8-24 starts in M10x1 (which differ by 5 % and 6 %) and strips it. Conversely,
    // M10x1 does not enter the hole of 3/8-24.
    private const double NearDiameter = 0.06;
    private const double NearPitch = 0.07;

    // The tip of a taper thread is smaller than its gauge plane by up to this fraction (1 in 16 over a fifth to a third
    // of the diameter).
    private const double TaperedTip = 0.025;
    private const double SamePitch = 0.005;
    private const double SameDiameter = 0.005;
    private const double PipeDiameter = 0.025;

    private readonly double diameter;
    private readonly double pitch;

    /// <summary>Describes a thread.</summary>
    /// <param name="designation">Its designation, for example <c>9/16-18 UNF</c>; not blank.</param>
    /// <param name="form">Its profile.</param>
    /// <param name="majorDiameter">Major diameter; of a taper thread at the gauge plane or of its pipe; greater than zero.</param>
    /// <param name="pitch">Pitch; greater than zero and less than a third of the diameter.</param>
    /// <exception cref="ArgumentException">The designation is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public ScrewThread(string designation, Profile form, Length majorDiameter, Length pitch)
    {
        Designation = Guard.Name(designation);
        Form = Guard.Known(form);
        diameter = Guard.Positive(majorDiameter, majorDiameter.InSi());
        this.pitch = Guard.Positive(pitch, pitch.InSi());
        if (this.pitch >= diameter / 3)
        {
            throw Guard.OutOfRange(pitch, $"less than a third of the diameter, {SiUnits.Length(diameter / 3):below}");
        }

        (MajorDiameter, Pitch) = (majorDiameter, pitch);
    }

    /// <summary>Its designation.</summary>
    public string Designation { get; }

    /// <summary>Its profile.</summary>
    public Profile Form { get; }

    /// <summary>Major diameter.</summary>
    public Length MajorDiameter { get; }

    /// <summary>Distance from thread to thread.</summary>
    public Length Pitch { get; }

    /// <summary>Whether its diameter tapers.</summary>
    public bool IsTapered => Form is Profile.AmericanPipeTaper or Profile.WhitworthPipeTaper;

    /// <summary>A metric thread, designated by its dimensions: M10x1.</summary>
    /// <param name="majorDiameter">Major diameter; greater than zero.</param>
    /// <param name="pitch">Pitch; greater than zero and less than a third of the diameter.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static ScrewThread FromMetric(Length majorDiameter, Length pitch) =>
        new(
            FormattableString.Invariant($"M{majorDiameter.InSi() * 1e3:0.###}x{pitch.InSi() * 1e3:0.###}"),
            Profile.Metric,
            majorDiameter,
            pitch
        );

    /// <summary>How it fits, as the outside thread, into an inside one.</summary>
    /// <param name="inside">The inside thread.</param>
    /// <returns>
    /// The fit. It depends on the direction: a thread too large for a hole does not start, a smaller one may.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="inside"/> is null.</exception>
    public Fit FitInto(ScrewThread inside)
    {
        ArgumentNullException.ThrowIfNull(inside);
        double diameters = Apart(diameter, inside.diameter);
        double pitches = Apart(pitch, inside.pitch);
        bool enters = diameter <= inside.diameter * (1 + (IsTapered ? TaperedTip : SameDiameter));
        return pitches <= SamePitch && Form == inside.Form && diameters <= SameDiameter ? Fit.Same
            : pitches <= SamePitch && IsPipe(Form) && IsPipe(inside.Form) && diameters <= PipeDiameter
                ? Fit.SameSizeOtherForm
            : enters && pitches <= NearPitch && diameters <= NearDiameter ? Fit.StartsThenBinds
            : Fit.Different;
    }

    /// <inheritdoc />
    public bool Equals(ScrewThread? other) =>
        other is not null
        && other.Designation == Designation
        && other.Form == Form
        && other.diameter.Equals(diameter)
        && other.pitch.Equals(pitch);

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as ScrewThread);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Designation, Form, diameter, pitch);

    /// <summary>Gives its designation.</summary>
    /// <returns>The designation.</returns>
    public override string ToString() => Designation;

    private static bool IsPipe(Profile form) =>
        form is Profile.AmericanPipeTaper or Profile.WhitworthPipeParallel or Profile.WhitworthPipeTaper;

    private static double Apart(double a, double b) => Math.Abs(a - b) / Math.Max(a, b);
}
