using System.Collections.Generic;

namespace FleetCheck;

/// <summary>What the command line asks for.</summary>
internal sealed record Arguments
{
    internal const string Help = """
        Usage: FleetCheck [folder | file | -] [--sites FILE]

        Checks many sites on all cores and prints what was found by rule, and the worst sites.
        A folder has a site file in each *.json; a file, or standard input (-), one on each line.
        Without either it checks the fleet that comes with it.

          --sites FILE   write a row of CSV for each site, in their order

        Exit status: 0 for notes at most, 1 for cautions, 2 for failures or danger,
        3 if a site could not be checked or the arguments are wrong, 130 if stopped.
        """;

    /// <summary>Folder or file; a dash is standard input; null is the fleet that comes with the program.</summary>
    public string? Path { get; private init; }

    /// <summary>Where the rows of the sites are written to.</summary>
    public string? SitesPath { get; private init; }

    public bool IsHelp { get; private init; }

    /// <summary>What is wrong with the command line.</summary>
    public string? Error { get; private init; }

    internal static Arguments Read(IReadOnlyList<string> given)
    {
        var read = new Arguments();
        for (int i = 0; i < given.Count; i++)
        {
            switch (given[i])
            {
                case "--help" or "-h": return read with { IsHelp = true };
                case "--sites" when i + 1 < given.Count: read = read with { SitesPath = given[++i] }; break;
                case "--sites": return read with { Error = "--sites needs the name of a file" };
                case ['-', _, ..]: return read with { Error = $"Unknown option: {given[i]}" };
                default:
                    if (read.Path is not null) return read with { Error = $"One folder or file is checked, not also {given[i]}" };
                    read = read with { Path = given[i] };
                    break;
            }
        }

        return read;
    }
}
