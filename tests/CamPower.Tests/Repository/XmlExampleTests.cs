using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using UnitsNet;

namespace CamPower.Tests.Repository;

/// <summary>The examples of XML comments are C#, and what they call is there.</summary>
/// <remarks>They are pieces that no compiler sees: they use things that the reader has. So a rename passes them by, or hits a word that it must not.</remarks>
public partial class XmlExampleTests
{
    // What examples use of .NET and the sources do not.
    private static readonly string[] OfDotNet = ["Console", "WriteLine", "ReadAllText", "WriteAllText", "FileStream"];

    private static readonly CSharpParseOptions Program = new(LanguageVersion.Latest), Script = Program.WithKind(SourceCodeKind.Script);

    [Fact]
    public void Examples_AreCSharp() => Assert.Empty(
        from example in Examples()
        let error = ErrorIn(example.Code, Program)
        where error is not null && ErrorIn(example.Code, Script) is not null
        select $"{example.File}: {error}: {example.Code}");

    [Fact]
    public void ErrorOfAnExample_IsFound() => Assert.NotNull(ErrorIn("Heat heat = installation method.Heat(ambient);", Program));

    [Fact]
    public void Examples_NameOnlyWhatIsThere()
    {
        HashSet<string> known = [.. OfDotNet, .. OfUnits(), .. RepositoryFiles.Under("src", ".cs").SelectMany(File.ReadLines).Where(IsCode).SelectMany(NamesIn)];
        Assert.Empty(
            from example in Examples()
            from token in CSharpSyntaxTree.ParseText(example.Code, Program).GetRoot().DescendantTokens()
            where token.IsKind(SyntaxKind.IdentifierToken) && char.IsUpper(token.Text[0])
            where !known.Contains(token.Text) && !example.Code.Contains($"class {token.Text}", StringComparison.Ordinal)
            select $"{example.File}: {token.Text}");
    }

    [Fact]
    public void Examples_AreFound() => Assert.InRange(Examples().Count(), 150, 1000);

    private static string? ErrorIn(string code, CSharpParseOptions options) => CSharpSyntaxTree.ParseText(code, options).GetDiagnostics()
        .FirstOrDefault(d => d.Severity == DiagnosticSeverity.Error)?.GetMessage(null);

    private static bool IsCode(string line) => !line.TrimStart().StartsWith("//", StringComparison.Ordinal);

    private static IEnumerable<string> NamesIn(string line) => Name().Matches(line).Select(match => match.Value);

    private static IEnumerable<string> OfUnits() => typeof(Length).Assembly.GetExportedTypes()
        .SelectMany(type => type.GetMembers().Select(member => member.Name).Append(type.Name));

    private static IEnumerable<(string File, string Code)> Examples() =>
        from file in RepositoryFiles.Under("src", ".cs")
        let comments = string.Join('\n', File.ReadLines(file).Select(line => line.Trim()).Where(line => line.StartsWith("///", StringComparison.Ordinal))
            .Select(line => line[3..]))
        from Match example in Block().Matches(comments)
        select (Path.GetRelativePath(RepositoryFiles.Root, file), WebUtility.HtmlDecode(example.Groups[1].Value));

    [GeneratedRegex(@"\b[A-Z]\w*")]
    private static partial Regex Name();

    [GeneratedRegex("<code>(.*?)</code>", RegexOptions.Singleline)]
    private static partial Regex Block();
}
