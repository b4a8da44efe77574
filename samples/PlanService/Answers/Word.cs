using System;
using System.Text;

namespace PlanService.Answers;

/// <summary>A member of an enumeration as words: small letters and hyphens.</summary>
internal static class Word
{
    public static string Of<T>(T member)
        where T : struct, Enum
    {
        var word = new StringBuilder();
        foreach (char c in member.ToString())
        {
            if (char.IsUpper(c) && word.Length > 0) word.Append('-');
            word.Append(char.ToLowerInvariant(c));
        }

        return word.ToString();
    }
}
