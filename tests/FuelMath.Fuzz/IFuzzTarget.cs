namespace FuelMath.Fuzz;

/// <summary>One side of the library that is fed.</summary>
internal interface IFuzzTarget
{
    string Name { get; }

    /// <summary>
    /// Runs one case drawn from <paramref name="random"/>. True if the library answered, false if it refused as documented;
    /// throws <see cref="FuzzFailure"/> for anything else.
    /// </summary>
    bool Run(Random random);
}
