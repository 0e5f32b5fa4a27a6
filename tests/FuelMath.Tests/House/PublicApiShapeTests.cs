using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>The rules that every public type keeps, so that no reviewer has to remember them.</summary>
public sealed class PublicApiShapeTests
{
    private static readonly Type[] Changeable =
    [
        typeof(List<>),
        typeof(IList<>),
        typeof(ICollection<>),
        typeof(Dictionary<,>),
        typeof(IDictionary<,>),
        typeof(HashSet<>),
        typeof(Span<>),
        typeof(Memory<>),
    ];

    /// <summary>Closed hierarchies: only the library derives, and every leaf is sealed. Each with its reason.</summary>
    private static readonly Dictionary<Type, string> Hierarchies = new()
    {
        [typeof(FlowPart)] = "a line holds any part, and the solver asks each for its law without knowing which it is",
        [typeof(LiquidProperty)] =
            "five properties share their range, sources and estimates, and differ in their quantity",
        [typeof(LinePlan.Piece)] =
            "a line is joined end to end whatever its pieces are, and each kind has its own part",
        [typeof(WiringMesh.Load)] = "a mesh takes any load, and each kind keeps another quantity constant",
        [typeof(PowerSupply)] = "a system is fed by circuits or by a mesh, and asks either for the same voltages",
        [typeof(InjectorDriver)] = "both kinds give a coil's current, from a resistance or from two limits",
    };

    [Fact]
    public void NoPublicType_IsOpenToInheritance() =>
        Offenders.None(
            PublicApi.Types.Where(t => t is { IsClass: true, IsSealed: false } && !Hierarchies.ContainsKey(t))
        );

    [Fact]
    public void EveryHierarchy_IsAbstractAndClosed() =>
        Offenders.None(
            Hierarchies.Keys.Where(t =>
                !t.IsAbstract
                || t.GetConstructors(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance)
                    .Any(c => !(c.IsAssembly || c.IsFamilyAndAssembly))
            )
        );

    [Fact]
    public void EveryPublicStruct_IsReadonly() =>
        Offenders.None(
            PublicApi.Types.Where(t =>
                t is { IsValueType: true, IsEnum: false } && !t.IsDefined(typeof(IsReadOnlyAttribute), false)
            )
        );

    [Fact]
    public void NoPublicProperty_CanBeSet() =>
        Offenders.None(PublicApi.Properties.Where(p => p.SetMethod is { IsPublic: true }));

    [Fact]
    public void NoPublicField_CanBeSet() =>
        Offenders.None(PublicApi.Fields.Where(f => f is { IsInitOnly: false, IsLiteral: false }));

    /// <summary>A record's "with" walks past the guards of the constructor.</summary>
    [Fact]
    public void NoPublicType_IsARecord() =>
        Offenders.None(
            PublicApi.Types.Where(t =>
                t.GetMethod("<Clone>$") is not null
                || t.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) is not null
            )
        );

    /// <summary>An argument that a caller forgot would be an assumption made in silence.</summary>
    [Fact]
    public void NoPublicParameter_IsOptional() =>
        Offenders.None(PublicApi.Methods.Where(m => m.GetParameters().Any(p => p.IsOptional)));

    [Fact]
    public void NoPublicProperty_GivesACollectionThatCanBeChanged() =>
        Offenders.None(
            PublicApi.Properties.Where(p =>
                p.PropertyType.IsArray
                || (p.PropertyType.IsGenericType && Changeable.Contains(p.PropertyType.GetGenericTypeDefinition()))
            )
        );

    /// <summary>Private ones count too: a hidden cache is state that two threads share.</summary>
    [Fact]
    public void NoStaticField_CanBeAssigned() =>
        Offenders.None(
            PublicApi
                .Library.GetTypes()
                .Where(t => !t.Name.Contains('<', StringComparison.Ordinal))
                .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static))
                .Where(f => f is { IsInitOnly: false, IsLiteral: false })
                .Where(f => !f.IsDefined(typeof(CompilerGeneratedAttribute), false))
        );

    /// <summary>A long type may have a further file for one side of it: <c>Injector.Working.cs</c>.</summary>
    [Fact]
    public void EveryFile_HoldsOnePublicTypeNamedAfterIt() =>
        Offenders.None(
            from tree in SourceCode.Trees
            let names = tree.GetRoot()
                .DescendantNodes()
                .OfType<BaseTypeDeclarationSyntax>()
                .Where(t => t.Parent is BaseNamespaceDeclarationSyntax && t.Modifiers.Any(SyntaxKind.PublicKeyword))
                .Select(t => t.Identifier.Text)
                .ToArray()
            where names.Length > 1 || (names.Length == 1 && names[0] != Path.GetFileName(tree.FilePath).Split('.')[0])
            select $"{tree.FilePath}: {string.Join(", ", names)}"
        );
}
