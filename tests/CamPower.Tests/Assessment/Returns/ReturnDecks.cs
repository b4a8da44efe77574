using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>The decks of the sites whose return currents divide, and what ngspice once answered to them.</summary>
internal static class ReturnDecks
{
    internal const string Results = Folder + "/results.csv";

    private const string Folder = "tests/CamPower.Tests/Assessment/Returns/Ngspice";

    internal static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateFiles(RepositoryFiles.PathOf(Folder), "*.cir").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    internal static string PathOf(string name) => RepositoryFiles.PathOf($"{Folder}/{name}.cir");

    /// <summary>The nodes that a deck prints.</summary>
    internal static IReadOnlyList<string> NodesOf(string name) =>
        [.. File.ReadLines(PathOf(name)).Single(l => l.StartsWith("print ", StringComparison.Ordinal)).Split(' ').Skip(1).Select(v => v[2..^1])];

    /// <summary>The committed voltages of a deck by node. [V]</summary>
    internal static Dictionary<string, double> Read(string name) => File.ReadLines(RepositoryFiles.PathOf(Results))
        .Select(line => line.Split(';'))
        .Where(cells => cells[0] == name)
        .ToDictionary(cells => cells[1], cells => double.Parse(cells[2], CultureInfo.InvariantCulture), StringComparer.Ordinal);

    internal static string Line(string name, string node, double volts) => FormattableString.Invariant($"{name};{node};{volts:E14}\n");
}
