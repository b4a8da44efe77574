using System;

namespace CamPower.Files.Entries;

/// <summary>One of the forms that an entry can take: members that belong together. An entry takes exactly one of its forms.</summary>
[AttributeUsage(AttributeTargets.Class, AllowMultiple = true)]
internal sealed class FormAttribute(params string[] members) : Attribute
{
    /// <summary>The members that the form needs.</summary>
    internal string[] Members { get; } = members;

    /// <summary>A member that the form may have, and other forms may not.</summary>
    public string? Optional { get; init; }

    /// <summary>A member that the form needs, and other forms may have.</summary>
    public string? Needs { get; init; }

    /// <summary>Every member that the form needs.</summary>
    internal string[] AllNeeded => Needs is null ? Members : [.. Members, Needs];

    /// <summary>The members in words: "outputs and outputLimit".</summary>
    public override string ToString() => Formats.Phrase.List(Members, "and");

    /// <summary>Every member that this form alone may have.</summary>
    internal string[] AllOwn => Optional is null ? Members : [.. Members, Optional];

    internal bool Has(string member) => Array.IndexOf(AllOwn, member) >= 0;
}
