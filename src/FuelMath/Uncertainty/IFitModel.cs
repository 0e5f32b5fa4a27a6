using FuelMath.Formulas;

namespace FuelMath.Statistics;

/// <summary>A model with parameters that gives one value for each reading, in any scalar.</summary>
internal interface IFitModel
{
    /// <summary>Number of parameters.</summary>
    int ParameterCount { get; }

    /// <summary>Whether the model has corners, so that the minimum may lie where the slope is not zero.</summary>
    bool HasCorners => false;

    /// <summary>The least value that a parameter may take.</summary>
    double Lowest(int parameter) => double.NegativeInfinity;

    /// <summary>The greatest value that a parameter may take.</summary>
    double Highest(int parameter) => double.PositiveInfinity;

    /// <summary>The model's value for a reading.</summary>
    T At<T>(T[] parameters, int reading)
        where T : struct, IScalar<T>;

    /// <summary>Whether the model has a value for all readings at these parameters.</summary>
    bool IsDefined(double[] parameters);
}
