using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Reflection;
using System.Text;
using UnitsNet;

namespace CamPower.Tests.Repository;

/// <summary>The page of sources, made from what the assembly declares.</summary>
internal static class SourcesPage
{
    private const BindingFlags AnyStatic = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Assembly Library = typeof(Citation).Assembly;

    /// <summary>Every public static <see cref="Citation"/> of <see cref="Sources"/>, by member name.</summary>
    public static IReadOnlyList<(string Member, Citation Value)> Citations { get; } = [.. MembersOf<Citation>(typeof(Sources))];

    /// <summary>Every static <see cref="CitedValue"/> of the assembly, internal ones too, by type and member name.</summary>
    public static IReadOnlyList<(string Member, CitedValue Value)> Values { get; } =
        [.. Library.GetTypes().OrderBy(t => t.FullName, StringComparer.Ordinal).SelectMany(MembersOf<CitedValue>)];

    public static string Text()
    {
        var page = new StringBuilder("""
            # Sources

            Every publication and convention that the package's constants, limits and formulas come from, and every
            constant that it uses. This page is made from the code by the tests; do not edit it (see DEVELOPERS.md).

            Kinds: *standard* and *handbook* are published; *textbook* is a law of physics or a result that any textbook
            states; *common practice* is a convention of the trade that no published source backs; *from memory* is said to
            be in a publication, but was not checked against the print; *declared* is stated by the author of the model.

            ## Publications and conventions

            | name | source | edition | where | kind |
            | --- | --- | --- | --- | --- |

            """.ReplaceLineEndings("\n"));
        foreach ((string member, Citation source) in Citations)
        {
            Row(page, $"`{member}`", source.Title, source.Edition ?? "", source.Locator ?? "", Words(source.Kind));
        }

        page.Append("\n## Constants and limits\n\n| member | what | value | unit | source | kind |\n| --- | --- | ---: | --- | --- | --- |\n");
        foreach ((string member, CitedValue value) in Values)
        {
            Row(page, $"`{member}`", value.Name, value.Value.ToString("G9", CultureInfo.InvariantCulture), value.Unit,
                value.Source.ToString(), Words(value.Source.Kind));
        }

        page.Append("\n## Gates of fuses\n\n| fuses | current over rated | not before | not after | source | kind |\n| --- | ---: | ---: | ---: | --- | --- |\n");
        foreach ((string member, FuseCharacteristic fuses) in MembersOf<FuseCharacteristic>(typeof(FuseCharacteristic)))
        {
            foreach (FuseTimeLimit gate in fuses.TimeLimits)
            {
                Row(page, $"`{member}`", gate.Multiple.ToString("G9", CultureInfo.InvariantCulture), Seconds(gate.NotBefore), Seconds(gate.NotAfter),
                    gate.Source.ToString(), Words(gate.Source.Kind));
            }
        }

        return page.ToString();
    }

    private static IEnumerable<(string Member, T Value)> MembersOf<T>(Type type) where T : class => type
        .GetProperties(AnyStatic)
        .Where(p => p.PropertyType == typeof(T) && p.GetIndexParameters().Length == 0)
        .OrderBy(p => p.Name, StringComparer.Ordinal)
        .Select(p => (type == typeof(Sources) ? p.Name : $"{type.Name}.{p.Name}", (T)p.GetValue(null)!));

    private static void Row(StringBuilder page, params string[] cells) =>
        page.Append("| ").AppendJoin(" | ", cells.Select(c => c.Replace("|", "\\|", StringComparison.Ordinal))).Append(" |\n");

    private static string Seconds(Duration? time) =>
        time is Duration given ? given.Seconds.ToString("G9", CultureInfo.InvariantCulture) + " s" : "";

    private static string Words(CitationKind kind) => kind switch
    {
        CitationKind.CommonPractice => "common practice",
        CitationKind.FromMemory => "from memory",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
