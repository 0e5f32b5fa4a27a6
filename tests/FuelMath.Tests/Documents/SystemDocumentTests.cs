using System.Globalization;
using System.Text;

namespace FuelMath.Tests.Documents;

public sealed class SystemDocumentTests
{
    private static readonly DataSource Bench = new("Workshop-class", "bench");

    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    [InlineData("circuit-car")]
    public void ReadThenWrite_BundledFile_GivesTheSameText(string name)
    {
        string text = TestFiles.System(name);
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
    }

    [Fact]
    public void Read_TimeTrialCar_GivesWhatTheFileSays()
    {
        FuelSystem car = SystemDocument.Read(TestFiles.System("time-trial-car"));
        Assert.Equal(["primaries", "secondaries"], car.Stages.Select(s => s.Name));
        Assert.All(car.Stages, s => Assert.Equal([1, 2, 3, 4], s.Seats.Select(x => x.Chamber)));
        Assert.Equal(9, car.Network.Nodes.Length);
        Assert.Equal(10, car.Network.Lines.Length);
        Assert.Equal(Engine.WorkingCycle.FourStroke, car.Engine.Cycle);
        Close.Within(1e-15, 2000e-6, car.Engine.Displacement.InSi());
        Close.Within(1e-15, 570e-6 / 60, car.Stages[0].Seats[0].Injector.Rating.StaticVolumeFlow.InSi());
        Close.Within(1e-15, 0.71, car.Engine.VolumetricEfficiency.ValueAt(0, 5).InSi());
        Close.Within(1e-15, 0.7, car.Staging!.TransitionDutyCycle.InSi());

        // Referred to by one name, it is one injector and one fuel.
        Assert.Same(car.Stages[0].Belief!.Injector, car.Stages[0].Seats[3].Injector);
        Assert.Same(car.Fuel, car.Stages[1].Belief!.Fuel);
        Assert.Same(StandardFuels.NHeptane, car.Stages[0].Belief!.Injector.Rating.Fluid);
    }

    /// <summary>E30 from 745 kg/m3 gasoline and ethanol of 789 to 794 kg/m3 lies between, at 757 to 760 kg/m3.</summary>
    [Fact]
    public void Read_BlendInTheFile_IsMixedFromItsParts()
    {
        Fuel e30 = SystemDocument.Read(TestFiles.System("time-trial-car")).Fuel;
        double density = e30.DensityAt(SiUnits.Temperature(288.15)).InSi();
        Assert.InRange(density, 757, 760);
    }

    [Fact]
    public void Read_TrainingStand_GivesWhatTheFileSays()
    {
        FuelSystem stand = SystemDocument.Read(TestFiles.System("training-stand"));
        Assert.Null(stand.Staging);
        Assert.Equal(Engine.WorkingCycle.TwoStroke, stand.Engine.Cycle);
        Assert.Equal("premix 50:1", stand.Fuel.Name);
        Assert.False(stand.Stages[0].Belief!.Injector.Rating.IsByVolume);
        Assert.Same(Limits.CommonPractice, stand.Limits);
    }

