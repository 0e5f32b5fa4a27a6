using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Statistics;

/// <summary>
/// Inputs that are correlated, directly or through others; an independent input is a group of its own.
/// </summary>
internal sealed class InputGroup
{
    private readonly double[,] root;

    private InputGroup(int[] members, ImmutableArray<UncertaintyBudget.Input> inputs, Matrix<double> correlations)
    {
        Members = members;
        Shape = inputs[members[0]].Shape;
        Reciprocal = inputs[members[0]].DegreesOfFreedom.Reciprocal;
        HasOneDegree = members.All(i => inputs[i].DegreesOfFreedom.Reciprocal == Reciprocal);
        IsNormal = members.All(i => inputs[i].Shape == SpreadShape.Normal);
        root = Root(correlations, members);
    }

    /// <summary>Indices of the inputs.</summary>
    internal int[] Members { get; }

    /// <summary>The shape of the first.</summary>
    internal SpreadShape Shape { get; }

    /// <summary>One over the degrees of freedom of the first.</summary>
    internal double Reciprocal { get; }

    /// <summary>Whether all have the same degrees of freedom.</summary>
    internal bool HasOneDegree { get; }

    /// <summary>Whether all are normal.</summary>
    internal bool IsNormal { get; }

    /// <summary>The groups, in the order of their first members. Exact inputs belong to no group.</summary>
    internal static ImmutableArray<InputGroup> Of(
        ImmutableArray<UncertaintyBudget.Input> inputs,
        Matrix<double> correlations
    )
    {
        var groups = ImmutableArray.CreateBuilder<InputGroup>();
        var seen = new bool[inputs.Length];
        for (int first = 0; first < inputs.Length; first++)
        {
            if (seen[first])
            {
                continue;
            }

            List<int> members = [first];
            seen[first] = true;
            for (int at = 0; at < members.Count; at++)
            {
                for (int j = 0; j < inputs.Length; j++)
                {
                    if (!seen[j] && correlations[members[at], j] != 0)
                    {
                        seen[j] = true;
                        members.Add(j);
                    }
                }
            }

            groups.Add(new([.. members.Order()], inputs, correlations));
        }

        return groups.ToImmutable();
    }

    /// <summary>
    /// Draws the group's deviations, in standard uncertainties, from two random numbers a member.
    /// </summary>
    /// <remarks>
    /// A normal input with limited degrees of freedom is drawn from Student's distribution, correlated inputs from its
    /// multivariate form, a limited shape between limits that are themselves uncertain. Source: [JCGM-101] sections
    /// 6.4.3 (limits not exactly known), 6.4.8 (several normal inputs) and 6.4.9 (Student); [Bailey-1994] equation 2 (a
    /// draw from it).
    /// </remarks>
    internal void Draw(ulong seed, ulong place, Span<double> deviations)
    {
        if (!IsNormal)
        {
            double share = Draws.Share(seed, place);
            double width = 1 + (((2 * Draws.Share(seed, place + 1)) - 1) * Math.Sqrt(Reciprocal / 2));
            deviations[Members[0]] = Draws.Deviation(Shape, share) * width;
            return;
        }

        Span<double> z = stackalloc double[Members.Length];
        double squares = 0;
        for (int k = 0; k < z.Length; k++)
        {
            // Conditional on those before it, the next input follows Student's distribution with that many more degrees
            // of freedom, and wider if they lie far out.
            double reciprocal = Reciprocal / (1 + (k * Reciprocal));
            double wider = Math.Sqrt((1 + (squares * Reciprocal)) / (1 + (k * Reciprocal)));
            z[k] = wider * StudentDraw(seed, place + (ulong)(2 * k), reciprocal);
            squares += z[k] * z[k];
        }

        for (int i = 0; i < z.Length; i++)
        {
            double sum = 0;
            for (int k = 0; k < z.Length; k++)
            {
                sum += root[i, k] * z[k];
            }

            deviations[Members[i]] = sum;
        }
    }

    private static double StudentDraw(ulong seed, ulong place, double reciprocal)
    {
        double log = -2 * Math.Log(Draws.Share(seed, place));
        double square = reciprocal == 0 ? log : (Math.Exp(log * reciprocal) - 1) / reciprocal;
        return Math.Sqrt(square) * Math.Cos(2 * Math.PI * Draws.Share(seed, place + 1));
    }

    /// <summary>A matrix whose product with its transpose is that of the correlations.</summary>
    private static double[,] Root(Matrix<double> correlations, int[] members)
    {
        if (members.Length == 1)
        {
            return new double[,]
            {
                { 1 },
            };
        }

        var evd = Matrix<double>
            .Build.Dense(members.Length, members.Length, (i, j) => correlations[members[i], members[j]])
            .Evd(Symmetricity.Symmetric);
        return Matrix<double>
            .Build.Dense(
                members.Length,
                members.Length,
                (i, k) => evd.EigenVectors[i, k] * Math.Sqrt(Math.Max(0, evd.EigenValues[k].Real))
            )
            .ToArray();
    }
}
