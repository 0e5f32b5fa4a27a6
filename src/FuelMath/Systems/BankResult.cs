using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What one lambda sensor sees at an operating point, and what the controller makes of it.</summary>
/// <remarks>
/// It sees total air over total fuel of its chambers: with equal air the harmonic mean of their lambdas, which hides the
/// leanest of them.
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class BankResult
{
    internal BankResult(
        int bank,
        ImmutableArray<int> chambers,
        Lambda? lambda,
        Lambda? lambdaIfOilUnburned,
        Ratio? correction,
        ImmutableArray<Duration> pulseWidths
    ) =>
        (Bank, Chambers, Lambda, LambdaIfOilUnburned, Correction, PulseWidths) = (
            bank,
            chambers,
            lambda,
            lambdaIfOilUnburned,
            correction,
            pulseWidths
        );

    /// <summary>The number of the bank, counted from 1.</summary>
    public int Bank { get; }

    /// <summary>Its chambers, counted from 1.</summary>
    public ImmutableArray<int> Chambers { get; }

    /// <summary>Total air over total fuel relative to stoichiometric; null without fuel.</summary>
    public Lambda? Lambda { get; }

    /// <summary>The same if none of a premix's oil burns, the lean bound; null without fuel.</summary>
    public Lambda? LambdaIfOilUnburned { get; }

    /// <summary>
    /// The factor on the fuel that the controller needs to hold the lambda, by what it was told of its injectors: what its
    /// correction will show. Null where no sensor holds a lambda, and where what it was told does not reach the point.
    /// </summary>
    public Ratio? Correction { get; }

    /// <summary>The width given to the bank's injectors of each stage; zero for a stage that rests.</summary>
    public ImmutableArray<Duration> PulseWidths { get; }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"bank {Bank}: {(Lambda is { } lambda ? lambda.ToString() : "no fuel")}");
}
