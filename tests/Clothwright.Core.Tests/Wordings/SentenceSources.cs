using System.Globalization;
using System.Text.RegularExpressions;
using Clothwright.TestKit;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Clothwright.Core.Tests.Wordings;

/// <summary>Finds in the sources every text that a person may be told, as the compiler's own reader sees it.</summary>
internal static partial class SentenceSources
{
    // What these take is compared, looked up or formatted with, never told.
    private static readonly HashSet<string> Comparing =
    [
        "ToString", "StartsWith", "EndsWith", "Contains", "Split", "IndexOf", "Equals", "Replace", "TrimEnd", "Trim", "TrimStart", "Rows", "Lines", "TryGetValue",
        "GetProperty", "Published", "Standard", "FromMemoryOf", "nameof", "Under", "Skip", "Twill", "Number", "NumberOrNone", "Numbers", "Choice", "Text", "Read",
        "ThrowIfLessThan", "ThrowIfGreaterThan", "InvalidOperationException", "UnreachableException",
    ];

    /// <summary>Every pattern in a folder of the sources, each sentence by itself.</summary>
    /// <param name="folder">The folder below <c>src</c>, for example <c>Clothwright.Core</c>.</param>
    /// <param name="aside">Whether a file holds nothing that is told.</param>
    public static IEnumerable<SaidSentence> In(string folder, Func<string, bool> aside)
    {
        string root = Repository.PathOf("src");
        foreach (string path in Directory.GetFiles(Path.Combine(root, folder), "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            string file = Path.GetRelativePath(root, path).Replace('\\', '/');
            if (aside(file)) continue;
            foreach (SyntaxNode node in CSharpSyntaxTree.ParseText(File.ReadAllText(path)).GetRoot().DescendantNodes())
            {
                if (!IsText(node) || IsPartOfLonger(node) || IsAside(node)) continue;
                foreach (string sentence in SentenceSplit.Of(Pattern(node)).Where(HasWord))
                {
                    yield return new SaidSentence(sentence, file, MachineName().IsMatch(sentence) || IsPlaceOfProblem(node));
                }
            }
        }
    }

    private static bool HasWord(string pattern) => Place().Replace(pattern, "").Count(char.IsLetter) > 1;

    private static bool IsText(SyntaxNode node) => node switch
    {
        LiteralExpressionSyntax literal => literal.IsKind(SyntaxKind.StringLiteralExpression),
        InterpolatedStringExpressionSyntax => true,
        BinaryExpressionSyntax sum => sum.IsKind(SyntaxKind.AddExpression) && (IsText(sum.Left) || IsText(sum.Right)),
        _ => false,
    };

    private static bool IsPartOfLonger(SyntaxNode node) => node.Parent is BinaryExpressionSyntax sum && IsText(sum);

    // The second argument of a problem or a warning says where, by a path.
    private static bool IsPlaceOfProblem(SyntaxNode node) =>
        node.Parent is ArgumentSyntax { Parent: ArgumentListSyntax { Parent: ObjectCreationExpressionSyntax made } arguments } argument
        && made.Type.ToString() switch
        {
            "InputProblem" => arguments.Arguments.IndexOf(argument) == 1,
            "PlanWarning" => arguments.Arguments.IndexOf(argument) < 2,
            _ => false,
        };

    private static bool IsAside(SyntaxNode node)
    {
        for (SyntaxNode at = node; at.Parent is { } parent; at = parent)
        {
            switch (parent)
            {
                case AttributeSyntax or PatternSyntax or CaseSwitchLabelSyntax or BracketedArgumentListSyntax:
                case BinaryExpressionSyntax { RawKind: (int)SyntaxKind.EqualsExpression or (int)SyntaxKind.NotEqualsExpression }:
                case ThrowExpressionSyntax or ThrowStatementSyntax when !parent.ToString().Contains("InputProblem", StringComparison.Ordinal):
                case AnonymousFunctionExpressionSyntax when parent.Parent is AssignmentExpressionSyntax { Left: IdentifierNameSyntax { Identifier.Text: "ImpliedBy" } }:
                case ArgumentListSyntax { Parent: InvocationExpressionSyntax call } when Comparing.Contains(Called(call)) && at == FirstOf(parent, call):
                case CollectionExpressionSyntax { Parent: ArgumentSyntax { Parent: ArgumentListSyntax { Parent: ImplicitObjectCreationExpressionSyntax } } } when at is ExpressionElementSyntax { Expression: LiteralExpressionSyntax }:
                    return true;
                case StatementSyntax or MemberDeclarationSyntax:
                    return false;
            }
        }

        return false;
    }

    private static string Called(InvocationExpressionSyntax call) => call.Expression switch
    {
        MemberAccessExpressionSyntax member => member.Name.Identifier.Text,
        IdentifierNameSyntax name => name.Identifier.Text,
        _ => "",
    };

    // Of a parameter of a weave the first argument is its key, the others are told; of the rest nothing is.
    private static ArgumentSyntax? FirstOf(SyntaxNode arguments, InvocationExpressionSyntax call)
    {
        ArgumentListSyntax list = (ArgumentListSyntax)arguments;
        return call.Expression.ToString().StartsWith("WeaveParameter.", StringComparison.Ordinal)
            ? list.Arguments[0]
            : list.Arguments.FirstOrDefault(a => a.Span.Contains(call.ArgumentList.Arguments.FirstOrDefault()?.Span ?? default));
    }

    private static string Pattern(SyntaxNode node)
    {
        var text = new System.Text.StringBuilder();
        int place = 0;
        Write(node);
        return text.ToString();

        void Write(SyntaxNode part)
        {
            switch (part)
            {
                case LiteralExpressionSyntax literal when IsText(literal):
                    text.Append(literal.Token.ValueText);
                    break;
                case InterpolatedStringExpressionSyntax interpolated:
                    foreach (InterpolatedStringContentSyntax content in interpolated.Contents)
                    {
                        if (content is InterpolatedStringTextSyntax words) text.Append(words.TextToken.ValueText.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal));
                        else text.Append(CultureInfo.InvariantCulture, $"{{{place++}}}");
                    }

                    break;
                case BinaryExpressionSyntax sum when IsText(sum):
                    Write(sum.Left);
                    Write(sum.Right);
                    break;
                default:
                    text.Append(CultureInfo.InvariantCulture, $"{{{place++}}}");
                    break;
            }
        }
    }

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Place();

    // A colour (#3b7a78), an id (goose-eye), a path (pieces[{0}].width) or a key (warpTakeUp).
    [GeneratedRegex(@"^#[0-9a-f]{6}$|^[^\s]*([a-z}][A-Z]|\[|\w\.\w|[a-z]-[a-z])[^\s]*$")]
    private static partial Regex MachineName();
}
