using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Studies;

/// <summary>What one version of a site needs more of than another.</summary>
internal static class MaterialDifference
{
    private const double Rounding = 1e-9;

    internal static IReadOnlyList<MaterialLine> Of(Site before, Site after, PriceList prices)
    {
        var old = new MaterialList(before, MaterialPolicy.CommonPractice, prices);
        var now = new MaterialList(after, MaterialPolicy.CommonPractice, prices);
        return Array.AsReadOnly([.. now.Lines.Select(line => (Line: line, Sign: 1)).Concat(old.Lines.Select(line => (Line: line, Sign: -1)))
            .GroupBy(x => (x.Line.Kind, x.Line.Item, x.Line.Unit))
            .Select(alike => new MaterialLine(alike.Key.Kind, alike.Key.Item, alike.Sum(x => x.Sign * x.Line.Quantity), alike.Key.Unit,
                alike.Sum(x => x.Sign * x.Line.Cost)))
            .Where(line => Math.Abs(line.Quantity) > Rounding || Math.Abs(line.Cost) > Rounding)]);
    }
}
