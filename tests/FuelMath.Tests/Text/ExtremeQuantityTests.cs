using System.Reflection;

namespace FuelMath.Tests.Text;

/// <summary>Every kind and unit with numbers at the ends of what a number can be: read to its digits, or refused.</summary>
public sealed class ExtremeQuantityTests
{
    private static readonly string[] Numbers =
    [
        "0",
        "-0",
        "1e-320",
        "1e-300",
        "1e-100",
        "1e-29",
        "1e-28",
        "1.23456789012345e-20",
        "1e-12",
        "0.123456789012345678",
        "1e12",
        "1e15",
        "1e16",
        "7e28",
        "1e29",
        "1e100",
        "1e300",
        "1.7976931348623157e308",
        "-1e29",
        "-1e-29",
    ];

    public static TheoryData<string> Kinds
    {
        get
        {
            var names = new TheoryData<string>();
            foreach (PropertyInfo kind in All())
            {
                names.Add(kind.Name);
            }

            return names;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Parse_AnyNumberInAnyUnit_IsReadToItsDigitsOrRefused(string name)
    {
        object kind = All().Single(k => k.Name == name).GetValue(null)!;
        typeof(ExtremeQuantityTests)
            .GetMethod(nameof(Check), BindingFlags.NonPublic | BindingFlags.Static)!
            .MakeGenericMethod(kind.GetType().GetGenericArguments()[0])
            .Invoke(null, BindingFlags.DoNotWrapExceptions, null, [kind], null);
    }

    [Theory]
    [InlineData("1e29 W")]
    [InlineData("1e-29 W")]
    [InlineData("1e16 W")]
    [InlineData("-1e16 W")]
    [InlineData("1e300 kW")]
    public void Parse_PowerThatIsNotHeld_IsRefused(string text)
    {
        Assert.False(QuantityKinds.Power.TryParse(text, null, out _));
        Assert.False(QuantityKinds.Power.TryParseLenient(text, null, out _, out QuantityTextException? problem));
        Assert.Equal(QuantityTextException.TextProblem.NotRepresentable, problem!.Problem);
    }

    private static void Check<T>(QuantityKind<T> kind)
        where T : struct
    {
        foreach (string number in Numbers)
        {
            foreach (string unit in kind.Units)
            {
                string text = $"{number} {unit}";
                bool isRead = kind.TryParse(text, null, out T value);
                Assert.Equal(isRead, kind.TryParseLenient(text, null, out _, out _));
                if (isRead)
                {
                    double written = double.Parse(number, System.Globalization.CultureInfo.InvariantCulture);
                    string back = kind.Format(value, unit, null);
                    double again = double.Parse(
                        back[..back.IndexOf(' ', StringComparison.Ordinal)],
                        System.Globalization.CultureInfo.InvariantCulture
                    );

                    // A number below the normal ones has fewer digits by itself.
                    if (
                        back.EndsWith($" {unit}", StringComparison.Ordinal)
                        && !kind.Kind.Find(unit)!.HasOffset
                        && Math.Abs(written) is 0 or > 1e-290
                    )
                    {
                        Assert.Equal(written, again, Math.Abs(written) * 1e-14);
                    }

                    Assert.True(kind.TryParse(back, null, out T same), back);
                    Assert.Equal(back, kind.Format(same, unit, null));
                }
            }
        }
    }

    private static IEnumerable<PropertyInfo> All() =>
        new[] { typeof(QuantityKinds), typeof(PressureKinds) }
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
            .Where(p => p.PropertyType.IsGenericType);
}
