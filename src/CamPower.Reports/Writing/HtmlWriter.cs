using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using CamPower.Reports.Contents;

namespace CamPower.Reports.Writing;

/// <summary>Writes a report as one HTML page that is well-formed XML as well.</summary>
internal static class HtmlWriter
{
    private static readonly XNamespace Html = "http://www.w3.org/1999/xhtml";

    private static readonly XmlWriterSettings Indented =
        new() { Indent = true, NewLineChars = "\n", OmitXmlDeclaration = true, Encoding = Encoding.UTF8 };

    internal static string Write(string title, IReadOnlyList<Section> sections)
    {
        var page = new HtmlPage();
        XElement root = Element("html", new XAttribute("lang", "en"),
            Element("head",
                Element("meta", new XAttribute("charset", "utf-8")),
                Element("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
                Element("title", PlainText.Of(title)),
                Element("style", PageStyle.Text)),
            Element("body",
                Element("main",
                    Element("h1", PlainText.Of(title)),
                    sections.Select(section => Of(section, page)))));
        var text = new StringBuilder("<!DOCTYPE html>\n");
        using (var writer = XmlWriter.Create(text, Indented)) root.Save(writer);
        return text.Append('\n').ToString();
    }

    private static XElement Of(Section section, HtmlPage page)
    {
        string id = page.NextId("section");
        return Element("section", new XAttribute("aria-labelledby", id),
            Element("h2", new XAttribute("id", id), PlainText.Of(section.Heading)),
            section.Blocks.Select(block => Of(block, page)));
    }

    private static XElement Of(Block block, HtmlPage page) => block switch
    {
        Paragraph paragraph => Element(
            "p", paragraph.IsStrong ? Element("strong", PlainText.Of(paragraph.Text)) : PlainText.Of(paragraph.Text)),
        Facts facts => Of(facts.Items),
        ItemList list => Element("ul", list.Items.Select(item => Element("li", PlainText.Of(item)))),
        DataTable table => Of(table, page),
        Pictures { AreWide: true } wide =>
            Element("div", Class(wide.ArePrinted ? "diagram" : "diagram screen"), new XAttribute("role", "region"),
            new XAttribute("aria-label", string.Join(", ", wide.Charts.Select(chart => chart.Title))), new XAttribute("tabindex", "0"),
                wide.Charts.Select(chart => Of(chart, page))),
        Pictures pictures => Element("div", Class("pictures"), pictures.Charts.Select(chart => Of(chart, page))),
        FoundList found => Element("ol", Class("findings"), found.Groups.Select(Of)),
        _ => throw new NotSupportedException($"{block.GetType().Name} has no form in HTML."),
    };

    private static XElement Of(IEnumerable<Fact> facts) => Element("dl", facts.Select(fact =>
        Element("div", Element("dt", PlainText.Of(fact.Name)), Element("dd", PlainText.Of(fact.Value)))));

    private static XElement Of(FindingGroup group) => Element("li", Class(group.Severity.ToString().ToLowerInvariant()),
        Element("h3", Element("span", Class("severity"), group.Severity.ToString()), ": " + PlainText.Of(group.Heading)),
        group.Findings.Count == 1
            ? Element("p", Found(group.Findings[0]))
            : Element("ul", group.Findings.Select(finding => Element("li", Found(finding)))),
        Element("p", Element("b", "To do: "), PlainText.Of(group.Remedy)),
        Element("p", Class("source"), PlainText.Of($"Rule: {group.Rule}. Source: {group.Source}.")));

    private static object[] Found(Finding finding) =>
        [Element("b", PlainText.Of(finding.About.Name)), ": " + PlainText.Of(finding.Message)
            + " ", Element("span", Class("evidence"), PlainText.Of(FindingGroup.Evidence(finding)))];

    // A table that is wider than a telephone is scrolled by itself, also by those who have only a keyboard.
    private static XElement Of(DataTable table, HtmlPage page)
    {
        string id = page.NextId("table");
        return Element("div", Class("scrolled"), new XAttribute("role", "region"), new XAttribute("aria-labelledby", id),
            new XAttribute("tabindex", "0"),
            Element("table",
                Element("caption", new XAttribute("id", id), PlainText.Of(table.Caption)),
                Element("thead", Element("tr", table.Columns.Select(c => Cell("th", "col", c, c.Heading)))),
                Element("tbody", table.Rows.Select(row => Element("tr", row.Select(
                    (cell, i) => i == 0 ? Cell("th", "row", table.Columns[i], cell) : Cell("td", null, table.Columns[i], cell)))))));
    }

    private static XElement Cell(string name, string? scope, Column column, string text) => Element(name,
        scope is null ? null : new XAttribute("scope", scope), column.IsNumber ? Class("number") : null, PlainText.Of(text));

    // What it shows in words is in the picture itself, and in the tables before it.
    private static XElement Of(Chart chart, HtmlPage page) => Element("figure", XElement.Parse(chart.ToSvg(page.NextId("chart"))));

    private static XAttribute Class(string name) => new("class", name);

    // Only void elements may close themselves in HTML: the others keep an end tag, with nothing before it if need be.
    private static XElement Element(string name, params object?[] content) => name is "meta"
        ? new XElement(Html + name, content)
        : new XElement(Html + name, content, string.Empty);
}
