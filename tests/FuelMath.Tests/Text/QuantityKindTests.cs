using System.Globalization;
using UnitsNet;

namespace FuelMath.Tests.Text;

public sealed class QuantityKindTests
{
    /// <summary>The signs that German text uses; made by hand since the tests run without culture data.</summary>
    private static readonly NumberFormatInfo German = new()
    {
        NumberDecimalSeparator = ",",
        NumberGroupSeparator = ".",
    };

    [Theory]
    [InlineData("3.0 bar", 3e5)]
    [InlineData("3bar", 3e5)]
    [InlineData("  3.0   bar ", 3e5)]
    [InlineData("-20 kPa", -2e4)]
    [InlineData("+1.5e2 kPa", 1.5e5)]
    [InlineData("1E-3MPa", 1e3)]
    [InlineData("1.5e+2 kPa", 1.5e5)]
    [InlineData("2E+2kPa", 2e5)]
    [InlineData(".5 bar", 5e4)]
    [InlineData("3\u00a0bar", 3e5)]
    public void Parse_PressureDifference_GivesPascals(string text, double pascals) =>
        Assert.Equal(pascals, QuantityKinds.PressureDifference.Parse(text, null).InSi());

    [Fact]
    public void Parse_EachKindOfTheDocs_GivesSi()
    {
        Assert.Equal(980 / 6e7, QuantityKinds.VolumeFlow.Parse("980 cm3/min", null).InSi());
        Assert.Equal(980 / 6e7, QuantityKinds.VolumeFlow.Parse("980 cm³/min", null).InSi());
        Assert.Equal(1.5, QuantityKinds.Length.Parse("1.5 m", null).InSi());
        Assert.Equal(0.0125, QuantityKinds.Length.Parse("12.5 mm", null).InSi());
        Assert.Equal(13.5, QuantityKinds.Voltage.Parse("13.5 V", null).InSi());
        Assert.Equal(0.35, QuantityKinds.Resistance.Parse("0.35 ohm", null).InSi());
        Assert.Equal(740, QuantityKinds.Density.Parse("740 kg/m3", null).InSi());
        Assert.Equal(0.52 / 1e3, QuantityKinds.DynamicViscosity.Parse("0.52 mPa s", null).InSi());
        Assert.Equal(0.7 / 1e6, QuantityKinds.KinematicViscosity.Parse("0.7 mm2/s", null).InSi());
        Assert.Equal(298.15, QuantityKinds.Temperature.Parse("25 degC", null).InSi());
        Assert.Equal(298.15, QuantityKinds.Temperature.Parse("25 °C", null).InSi());
        Assert.Equal(300, QuantityKinds.Temperature.Parse("300 K", null).InSi());
        Close.Within(1e-15, 6500 * Math.PI / 30, QuantityKinds.RotationalSpeed.Parse("6500 rpm", null).InSi());
        Assert.Equal(0.85, QuantityKinds.Ratio.Parse("85 %", null).InSi());
        Assert.Equal(1.2 / 1e3, QuantityKinds.Duration.Parse("1.2 ms", null).InSi());
        Assert.Equal(43.4e6, QuantityKinds.SpecificEnergy.Parse("43.4 MJ/kg", null).InSi());
        Assert.Equal(3e5, PressureKinds.Gauge.Parse("3.0 bar gauge", null).AboveAmbient.InSi());
        Assert.Equal(1e5, PressureKinds.Absolute.Parse("100 kPa absolute", null).AboveVacuum.InSi());
    }

    [Fact]
    public void Parse_GermanProvider_ReadsTheCommaAsDecimalSeparator() =>
        Assert.Equal(3.5e5, QuantityKinds.PressureDifference.Parse("3,5 bar", German).InSi());

    [Theory]
    [InlineData("3.5 bar")]
    [InlineData("1.000,5 bar")]
    public void Parse_GermanProvider_RefusesItsGroupSeparator(string text)
    {
        var error = Assert.Throws<QuantityTextException>(() => QuantityKinds.PressureDifference.Parse(text, German));
        Assert.Equal(
            $"The number must be digits with ',' as decimal separator, without group separators or spaces; it was \"{text}\".",
            error.Message
        );
    }

