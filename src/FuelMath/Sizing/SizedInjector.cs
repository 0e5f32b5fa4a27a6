using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>An injector of a caller's list, held against peak and idle.</summary>
/// <remarks>Made by <see cref="InjectorSizing"/>.</remarks>
public sealed class SizedInjector
{
    internal SizedInjector(
        Injector injector,
        Ratio? peakDutyCycle,
        Power? powerAtLimit,
        IdleControl? idle,
        ImmutableArray<string> reasons
    ) =>
        (Injector, PeakDutyCycle, PowerAtLimit, Idle, Reasons) = (injector, peakDutyCycle, powerAtLimit, idle, reasons);

    /// <summary>The injector.</summary>
    public Injector Injector { get; }

    /// <summary>Duty cycle that the peak asks for, above 100 % when it is too small; null when its data do not reach there.</summary>
    public Ratio? PeakDutyCycle { get; }

    /// <summary>The power that it carries at the duty-cycle limit; null when its data do not reach there.</summary>
    public Power? PowerAtLimit { get; }

    /// <summary>How well it meters idle; null when its data do not reach there.</summary>
    public IdleControl? Idle { get; }

    /// <summary>Whether it carries the peak and meters idle.</summary>
    public bool IsAccepted => Reasons.IsEmpty;

    /// <summary>Why it is rejected; empty when it is accepted.</summary>
    public ImmutableArray<string> Reasons { get; }
}
