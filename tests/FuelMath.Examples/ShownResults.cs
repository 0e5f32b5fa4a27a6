using System.Collections;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.Loader;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Examples;

/// <summary>
/// Runs every shown example as it stands on its page, and holds each result in a comment behind a statement against what
/// the statement gave.
/// </summary>
internal sealed class ShownResults
{
    private const string Listener =
        "internal static class Heard { public static System.Action<int, string, object[]> By = null!; }";

    private readonly List<string> wrong = [];
    private readonly HashSet<string> shown = [];
    private readonly Dictionary<(int Example, string Comment), int> calls = [];

    private ShownResults()
    {
        (SyntaxTree Tree, int Number)[] trees =
        [
            .. ShownExample.All.Select((e, i) => (Tree: Listening(e.Program(i), e, i), i)),
        ];
        CSharpCompilation compilation = ShownExample.Compile([
            .. trees.Select(t => t.Tree),
            CSharpSyntaxTree.ParseText(Listener),
        ]);
        using var image = new MemoryStream();
        var emitted = compilation.Emit(image);
        if (!emitted.Success)
        {
            wrong.AddRange(emitted.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error).Select(d => $"{d}"));
            return;
        }

        image.Position = 0;
        System.Reflection.Assembly examples = AssemblyLoadContext.Default.LoadFromStream(image);
        examples.GetType("Heard")!.GetField("By")!.SetValue(null, (Action<int, string, object[]>)Hear);
        foreach ((_, int number) in trees)
        {
            try
            {
                examples
                    .GetType($"Shown{number}")!
                    .GetMethod("Run", System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Static)!
                    .Invoke(null, null);
            }
            catch (System.Reflection.TargetInvocationException failure)
            {
                wrong.Add($"{ShownExample.All[number].Name}: {failure.GetBaseException().Message}");
            }
        }
    }

    internal static ShownResults All { get; } = new();

    /// <summary>What does not run, and each result that is not what its comment says.</summary>
    internal IReadOnlyList<string> Wrong => wrong;

    /// <summary>The examples with at least one result beside the code that came out so.</summary>
    internal IReadOnlySet<string> WithResult => shown;

    private void Hear(int example, string comment, object[] values)
    {
        int call = calls[(example, comment)] = calls.GetValueOrDefault((example, comment)) + 1;
        object?[] results = [.. values.SelectMany(Flat)];
        string name = ShownExample.All[example].Name;
        int at = results.Length == 1 ? call - 1 : 0;
        bool said = false;
        foreach (object? result in results)
        {
            switch (ShownResult.Compare(result, comment, at++))
            {
                case true:
                    said = true;
                    shown.Add(name);
                    break;
                case false:
                    wrong.Add($"{name}: '{comment}', but it is {ShownResult.Given(result, comment, at - 1)}");
                    said = true;
                    break;
                default:
                    break;
            }
        }

        if (!said && call == 1 && ShownResult.Numbers(comment).Length > 0)
        {
            wrong.Add(
                $"{name}: nothing to hold '{comment}' against in {string.Join(", ", results.Select(ShownResult.Text))}"
            );
        }
    }

    private static IEnumerable<object?> Flat(object? value) =>
        value switch
        {
            string or null => [value],
            ITuple tuple => Enumerable.Range(0, tuple.Length).SelectMany(i => Flat(tuple[i])),
            IEnumerable list => list.Cast<object?>().SelectMany(Flat),
            _ => [value],
        };

    /// <summary>The same program, which tells after each statement with a comment what its variables hold.</summary>
    private static SyntaxTree Listening(SyntaxTree program, ShownExample example, int number)
    {
        var text = new StringBuilder(program.ToString());
        StatementSyntax[] statements =
        [
            .. program
                .GetRoot()
                .DescendantNodes()
                .OfType<StatementSyntax>()
                .Where(s => s.Parent is BlockSyntax && CommentOf(s) is not null)
                .OrderByDescending(s => s.FullSpan.End),
        ];
        foreach (StatementSyntax statement in statements)
        {
            string comment = CommentOf(statement)!;
            string[] values = [.. ValuesOf(statement)];
            if (values.Length > 0 && example.Code.Contains(statement.ToString(), StringComparison.Ordinal))
            {
                text.Insert(
                    statement.FullSpan.End,
                    $"Heard.By({number}, {SymbolDisplay.FormatLiteral(comment[2..].Trim(), true)}, [{string.Join(", ", values)}]);\n"
                );
            }
        }

        return CSharpSyntaxTree.ParseText(text.ToString());
    }

    private static string? CommentOf(StatementSyntax statement) => BehindOf(statement) ?? BelowOf(statement);

    /// <summary>The lines below that begin with "...": what a text holds.</summary>
    private static string? BelowOf(StatementSyntax statement)
    {
        string[] lines =
        [
            .. statement
                .GetLastToken()
                .GetNextToken()
                .LeadingTrivia.Where(t => t.IsKind(SyntaxKind.SingleLineCommentTrivia))
                .Select(t => t.ToString()),
        ];
        return statement is LocalDeclarationStatementSyntax && lines is ["// ...", ..]
            ? "// \"" + string.Join(" ... ", lines.Select(l => l[2..].Trim())) + '"'
            : null;
    }

    private static string? BehindOf(StatementSyntax statement) =>
        statement is LocalDeclarationStatementSyntax or ExpressionStatementSyntax
        && statement.GetLastToken().TrailingTrivia.FirstOrDefault(t => t.IsKind(SyntaxKind.SingleLineCommentTrivia))
            is { RawKind: not 0 } trivia
            ? trivia.ToString()
            : null;

    private static IEnumerable<string> ValuesOf(StatementSyntax statement) =>
        statement switch
        {
            LocalDeclarationStatementSyntax declaration => declaration.Declaration.Variables.Select(v =>
                v.Identifier.Text
            ),
            ExpressionStatementSyntax { Expression: AssignmentExpressionSyntax assignment } => NamesOf(assignment.Left),
            ExpressionStatementSyntax { Expression: InvocationExpressionSyntax call }
                when call.Expression.ToString() == "Console.WriteLine" && call.ArgumentList.Arguments.Count == 1 =>
            [
                call.ArgumentList.Arguments[0].ToString(),
            ],
            _ => [],
        };

    private static IEnumerable<string> NamesOf(ExpressionSyntax left) =>
        left switch
        {
            TupleExpressionSyntax tuple => tuple.Arguments.SelectMany(a => NamesOf(a.Expression)),
            DeclarationExpressionSyntax { Designation: SingleVariableDesignationSyntax one } => [one.Identifier.Text],
            DeclarationExpressionSyntax { Designation: ParenthesizedVariableDesignationSyntax more } => more
                .Variables.OfType<SingleVariableDesignationSyntax>()
                .Select(v => v.Identifier.Text),
            IdentifierNameSyntax name when name.Identifier.Text != "_" => [name.Identifier.Text],
            _ => [],
        };
}
