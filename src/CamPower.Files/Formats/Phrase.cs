using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;

namespace CamPower.Files.Formats;

/// <summary>Small pieces of messages.</summary>
internal static partial class Phrase
{
    private const int Longest = 60, Digits = 9;

    /// <summary>"a, b or c".</summary>
    internal static string List(IEnumerable<string> words, string conjunction)
    {
        string[] all = [.. words];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {conjunction} {all[^1]}";
    }

    /// <summary>A text of the file between quotes, cut where it is long.</summary>
    internal static string Quoted(string text) => text.Length <= Longest ? $"'{text}'" : $"'{text[..Longest]}...'";

    /// <summary>The message about a comma in a number.</summary>
    internal static string Comma(string text, string unit) =>
        $"{Quoted(text)} has a comma: write a decimal point, as in 1.5 {unit}, and nothing between thousands";

    /// <summary>"; did you mean 'x'?", or nothing where no known name is near.</summary>
    internal static string DidYouMean(string name, IEnumerable<string> known) =>
        NearestName.Of(name, known) is string nearest ? $"; did you mean {Quoted(nearest)}?" : string.Empty;

    /// <summary>A message about a share as the file writes it: in percent where the text is.</summary>
    internal static string InUnitsOf(string? text, string message) => text?.TrimEnd().EndsWith('%') == true
        ? Bare().Replace(message, number => InPercent(double.Parse(number.Value, CultureInfo.InvariantCulture)))
        : message;

    private static string InPercent(double share) => $"{Number.Text(Math.Round(100 * share, Digits))} %";

    [GeneratedRegex(@"(?<=(must be from|to|but is|above|at least|at most) )-?[0-9.]+(E[-+][0-9]+)?(?=,|\.?$| to )",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Bare();

    /// <summary>The library's message in the words of the file, without what the framework adds.</summary>
    /// <param name="e">The library's exception.</param>
    /// <param name="member">What the file calls the parameter; null where it has no word for it.</param>
    internal static string MessageOf(ArgumentException e, string? member = null)
    {
        int tail = e.Message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        string message = (tail < 0 ? e.Message : e.Message[..tail]).TrimEnd('.');
        bool namesParameter = e.ParamName is not null && message.StartsWith(e.ParamName + " ", StringComparison.Ordinal);
        return namesParameter && member is not null ? member + message[e.ParamName!.Length..] : message;
    }
}
