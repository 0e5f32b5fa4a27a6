using System.Collections.Immutable;
using FuelMath.Beliefs;
using FuelMath.Quantities;
using FuelMath.Wiring;

namespace FuelMath.Systems;

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

    internal required WiringState? Wiring { get; init; }
}
