namespace FuelMath;

/// <summary>The kinds of <see cref="Refusal"/>.</summary>
/// <seealso href="../guide/refusals.html">Refusals</seealso>
public enum RefusalKind
{
    /// <summary>An argument is outside what is allowed: a <see cref="RefusedValueException"/>.</summary>
    Value,

    /// <summary>A name, a list or a combination is not what is allowed: a <see cref="RefusedArgumentException"/>.</summary>
    Argument,

    /// <summary>An object is in no state to give what is asked: a <see cref="RefusedOperationException"/>.</summary>
    Operation,

    /// <summary>A value is outside the range of data: an <see cref="OutsideTableException"/>.</summary>
    Table,

    /// <summary>A property is not known: an <see cref="UnknownPropertyException"/>.</summary>
    Property,

    /// <summary>No state satisfies the equations: a <see cref="NoSolutionException"/>.</summary>
    Solution,

    /// <summary>The states of a network can't all be searched for: a <c>HumpedCurvesException</c>.</summary>
    Network,

    /// <summary>A document is invalid: a <see cref="DocumentException"/>.</summary>
    Document,

    /// <summary>A listed formula refuses a call: a <c>FormulaRefusedException</c>.</summary>
    Formula,

    /// <summary>A text is not a quantity: a <c>QuantityTextException</c>.</summary>
    Text,
}
