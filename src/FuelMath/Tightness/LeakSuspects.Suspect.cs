namespace FuelMath.ShopTests;

public sealed partial class LeakSuspects
{
    /// <summary>One place that may lose pressure, and the step that isolates it from the others.</summary>
    public sealed class Suspect
    {
        internal Suspect(SuspectKind kind, string part, string isolatingStep, ClampSide side = ClampSide.Gauge)
        {
            Kind = kind;
            Part = part;
            IsolatingStep = isolatingStep;
            Side = side;
        }

        /// <summary>The kind of place.</summary>
        public SuspectKind Kind { get; }

        /// <summary>The part, by the names of the network.</summary>
        public string Part { get; }

        /// <summary>The step that distinguishes it from the others, a sentence.</summary>
        public string IsolatingStep { get; }

        /// <summary>Its side of a clamp right after the pump.</summary>
        internal ClampSide Side { get; }

        /// <summary>Gives kind and part.</summary>
        /// <returns>The text.</returns>
        public override string ToString() => $"{Kind}: {Part}";
    }
}
