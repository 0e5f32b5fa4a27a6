using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What the injectors are told to do at an operating point.</summary>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed partial class FuelCommand
{
    private FuelCommand(CommandKind kind, Lambda? lambda, ImmutableArray<Duration> widths)
    {
        Kind = kind;
        Lambda = lambda;
        PulseWidths = widths;
    }

    /// <summary>No fuel at all: overrun.</summary>
    public static FuelCommand Cut { get; } = new(CommandKind.Cut, null, []);

    /// <summary>Every injector held open: a static flow test.</summary>
    public static FuelCommand AllOpen { get; } = new(CommandKind.AllOpen, null, []);

    /// <summary>Which kind of command this is.</summary>
    public CommandKind Kind { get; }

    /// <summary>The lambda asked for, where the command asks for one.</summary>
    public Lambda? Lambda { get; }

    /// <summary>The pulse width of each stage in the order of the stages, where the command gives them; else empty.</summary>
    public ImmutableArray<Duration> PulseWidths { get; }

    /// <summary>Refuses a command that no point of a system can have.</summary>
    /// <exception cref="ArgumentException">It gives pulse widths for another number of stages.</exception>
    internal void CheckStages(int stages, string paramName)
    {
        if (Kind == CommandKind.PulseWidths && PulseWidths.Length != stages)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"The command must give a pulse width for each stage, {stages:exactly} in all; it gives {PulseWidths.Length:value}.",
                paramName
            );
        }
    }

    /// <summary>The controller's sensor holds the mean mixture: pulse widths are whatever that takes.</summary>
    /// <param name="lambda">The mean lambda to hold.</param>
    /// <returns>The command.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The lambda is the default value.</exception>
    public static FuelCommand HoldLambda(Lambda lambda) =>
        new(CommandKind.HoldLambda, FuelMath.Lambda.FromRatio(lambda.Si), []);

    /// <summary>Nobody corrects: the controller turns the mass for a lambda into pulse widths by its belief.</summary>
    /// <param name="lambda">The lambda that the controller aims at.</param>
    /// <returns>The command.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The lambda is the default value.</exception>
    public static FuelCommand OpenLoop(Lambda lambda) =>
        new(CommandKind.OpenLoop, FuelMath.Lambda.FromRatio(lambda.Si), []);

    /// <summary>Given pulse widths, one for each stage.</summary>
    /// <param name="widths">The widths in the order of the stages; zero keeps a stage shut.</param>
    /// <returns>The command.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="widths"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A width is negative or not finite.</exception>
    public static FuelCommand FromPulseWidths(IEnumerable<Duration> widths)
    {
        ArgumentNullException.ThrowIfNull(widths);
        ImmutableArray<Duration> given = [.. widths];
        foreach (Duration width in given)
        {
            Guard.NotNegative(width, width.InSi(), nameof(widths));
        }

        return new(CommandKind.PulseWidths, null, given);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Kind}");
}
