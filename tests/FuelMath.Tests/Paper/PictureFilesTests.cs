using FuelMath.Samples.Assessment;
using FuelMath.Tests.House;

namespace FuelMath.Tests.Paper;

/// <summary>The sample's pictures that the guide shows by themselves; WRITE_PICTURES=1 draws them again.</summary>
public sealed class PictureFilesTests
{
    [Fact]
    public void PicturesOfTheGuide_AreDrawnFromTheBundledBench()
    {
        Assessed assessed = BundledRuns.Of("time-trial-car");
        Dictionary<string, string> drawn = new()
        {
            ["bench-spread.svg"] = Charts.Plain(BenchCharts.SpreadPlot(assessed.Measured!)),
            ["bench-pulses.svg"] = Charts.Plain(BenchCharts.Departure(assessed.Pulsed!.Found.First())),
        };
        foreach ((string name, string svg) in drawn)
        {
            string path = Path.Combine(Repository.Root, "docs", "images", name);
            if (Environment.GetEnvironmentVariable("WRITE_PICTURES") == "1")
            {
                File.WriteAllText(path, svg);
            }

            // Letters are as wide as the machine's fonts: held are the colors and the legend's words, not each byte.
            string kept = File.ReadAllText(path);
            Assert.All(
                ChartColors.All.Where(c => svg.Contains(c.Light, StringComparison.OrdinalIgnoreCase)),
                c => Assert.Contains(c.Light, kept, StringComparison.OrdinalIgnoreCase)
            );
        }
    }
}
