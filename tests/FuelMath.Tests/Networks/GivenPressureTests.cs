using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>No pressure below vacuum can be given anywhere; vacuum itself can.</summary>
[Trait("Source", "Definition")]
public sealed class GivenPressureTests
{
    private static readonly Network Jet = Fuel(
        Fixed("rail", 300),
        Fixed("space", 0),
        Junction("before"),
        OwnLine.BypassRegulator("regulator", "rail", "before", Regulator(0)),
        OwnLine.Orifice("jet", "before", "space", LitersPerHour(36), Kilopascals(300), InjectorDraw.Backflow.Prevented)
    );

    public static TheoryData<string, Action<GaugePressure>> Places =>
        new()
        {
            { "pressure", p => _ = Network.Node.FixedPressure("space", p, Length.Zero) },
            { "pressure", p => new Network.Buffer(Jet).SetPressure("space", p) },
            { "pressures", p => _ = new NetworkBatch(Jet, 2).WithPressure("space", [Gauge(0), p]) },
            { "reference", p => _ = Regulator(p.AboveAmbient.Kilopascals) },
            { "reference", p => new Network.Buffer(Jet).SetReference("regulator", p) },
            { "references", p => _ = new NetworkBatch(Jet, 2).WithReference("regulator", [Gauge(0), p]) },
            { "pressure", p => _ = Network.Node.SurgeTank("tank", p, Length.Zero, Volume.FromLiters(1)) },
        };

    [Theory]
    [MemberData(nameof(Places))]
    public void Pressure_BelowVacuum_IsRefusedWhereItIsGiven(string parameter, Action<GaugePressure> give)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => give(Gauge(-500)));

        Assert.Equal(parameter, error.ParamName);
        Words.Says("-101.325 kPa, -500 kPa", error);
        give(Gauge(-101.325));
    }

    private static OwnRegulator Regulator(double reference) =>
        new(Kilopascals(200), Gauge(reference), Kilopascals(5), LitersPerHour(100));
}
