using UnitsNet;

namespace FuelMath;

public sealed partial class SystemState
{
    /// <summary>What one stage of injectors does at an operating point.</summary>
    public sealed class StageResult
    {
        internal StageResult(
            string name,
            Duration pulseWidth,
            Duration period,
            Ratio dutyCycle,
            Pressure leastDifferentialPressure,
            MassFlow meanFlow,
            int? firingGroups,
            Ratio quadraticLossFactor,
            Ratio flowWeightedLossFactor,
            bool isShut,
            bool isHeldOpen
        )
        {
            Name = name;
            PulseWidth = pulseWidth;
            Period = period;
            DutyCycle = dutyCycle;
            LeastDifferentialPressure = leastDifferentialPressure;
            MeanFlow = meanFlow;
            FiringGroups = firingGroups;
            QuadraticLossFactor = quadraticLossFactor;
            FlowWeightedLossFactor = flowWeightedLossFactor;
            IsShut = isShut;
            IsHeldOpen = isHeldOpen;
        }

        /// <summary>The stage's name.</summary>
        public string Name { get; }

        /// <summary>
        /// The width that the controller gives to every injector of the stage; of several banks the longest, and
        /// <see cref="SystemState.Banks"/> has each.
        /// </summary>
        public Duration PulseWidth { get; }

        /// <summary>The time between the starts of two pulses of one injector.</summary>
        public Duration Period { get; }

        /// <summary>Pulse width over period; counts dead time. Of several banks the greatest.</summary>
        public Ratio DutyCycle { get; }

        /// <summary>The lowest injector differential pressure in the stage.</summary>
        public Pressure LeastDifferentialPressure { get; }

        /// <summary>Mean fuel mass flow of the whole stage.</summary>
        public MassFlow MeanFlow { get; }

        /// <summary>
        /// How its injectors take turns, as <see cref="InjectorStage.FiringGroups"/>; null when it is not known.
        /// </summary>
        public int? FiringGroups { get; }

        /// <summary>
        /// The mean over time of a loss that goes with the square of the flow, over that of the mean flow, in a line
        /// that
        /// carries the flow of this stage alone and follows it at once.
        /// </summary>
        /// <remarks>
        /// <para>
        /// Of the effective widths, each at static flow, and of the firing groups. Where those are not known it is that
        /// of all
        /// injectors at once, which no other pattern and no other shape of the same pulses exceeds.
        /// </para>
        /// <para>
        /// What damps a line, dampers, the give of hoses, lowers it. It is no bound for a line that resonates with the
        /// pulses, nor
        /// for one that carries other flow, too: a feed line with a return carries the pump's flow, not that of the
        /// injectors.
        /// </para>
        /// </remarks>
        public Ratio QuadraticLossFactor { get; }

        /// <summary>
        /// The same mean weighted by flow: what fuel meets on its way, because it flows while the loss is high.
        /// </summary>
        /// <remarks>What is said of <see cref="QuadraticLossFactor"/> holds for it.</remarks>
        public Ratio FlowWeightedLossFactor { get; }

        /// <summary>Whether the stage is told to stay shut.</summary>
        public bool IsShut { get; }

        /// <summary>Whether its injectors have no time to close and flow all the time.</summary>
        public bool IsHeldOpen { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {PulseWidth}, duty cycle {DutyCycle}");
    }
}
