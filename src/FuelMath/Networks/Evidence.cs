namespace FuelMath;

/// <summary>The residuals of a solution, in SI units; node -1 where all balances are exact.</summary>
internal readonly struct Evidence(int iterations, double imbalance, int imbalanceNode, double error, int errorLink)
{
    internal readonly int Iterations = iterations;
    internal readonly double Imbalance = imbalance;
    internal readonly int ImbalanceNode = imbalanceNode;
    internal readonly double Error = error;
    internal readonly int ErrorLink = errorLink;
}
