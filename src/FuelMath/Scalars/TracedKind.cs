namespace FuelMath.Formulas;

/// <summary>What a node of a traced formula is.</summary>
internal enum TracedKind
{
    Constant,
    Input,
    Named,
    Sum,
    Product,
    Negative,
    Power,
    Call,
    Size,
    Chosen,
    Less,
    Both,
    Either,
}
