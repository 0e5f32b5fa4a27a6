using UnitsNet;

namespace FuelMath;

public sealed partial class SystemState
{
    /// <summary>One regulator at an operating point.</summary>
    public sealed class RegulatorResult
    {
        internal RegulatorResult(
            string line,
            RegulatorCondition state,
            bool isReducing,
            GaugePressure? inlet,
            GaugePressure? outlet,
            GaugePressure reference,
            VolumeFlow flow
        )
        {
            Line = line;
            State = state;
            IsReducing = isReducing;
            Inlet = inlet;
            Outlet = outlet;
            Reference = reference;
            Flow = flow;
        }

        /// <summary>The line that the regulator is in.</summary>
        public string Line { get; }

        /// <summary>
        /// Of a bypass regulator: seated, the pump can't supply the demand; regulating; fully open, a fixed restriction
        /// above the
        /// return line. Of a reducing one: seated, satisfied; regulating; fully open, starved.
        /// </summary>
        public RegulatorCondition State { get; }

        /// <summary>
        /// Whether it holds the pressure at its outlet by throttling, instead of that at its inlet by bypassing.
        /// </summary>
        public bool IsReducing { get; }

        /// <summary>
        /// The pressure at its inlet: held by a bypass regulator, the supply of a reducing one. Null where every way to it is
        /// shut, so that it keeps whatever it had.
        /// </summary>
        public GaugePressure? Inlet { get; }

        /// <summary>
        /// The pressure at its outlet: that of the return line, or held by a reducing regulator. Null where every way to it is
        /// shut.
        /// </summary>
        public GaugePressure? Outlet { get; }

        /// <summary>The pressure on its reference port.</summary>
        public GaugePressure Reference { get; }

        /// <summary>The flow through it.</summary>
        public VolumeFlow Flow { get; }

        /// <summary>The flow that it returns: zero for a reducing one.</summary>
        public VolumeFlow BypassedFlow => IsReducing ? SiUnits.VolumeFlow(0) : Flow;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Line}: {State}, {Inlet} to {Outlet}");
    }
}
