using FuelMath.Formulas;
using FuelMath.Workbooks;

namespace FuelMath.Tests.Refusals;

/// <summary>Code that builds on the library refuses in the same family: words of its own, the same data.</summary>
public sealed class OwnRefusalTests
{
    [Fact]
    public void AnArgument_CarriesWhatWasGivenAndAllowed()
    {
        var refused = new RefusedArgumentException(
            RefusalCode.NotOneOf,
            "Must be left or right; it was 'up'.",
            "side",
            "up",
            ["left", "right"]
        );

        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal((RefusalKind.Argument, RefusalCode.NotOneOf), (refusal.Kind, refusal.Code));
        Assert.Equal(("side", "up"), (refusal.What, refusal.Given));
        Assert.Equal<string>(["left", "right"], refusal.Allowed);
        Assert.Equal("side", refused.ParamName);
        Assert.Equal("Must be left or right; it was 'up'.", refusal.Message);
        Assert.StartsWith(refusal.Message, refused.Message, StringComparison.Ordinal);
        Assert.Null(refusal.Part);
        Assert.Null(refusal.Value);
    }

    [Fact]
    public void AnArgument_WithoutMore_CarriesNone()
    {
        Refusal refusal = Refusal.Of(new RefusedArgumentException(RefusalCode.Missing, "Must be there.", "hose"))!;

        Assert.Equal((RefusalCode.Missing, "hose", (string?)null), (refusal.Code, refusal.What, refusal.Given));
        Assert.Empty(refusal.Allowed);
    }

    [Theory]
    [InlineData(1.0, 6.0)]
    [InlineData(1.0, null)]
    [InlineData(null, 6.0)]
    [InlineData(null, null)]
    public void AValue_CarriesItsLimits(double? minimum, double? maximum)
    {
        var refused = new RefusedValueException(
            RefusalCode.OutOfRange,
            "Must be from 1 to 6; it was 7.5.",
            nameof(minimum),
            7.5,
            minimum,
            maximum
        );

        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal((RefusalKind.Value, RefusalCode.OutOfRange), (refusal.Kind, refusal.Code));
        Assert.Equal((nameof(minimum), 7.5, ""), (refusal.What, refusal.Value, refusal.Unit));
        Assert.Equal((minimum, maximum), (refusal.Minimum, refusal.Maximum));
        Assert.False(refusal.IsMinimumExcluded || refusal.IsMaximumExcluded);
        Assert.Equal((nameof(minimum), 7.5), (refused.ParamName, refused.ActualValue));
        Assert.Equal("Must be from 1 to 6; it was 7.5. (Parameter 'minimum')", refused.Message);
    }

    [Fact]
    public void AnOperation_CarriesItsCode()
    {
        Refusal refusal = Refusal.Of(new RefusedOperationException(RefusalCode.TankEmpty, "The can is empty."))!;

        Assert.Equal((RefusalKind.Operation, RefusalCode.TankEmpty), (refusal.Kind, refusal.Code));
        Assert.Equal("The can is empty.", refusal.Message);
    }

    [Fact]
    public void NoRefusal_IsWithoutWords()
    {
        Assert.Throws<ArgumentException>(() => new RefusedArgumentException(RefusalCode.Missing, " ", "hose"));
        Assert.Throws<ArgumentException>(() =>
            new RefusedArgumentException(RefusalCode.Missing, "Must be there.", " ")
        );
        Assert.Throws<ArgumentException>(() => new RefusedOperationException(RefusalCode.TankEmpty, ""));
        Assert.Throws<ArgumentNullException>(() => new RefusedOperationException(RefusalCode.TankEmpty, null!));
        Assert.Throws<ArgumentException>(() =>
            new RefusedValueException(RefusalCode.OutOfRange, "", "digits", 7, null, null)
        );
        Assert.Throws<ArgumentNullException>(() =>
            new RefusedValueException(RefusalCode.OutOfRange, "Must be less.", null!, 7, null, null)
        );
        Assert.Throws<ArgumentNullException>(() =>
            new RefusedArgumentException(RefusalCode.NotOneOf, "Must be left.", "side", null!, [])
        );
        Assert.Throws<ArgumentNullException>(() =>
            new RefusedArgumentException(RefusalCode.NotOneOf, "Must be left.", "side", "up", null!)
        );
    }

    [Fact]
    public void AWorkbook_RefusesAsData()
    {
        Refusal refusal = Refusal.Of(
            Assert.Throws<RefusedArgumentException>(() => Workbook.FromFormulas([], FormulaInfo.CallUnits.Si))
        )!;
        Assert.Equal((RefusalCode.Count, "formulas"), (refusal.Code, refusal.What));

        refusal = Refusal.Of(
            Assert.Throws<RefusedArgumentException>(() =>
                Workbook.FromTopic((FormulaInfo.FormulaTopic)99, FormulaInfo.CallUnits.Si)
            )
        )!;
        Assert.Equal((RefusalCode.NotOneOf, "topic", "99"), (refusal.Code, refusal.What, refusal.Given));
        Assert.Contains("Injectors", refusal.Allowed);

        refusal = Refusal.Of(Assert.Throws<RefusedValueException>(() => Cell.Of(double.NaN, CellLook.Plain)))!;
        Assert.Equal((RefusalCode.NotFinite, "number"), (refusal.Code, refusal.What));
        Assert.Equal(double.NaN, refusal.Value);
    }
}
