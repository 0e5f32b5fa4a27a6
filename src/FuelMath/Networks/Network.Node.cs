using UnitsNet;

namespace FuelMath;

public sealed partial class Network
{
    /// <summary>A place in a network where links meet: its pressure is either given or sought.</summary>
    public sealed class Node
    {
        private Node(string name, bool isFixed, double pressure, Length elevation)
        {
            Name = Guard.Name(name);
            IsFixed = isFixed;
            PressureSi = pressure;
            ElevationSi = Guard.Finite(elevation, elevation.InSi(), part: name);
        }

        private Node(Node other)
        {
            (Name, IsFixed, PressureSi, ElevationSi) = (other.Name, other.IsFixed, other.PressureSi, other.ElevationSi);
            (DrawSi, UsableVolume) = (other.DrawSi, other.UsableVolume);
            (ForwardSi, LeftSi) = (other.ForwardSi, other.LeftSi);
        }

        /// <summary>A node whose pressure is given: a tank, a manifold, a supply line.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="pressure">Its pressure, that above the fuel for a tank; not below vacuum, -101.325 kPa
        /// gauge.</param>
        /// <param name="elevation">Its height above any level that all nodes share; that of the fuel level for a
        /// tank.</param>
        /// <returns>The node.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The pressure is below vacuum, or the elevation not
        /// finite.</exception>
        public static Node FixedPressure(string name, GaugePressure pressure, Length elevation) =>
            new(name, true, NetworkChecks.NotBelowVacuum(pressure), elevation);

        /// <summary>
        /// A surge tank: a lift pump fills it from another tank, and what is too much overflows back there.
        /// </summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="pressure">The pressure above the fuel, not below vacuum; zero where it is vented.</param>
        /// <param name="elevation">Height of the fuel level above any level that all nodes share.</param>
        /// <param name="usableVolume">What can be drawn from it when full before its pump sucks air; greater than
        /// zero.</param>
        /// <returns>The node.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// The pressure is below vacuum, the elevation not finite, or the volume not greater than zero.
        /// </exception>
        public static Node SurgeTank(string name, GaugePressure pressure, Length elevation, Volume usableVolume)
        {
            Guard.Positive(usableVolume, usableVolume.InSi(), part: name);
            return new(FixedPressure(name, pressure, elevation)) { UsableVolume = usableVolume };
        }

        /// <summary>A node whose pressure is sought, where nothing is drawn.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="elevation">Its height above any level that all nodes share.</param>
        /// <returns>The node.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The elevation is not finite.</exception>
        public static Node Junction(string name, Length elevation) => Junction(name, elevation, SiUnits.VolumeFlow(0));

        /// <summary>A node whose pressure is sought, where a fixed flow is drawn.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="elevation">Its height above any level that all nodes share.</param>
        /// <param name="draw">The volume flow drawn, whatever the pressure; negative feeds the network.</param>
        /// <returns>The node.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
        public static Node Junction(string name, Length elevation, VolumeFlow draw) =>
            new(name, false, 0, elevation) { DrawSi = Guard.Finite(draw, draw.InSi(), part: name) };

        /// <summary>
        /// The same node at a place in a vehicle; without it a node is where all places are counted from.
        /// </summary>
        /// <param name="forward">How far ahead of a place that all nodes share; finite.</param>
        /// <param name="left">How far to the left of it; finite.</param>
        /// <returns>The node. The place counts where the vehicle speeds up: see <see cref="Network.Under"/>.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
        public Node AtPlace(Length forward, Length left) =>
            new(this)
            {
                ForwardSi = Guard.Finite(forward, forward.InSi(), part: Name),
                LeftSi = Guard.Finite(left, left.InSi(), part: Name),
            };

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>Whether its pressure is given, as that of a tank is.</summary>
        public bool IsFixed { get; }

        /// <summary>The pressure that is given; null for a junction.</summary>
        public GaugePressure? GivenPressure => IsFixed ? new GaugePressure(PressureSi) : null;

        /// <summary>
        /// What can be drawn from a full surge tank before its pump sucks air; null for any other node.
        /// </summary>
        public Volume? UsableVolume { get; private init; }

        /// <summary>Its height, in m; the fuel level of a tank.</summary>
        public Length Elevation => SiUnits.Length(ElevationSi);

        /// <summary>How far ahead it lies, in m.</summary>
        public Length Forward => SiUnits.Length(ForwardSi);

        /// <summary>How far to the left it lies, in m.</summary>
        public Length Left => SiUnits.Length(LeftSi);

        /// <summary>The volume flow drawn, in m³/s; zero at a node of fixed pressure.</summary>
        public VolumeFlow Draw => SiUnits.VolumeFlow(DrawSi);

        internal double PressureSi { get; }

        internal double ElevationSi { get; private init; }

        internal double DrawSi { get; private init; }

        internal double ForwardSi { get; private init; }

        internal double LeftSi { get; private init; }

        /// <summary>
        /// A copy of the node whose elevation gives, at rest, the same hydrostatic pressure as the acceleration.
        /// </summary>
        internal Node Under(VehicleAcceleration acceleration) =>
            new(this) { ElevationSi = acceleration.HeightOf(this) };

        /// <summary>Gives its name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;
    }
}
