using System;
using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using OxyPlot;

namespace CamPower.Reports.Charts;

/// <summary>Draws a chart as SVG for a file of its own or a page.</summary>
internal static class SvgDrawing
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    internal static string Of(PlotModel model, double height) => new SvgExporter
    {
        Width = ChartFrame.Width,
        Height = height,
        IsDocument = false,
        UseVerticalTextAlignmentWorkaround = true,
        TextMeasurer = new TextRoom(ChartFrame.Width, height),
    }.ExportToString(model);

    /// <summary>The drawing with a role, a name and a description, and ids that no other picture of the page has.</summary>
    internal static string Labeled(string drawing, string idPrefix, string title, string description)
    {
        XElement svg = XDocument.Parse(drawing).Root ?? throw new InvalidOperationException("An empty drawing.");
        string width = svg.Attribute("width")!.Value, height = svg.Attribute("height")!.Value;
        svg.ReplaceAttributes(
            new XAttribute("xmlns", Svg),
            new XAttribute("viewBox", $"0 0 {width} {height}"),
            new XAttribute("width", width),
            new XAttribute("height", height),
            new XAttribute("role", "img"),
            new XAttribute("aria-labelledby", $"{idPrefix}-title {idPrefix}-desc"));
        RenameIds(svg, idPrefix);
        svg.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", idPrefix + "-title"), title),
            new XElement(Svg + "desc", new XAttribute("id", idPrefix + "-desc"), description));
        return svg.ToString(SaveOptions.None).ReplaceLineEndings("\n");
    }

    // Ids are of the whole page: one of another picture would be meant otherwise.
    private static void RenameIds(XElement svg, string idPrefix)
    {
        List<XAttribute> ids = [.. svg.Descendants().Attributes("id")];
        List<XAttribute> uses = [.. svg.Descendants().Attributes().Where(a => a.Value.StartsWith("url(#", StringComparison.Ordinal))];
        foreach (XAttribute id in ids) id.Value = $"{idPrefix}-{id.Value}";
        foreach (XAttribute use in uses) use.Value = $"url(#{idPrefix}-{use.Value["url(#".Length..]}";
    }
}
