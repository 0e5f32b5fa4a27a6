using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>How a tank is brought to a content: what goes in, step by step, and the tank afterwards.</summary>
public sealed class TankFill
{
    private readonly Func<Traced> volume;

    internal TankFill(ImmutableArray<TankFillStep> steps, Func<Traced> volume)
    {
        Steps = steps;
        this.volume = volume;
    }

    /// <summary>What goes in, in order.</summary>
    public ImmutableArray<TankFillStep> Steps { get; }

    /// <summary>The tank afterwards.</summary>
    public Tank Result => Steps[^1].After;

    /// <summary>How the volume of the first step was made, at 15 °C: formula, numbers put in, result, source.</summary>
    /// <returns>The working.</returns>
    public Working ToWorking() => volume().ToWorking();
}
