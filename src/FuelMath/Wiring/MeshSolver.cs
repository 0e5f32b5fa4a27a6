using System.Globalization;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath;

/// <summary>
/// Solves a mesh for each combination of alternator states in turn, until one is consistent with its solution.
/// </summary>
internal sealed class MeshSolver
{
    /// <summary>Relative tolerance for the consistency of an alternator's state.</summary>
    private const double Edge = 1e-9;

    private readonly WiringMesh mesh;
    private readonly Dictionary<string, int> nodes;
    private readonly int[] alternators;

    internal MeshSolver(WiringMesh mesh)
    {
        this.mesh = mesh;
        nodes = new Dictionary<string, int>(StringComparer.Ordinal) { [mesh.Reference] = -1 };
        foreach (string node in mesh.Nodes.Where(n => n != mesh.Reference))
        {
            nodes[node] = nodes.Count - 1;
        }

        alternators =
        [
            .. Enumerable
                .Range(0, mesh.Sources.Length)
                .Where(i => mesh.Sources[i].Kind == WiringMesh.SourceKind.Alternator),
        ];
    }

    private int Unknowns => nodes.Count - 1 + mesh.Sources.Length;

    internal WiringMesh.State Solve()
    {
        NoSolutionException? refusal = null;
        int combinations = (int)Math.Pow(3, alternators.Length);
        for (int c = 0; c < combinations; c++)
        {
            var states = new WiringMesh.AlternatorCondition[mesh.Sources.Length];
            for (int a = 0, rest = c; a < alternators.Length; a++, rest /= 3)
            {
                states[alternators[a]] = (WiringMesh.AlternatorCondition)(rest % 3);
            }

            double[]? x = SolveWith(states, out int iterations, out NoSolutionException? no);
            if (x is not null && Agrees(x, states))
            {
                return State(x, states, iterations);
            }

            // Keep the last refusal: it belongs to the weakest supply and names what is missing.
            refusal = no ?? refusal;
        }

        throw refusal
            ?? new NoSolutionException(
                RefusalCode.NotConverged,
                $"mesh '{mesh.Name:part}'",
                "no state of the alternators agrees with the voltages that follow from it.",
                "",
                double.NaN,
                combinations
            );
    }

    private double[]? SolveWith(
        WiringMesh.AlternatorCondition[] states,
        out int iterations,
        out NoSolutionException? no
    )
    {
        iterations = 0;
        no = null;
        var factors = Matrix(states).LU();
        Vector<double> open = RightSide(states);
        int[] ports =
        [
            .. Enumerable
                .Range(0, mesh.Loads.Length)
                .Where(i => mesh.Loads[i] is { Kind: WiringMesh.LoadKind.ConstantPower, Amount: > 0 }),
        ];
        double[] amperes = new double[ports.Length];
        if (ports.Length > 0)
        {
            Vector<double> empty = factors.Solve(open);
            var resistance = new double[ports.Length, ports.Length];
            for (int k = 0; k < ports.Length; k++)
            {
                Vector<double> unit = Vector<double>.Build.Dense(Unknowns);
                Draw(unit, mesh.Loads[ports[k]], 1);
                Vector<double> answer = factors.Solve(unit);
                for (int l = 0; l < ports.Length; l++)
                {
                    resistance[l, k] = -Across(answer, mesh.Loads[ports[l]]);
                }
            }

            var problem = new PowerLoads(
                [.. ports.Select(p => mesh.Loads[p])],
                [.. ports.Select(p => Across(empty, mesh.Loads[p]))],
                resistance
            );
            double[]? volts = problem.Solve();
            iterations = problem.Iterations;
            if (volts is null)
            {
                no = new NoSolutionException(
                    RefusalCode.WiringTakesAll,
                    $"mesh '{mesh.Name:part}'",
                    problem.Why,
                    "",
                    double.NaN,
                    iterations
                );
                return null;
            }

            for (int k = 0; k < ports.Length; k++)
            {
                amperes[k] = mesh.Loads[ports[k]].Amount / volts[k];
                Draw(open, mesh.Loads[ports[k]], amperes[k]);
            }
        }

        Vector<double> x = factors.Solve(open);
        foreach (WiringMesh.Load load in mesh.Loads)
        {
            double volts = Across(x, load);
            if (load is { Kind: WiringMesh.LoadKind.ConstantCurrent, Amount: > 0 } && !(volts > 0))
            {
                no = new NoSolutionException(
                    RefusalCode.WiringTakesAll,
                    $"mesh '{mesh.Name:part}'",
                    $"load '{load.Name:load}' would have {Amount.Volts(volts):value} at {Amount.Amperes(load.Amount):current}: the wiring takes the whole voltage.",
                    "",
                    double.NaN,
                    iterations
                );
                return null;
            }
        }

        return [.. x];
    }

