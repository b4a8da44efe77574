using System;
using System.Collections.Generic;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Curves: lists of points.</summary>
internal static class CurveFormats
{
    private const string AtText = "Where the share holds.", ShareText = "The share there.";

    private static readonly ObjectFormat<AmbientPoint> AmbientPoint = new(o =>
    {
        var ambient = o.Required("at", AtText, Quantities.Temperature, p => p.Ambient).Parameter("ambient");
        var factor = o.Required("share", ShareText, Quantities.Share, p => p.Factor).Parameter("factor");
        return at => new AmbientPoint(ambient[at], factor[at]);
    });

    /// <summary>How a protective device changes with the air around it.</summary>
    internal static Format<AmbientCurve> Ambient { get; } = new NamedOrFullFormat<AmbientCurve>(
        Words.Thermal, new ObjectFormat<AmbientCurve>(o =>
    {
        var source = o.Required("source", "Where the points come from: a data sheet.", Words.Name, TitleOf);
        var points = o.Required("points", "Points in rising temperature: the share of every rated current.",
            new ListFormat<AmbientPoint>(AmbientPoint), c => c.Points);
        return at => new AmbientCurve(new Citation(source[at], CitationKind.Declared), [.. points[at]]);
    }) { Else = AmbientCurve.GenericResettable });

    /// <summary>A curve over a quantity.</summary>
    internal static Format<ShareCurve<T>> Of<T>(Format<T> over)
        where T : struct, IQuantity
    {
        var point = new ObjectFormat<SharePoint<T>>(o =>
        {
            var where = o.Required("at", AtText, over, p => p.At);
            var share = o.Required("share", ShareText, Quantities.Share, p => p.Share);
            return at => new SharePoint<T>(where[at], share[at]);
        });
        return new MadeFormat<IReadOnlyList<SharePoint<T>>, ShareCurve<T>>(
            new ListFormat<SharePoint<T>>(point), points => new ShareCurve<T>([.. points]), curve => curve.Points);
    }

    private static string TitleOf(AmbientCurve curve) => curve.Source is { Kind: CitationKind.Declared, Edition: null, Locator: null }
        ? curve.Source.Title
        : throw new NotSupportedException(
            $"A site file cannot express the source '{curve.Source}' of an ambient curve: it knows a title that is declared.");
}
