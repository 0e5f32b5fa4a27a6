using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

[assembly: FuelMath.Tests.DrawnCases]

namespace FuelMath.Tests;

/// <summary>
/// From where properties draw their cases, and how many. Each run draws fresh ones, so that they find what nobody thought
/// of. The gate draws the same ones each time (<c>FUELMATH_SEED</c>), so that what passed passes again; a long hunt draws
/// many (<c>FUELMATH_CASES</c>), where a property does not say its own number.
/// </summary>
[AttributeUsage(AttributeTargets.Assembly)]
internal sealed class DrawnCasesAttribute : PropertiesAttribute
{
    /// <summary>The odd step of the generator; any would do.</summary>
    private const ulong Step = 0x9E3779B97F4A7C15;

    public DrawnCasesAttribute()
    {
        if (Seed is { } seed)
        {
            Replay = string.Create(CultureInfo.InvariantCulture, $"{seed},{Step}");
        }

        if (Cases is { } cases)
        {
            MaxTest = cases;
        }
    }

    /// <summary>The same for properties that a test checks by itself.</summary>
    internal static Config Settings
    {
        get
        {
            Config settings = Config.QuickThrowOnFailure.WithMaxTest(Cases ?? Config.Quick.MaxTest);
            return Seed is { } seed ? settings.WithReplay(seed, Step) : settings;
        }
    }

    internal static ulong? Seed =>
        Environment.GetEnvironmentVariable("FUELMATH_SEED") is { Length: > 0 } seed
            ? ulong.Parse(seed, CultureInfo.InvariantCulture)
            : null;

    internal static int? Cases =>
        Environment.GetEnvironmentVariable("FUELMATH_CASES") is { Length: > 0 } cases
            ? int.Parse(cases, CultureInfo.InvariantCulture)
            : null;
}
