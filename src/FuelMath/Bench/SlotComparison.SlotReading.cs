namespace FuelMath.Bench;

public sealed partial class SlotComparison
{
    /// <summary>A static flow of one injector, with the slot of the bench that it sat in.</summary>
    public sealed class SlotReading
    {
        /// <summary>Creates a reading.</summary>
        /// <param name="injector">The name of the injector; not blank.</param>
        /// <param name="slot">The name of the slot; not blank.</param>
        /// <param name="reading">The reading.</param>
        /// <exception cref="ArgumentException">A name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="reading"/> is null.</exception>
        public SlotReading(string injector, string slot, StaticFlowReading reading)
        {
            ArgumentNullException.ThrowIfNull(reading);
            (Injector, Slot) = (Guard.Name(injector), Guard.Name(slot));
            Reading = reading;
        }

        /// <summary>The name of the injector.</summary>
        public string Injector { get; }

        /// <summary>The name of the slot.</summary>
        public string Slot { get; }

        /// <summary>The reading.</summary>
        public StaticFlowReading Reading { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Injector} in {Slot}: {Reading}");
    }
}
