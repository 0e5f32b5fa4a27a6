namespace FuelMath.Tests.Internal;

/// <summary>Names stay in their line of a report.</summary>
public sealed class NameTests
{
    [Theory]
    [InlineData("rail\nverdict: holds")]
    [InlineData("rail\r")]
    [InlineData("\u001b[2Jrail")]
    [InlineData("rail\0")]
    [InlineData("rail\u2028x")]
    [InlineData("rail\u202ex")]
    [InlineData("rail\u2067x")]
    [InlineData("rail\u0085x")]
    public void Name_WithControlCharacters_IsRefused(string name)
    {
        ArgumentException problem = Assert.Throws<ArgumentException>(
            nameof(name),
            () => Guard.Name(name, nameof(name))
        );
        Assert.DoesNotContain(problem.Message, c => char.IsControl(c) || c is '\u2028' or '\u202e' or '\u2067');
        Assert.Throws<ArgumentException>("key", () => new DataSource(name, "place"));
        Assert.Throws<ArgumentException>("locator", () => new DataSource("Definition", name));
        Assert.Throws<ArgumentException>(
            nameof(name),
            () => HoseEnds.Straight(name, UnitsNet.Length.FromMillimeters(8), UnitsNet.Length.FromMillimeters(8))
        );
    }

    [Theory]
    [InlineData("Schlauch für Öl, 8 mm")]
    [InlineData("رجاع")]
    [InlineData("réservoir d’essence 🚗")]
    public void Name_OfAnyLanguage_IsTaken(string name) => Assert.Equal(name, Guard.Name(name, nameof(name)));
}
