using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Faults;

/// <summary>A folder of decks, written by hand, and what ngspice once answered to them.</summary>
internal sealed class DeckFolder(string folder)
{
    private const string Measured = "meas tran ", Printed = "print ";

    internal string Results => folder + "/results.csv";

    internal IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateFiles(RepositoryFiles.PathOf(folder), "*.cir").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    internal string PathOf(string name) => RepositoryFiles.PathOf($"{folder}/{name}.cir");

    /// <summary>What a deck prints or measures, by the name that the simulator writes before it.</summary>
    internal IReadOnlyList<string> ValuesOf(string name) => [.. File.ReadLines(PathOf(name)).SelectMany(line =>
        line.StartsWith(Measured, StringComparison.Ordinal) ? [line[Measured.Length..].Split(' ')[0]]
        : line.StartsWith(Printed, StringComparison.Ordinal) ? line[Printed.Length..].Split(' ') : Array.Empty<string>())];

    /// <summary>A committed answer.</summary>
    internal double Read(string name, string value) => double.Parse(File.ReadLines(RepositoryFiles.PathOf(Results))
        .Select(line => line.Split(';')).Single(cells => cells[0] == name && cells[1] == value)[2], CultureInfo.InvariantCulture);

    internal static string Line(string name, string value, double number) => FormattableString.Invariant($"{name};{value};{number:E12}\n");
}
