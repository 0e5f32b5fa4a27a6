using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Fittings;

/// <summary>A screw thread: profile, major diameter and pitch.</summary>
/// <remarks>Instances are immutable and safe to share between threads. Two are equal when all of it is.</remarks>
public sealed class ScrewThread : IEquatable<ScrewThread>
{
    // A rule of thumb of ours, on the safe side: M10x1 starts in 3/8-24 (5 % and 6 % apart) and strips it.
    private const double NearDiameter = 0.06;
    private const double NearPitch = 0.07;
    private const double SamePitch = 0.005;
    private const double SameDiameter = 0.005;
    private const double PipeDiameter = 0.025;

    private readonly double diameter;
    private readonly double pitch;

    /// <summary>Describes a thread.</summary>
    /// <param name="designation">What it is called, for example <c>9/16-18 UNF</c>; not blank.</param>
    /// <param name="form">Its profile.</param>
    /// <param name="majorDiameter">Major diameter; of a taper thread at the gauge plane or of its pipe; greater than zero.</param>
    /// <param name="pitch">Pitch; greater than zero and less than a third of the diameter.</param>
    /// <exception cref="ArgumentException">The designation is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public ScrewThread(string designation, ThreadForm form, Length majorDiameter, Length pitch)
    {
        Designation = Guard.Name(designation, nameof(designation));
        Form = Guard.Known(form, nameof(form));
        diameter = Guard.Positive(majorDiameter, majorDiameter.InSi(), nameof(majorDiameter));
        this.pitch = Guard.Positive(pitch, pitch.InSi(), nameof(pitch));
        if (this.pitch >= diameter / 3)
        {
            throw Guard.OutOfRange(pitch, "less than a third of the diameter", nameof(pitch));
        }

        (MajorDiameter, Pitch) = (majorDiameter, pitch);
    }

    /// <summary>What it is called.</summary>
    public string Designation { get; }

    /// <summary>Its profile.</summary>
    public ThreadForm Form { get; }

    /// <summary>Major diameter.</summary>
    public Length MajorDiameter { get; }

    /// <summary>Distance from thread to thread.</summary>
    public Length Pitch { get; }

    /// <summary>Whether its diameter tapers.</summary>
    public bool IsTapered => Form is ThreadForm.AmericanPipeTaper or ThreadForm.WhitworthPipeTaper;

    /// <summary>A metric thread, called by its measures: M10x1.</summary>
    /// <param name="majorDiameter">Major diameter; greater than zero.</param>
    /// <param name="pitch">Pitch; greater than zero and less than a third of the diameter.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static ScrewThread Metric(Length majorDiameter, Length pitch) =>
        new(
            FormattableString.Invariant($"M{majorDiameter.InSi() * 1e3:0.###}x{pitch.InSi() * 1e3:0.###}"),
            ThreadForm.Metric,
            majorDiameter,
            pitch
        );

    /// <summary>How it goes together with another, one of them outside and one inside.</summary>
    /// <param name="other">The other thread.</param>
    /// <returns>How they fit; the same the other way round.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public ThreadFit FitWith(ScrewThread other)
    {
        ArgumentNullException.ThrowIfNull(other);
        double diameters = Apart(diameter, other.diameter);
        double pitches = Apart(pitch, other.pitch);
        return pitches <= SamePitch && Form == other.Form && diameters <= SameDiameter ? ThreadFit.Same
            : pitches <= SamePitch && IsPipe(Form) && IsPipe(other.Form) && diameters <= PipeDiameter
                ? ThreadFit.SameSizeOtherForm
            : pitches <= NearPitch && diameters <= NearDiameter ? ThreadFit.StartsThenBinds
            : ThreadFit.Different;
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

    private static bool IsPipe(ThreadForm form) =>
        form is ThreadForm.AmericanPipeTaper or ThreadForm.WhitworthPipeParallel or ThreadForm.WhitworthPipeTaper;

    private static double Apart(double a, double b) => Math.Abs(a - b) / Math.Max(a, b);
}
