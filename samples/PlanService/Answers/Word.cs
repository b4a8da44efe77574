using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace PlanService.Answers;

/// <summary>A member of an enumeration as words: small letters and hyphens.</summary>
internal static class Word
{
    public static string Of<T>(T member)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(member.ToString());

    /// <summary>Each flag that is set, as words.</summary>
    public static IReadOnlyList<string> OfFlags<T>(T flags)
        where T : struct, Enum => [.. Enum.GetValues<T>().Where(flag => !flag.Equals(default(T)) && flags.HasFlag(flag)).Select(Of)];
}
