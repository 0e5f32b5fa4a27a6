using System.Globalization;
using System.Runtime.CompilerServices;

namespace FuelMath.Tests;

/// <summary>Runs the tests in the culture that FUELMATH_CULTURE names; no result and no text may hang on it.</summary>
internal static class TestCulture
{
#pragma warning disable CA2255 // Before any test, on all threads.
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void Set()
    {
        if (Environment.GetEnvironmentVariable("FUELMATH_CULTURE") is { Length: > 0 } name)
        {
            var culture = CultureInfo.GetCultureInfo(name, predefinedOnly: true);
            CultureInfo.DefaultThreadCurrentCulture = culture;
            CultureInfo.DefaultThreadCurrentUICulture = culture;
            CultureInfo.CurrentCulture = culture;
            CultureInfo.CurrentUICulture = culture;
        }
    }
}