    private bool Agrees(double[] x, WiringMesh.AlternatorCondition[] states) =>
        alternators.All(i =>
        {
            WiringMesh.Source source = mesh.Sources[i];
            double current = x[nodes.Count - 1 + i];
            double volts = Across(x, source.Positive, source.Negative);
            return states[i] switch
            {
                WiringMesh.AlternatorCondition.Regulating => current >= -Edge * source.Limit
                    && current <= source.Limit * (1 + Edge),
                WiringMesh.AlternatorCondition.AtLimit => volts <= source.Volts * (1 + Edge),
                _ => volts >= source.Volts * (1 - Edge),
            };
        });

    /// <summary>Balances of current at the nodes, then one row for each source.</summary>
    private Matrix<double> Matrix(WiringMesh.AlternatorCondition[] states)
    {
        Matrix<double> matrix = Matrix<double>.Build.Dense(Unknowns, Unknowns);
        foreach (WiringMesh.Branch branch in mesh.Branches)
        {
            Conduct(matrix, branch.From, branch.To, 1 / branch.Si);
        }

        foreach (WiringMesh.Load load in mesh.Loads.Where(l => l.Kind == WiringMesh.LoadKind.Resistance))
        {
            Conduct(matrix, load.Positive, load.Negative, 1 / load.Amount);
        }

        for (int i = 0; i < mesh.Sources.Length; i++)
        {
            WiringMesh.Source source = mesh.Sources[i];
            int row = nodes.Count - 1 + i;
            (int positive, int negative) = (nodes[source.Positive], nodes[source.Negative]);
            bool isVoltage = states[i] == WiringMesh.AlternatorCondition.Regulating;
            matrix[row, row] = isVoltage ? source.Ohms : 1;
            if (positive >= 0)
            {
                matrix[positive, row] = -1;
                matrix[row, positive] = isVoltage ? 1 : 0;
            }

            if (negative >= 0)
            {
                matrix[negative, row] = 1;
                matrix[row, negative] = isVoltage ? -1 : 0;
            }
        }

        return matrix;
    }

    private Vector<double> RightSide(WiringMesh.AlternatorCondition[] states)
    {
        Vector<double> side = Vector<double>.Build.Dense(Unknowns);
        foreach (WiringMesh.Load load in mesh.Loads.Where(l => l.Kind == WiringMesh.LoadKind.ConstantCurrent))
        {
            Draw(side, load, load.Amount);
        }

        for (int i = 0; i < mesh.Sources.Length; i++)
        {
            side[nodes.Count - 1 + i] = states[i] switch
            {
                WiringMesh.AlternatorCondition.Regulating => mesh.Sources[i].Volts,
                WiringMesh.AlternatorCondition.AtLimit => mesh.Sources[i].Limit,
                _ => 0,
            };
        }

        return side;
    }

    private void Conduct(Matrix<double> matrix, string from, string to, double conductance)
    {
        (int a, int b) = (nodes[from], nodes[to]);
        if (a >= 0)
        {
            matrix[a, a] += conductance;
        }

        if (b >= 0)
        {
            matrix[b, b] += conductance;
        }

        if (a >= 0 && b >= 0)
        {
            matrix[a, b] -= conductance;
            matrix[b, a] -= conductance;
        }
    }

    /// <summary>
    /// Adds a current that leaves the mesh at a load's positive node and returns at its negative one.
    /// </summary>
    private void Draw(Vector<double> side, WiringMesh.Load load, double amperes)
    {
        (int positive, int negative) = (nodes[load.Positive], nodes[load.Negative]);
        if (positive >= 0)
        {
            side[positive] -= amperes;
        }

        if (negative >= 0)
        {
            side[negative] += amperes;
        }
    }

    private double Across(IList<double> x, WiringMesh.Load load) => Across(x, load.Positive, load.Negative);

    private double Across(IList<double> x, string positive, string negative) => At(x, positive) - At(x, negative);

    private double At(IList<double> x, string node) => nodes[node] < 0 ? 0 : x[nodes[node]];

    private WiringMesh.State State(double[] x, WiringMesh.AlternatorCondition[] states, int iterations) =>
        new(mesh, [.. mesh.Nodes.Select(n => At(x, n))], [.. x.Skip(nodes.Count - 1)], [.. states], iterations);
}
