using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>The committed decks, and what ngspice once answered to them.</summary>
internal static class NgspiceFiles
{
    internal const string Decks = Folder + "/decks.cir", Results = Folder + "/results.csv";

    private const string Folder = "tests/CamPower.Tests/Circuits/Networks/Ngspice";

    /// <summary>Voltage by name of the case and of the node, with a semicolon between. [V]</summary>
    internal static Dictionary<string, double> Read() => File.ReadAllLines(RepositoryFiles.PathOf(Results))
        .Select(line => line.Split(';'))
        .ToDictionary(cells => Key(cells[0], cells[1]), cells => double.Parse(cells[2], CultureInfo.InvariantCulture), StringComparer.Ordinal);

    internal static string Key(string name, string node) => $"{name};{node}";

    internal static string Line(string name, string node, double volts) => FormattableString.Invariant($"{Key(name, node)};{volts:E12}\n");
}
