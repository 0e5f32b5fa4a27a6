using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// A system, found by random calls, whose path no Newton step solves: one round after another it has a state only with a small
/// drain at each junction. It must be answered or refused like any other after its rounds.
/// </summary>
public sealed class DrainedPathTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    [Fact]
    public async Task Sweep_PathThatIsSolvedWithDrainsAlone_Ends()
    {
        FuelSystem system = SystemDocument.ReadFile(
            Path.Combine(House.Repository.Root, "tests/FuelMath.Tests/Systems/Invented/drained-path.json")
        );
        OperatingPoint point = new(
            "hardly turning",
            RotationalSpeed.FromRevolutionsPerMinute(1.0 / 36),
            new IntakeAir(Workshop.Kilopascals(100_000), Workshop.Kilopascals(10), Workshop.Celsius(0)),
            Temperature.FromDegreesCelsius(0.00608767012301),
            ElectricPotential.FromVolts(100),
            Workshop.Hold(300)
        );

        var swept = Task.Run(() =>
            new Sweep(
                system,
                point,
                [
                    RotationalSpeed.FromRadiansPerSecond(2.7550953822547283e-15),
                    RotationalSpeed.FromRadiansPerSecond(0.028807217071158124),
                    RotationalSpeed.FromRadiansPerSecond(628.31853072),
                ],
                [Workshop.Kilopascals(80), Workshop.Kilopascals(97), Workshop.Kilopascals(101.3)],
                CancellationToken.None
            )
        );

        Assert.Same(swept, await Task.WhenAny(swept, Task.Delay(Patience)));
        Sweep sweep = await swept;
        Assert.All(sweep.Points, p => Assert.True(p.State is null == p.Refusal is not null));
    }
}
