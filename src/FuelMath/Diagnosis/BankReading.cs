using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

/// <summary>What the controller gave a bank at one point, and what its sensor showed.</summary>
/// <remarks>
/// A correction that has reached its limit doesn't show how much was needed: the lambda reading does, and with it nothing is
/// lost.
/// </remarks>
public sealed class BankReading
{
    /// <summary>A bank with a lambda reading, whether the correction was free, at its limit or switched off.</summary>
    /// <param name="bank">The number of the bank.</param>
    /// <param name="pulseWidths">The width that was commanded for each stage, correction included; zero for one that rests. Copied.</param>
    /// <param name="correction">The factor on the fuel that was applied; 100 % for none.</param>
    /// <param name="observed">Lambda as the sensor showed it, settled.</param>
    /// <param name="relativeUncertainty">Standard uncertainty of that lambda, as a share; above 0 % and up to 50 %.</param>
    /// <exception cref="ArgumentException">No width is given.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="pulseWidths"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public BankReading(
        int bank,
        IEnumerable<Duration> pulseWidths,
        Ratio correction,
        Lambda observed,
        Ratio relativeUncertainty
    )
        : this(bank, pulseWidths, correction, observed, true, relativeUncertainty)
    {
        Guard.Positive(observed.Si, nameof(observed));
    }

    private BankReading(
        int bank,
        IEnumerable<Duration> pulseWidths,
        Ratio correction,
        Lambda? observed,
        bool hasSensor,
        Ratio? relativeUncertainty
    )
    {
        ArgumentNullException.ThrowIfNull(pulseWidths);
        PulseWidths = [.. pulseWidths];
        Guard.AtLeast(1, PulseWidths.Length, "A bank (its pulse widths by stage)", nameof(pulseWidths));
        WidthsSi = [.. PulseWidths.Select(w => Guard.NotNegative(w, w.InSi(), nameof(pulseWidths)))];
        if (WidthsSi.All(w => w == 0))
        {
            throw Guard.OutOfRange(PulseWidths[0], "longer than zero for one stage or more", nameof(pulseWidths));
        }

        CorrectionSi = Guard.Positive(correction, correction.InSi());
        UncertaintySi = relativeUncertainty is { } share ? Checked(share, nameof(relativeUncertainty)) : double.NaN;
        (Bank, Correction, Observed, HasSensor) = (bank, correction, observed, hasSensor);
        RelativeUncertainty = relativeUncertainty;
    }

    /// <summary>The number of the bank.</summary>
    public int Bank { get; }

    /// <summary>The width that was commanded for each stage, correction included.</summary>
    public ImmutableArray<Duration> PulseWidths { get; }

    /// <summary>The factor on the fuel that was applied.</summary>
    public Ratio Correction { get; }

    /// <summary>Lambda as the sensor showed it; null where the sensor held the target, or where there is none.</summary>
    public Lambda? Observed { get; }

    /// <summary>Whether a sensor says something of the bank.</summary>
    public bool HasSensor { get; }

    /// <summary>Standard uncertainty of the lambda, as a share; null without a sensor.</summary>
    public Ratio? RelativeUncertainty { get; }

    internal double[] WidthsSi { get; }

    internal double CorrectionSi { get; }

    internal double UncertaintySi { get; }

    /// <summary>A bank whose sensor held the lambda aimed at: only the correction says something.</summary>
    /// <param name="bank">The number of the bank.</param>
    /// <param name="pulseWidths">The width that was commanded for each stage, correction included; zero for one that rests. Copied.</param>
    /// <param name="correction">The factor on the fuel that was applied; within the limits of the controller and not at one.</param>
    /// <param name="relativeUncertainty">Standard uncertainty of the lambda that was held, as a share; above 0 % and up to 50 %.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentException">An argument does not fit; the message says why.</exception>
    public static BankReading FromCorrection(
        int bank,
        IEnumerable<Duration> pulseWidths,
        Ratio correction,
        Ratio relativeUncertainty
    ) => new(bank, pulseWidths, correction, null, true, relativeUncertainty);

    /// <summary>A bank whose sensor was not read: its widths serve readings of single chambers.</summary>
    /// <param name="bank">The number of the bank.</param>
    /// <param name="pulseWidths">The width that was commanded for each stage, correction included; zero for one that rests. Copied.</param>
    /// <param name="correction">The factor on the fuel that was applied; 100 % for none.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentException">An argument does not fit; the message says why.</exception>
    public static BankReading WithoutSensor(int bank, IEnumerable<Duration> pulseWidths, Ratio correction) =>
        new(bank, pulseWidths, correction, null, false, null);

    internal static double Checked(
        Ratio uncertainty,
        [CallerArgumentExpression(nameof(uncertainty))] string paramName = ""
    )
    {
        Guard.Positive(uncertainty, uncertainty.InSi(), paramName);
        return Guard.InRange(uncertainty, uncertainty.InSi(), 0, 0.5, SiUnits.Ratio, paramName);
    }
}
