namespace FuelMath;

public sealed partial class Network
{
    /// <summary>The condition of a link in a solved network.</summary>
    public enum LineCondition
    {
        /// <summary>Pipe, fitting, filter, check valve, relief valve, orifice: it lets flow through.</summary>
        Open,

        /// <summary>Pump: it delivers.</summary>
        Running,

        /// <summary>Regulator: it holds its set point.</summary>
        Regulating,

        /// <summary>
        /// Regulator: open to its stop. The pressure upstream of a bypass regulator is above its set point; that
        /// downstream
        /// of a reducing regulator is below.
        /// </summary>
        FullyOpen,

        /// <summary>Injectors: held open, they deliver less than commanded.</summary>
        HeldOpen,

        /// <summary>Injectors: they deliver the commanded flow.</summary>
        Commanded,

        /// <summary>
        /// Check valve, relief valve, one-way pipe or orifice, injectors commanded to zero: nothing flows.
        /// </summary>
        Shut,

        /// <summary>
        /// Pump: it runs against a closed line. Nothing flows, and its outlet has the pressure of zero flow.
        /// </summary>
        DeadHeaded,

        /// <summary>
        /// Pump: the pressure at its outlet is above what it can deliver, and its check valve is closed.
        /// </summary>
        Stalled,

        /// <summary>Pump: stopped by its switch.</summary>
        Stopped,

        /// <summary>
        /// Regulator: closed. A bypass regulator because the pressure upstream is below its set point; a reducing one
        /// because the pressure downstream is above.
        /// </summary>
        Seated,
    }
}
