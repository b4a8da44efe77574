using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

/// <summary>A committed notebook, and what its cells show when they are run from top to bottom.</summary>
internal sealed class Notebook
{
    public const string Folder = "samples/notebooks";

    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        IndentSize = 1,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly JsonNode _document;

    private Notebook(string path, JsonNode document)
    {
        Path = path;
        _document = document;
    }

    /// <summary>Path below the top of the repository.</summary>
    public string Path { get; }

    public IEnumerable<JsonNode> CodeCells => Cells(_document).Where(IsCode);

    /// <summary>Every output of every cell as its one text, HTML or Markdown, in order.</summary>
    public IEnumerable<string> Shown => CodeCells.SelectMany(c => c["outputs"]!.AsArray())
        .Select(o => string.Concat(o!["data"]!.AsObject().Single().Value!.AsArray().Select(l => (string)l!)));

    public static Notebook Committed(string name)
    {
        string path = $"{Folder}/{name}";
        return new Notebook(path, JsonNode.Parse(File.ReadAllText(RepositoryFiles.PathOf(path)))!);
    }

    /// <summary>Runs every cell in a new kernel, from top to bottom, and gives the notebook with what they showed.</summary>
    public async Task<Notebook> RunAsync()
    {
        string ran = System.IO.Path.GetTempFileName();
        CommandResult run = await Command.DotnetAsync(Folder, "repl", "--run", System.IO.Path.GetFileName(Path),
            "--exit-after-run", "--output-format", "ipynb", "--output-path", ran);
        JsonNode result = JsonNode.Parse(await File.ReadAllTextAsync(ran))!;
        File.Delete(ran);
        IEnumerable<JsonNode?> errors = Cells(result).Where(IsCode).SelectMany(c => c["outputs"]!.AsArray()).Where(o => o!["evalue"] is not null);
        Assert.True(run.ExitStatus == 0, $"{run.Errors}{string.Join('\n', errors.Select(e => (string?)e!["evalue"]))}");

        JsonNode document = _document.DeepClone();
        foreach ((JsonNode cell, JsonNode after) in Cells(document).Zip(Cells(result)).Where(c => IsCode(c.First)))
        {
            cell["outputs"] = new JsonArray([.. after["outputs"]!.AsArray().Where(o => !TellsOfLoading(o!)).Select(o => o!.DeepClone())]);
        }

        return new Notebook(Path, document);
    }

    public override string ToString() => _document.ToJsonString(Layout) + "\n";

    private static IEnumerable<JsonNode> Cells(JsonNode document) => document["cells"]!.AsArray().Select(c => c!);

    private static bool IsCode(JsonNode cell) => (string)cell["cell_type"]! == "code";

    // How long loading took, and from which folder, is another on every machine.
    private static bool TellsOfLoading(JsonNode output) =>
        output.ToJsonString(Layout) is string text
        && (text.Contains("<strong>Install", StringComparison.Ordinal) || text.Contains("Loading extension script", StringComparison.Ordinal));
}