    [Fact]
    public void Parse_CurrentCultureIsGerman_StillReadsInvariant()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat = German;
        try
        {
            CultureInfo.CurrentCulture = culture;
            Assert.Equal(3.5e5, QuantityKinds.PressureDifference.Parse("3.5 bar", null).InSi());
            Assert.Equal("3.5 bar", QuantityKinds.PressureDifference.Format(Pressure.FromBars(3.5), "bar", null));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("3,5 bar")] // A library that accepts group separators reads 35 bar here.
    [InlineData("1,000 kPa")]
    [InlineData("3 000 kPa")]
    [InlineData("3.0.1 bar")]
    [InlineData("--3 bar")]
    [InlineData("3- bar")]
    [InlineData("(3) bar")]
    [InlineData("$3 bar")]
    [InlineData("3\0 bar")]
    [InlineData("3'000 bar")]
    [InlineData(". bar")]
    [InlineData("- bar")]
    public void Parse_NumberNotPlain_SaysHowItMustBeWritten(string text)
    {
        QuantityTextException error = Refused(QuantityKinds.PressureDifference, text);
        Assert.Equal(QuantityTextException.TextProblem.BadNumber, error.Problem);
        Assert.Equal(
            $"The number must be digits with '.' as decimal separator, without group separators or spaces; it was \"{text.Trim().Replace("\0", "\\u0000", StringComparison.Ordinal)}\".",
            error.Message
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("bar")]
    [InlineData("e3 bar")]
    [InlineData("%")]
    public void Parse_NoNumber_SaysWhatMustCome(string text)
    {
        QuantityTextException error = Refused(QuantityKinds.PressureDifference, text);
        Assert.Equal(QuantityTextException.TextProblem.MissingNumber, error.Problem);
        Assert.Equal(
            "Must be a number followed by a unit of pressure difference (Pa, hPa, kPa, MPa, mbar, bar, psi); "
                + $"it was \"{text.Trim().Replace("\0", "\\u0000", StringComparison.Ordinal)}\".",
            error.Message
        );
    }

    [Theory]
    [InlineData("3.0")]
    [InlineData("3e2")]
    public void Parse_NoUnit_ListsTheUnits(string text)
    {
        QuantityTextException error = Refused(QuantityKinds.Voltage, text);
        Assert.Equal(QuantityTextException.TextProblem.MissingUnit, error.Problem);
        Assert.Equal($"A unit of voltage must follow the number (V, mV); it was \"{text}\".", error.Message);
    }

    [Theory]
    [InlineData("3 furlong", "furlong")]
    [InlineData("3 Bar", "Bar")]
    [InlineData("3 e2 bar", "e2 bar")]
    [InlineData("3 m m", "m m")]
    [InlineData("3e bar", "e bar")]
    public void Parse_UnknownUnit_ListsTheUnits(string text, string unit)
    {
        QuantityTextException error = Refused(QuantityKinds.Length, text);
        Assert.Equal(QuantityTextException.TextProblem.UnknownUnit, error.Problem);
        Assert.Equal($"\"{unit}\" is not a known unit; allowed for length are m, cm, mm, um, in, ft.", error.Message);
    }

    [Fact]
    public void Parse_UnitOfAnotherKind_SaysWhichKind()
    {
        QuantityTextException error = Refused(QuantityKinds.VolumeFlow, "980 V");
        Assert.Equal(QuantityTextException.TextProblem.WrongKind, error.Problem);
        Assert.Equal("volume flow", error.Kind);
        Assert.Equal(
            "\"V\" is a unit of voltage; allowed for volume flow are m3/s, L/s, L/min, L/h, cm3/s, cm3/min, "
                + "US gal/min, US gal/h.",
            error.Message
        );
    }

    [Fact]
    public void Parse_PressureWithoutReference_IsADifferenceOnly()
    {
        Assert.Equal(QuantityTextException.TextProblem.WrongKind, Refused(PressureKinds.Gauge, "3 bar").Problem);
        Assert.Equal(
            QuantityTextException.TextProblem.WrongKind,
            Refused(PressureKinds.Absolute, "3 bar gauge").Problem
        );
        Assert.Equal(
            "\"bar absolute\" is a unit of absolute pressure; allowed for pressure difference are Pa, hPa, kPa, MPa, "
                + "mbar, bar, psi.",
            Refused(QuantityKinds.PressureDifference, "3 bar absolute").Message
        );
    }

    [Theory]
    [InlineData("NaN bar")]
    [InlineData("Infinity bar")]
    [InlineData("-Infinity bar")]
    [InlineData("inf bar")]
    [InlineData("1e999 bar")]
    [InlineData("1e306 bar")] // Finite as written, not in pascals.
    [InlineData("1e-999 bar")]
    public void Parse_NotFiniteOrVanishing_SaysSo(string text)
    {
        QuantityTextException error = Refused(QuantityKinds.PressureDifference, text);
        Assert.Equal(QuantityTextException.TextProblem.NotRepresentable, error.Problem);
        Assert.Equal(
            "The number must be finite, and neither too large nor too small for pressure difference; "
                + $"it was \"{text}\".",
            error.Message
        );
    }

    [Fact]
    public void Parse_NumberVanishesInSi_IsRefused() =>
        Assert.Equal(
            QuantityTextException.TextProblem.NotRepresentable,
            Refused(QuantityKinds.Volume, "1e-320 mm3").Problem
        );

    [Fact]
    public void Parse_BelowAbsoluteZero_SaysTheLeast()
    {
        Assert.Equal(
            "Must be at least 0 K; it was \"-300 degC\".",
            Refused(QuantityKinds.Temperature, "-300 degC").Message
        );
        Assert.Equal(
            "Must be at least 0 Pa absolute; it was \"-1 kPa absolute\".",
            Refused(PressureKinds.Absolute, "-1 kPa absolute").Message
        );
        Assert.Equal(0, QuantityKinds.Temperature.Parse("-273.15 degC", null).InSi());
    }

    [Fact]
    public void Parse_TooLong_SaysTheMost()
    {
        QuantityTextException error = Refused(QuantityKinds.Voltage, new string('1', 99) + " V");
        Assert.Equal(QuantityTextException.TextProblem.TooLong, error.Problem);
        Assert.Equal("Must be at most 100 characters long; it had 101.", error.Message);
    }

    [Fact]
    public void TryParse_BadText_GivesFalseAndTheDefault()
    {
        Assert.False(QuantityKinds.Voltage.TryParse("3,5 V", null, out ElectricPotential value));
        Assert.Equal(0, value.InSi());
        Assert.True(QuantityKinds.Voltage.TryParse("3.5 V", null, out value));
        Assert.Equal(3.5, value.InSi());
    }

    [Fact]
    public void Format_NiceNumbers_StayNice()
    {
        Assert.Equal("3.5 bar", QuantityKinds.PressureDifference.Format(Pressure.FromBars(3.5), "bar", null));
        Assert.Equal("3,5 bar", QuantityKinds.PressureDifference.Format(Pressure.FromBars(3.5), "bar", German));
        Assert.Equal("85 %", QuantityKinds.Ratio.Format(SiUnits.Ratio(0.85), "%", null));
        Assert.Equal("7 %", QuantityKinds.Ratio.Format(SiUnits.Ratio(0.07), "%", null));
        Assert.Equal("25 degC", QuantityKinds.Temperature.Format(SiUnits.Temperature(298.15), "degC", null));
        RotationalSpeed speed = QuantityKinds.RotationalSpeed.Parse("6500 rpm", null);
        Assert.Equal("6500 rpm", QuantityKinds.RotationalSpeed.Format(speed, "rpm", null));
        Assert.Equal("1.23 ms", QuantityKinds.Duration.Format(SiUnits.Duration(0.0012345), "ms", "0.00", null));
        Assert.Equal("0 bar", QuantityKinds.PressureDifference.Format(SiUnits.Pressure(-0.0), "bar", null));
    }

    [Fact]
    public void Format_UnitOfAnotherKind_ListsTheUnits()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            QuantityKinds.Voltage.Format(SiUnits.ElectricPotential(1), "bar", null)
        );
        Assert.StartsWith(
            "Must be a unit of voltage (V, mV); it was \"bar\".",
            error.Message,
            StringComparison.Ordinal
        );
        Assert.Equal("unit", error.ParamName);
    }

    [Fact]
    public void Units_ListTheSymbolsWithTheSiUnitFirst()
    {
        Assert.Equal(["V", "mV"], QuantityKinds.Voltage.Units.ToArray());
        Assert.Equal("voltage", QuantityKinds.Voltage.Name);
    }

    private static QuantityTextException Refused<T>(QuantityKind<T> kind, string text)
        where T : struct
    {
        Assert.False(kind.TryParse(text, null, out _));
        return Assert.Throws<QuantityTextException>(() => kind.Parse(text, null));
    }
}
