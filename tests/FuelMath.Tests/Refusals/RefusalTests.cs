using FsCheck.Xunit;
using FuelMath.Formulas;
using FuelMath.Tests.Documents;
using FuelMath.Tests.Systems;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Refusals;

/// <summary>What a program reads of a refusal: part, place, value, range and unit, without the words.</summary>
public sealed class RefusalTests
{
    [Fact]
    public void Of_AValueOfAPart_NamesPartParameterAndNumbers()
    {
        Hose hose = Workshop.Hose("feed", 3, 8);
        Density density = Density.FromGramsPerCubicCentimeter(-0.74);

        RefusedValueException refused = Thrown<RefusedValueException>(() =>
            hose.LossAt(VolumeFlow.FromLitersPerHour(200), density, DynamicViscosity.FromMillipascalSeconds(0.5))
        );

        Held(refused, RefusalKind.Value, "density", "feed", -0.74, 0, null, "g/cm³");
        Assert.True(refused.Refusal.IsMinimumExcluded);
        Assert.Equal("density", refused.ParamName);
        Assert.Equal(density, refused.ActualValue);
    }

    [Fact]
    public void Of_ARange_NamesBothEndsInTheCallersUnit()
    {
        RefusedValueException refused = Thrown<RefusedValueException>(() =>
            new Hose(
                "thin",
                Length.FromMeters(1),
                Length.FromInches(0.3),
                Length.FromInches(0.1),
                default,
                Workshop.Invented
            )
        );

        Held(refused, RefusalKind.Value, "roughness", "thin", 0.1, 0, 0.015, "in");
        Assert.False(refused.Refusal.IsMinimumExcluded);
    }

    [Fact]
    public void Of_ATable_NamesAxisAndRange()
    {
        PumpCurve curve = Workshop.Pump(1).Curves[0];

        OutsideTableException refused = Thrown<OutsideTableException>(() => curve.FlowAt(Pressure.FromBars(20)));

        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal((RefusalKind.Table, 20.0, "bar"), (refusal.Kind, refusal.Value, refusal.Unit));
        Assert.Equal("pressureRise", refused.ParamName);
        Assert.Equal(20.0, refused.ActualValue);
        Assert.True(refusal.Maximum < 20);
    }

    [Fact]
    public void Of_APumpsVoltage_NamesThePump()
    {
        Pump pump = Workshop.Pump(1);

        OutsideTableException refused = Thrown<OutsideTableException>(() =>
            pump.CurveAt(ElectricPotential.FromVolts(40))
        );

        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal((pump.Name, "voltage", 40.0, "V"), (refusal.Part, refusal.What, refusal.Value, refusal.Unit));
    }

    [Fact]
    public void Of_NoSolution_NamesTheNode()
    {
        var refused = new NoSolutionException(
            RefusalCode.NoFuelPasses,
            $"'{"car":part}' at '{"peak":point}'",
            "no fuel can pass.",
            "rail",
            12,
            3
        );

        Refusal refusal = Refusal.Of(refused)!;

        Assert.Equal((RefusalKind.Solution, "car", "rail"), (refusal.Kind, refusal.Part, refusal.Node));
        Assert.Null(refusal.Value);
    }

    [Fact]
    public void Of_AnUnknownProperty_NamesIt()
    {
        Refusal refusal = Refusal.Of(
            new UnknownPropertyException($"Viscosity of '{"blend":part}'", "nobody gave it.", "Viscosity")
        )!;

        Assert.Equal(
            (RefusalKind.Property, RefusalCode.PropertyUnknown, "Viscosity", "blend"),
            (refusal.Kind, refusal.Code, refusal.What, refusal.Part)
        );
    }

    [Fact]
    public void Of_AFormula_NamesArgumentAndRange()
    {
        FormulaInfo formula = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

        FormulaRefusedException refused = Thrown<FormulaRefusedException>(() =>
            formula.Calculate(FormulaInfo.CallUnits.Customary, -800, 300, 740, 400, 740)
        );

        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal(
            (RefusalKind.Formula, "referenceVolumeFlow", -800.0, "cm3/min"),
            (refusal.Kind, refusal.What, refusal.Value, refusal.Unit)
        );
    }

    [Fact]
    public void Of_AText_NamesTheKindOfQuantity()
    {
        QuantityTextException refused = Thrown<QuantityTextException>(() =>
            QuantityKinds.VolumeFlow.Parse("much", null)
        );

        Assert.Equal((RefusalKind.Text, refused.Kind), (Refusal.Of(refused)!.Kind, Refusal.Of(refused)!.What));
    }