    [Fact]
    public void Read_FileTextAndBytes_AreTheSame()
    {
        string text = TestFiles.System("training-stand");
        string path = Path.Combine(House.Repository.Root, "docs/samples/Assessment/data/training-stand.json");
        Assert.Equal(text, SystemDocument.Write(SystemDocument.ReadFile(path)));
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(Encoding.UTF8.GetBytes(text))));
        Assert.Throws<ArgumentNullException>(() => SystemDocument.Read((string)null!));
        Assert.Throws<ArgumentNullException>(() => SystemDocument.Write(null!));
    }

    [Fact]
    public void Read_OtherUnits_GiveTheSameSystem()
    {
        string text = TestFiles.System("training-stand");
        string other = text.Replace("\"300 kPa\"", "\"3.0 bar\"", StringComparison.Ordinal)
            .Replace("\"8 mm\"", "\"0.8cm\"", StringComparison.Ordinal)
            .Replace("\"20 degC\"", "\"293.15 K\"", StringComparison.Ordinal)
            .Replace("\"496 cm3\"", "\"0.496 L\"", StringComparison.Ordinal);
        Assert.NotEqual(text, other);
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(other)));
    }

    [Fact]
    public void Write_MeasuredInjectors_ReadsBackWithThem()
    {
        FuelSystem stand = SystemDocument.Read(TestFiles.System("training-stand"));
        FuelSystem measured = stand.WithInjectors(
            "injectors",
            stand
                .Stages[0]
                .Seats.Select((s, i) => s.Injector.WithFlowScale($"measured {i}", SiUnits.Ratio(1 + 0.01 * i), Bench))
        );
        string text = SystemDocument.Write(measured);
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
        Assert.Contains("\"injector\": \"measured 1\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_TwoInjectorsOfOneName_IsRefused()
    {
        FuelSystem stand = SystemDocument.Read(TestFiles.System("training-stand"));
        FuelSystem two = stand.WithInjectors(
            "injectors",
            stand.Stages[0].Seats.Select((s, i) => s.Injector.WithFlowScale("same", SiUnits.Ratio(1 + 0.01 * i), Bench))
        );
        var error = Assert.Throws<ArgumentException>(() => SystemDocument.Write(two));
        Words.Says("'same'", error);
    }

    [Fact]
    public void Write_FuelWithTheNameOfAStandardOne_IsRefused()
    {
        FuelSystem stand = SystemDocument.Read(TestFiles.System("training-stand"));
        Fuel taken = FuelBlend.ByMass("ethanol", [new FuelBlend.Part(StandardFuels.Methanol, SiUnits.Ratio(1))]);
        var error = Assert.Throws<ArgumentException>(() => SystemDocument.Write(stand.WithFuel(taken)));
        Words.Says("'ethanol'", error);
    }

    [Fact]
    public void ReadThenWrite_CurrentCultureIsGerman_GivesTheSameText()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "\u2212";
        try
        {
            CultureInfo.CurrentCulture = culture;
            string text = TestFiles.System("time-trial-car");
            Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(
        201,
        "A document needs a name, a text of 1 to 200 characters, not blank, without control characters, with complete surrogate pairs"
    )]
    [InlineData(
        0,
        "A document needs a name, a text of 1 to 200 characters, not blank, without control characters, with complete surrogate pairs"
    )]
    public void Write_NameThatWouldNotBeRead_IsRefused(int letters, string words)
    {
        FuelSystem stand = SystemDocument.Read(TestFiles.System("training-stand"));
        string name = letters == 0 ? "half a pair \ud800" : new string('x', letters);
        FuelSystem named = new(
            name,
            stand.Fuel,
            stand.Engine,
            stand.Network,
            stand.Stages,
            stand.Staging,
            stand.Power,
            stand.Limits,
            stand.Source
        );
        var error = Assert.Throws<ArgumentException>(() => SystemDocument.Write(named));
        Assert.StartsWith(words, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_HalfASurrogatePair_IsRefusedAtItsPlace()
    {
        string text = TestFiles
            .System("training-stand")
            .Replace("\"training", "\"\ud83d training", StringComparison.Ordinal);
        var error = Assert.Throws<DocumentException>(() => SystemDocument.Read(text));
        Assert.Equal((4, 12), (error.Line, error.Column));
        Assert.Equal("A text must hold complete surrogate pairs.", error.Allowed);
    }

    [Fact]
    public void Write_FuelNotMadeFromPoints_IsRefused()
    {
        FuelSystem stand = SystemDocument.Read(TestFiles.System("training-stand"));
        Fuel gasoline = StandardFuels.PumpGasoline;
        Fuel own = new(
            "own",
            gasoline.Composition,
            gasoline.Density,
            gasoline.Viscosity,
            gasoline.VaporPressure,
            null,
            Bench,
            [],
            []
        );
        var error = Assert.Throws<ArgumentException>(() => SystemDocument.Write(stand.WithFuel(own)));
        Assert.StartsWith(
            "The density curve of a fuel can't be written, because it was not made from points.",
            error.Message,
            StringComparison.Ordinal
        );
    }
}
