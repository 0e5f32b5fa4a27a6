namespace FuelMath;

public sealed partial class Refusal
{
    /// <summary>A further fact of a refusal: a name, and a text or a number in a unit.</summary>
    public readonly struct Fact
    {
        internal Fact(string name, string text, double? value, string unit) =>
            (Name, Text, Value, Unit) = (name, text, value, unit);

        /// <summary>The name, for example <c>pressureRise</c>; the page of refusals lists the names of each code.</summary>
        public string Name { get; }

        /// <summary>The text, or the number with its unit as the message shows them.</summary>
        public string Text { get; }

        /// <summary>The number; null where the fact is a text.</summary>
        public double? Value { get; }

        /// <summary>The unit of the number; empty for a pure number and for a text.</summary>
        public string Unit { get; }

        /// <summary>Gives name and text.</summary>
        /// <returns>The text.</returns>
        public override string ToString() => $"{Name} {Text}";
    }
}
