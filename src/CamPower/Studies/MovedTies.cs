using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Studies;

/// <summary>The ties of a site whose box is divided: each end goes where its output went.</summary>
/// <remarks>An end at an output that feeds nothing goes to a free output beside the other end: of its box, or of the first one.</remarks>
internal sealed class MovedTies(string divided, IReadOnlyList<BoxShare> shares)
{
    private readonly Dictionary<int, (string Box, int Output)> _moved = shares
        .SelectMany(s => s.Outputs, (s, o) => (o.From.Number, Place: (s.Box.Name, o.To.Number))).ToDictionary(x => x.Number, x => x.Place);

    /// <summary>The ties where they are now; one that finds no free output falls away.</summary>
    internal IReadOnlyList<OutputTie> Of(IEnumerable<OutputTie> ties)
    {
        var moved = new List<OutputTie>();
        foreach (OutputTie tie in ties)
        {
            (string Box, int Output)? one = Place(tie.OneBox, tie.OneOutput, beside: null),
                other = Place(tie.OtherBox, tie.OtherOutput, beside: one?.Box);
            one ??= Place(tie.OneBox, tie.OneOutput, beside: other?.Box ?? shares[0].Box.Name);
            other ??= Place(tie.OtherBox, tie.OtherOutput, beside: one?.Box);
            if (one is { } from && other is { } to) moved.Add(new OutputTie(from.Box, from.Output, to.Box, to.Output));
        }

        return moved;
    }

    private (string Box, int Output)? Place(string box, int output, string? beside)
    {
        if (!string.Equals(box, divided, StringComparison.Ordinal)) return (box, output);
        if (_moved.TryGetValue(output, out (string, int) place)) return place;
        if (beside is null) return null;

        // A box that is none of the shares is another one of the site: the first share then.
        DistributionBox there = (shares.FirstOrDefault(s => string.Equals(s.Box.Name, beside, StringComparison.Ordinal)) ?? shares[0]).Box;
        int free = Enumerable.Range(1, there.Outputs.Count).FirstOrDefault(n => !_moved.ContainsValue((there.Name, n)));
        return free == 0 ? null : _moved[output] = (there.Name, free);
    }
}
