namespace FuelMath.Documents.Shapes;

internal enum JsonItemKind
{
    Object,
    List,
    Text,
    Number,
    Truth,
    Null,
}
