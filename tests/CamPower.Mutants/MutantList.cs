using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;

namespace CamPower.Mutants;

/// <summary>A list of mutants: one a line, with tabs between file, line, original, mutated and, where asked for, a reason.</summary>
/// <remarks>Lines of a file move, so that a mutant is known by its file and its two texts. A line with # is a comment.</remarks>
internal sealed class MutantList
{
    public static readonly MutantList Empty = new([]);

    private readonly HashSet<(string File, string Original, string Mutated)> _mutants;

    private MutantList(IEnumerable<(string File, string Original, string Mutated)> mutants) => _mutants = [.. mutants];

    public static MutantList Read(string path, bool withReason) =>
        new(File.ReadLines(path).Where(l => l.Length > 0 && l[0] != '#').Select(l => Parse(l, withReason)));

    public bool Holds(Mutant mutant) => _mutants.Contains((mutant.File, mutant.Original, mutant.Mutated));

    private static (string File, string Original, string Mutated) Parse(string line, bool withReason)
    {
        string[] fields = line.Split('\t');
        if (fields.Length < (withReason ? 5 : 4) || fields.Any(string.IsNullOrWhiteSpace))
        {
            string reason = withReason ? " and a reason" : "";
            throw new InvalidOperationException($"A mutant wants file, line, original, mutated{reason}: {line}");
        }

        return (fields[0], fields[2], fields[3]);
    }
}
