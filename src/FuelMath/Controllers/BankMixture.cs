using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What one sensor sees behind its chambers, and what the controller makes of it.</summary>
/// <remarks>
/// The sensor sees total air over total fuel: with equal air the harmonic mean of the chambers' lambdas. It hides the
/// leanest of them.
/// </remarks>
public sealed class BankMixture
{
    internal BankMixture(
        int bank,
        ImmutableArray<int> chambers,
        Lambda? lambda,
        Lambda? lambdaIfOilUnburned,
        Ratio correction,
        Ratio? remaining,
        bool isAtLimit,
        ImmutableArray<Duration> pulseWidths
    )
    {
        (Bank, Chambers, Lambda, Correction) = (bank, chambers, lambda, correction);
        LambdaIfOilUnburned = lambdaIfOilUnburned;
        (RemainingCorrection, IsAtLimit, PulseWidths) = (remaining, isAtLimit, pulseWidths);
    }

    /// <summary>The number of the bank.</summary>
    public int Bank { get; }

    /// <summary>Its chambers, counted from 1.</summary>
    public ImmutableArray<int> Chambers { get; }

    /// <summary>Total air over total fuel relative to stoichiometric; null without fuel.</summary>
    public Lambda? Lambda { get; }

    /// <summary>The same if none of a premix's oil burns, the lean bound; null without fuel.</summary>
    public Lambda? LambdaIfOilUnburned { get; }

    /// <summary>The factor on the fuel that the controller applied.</summary>
    public Ratio Correction { get; }

    /// <summary>
    /// The factor on the fuel that is missing beyond the correction applied: lambda over the one asked for. 100 % when the
    /// mixture is met; null without fuel.
    /// </summary>
    public Ratio? RemainingCorrection { get; }

    /// <summary>Whether the controller ran into its limit.</summary>
    public bool IsAtLimit { get; }

    /// <summary>The width given to the injectors of each stage; zero for one that rests.</summary>
    public ImmutableArray<Duration> PulseWidths { get; }
}
