using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>The enclosed volume of the hoses of a network.</summary>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public static class EnclosedVolume
{
    /// <summary>Adds up the named hoses and other enclosed volumes.</summary>
    /// <param name="network">The fuel path.</param>
    /// <param name="hoses">Names of lines that are hoses.</param>
    /// <param name="others">Volume of rails, filters, dampers and other parts; not negative.</param>
    /// <returns>The volume, in m³.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such hose; the message names those that are.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The other volume is negative or not finite.</exception>
    public static Volume Of(Network network, IEnumerable<string> hoses, Volume others)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(hoses);
        double sum = Guard.NotNegative(others, others.InSi());
        foreach (string name in hoses)
        {
            Line line =
                network.Lines.FirstOrDefault(l => l.Name == name && l.Part.VolumeSi is not null)
                ?? throw Guard.NoName(
                    name,
                    network.Lines.Where(l => l.Part.VolumeSi is not null).Select(l => l.Name),
                    nameof(hoses)
                );
            sum += line.Part.VolumeSi!.Value;
        }

        return SiUnits.Volume(sum);
    }
}