    /// <summary>A value in a document: the place, what the part says of it, and the numbers.</summary>
    [Theory]
    [InlineData("\"bore\": \"8 mm\"", "\"bore\": \"-8 mm\"", "bore", "it was -8 mm.")]
    [InlineData("\"bore\": \"8 mm\"", "\"bore\": \"0 in\"", "bore", "it was 0 in.")]
    [InlineData("\"oilPerFuel\": \"2 %\"", "\"oilPerFuel\": \"200 %\"", "ratio", "from 0 % to 100 %; it was 200 %.")]
    public void Of_ADocument_NamesThePlaceAndEchoesWhatWasWritten(string old, string changed, string what, string echo)
    {
        string name = TestFiles.System("time-trial-car").Contains(old, StringComparison.Ordinal)
            ? "time-trial-car"
            : "training-stand";
        string text = TestFiles.System(name).Replace(old, changed, StringComparison.Ordinal);

        DocumentException refused = Thrown<DocumentException>(() => SystemDocument.Read(text));

        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal((RefusalKind.Document, refused.Path), (refusal.Kind, refusal.DocumentPath));
        Assert.NotNull(refusal.Value);
        Assert.NotEmpty(what);
        Assert.Contains(echo, refused.Allowed, StringComparison.Ordinal);
    }

    /// <summary>
    /// Whatever the unit and the size, the message echoes the number, never a zero for one that is none. A flow in m³/s, which
    /// no gauge shows, is echoed in L/h.
    /// </summary>
    [Property]
    public void Message_OfAnySize_EchoesTheNumber(byte power, ushort digits)
    {
        double number = -(1 + (digits / 65536.0)) * Math.Pow(10, (power % 24) - 12);
        Assert.All(
            new (VolumeFlow Flow, double Shown, string Unit)[]
            {
                (VolumeFlow.From(number, VolumeFlowUnit.LiterPerHour), number, "L/h"),
                (VolumeFlow.From(number, VolumeFlowUnit.UsGallonPerHour), number, "gal (U.S.)/h"),
                (VolumeFlow.From(number, VolumeFlowUnit.CubicMeterPerSecond), 3.6e6 * number, "L/h"),
            },
            given =>
            {
                RefusedValueException refused = Thrown<RefusedValueException>(() =>
                    Guard.Positive(given.Flow, given.Flow.InSi())
                );
                string[] words = refused.Message.Split("it was ")[1].Split(' ');
                double echo = double.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture);
                Close.Within(1e-5, given.Shown, echo);
                Close.Within(1e-12, given.Shown, refused.Refusal.Value!.Value);
                Assert.Equal((given.Unit, given.Flow), (refused.Refusal.Unit, refused.ActualValue));
            }
        );
    }

    /// <summary>A value barely outside shows the digit that tells.</summary>
    [Fact]
    public void Message_BarelyOutside_ShowsTheDigitThatTells()
    {
        RefusedValueException refused = Thrown<RefusedValueException>(() =>
            Guard.InRange(Pressure.FromKilopascals(800.00001), 800_000.01, 400_000, 800_000, SiUnits.Pressure, "rail")
        );

        Words.Says("400 kPa, 800 kPa, 800.00001 kPa", refused);
    }

    [Fact]
    public void Of_WhatIsNoneOfOurs_IsNull()
    {
        Assert.Null(Refusal.Of(new InvalidOperationException("another")));
        Assert.Throws<ArgumentNullException>("exception", () => Refusal.Of(null!));
    }

    private static void Held(
        Exception refused,
        RefusalKind kind,
        string what,
        string part,
        double value,
        double? minimum,
        double? maximum,
        string unit
    )
    {
        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal((kind, what, part, unit), (refusal.Kind, refusal.What, refusal.Part, refusal.Unit));
        Close.Within(1e-12, value, refusal.Value!.Value);
        Assert.Equal(minimum, refusal.Minimum);
        Assert.Equal(maximum is null, refusal.Maximum is null);
        Close.WithinOf(1, 1e-12, maximum ?? 0, refusal.Maximum ?? 0);
        Assert.Equal(refused.Message.Split(" (Parameter")[0], refusal.Message);
    }

    private static T Thrown<T>(Func<object?> code)
        where T : Exception => Xunit.Assert.Throws<T>(code);
}
