using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;

namespace CamPower.Tests.Checks;

/// <summary>The measurable part of the rules for our sentences: their length, and words that are not used.</summary>
internal static class Wording
{
    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    // What is not said, and what is said instead.
    private static readonly (Regex Not, string But)[] Words =
    [
        .. new (string Not, string But)[]
        {
            (@"\b(thick|thin|thicker|thinner|thickest|thinnest)\b", "large, small; larger, smaller conductor"),
            (@"\bclear(s|ed|ing)?\b", "operates, opens"),
            (@"\bstands?\b|\bstood\b", "withstands, is"),
            (@"\bfor good\b", "continuously"),
            (@"\bdeclar\w*", "states, not stated"),
            (@"\b(nobody|somebody|whoever)\b", "not stated, unknown"),
            (@"\bfor want of\b", "because ... is not stated"),
            (@"\brails?\b|\bdrag\w*", "supply voltage, dip, collapse"),
            (@"(?<!ground-loop )\bhum on\b", "ground-loop hum"),
            (@"\bmost power\b", "maximum power"),
            (@"\btimed current\b|\b(least|greatest) resistance\b", "test current; minimum, maximum resistance"),
            (@"\binlets?\b|\boutlets?\b", "input, receptacle, output"),
            (@"\btouchable\b", "accessible"),
            (@"\bhow it lies\b|\blaying\b|\blies\b", "installation method"),
            (@"\bshare of\b", "percent of"),
            (@"\bsees?\b", "gets"),
            (@"\bwould\b|\blast word\b|\bno more\b|\bany more\b|\bfor ever\b", "present tense, plain words"),
            (@"\bovercurrent device\b", "overcurrent protective device"),
            (@"(?<!protective )\bdevices? (of (a )?(higher|lower)|(that )?(interrupt|open|operate|trip|melt)s?\b)", "fuse, " +
                "resettable fuse or protective device"),
            (@"\b1 (devices|outputs|boxes|runs|cameras|shields)\b", "singular"),
            (@"\s\s|\s[.,;]|\.\.|;\.", "one space, one mark"),
        }.Select(pair => (new Regex(pair.Not, Options), pair.But)),
    ];

    /// <summary>What is wrong with the messages and remedies of findings.</summary>
    internal static IEnumerable<string> FaultsOf(IEnumerable<Finding> findings, Site site)
    {
        List<string> names = [.. NamesIn(site)];
        return findings.SelectMany(f =>
            Faults(f.Message, 20, names).Concat(Faults(f.Remedy, 20, names)).Select(fault => $"{f.Rule}: {fault}"));
    }

    /// <summary>What is wrong with a text, in words; nothing where it keeps the rules.</summary>
    /// <param name="text">The sentences.</param>
    /// <param name="most">Words that a sentence may have. A name, a list of names and a number with its unit are a word each; what is in
    /// parentheses is none.</param>
    /// <param name="names">Names that the text may hold, which somebody else chose.</param>
    internal static IEnumerable<string> Faults(string text, int most, IEnumerable<string>? names = null)
    {
        string ours = (names ?? []).Where(n => n.Length > 0).Distinct().OrderByDescending(n => n.Length)
            .Aggregate(text, (left, name) => Regex.Replace(left, $@"(?<!\w){Regex.Escape(name)}(?!\w)", "N"));
        ours = Regex.Replace(ours, @"""[^""]*""", "N");
        foreach ((Regex not, string but) in Words)
        {
            if (not.Match(ours) is { Success: true } found) yield return $"\"{found.Value}\" ({but}): {text}";
        }

        foreach (string sentence in Regex.Split(ours, @"(?<=[.!?])\s+(?=[A-Z""])|(?<=Not stated: [^.]*;)\s"))
        {
            int words = Count(sentence);
            if (words > most) yield return $"{words} words: {sentence}";
        }

        if (!text.EndsWith('.')) yield return $"no full stop: {text}";
        if (text.Length > 0 && char.IsLower(text[0]) && ours[0] != 'N') yield return $"no capital: {text}";
    }

    // What the author of a site called things, and how parts call themselves.
    private static IEnumerable<string> NamesIn(Site site)
    {
        IEnumerable<object?> things =
        [
            site.Name, .. site.Boxes
                .SelectMany(b => new object?[] { b.Name, b.Supply, b.Cabinet, b.Terminals }.Concat(b.Outputs.Select(o => o.Protection))),
            .. site.Devices.SelectMany(d => new object?[] { d.Name, d.Model, d.Model.Connector }), .. site.VideoLinks,
            .. site.Runs.SelectMany(r => new object?[] { r.From, r.To, r.InstallationMethod }),
            .. site.Runs.SelectMany(r => r.Run.Segments).SelectMany(s => new[] { s.Cable.Outgoing, s.Cable.Return }),
            .. site.Boxes.Select(b => b.Receptacle?.Name), .. site.Boxes.Select(b => b.BatteryProtection),
        ];
        return things.Select(thing => thing?.ToString() ?? string.Empty);
    }

    private static int Count(string sentence)
    {
        string left = Regex.Replace(sentence, @"\([^()]*\)", "");
        left = Regex.Replace(left, @"\b\d[\d.,E+-]* ?(V DC|V AC|W/m²|A²·s|N·m|lb-in|mm²|°C|AWG|mV|mΩ|VA|ms|Ω|%|[VAWKmhs])(?!\w)", "1");
        left = Regex.Replace(left, @"\b[N\d][\d-]*(,? (and )?[N\d][\d-]*\b)+", "N");
        return Regex.Count(left, @"[\w°²]+(?:[-'/.·×][\w°²]+)*");
    }
}
