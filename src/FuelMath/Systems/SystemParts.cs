using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace FuelMath;

/// <summary>What a solved state says of its parts, on its way into a <see cref="SystemState"/>.</summary>
internal sealed class SystemParts
{
    internal SystemParts() { }

    [SetsRequiredMembers]
    private SystemParts(SystemParts other) =>
        (
            Injectors,
            Stages,
            Pumps,
            Regulators,
            Chambers,
            Banks,
            Lambda,
            Target,
            LambdaIfOilUnburned,
            Reserve,
            Demand,
            SurgeTanks,
            Wiring,
            SourceVolts
        ) = (
            other.Injectors,
            other.Stages,
            other.Pumps,
            other.Regulators,
            other.Chambers,
            other.Banks,
            other.Lambda,
            other.Target,
            other.LambdaIfOilUnburned,
            other.Reserve,
            other.Demand,
            other.SurgeTanks,
            other.Wiring,
            other.SourceVolts
        );

    internal required ImmutableArray<SystemState.InjectorResult> Injectors { get; init; }

    internal required ImmutableArray<SystemState.StageResult> Stages { get; init; }

    internal required ImmutableArray<SystemState.PumpResult> Pumps { get; init; }

    internal required ImmutableArray<SystemState.RegulatorResult> Regulators { get; init; }

    internal required ImmutableArray<PredictedMixture.ChamberMixture> Chambers { get; init; }

    internal required ImmutableArray<BankResult> Banks { get; init; }

    internal required Lambda? Lambda { get; init; }

    internal required Lambda? Target { get; init; }

    /// <summary>Voltage between the terminals of the source that the point names, V.</summary>
    internal required double SourceVolts { get; init; }

    /// <summary>Total air over total fuel if none of a premix's oil burns; the same as <see cref="Lambda"/> without oil.</summary>
    internal required Lambda? LambdaIfOilUnburned { get; init; }

    /// <summary>What the pumps could still give at the pressure that must hold, m³/s; null where nothing says what must.</summary>
    internal double? Reserve { get; private init; }

    /// <summary>What the pumps must deliver, m³/s: <see cref="PumpOutlets.Demand"/>.</summary>
    internal double Demand { get; private init; }

    internal required ImmutableArray<SurgeTankBalance> SurgeTanks { get; init; }

    internal required WiringMesh.State? Wiring { get; init; }

    internal SystemParts WithReserve(double? reserve, double demand) =>
        new(this) { Reserve = reserve, Demand = demand };

    /// <summary>The same state, seen with some of its pumps and regulators.</summary>
    internal SystemParts With(
        ImmutableArray<SystemState.PumpResult> pumps,
        ImmutableArray<SystemState.RegulatorResult> regulators
    ) => new(this) { Pumps = pumps, Regulators = regulators };
}
