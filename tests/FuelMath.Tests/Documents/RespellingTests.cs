using System.Text.Json.Nodes;
using FsCheck.Xunit;

namespace FuelMath.Tests.Documents;

/// <summary>How a system is written changes no answer: order of lists and properties, and units, are spelling.</summary>
public sealed class RespellingTests
{
    private const string Invented = "tests/FuelMath.Tests/Systems/Invented";

    private static readonly (string System, string Points)[] Written =
    [
        .. new[] { "time-trial-car", "training-stand", "circuit-car" }.Select(n =>
            (TestFiles.System(n), TestFiles.Points(n))
        ),
        .. new[] { "injected-single", "return-less-six", "two-rotor" }.Select(n =>
            (TestFiles.Read($"{Invented}/{n}.json"), TestFiles.Read($"{Invented}/{n}-points.json"))
        ),
        (TestFiles.Read("docs/data/fuel-system.json"), TestFiles.Read("docs/data/operating-list.json")),
    ];

    private static readonly Lazy<Answers[]> AsWritten = new(() =>
        [.. Written.Select(w => new Answers(w.System, w.Points))]
    );

    [Property(MaxTest = 20)]
    public void Solve_OtherOrder_IsTheSame(int seed)
    {
        var random = new Random(seed);
        for (int i = 0; i < Written.Length; i++)
        {
            string shuffled = Respelling.Shuffled(JsonNode.Parse(Written[i].System), random)!.ToJsonString();

            AsWritten.Value[i].AreThoseOf(new Answers(shuffled, Written[i].Points));
        }
    }

    [Fact]
    public void Solve_OtherUnits_IsTheSame()
    {
        for (int i = 0; i < Written.Length; i++)
        {
            string system = Respelling.InOtherUnits(JsonNode.Parse(Written[i].System))!.ToJsonString();
            string points = Respelling.InOtherUnits(JsonNode.Parse(Written[i].Points))!.ToJsonString();

            Assert.NotEqual(JsonNode.Parse(Written[i].System)!.ToJsonString(), system);
            AsWritten.Value[i].AreThoseOf(new Answers(system, points));
        }
    }

    /// <summary>What is asked of a system at its points, each by name.</summary>
    private sealed class Answers
    {
        private readonly List<(string Name, double Scale, double Value)> numbers = [];
        private readonly List<string> words = [];

        internal Answers(string system, string points)
        {
            FuelSystem read = SystemDocument.Read(system);
            foreach (OperatingPoint point in OperatingListDocument.Read(points))
            {
                try
                {
                    Take(read, read.Solve(point));
                }
                catch (Exception refusal) when (refusal is IRefusal)
                {
                    words.Add($"{point.Name}: {refusal.GetType().Name}");
                }
            }

            words.Sort(StringComparer.Ordinal);
        }

        /// <summary>
        /// A state settles to 1e-10 of a voltage or a pressure, a flow to some 1e-7 of the greatest in the path: compared
        /// within ten times that, against the greatest of their kind.
        /// </summary>
        internal void AreThoseOf(Answers other)
        {
            Assert.Equal(words, other.words);
            Dictionary<string, double> found = other.numbers.ToDictionary(n => n.Name, n => n.Value);
            Assert.Equal(numbers.Count, found.Count);
            foreach ((string name, double scale, double value) in numbers)
            {
                Close.WithinOf(scale, 1e-6, value, found[name]);
            }
        }

        private void Take(FuelSystem system, SystemState state)
        {
            string at = state.Point.Name;
            words.Add($"{at}: {state.Verdict.Kind}");
            words.AddRange(state.Findings.Select(f => $"{at}: {f.Code}, {f.Severity}, {f.Part}, {f.What}"));
            double pressure = system.Network.Nodes.Max(n => Math.Abs(Gauge(state, n.Name))) + 1e3;
            double flow = system.Network.Lines.Max(l => Math.Abs(Flow(state, l.Name)));
            numbers.AddRange(system.Network.Nodes.Select(n => ($"{at} p {n.Name}", pressure, Gauge(state, n.Name))));
            numbers.AddRange(system.Network.Lines.Select(l => ($"{at} q {l.Name}", flow, Flow(state, l.Name))));
            numbers.AddRange(state.Pumps.Select(p => ($"{at} V {p.Line}", 14.0, p.Voltage.Volts)));
            numbers.AddRange(state.Stages.Select(s => ($"{at} w {s.Name}", 1e-3, s.PulseWidth.Seconds)));
            numbers.AddRange(
                state
                    .Chambers.Where(c => c.Lambda is not null)
                    .Select(c => ($"{at} lambda {c.Chamber}", 1.0, c.Lambda!.Value.ToRatio()))
            );
            if (state.PumpReserve is { } reserve)
            {
                numbers.Add(($"{at} reserve", flow, reserve.CubicMetersPerSecond));
            }
        }

        private static double Gauge(SystemState state, string node) =>
            state.Network.CutOffNodeNames.Contains(node) ? 0 : state.PressureAt(node).AboveAmbient.Pascals;

        private static double Flow(SystemState state, string line) => state.FlowThrough(line).CubicMetersPerSecond;
    }
}
