using System.Collections.Immutable;

namespace FuelMath;

public static partial class AdapterSearch
{
    /// <summary>Adapters one after the other that join two ends, and the joints between them.</summary>
    public sealed class Route
    {
        internal Route(ImmutableArray<Adapter> adapters, ImmutableArray<Joint> joints) =>
            (Adapters, Joints) = (adapters, joints);

        /// <summary>The adapters in order; empty where the two ends seal directly.</summary>
        public ImmutableArray<Adapter> Adapters { get; }

        /// <summary>The joints in order, one more than adapters; each of them seals.</summary>
        public ImmutableArray<Joint> Joints { get; }

        /// <summary>Formats the chain.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            Adapters.IsEmpty
                ? $"{Joints[0].First} seals with {Joints[0].Second}"
                : $"{Joints[0].First} | {string.Join(" | ", Adapters.Select(a => a.Name))} | {Joints[^1].Second}";
    }
}
