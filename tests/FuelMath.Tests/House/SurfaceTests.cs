using System.Reflection;
using Xunit.Abstractions;

namespace FuelMath.Tests.House;

/// <summary>
/// The public surface of each package is written down beside its project, one line a type or member, so that a change of it is
/// seen in review and none happens by accident. <c>WRITE_SURFACE=1</c> writes it again; with the first record the test begins to
/// hold.
/// </summary>
public sealed class SurfaceTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("FuelMath")]
    [InlineData("FuelMath.Exercises")]
    [InlineData("FuelMath.Workbooks")]
    public void PublicSurface_IsTheOneWrittenDown(string package)
    {
        string[] now = [.. Surface.Of(Assembly.Load(package))];
        Assert.NotEmpty(now);
        string record = Path.Combine(Repository.Root, "src", package, "PublicSurface.txt");
        if (Environment.GetEnvironmentVariable("WRITE_SURFACE") is not null)
        {
            File.WriteAllText(record, string.Join('\n', now) + "\n");
        }

        if (!File.Exists(record))
        {
            output.WriteLine($"{record} is not there: nothing to compare the {now.Length} lines with.");
            return;
        }

        string[] recorded = File.ReadAllText(record).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        Offenders.None([
            .. recorded.Except(now).Select(l => $"gone: {l}"),
            .. now.Except(recorded).Select(l => $"new: {l}"),
        ]);
    }

    [Theory]
    [InlineData(typeof(OutsideRange), "FuelMath.OutsideRange: enum : Int32")]
    [InlineData(typeof(OutsideRange), "FuelMath.OutsideRange.Refuse = 0")]
    [InlineData(typeof(Curve), "FuelMath.Curve: sealed class")]
    [InlineData(typeof(Curve), "FuelMath.Curve.At(double x): double")]
    [InlineData(
        typeof(Curve),
        "FuelMath.Curve.new(string name, string axis, IEnumerable<double> x, IEnumerable<double> y, OutsideRange outside)"
    )]
    [InlineData(typeof(Curve), "FuelMath.Curve.Read<T>(T x): T where T : struct, IScalar<T>")]
    [InlineData(typeof(Curve), "FuelMath.Curve.Values { get; }: ImmutableArray<double>")]
    [InlineData(typeof(Lambda), "FuelMath.Lambda.static op_LessThan(Lambda left, Lambda right): bool")]
    [InlineData(typeof(FuelSystem), "FuelMath.FuelSystem.Staging { get; }: StageSchedule.Transition?")]
    public void Surface_OfAType_IsWrittenAsInCode(Type type, string line) => Assert.Contains(line, Surface.Of(type));
}
