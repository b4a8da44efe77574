using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.Text;

namespace CamPower.Mutants;

/// <summary>Reads the mutants that change a number or a verdict from Stryker's report.</summary>
internal static partial class StrykerReport
{
    private const string Sources = "src/CamPower/";

    /// <summary>The mutants of a report, in its order; those that did not compile are not in the library, and are counted apart.</summary>
    public static (IReadOnlyList<Mutant> Mutants, IReadOnlyDictionary<string, int> NotBuilt) Read(string path)
    {
        using JsonDocument report = JsonDocument.Parse(File.ReadAllText(path));
        var mutants = new List<Mutant>();
        var notBuilt = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (JsonProperty file in report.RootElement.GetProperty("files").EnumerateObject())
        {
            string name = file.Name.Replace('\\', '/');
            name = name[(name.LastIndexOf(Sources, StringComparison.Ordinal) + Sources.Length)..];
            string room = name[..Math.Max(0, name.IndexOf('/', StringComparison.Ordinal))];
            SourceText source = SourceText.From(file.Value.GetProperty("source").GetString()!);
            foreach (JsonElement found in file.Value.GetProperty("mutants").EnumerateArray().Where(ChangesNumberOrVerdict))
            {
                if (found.GetProperty("status").GetString() == "CompileError") notBuilt[room] = notBuilt.GetValueOrDefault(room) + 1;
                else mutants.Add(MutantIn(name, room, source, found));
            }
        }

        return (mutants, notBuilt);
    }

    // Arithmetic, comparison and logic, whatever form they take; not wording, nor statements and blocks left out.
    [GeneratedRegex(@"^(Arithmetic|Equality|Logical|Boolean|Bitwise|Conditional|Negate|Math|Is |Relational)"
        + @"|(Minus|Plus|Not|Increment|Decrement|Assignment)Expression"
        + @"|^Linq method mutation \((Min|Max|MinBy|MaxBy|Sum|Average|Any|All)\(")]
    private static partial Regex Kinds();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    private static bool ChangesNumberOrVerdict(JsonElement mutant) => Kinds().IsMatch(mutant.GetProperty("mutatorName").GetString()!);

    private static Mutant MutantIn(string file, string room, SourceText source, JsonElement found)
    {
        JsonElement location = found.GetProperty("location");
        TextSpan span = TextSpan.FromBounds(Position(source, location.GetProperty("start")), Position(source, location.GetProperty("end")));
        return new Mutant(
            int.Parse(found.GetProperty("id").GetString()!, System.Globalization.CultureInfo.InvariantCulture),
            room, file, location.GetProperty("start").GetProperty("line").GetInt32(),
            OneLine(source.ToString(span)), OneLine(found.GetProperty("replacement").GetString()!));
    }

    private static int Position(SourceText source, JsonElement at) =>
        source.Lines[at.GetProperty("line").GetInt32() - 1].Start + at.GetProperty("column").GetInt32() - 1;

    private static string OneLine(string text) => Space().Replace(text, " ").Trim();
}
