using UnitsNet;

namespace FuelMath;

public sealed partial class SystemBrief
{
    /// <summary>The size of an engine.</summary>
    public sealed class EngineSize
    {
        /// <summary>Describes an engine by its size.</summary>
        /// <param name="cylinders">Number of cylinders, 1 to 16.</param>
        /// <param name="displacement">Displacement of all cylinders; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
        public EngineSize(int cylinders, Volume displacement)
        {
            Cylinders = Guard.InRange(cylinders, 1, 16);
            Guard.Positive(displacement, displacement.InSi());
            Displacement = displacement;
        }

        /// <summary>Number of cylinders.</summary>
        public int Cylinders { get; }

        /// <summary>Displacement of all cylinders.</summary>
        public Volume Displacement { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Cylinders} cylinders, {Displacement}");
    }
}
