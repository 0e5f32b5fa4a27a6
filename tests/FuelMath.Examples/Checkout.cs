namespace FuelMath.Examples;

/// <summary>Where the files of the checkout are.</summary>
internal static class Checkout
{
    internal static string Root { get; } =
        Enumerable
            .Range(0, 10)
            .Select(up => Path.GetFullPath(Path.Combine([AppContext.BaseDirectory, .. Enumerable.Repeat("..", up)])))
            .First(d => File.Exists(Path.Combine(d, "FuelMath.sln")));
}
