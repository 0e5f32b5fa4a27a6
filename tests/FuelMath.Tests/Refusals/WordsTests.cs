using UnitsNet;

namespace FuelMath.Tests.Refusals;

/// <summary>What tests hold refusals by finds no number inside another one.</summary>
public sealed class WordsTests
{
    private static readonly Exception TooMuch = Record.Exception(() => Workshop(Pressure.FromKilopascals(300_000_000)));

    [Fact]
    public void Says_ANumberInsideAnother_IsNotFound()
    {
        Assert.Contains("300000000", German.Of(Refusal.Of(TooMuch)!), StringComparison.Ordinal);
        Assert.NotEmpty(German.Lacks(Refusal.Of(TooMuch)!, "300 kPa"));
    }

    [Fact]
    public void Says_TheNumberItself_IsFound() => Assert.Empty(German.Lacks(Refusal.Of(TooMuch)!, "300000000 kPa"));

    private static void Workshop(Pressure bore) => _ = new AbsolutePressure(-bore);
}
