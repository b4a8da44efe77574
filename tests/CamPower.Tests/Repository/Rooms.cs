using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Repository;

/// <summary>The rooms of the package in their order: a room may use itself and the rows above it, nothing else.</summary>
internal static class Rooms
{
    /// <summary>Rows from top to bottom. Rooms on one row do not know each other.</summary>
    private static readonly string[][] Rows =
    [
        ["Quantities"], ["Citations"], ["Working"], ["Conductors"], ["Protection"], ["Loads"], ["Circuits"], ["Supplies"],
        ["Sites"], ["Heat"], ["Assessment"], ["Faults"], ["Mains", "Backup"], ["Checks"], ["Tolerance"], ["Commissioning"], ["Studies"],
    ];

    private static readonly Dictionary<string, int> RowOf = Rows
        .SelectMany((rooms, row) => rooms.Select(room => (room, row)))
        .ToDictionary(r => r.room, r => r.row, StringComparer.Ordinal);

    /// <summary>Folders that hold no types of ours: what a target framework lacks, and the lists of the public API.</summary>
    public static readonly IReadOnlySet<string> Plumbing = new HashSet<string>(StringComparer.Ordinal) { "Compatibility", "PublicAPI" };

    public static bool Exists(string room) => RowOf.ContainsKey(room);

    public static bool MayUse(string room, string used) => room == used || RowOf[used] < RowOf[room];
}
