using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class CustomPartExamples
{
    private static readonly NetworkConditions Warm = new(
        Density.FromKilogramsPerCubicMeter(740),
        DynamicViscosity.FromMillipascalSeconds(0.5)
    );

    #region CustomPart
    /// <summary>A sintered plate: a share of its loss goes with viscosity and flow, a share with density and its square.</summary>
    private readonly struct SinteredPlate(double perViscosity, double perDensity) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> =>
            (perViscosity * at.Viscosity * at.Flow) + (perDensity * at.Density * at.Flow * T.Abs(at.Flow));
    }

    private static FlowPart Plate { get; } =
        new CustomPart<SinteredPlate>("plate", new(4e11, 3e9), usualFlow: VolumeFlow.FromLitersPerHour(100));
    #endregion

    [Fact]
    public void OwnLaw()
    {
        #region Solve
        Network network = new(
            [
                Network.Node.FixedPressure("supply", new GaugePressure(Pressure.FromKilopascals(300)), Length.Zero),
                Network.Node.Junction("rail", Length.Zero, VolumeFlow.FromLitersPerHour(90)),
            ],
            [new Line("damper", "supply", "rail", Plate)]
        );
        GaugePressure rail = network.Solve(Warm).PressureAt("rail"); // 293.6 kPa gauge
        #endregion

        // 4e11 x 5e-4 x 2.5e-5 + 3e9 x 740 x 2.5e-5^2 = 5000 + 1387.5 Pa.
        Assert.Equal(300 - 6.3875, rail.AboveAmbient.Kilopascals, 1e-6);
    }

    [Fact]
    public void Measured()
    {
        #region LossTable
        LossTable cooler = new(
            "fuel cooler",
            [
                new LossTable.Point(VolumeFlow.FromLitersPerHour(60), Pressure.FromKilopascals(4)),
                new LossTable.Point(VolumeFlow.FromLitersPerHour(120), Pressure.FromKilopascals(14.5)),
                new LossTable.Point(VolumeFlow.FromLitersPerHour(240), Pressure.FromKilopascals(52)),
            ],
            Density.FromKilogramsPerCubicMeter(760), // measured with a bench fluid
            DynamicViscosity.FromMillipascalSeconds(1.0),
            new DataSource("Workshop-class", "cooler of the circuit car")
        );

        Pressure inGasoline = cooler.LossAt(VolumeFlow.FromLitersPerHour(100), Warm.Density, Warm.Viscosity); // 9.05 kPa
        #endregion

        // As much as 100 x (1.0/760) / (0.5/740) = 194.7 L/h in the bench fluid, by 740 (100/194.7)^2 / 760.
        double there = cooler
            .LossAt(
                VolumeFlow.FromLitersPerHour(100 * (1.0 / 760) / (0.5 / 740)),
                Density.FromKilogramsPerCubicMeter(760),
                DynamicViscosity.FromMillipascalSeconds(1.0)
            )
            .Kilopascals;
        Assert.Equal(there * 740 / 760 * Math.Pow(0.5 / 740 * 760, 2), inGasoline.Kilopascals, 1e-9);
    }
}
