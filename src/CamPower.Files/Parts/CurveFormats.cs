using System;
using System.Collections.Generic;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Curves: lists of points.</summary>
internal static class CurveFormats
{
    private const string AtText = "Where the share holds.", ShareText = "The share there.";

    /// <summary>Formats of the curves of a protective device against the air around it.</summary>
    internal static Format<ShareCurve<Temperature>> Ambient { get; } = new NamedOrFullFormat<ShareCurve<Temperature>>(
        Words.Thermal, new ObjectFormat<ShareCurve<Temperature>>(o =>
    {
        var source = o.Required("source", "Where the points come from: a data sheet.", Words.Name,
            curve => TitleOf(curve.Source, "an ambient curve"));
        var points = o.Required("points", "Points in rising temperature: the share of every rated current.",
            PointsOver(Quantities.Temperature, share => share), c => c.Points);
        return at => new ShareCurve<Temperature>([.. points[at]]).WithSource(new Citation(source[at], CitationKind.Declared));
    }) { Else = ResettableFuse.GenericThermal });

    /// <summary>A curve over a quantity, of shares up to the whole.</summary>
    internal static Format<ShareCurve<T>> Of<T>(Format<T> over)
        where T : struct, IQuantity => Curve(over, AtMostWhole);

    /// <summary>A curve over a quantity, of shares that may be above the whole.</summary>
    internal static Format<ShareCurve<T>> Above<T>(Format<T> over)
        where T : struct, IQuantity => Curve(over, share => share);

    private static MadeFormat<IReadOnlyList<SharePoint<T>>, ShareCurve<T>> Curve<T>(Format<T> over, Func<Ratio, Ratio> allowed)
        where T : struct, IQuantity => new(PointsOver(over, allowed), points => new ShareCurve<T>([.. points]), curve => curve.Points);

    private static ListFormat<SharePoint<T>> PointsOver<T>(Format<T> over, Func<Ratio, Ratio> allowed)
        where T : struct, IQuantity => new(new ObjectFormat<SharePoint<T>>(o =>
        {
            var where = o.Required("at", AtText, over, p => p.At);
            var share = o.Required("share", ShareText, Quantities.Share, p => p.Share);
            return at => new SharePoint<T>(where[at], allowed(share[at]));
        }));

    private static Ratio AtMostWhole(Ratio share) => share.DecimalFractions <= 1
        ? share
        : throw new ArgumentOutOfRangeException(
            nameof(share), FormattableString.Invariant($"share must be from 0 to 1, but is {share.DecimalFractions}."));

    /// <summary>The title of a source, as the file states it.</summary>
    internal static string TitleOf(Citation? source, string of) => source is { Kind: CitationKind.Declared, Edition: null, Locator: null }
        ? source.Title
        : throw new NotSupportedException(
            $"A site file cannot express the source '{source}' of {of}: it knows a title that is declared.");
}
