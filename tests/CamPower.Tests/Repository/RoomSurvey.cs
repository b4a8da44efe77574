using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace CamPower.Tests.Repository;

/// <summary>Compiles a set of sources and tells which rooms each file uses, method bodies included.</summary>
/// <remarks>The room of a file is the first folder of its path. Documentation comments do not count: a word about
/// a room further down is no dependency.</remarks>
internal sealed class RoomSurvey
{
    private static readonly CSharpParseOptions ParseOptions = new(LanguageVersion.Latest, preprocessorSymbols: ["NET", "NET10_0_OR_GREATER"]);

    private readonly CSharpCompilation _compilation;

    /// <summary>Reads sources, each with its path below the package's folder.</summary>
    public RoomSurvey(IEnumerable<(string Path, string Text)> sources)
    {
        var trees = sources.Select(s => CSharpSyntaxTree.ParseText(s.Text, ParseOptions, s.Path.Replace('\\', '/')));
        _compilation = CSharpCompilation.Create("Survey", trees, References(),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
    }

    /// <summary>The sources of the package.</summary>
    public static RoomSurvey OfThePackage()
    {
        string folder = RepositoryFiles.PathOf("src/CamPower");
        return new RoomSurvey(Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Select(file => (Path.GetRelativePath(folder, file), File.ReadAllText(file)))
            .Where(s => RoomOf(s.Item1.Replace('\\', '/')) is not ("obj" or "bin")));
    }

    /// <summary>What keeps the sources from compiling; the survey is blind to what does not.</summary>
    public IEnumerable<string> Errors => _compilation.GetDiagnostics()
        .Where(d => d.Severity == DiagnosticSeverity.Error).Select(d => d.ToString());

    /// <summary>Files that lie in no room.</summary>
    public IEnumerable<string> Homeless => _compilation.SyntaxTrees.Select(t => t.FilePath)
        .Where(path => !Rooms.Exists(RoomOf(path)) && !Rooms.Plumbing.Contains(RoomOf(path)));

    /// <summary>Types whose namespace is neither the package's nor their room's own.</summary>
    public IEnumerable<string> Misnamed =>
        from tree in InRooms()
        from declared in tree.GetRoot().DescendantNodes().OfType<BaseNamespaceDeclarationSyntax>()
        let name = declared.Name.ToString()
        where name != "CamPower" && name != "CamPower." + RoomOf(tree.FilePath)
        select $"{tree.FilePath} declares {name}";

    /// <summary>Every use of a room that lies further down, or on the same row.</summary>
    public IEnumerable<string> ArrowsDown => InRooms().SelectMany(ArrowsDownFrom);

    private IEnumerable<SyntaxTree> InRooms() => _compilation.SyntaxTrees.Where(t => Rooms.Exists(RoomOf(t.FilePath)));

    private IEnumerable<string> ArrowsDownFrom(SyntaxTree tree)
    {
        SemanticModel model = _compilation.GetSemanticModel(tree);
        string room = RoomOf(tree.FilePath);
        return tree.GetRoot().DescendantNodes()
            .SelectMany(node => TypesUsed(model, node))
            .SelectMany(type => type.DeclaringSyntaxReferences.Select(r => (type.Name, Room: RoomOf(r.SyntaxTree.FilePath))))
            .Where(used => Rooms.Exists(used.Room) && !Rooms.MayUse(room, used.Room))
            .Distinct()
            .Select(used => $"{tree.FilePath} uses {used.Name} of {used.Room}");
    }

    // The type of an expression counts as well as what its names stand for: 'var' hides nothing.
    private static IEnumerable<INamedTypeSymbol> TypesUsed(SemanticModel model, SyntaxNode node)
    {
        if (node is not ExpressionSyntax) yield break;
        ISymbol? symbol = model.GetSymbolInfo(node).Symbol;
        if ((symbol as INamedTypeSymbol ?? symbol?.ContainingType) is { } named) yield return named.OriginalDefinition;
        if (model.GetTypeInfo(node).Type is INamedTypeSymbol type) yield return type.OriginalDefinition;
    }

    private static string RoomOf(string path) => path.Contains('/', StringComparison.Ordinal) ? path[..path.IndexOf('/', StringComparison.Ordinal)] : "";

    // What this very test runs on, less the package itself, which is compiled from its sources.
    private static IEnumerable<MetadataReference> References() => ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
        .Split(Path.PathSeparator)
        .Where(path => !Path.GetFileName(path).StartsWith("CamPower", StringComparison.Ordinal))
        .Select(path => MetadataReference.CreateFromFile(path));
}
