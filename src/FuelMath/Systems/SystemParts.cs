using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What a solved state says of its parts, on its way into a <see cref="SystemState"/>.</summary>
internal sealed class SystemParts
{
    internal required ImmutableArray<InjectorResult> Injectors { get; init; }

    internal required ImmutableArray<StageResult> Stages { get; init; }

    internal required ImmutableArray<PumpMatch> Pumps { get; init; }

    internal required ImmutableArray<RegulatorResult> Regulators { get; init; }

    internal required ImmutableArray<ChamberMixture> Chambers { get; init; }

    internal required Lambda? Lambda { get; init; }

    internal required Lambda? Target { get; init; }

    /// <summary>Total air over total fuel if none of a premix's oil burns; the same as <see cref="Lambda"/> without oil.</summary>
    internal required Lambda? LambdaIfOilUnburned { get; init; }

    /// <summary>What the pumps could still give at the pressure that must hold, m3/s; null where nothing says what must.</summary>
    internal double? Reserve { get; private init; }

    internal required ImmutableArray<SurgeTankBalance> SurgeTanks { get; init; }

    internal required WiringState? Wiring { get; init; }

    internal SystemParts WithReserve(double? reserve) =>
        new()
        {
            Injectors = Injectors,
            Stages = Stages,
            Pumps = Pumps,
            Regulators = Regulators,
            Chambers = Chambers,
            Lambda = Lambda,
            LambdaIfOilUnburned = LambdaIfOilUnburned,
            Target = Target,
            Wiring = Wiring,
            SurgeTanks = SurgeTanks,
            Reserve = reserve,
        };
}
