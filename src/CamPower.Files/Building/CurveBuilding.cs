using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>From entries to curves; null where one is left out or has a fault.</summary>
internal static class CurveBuilding
{
    internal static ShareCurve<T>? Build<T>(List<SharePointEntry<T>?>? entries, Place at, T standIn) where T : struct, IQuantity
    {
        if (entries is null) return null;
        SharePoint<T>[] points = [.. entries.Select((entry, i) => Point(entry ?? new(), at.Item(i), standIn))];
        return Try(() => new ShareCurve<T>(points), at);
    }

    internal static AmbientCurve? Build(AmbientCurveEntry? entry, Place at)
    {
        if (entry is null || entry.Named is not null) return entry?.Named;
        string source = at.Name("source", entry.Source);
        Place list = at.Member("points");
        AmbientPoint[] points = [.. (entry.Points ?? []).Select((point, i) => AmbientPoint(point ?? new(), list.Item(i)))];
        return entry.Points is null ? null : Try(() => new AmbientCurve(new Citation(source, CitationKind.Declared), points), list);
    }

    private static SharePoint<T> Point<T>(SharePointEntry<T> entry, Place at, T standIn) where T : struct, IQuantity => at.Build(() =>
        new SharePoint<T>(at.Value("at", entry.At, standIn), at.Value("share", entry.Share, Ratio.Zero)));

    private static AmbientPoint AmbientPoint(SharePointEntry<Temperature> entry, Place at) => at.Build(
        () => new AmbientPoint(at.Value("at", entry.At, StandIn.Temperature), at.Value("share", entry.Share, StandIn.Share)),
        standIn: null, ("ambient", "at"), ("factor", "share"));

    private static T? Try<T>(Func<T> make, Place at) where T : class
    {
        if (at.IsFaulty) return null;
        try
        {
            return make();
        }
        catch (ArgumentException e)
        {
            at.Fault(CoreWords.MessageOf(e));
            return null;
        }
    }
}
