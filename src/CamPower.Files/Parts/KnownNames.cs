using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;

namespace CamPower.Files.Parts;

/// <summary>The names of a list that references may use, and whether every one of them could be read.</summary>
internal sealed class KnownNames(IEnumerable<string> names, Place list, string member, bool mayBeLeftOut = false)
{
    private readonly HashSet<string> _names = new(names, StringComparer.Ordinal);
    private readonly bool _areComplete = list.IsMissing ? mayBeLeftOut : list.Value is not null && AreSound(list, member);

    /// <summary>Whether there is no error in a member of any item of a list.</summary>
    internal static bool AreSound(Place list, string member) => list.Children.All(item => !item.Member(member).HasError);

    internal bool Has(string name) => _names.Contains(name);

    /// <summary>Notes what is wrong with a reference; one to nothing may be to the part whose name could not be read.</summary>
    internal void NoteReference(string name, Place at, string message)
    {
        bool isStandIn = string.Equals(name, at.Path, StringComparison.Ordinal);
        if (isStandIn) return;
        if (Has(name)) at.ErrorOnce(message);
        else if (_areComplete) at.ErrorOnce(message + Phrase.DidYouMean(name, _names));
    }
}
