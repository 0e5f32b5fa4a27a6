using FuelMath.Formulas;

namespace FuelMath.Statistics;

/// <summary>A model with parameters, one value for each reading, that can be read in any scalar.</summary>
internal interface IFitModel
{
    /// <summary>How many parameters it has.</summary>
    int ParameterCount { get; }

    /// <summary>Whether the model has corners, so that the sum of squares may be least where its slope is not zero.</summary>
    bool HasCorners => false;

    /// <summary>The least value that a parameter may take.</summary>
    double Lowest(int parameter) => double.NegativeInfinity;

    /// <summary>The greatest value that a parameter may take.</summary>
    double Highest(int parameter) => double.PositiveInfinity;

    /// <summary>What the model says of a reading.</summary>
    T At<T>(T[] parameters, int reading)
        where T : struct, IScalar<T>;

    /// <summary>Whether the model has a value for all readings at these parameters.</summary>
    bool IsDefined(double[] parameters);
}
