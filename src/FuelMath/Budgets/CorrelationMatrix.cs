using System.Collections.Immutable;
using System.Globalization;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Statistics;

/// <summary>The checked correlation matrix of a budget.</summary>
internal static class CorrelationMatrix
{
    /// <summary>Tolerance for the least eigenvalue below zero, for rounding.</summary>
    private const double Rounding = 1e-9;

    /// <exception cref="ArgumentException">
    /// A name is unknown or exact, a pair occurs twice, or the matrix is not positive semidefinite.
    /// </exception>
    internal static Matrix<double> Of(
        ImmutableArray<UncertaintyBudget.Input> inputs,
        ImmutableArray<UncertaintyBudget.Correlation> correlations,
        string paramName
    )
    {
        Matrix<double> matrix = Matrix<double>.Build.DenseIdentity(inputs.Length);
        var seen = new HashSet<(int, int)>();
        foreach (UncertaintyBudget.Correlation c in correlations)
        {
            (int i, int j) = (Find(inputs, c.One, paramName), Find(inputs, c.Other, paramName));
            if (!seen.Add((Math.Min(i, j), Math.Max(i, j))))
            {
                throw new RefusedArgumentException(
                    RefusalCode.Duplicate,
                    $"Must give each pair once; '{c.One:given}' and '{c.Other:given}' are there twice.",
                    paramName
                );
            }

            (matrix[i, j], matrix[j, i]) = (c.Coefficient, c.Coefficient);
        }

        double least = matrix.Evd(Symmetricity.Symmetric).EigenValues.Min(v => v.Real);
        return least >= -Rounding * inputs.Length
            ? matrix
            : throw new RefusedArgumentException(
                RefusalCode.CorrelationsImpossible,
                $"Must be coefficients that can hold together, a matrix without negative eigenvalues; the least was {least:value}.",
                paramName
            );
    }

    private static int Find(ImmutableArray<UncertaintyBudget.Input> inputs, string name, string paramName)
    {
        for (int i = 0; i < inputs.Length; i++)
        {
            if (inputs[i].Name == name)
            {
                return inputs[i].StandardUncertainty > 0
                    ? i
                    : throw new RefusedArgumentException(
                        RefusalCode.InputExact,
                        $"Must be between uncertain inputs; '{name:given}' is exact.",
                        paramName
                    );
            }
        }

        throw new RefusedArgumentException(
            RefusalCode.NotOneOf,
            $"Must name inputs ({inputs.Select(i => i.Name):allowed}); it was '{name:given}'.",
            paramName
        );
    }
}
