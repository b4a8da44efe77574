using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using CamPower.Reports.Contents;

namespace CamPower.Reports.Writing;

/// <summary>Writes a report as Markdown.</summary>
internal static class MarkdownWriter
{
    internal static string Write(string title, IReadOnlyList<Section> sections)
    {
        var text = new StringBuilder("# ").Append(Escaped(title)).Append('\n');
        foreach (Section section in sections)
        {
            text.Append("\n## ").Append(Escaped(section.Heading)).Append('\n');
            foreach (Block block in section.Blocks) Append(text, block);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, Block block)
    {
        switch (block)
        {
            case Paragraph paragraph:
                string sentence = Escaped(paragraph.Text);
                text.Append('\n').Append(paragraph.IsStrong ? $"**{sentence}**" : sentence).Append('\n');
                break;
            case Facts facts:
                AppendItems(text, facts.Items.Select(f => $"{Escaped(f.Name)}: {Escaped(f.Value)}"));
                break;
            case ItemList list:
                AppendItems(text, list.Items.Select(Escaped));
                break;
            case DataTable table:
                AppendTable(text, table);
                break;
            case FoundList found:
                foreach (FindingGroup group in found.Groups) AppendGroup(text, group);
                break;
            case Pictures:
                break;
            default:
                throw new NotSupportedException($"{block.GetType().Name} has no form in Markdown.");
        }
    }

    private static void AppendItems(StringBuilder text, IEnumerable<string> items)
    {
        text.Append('\n');
        foreach (string item in items) text.Append("- ").Append(item).Append('\n');
    }

    private static void AppendTable(StringBuilder text, DataTable table)
    {
        text.Append('\n').Append(Escaped(table.Caption)).Append(":\n\n");
        AppendRow(text, table.Columns.Select(c => Escaped(c.Heading)));
        AppendRow(text, table.Columns.Select(c => c.IsNumber ? "---:" : "---"));
        foreach (IReadOnlyList<string> row in table.Rows) AppendRow(text, row.Select(Escaped));
    }

    private static void AppendRow(StringBuilder text, IEnumerable<string> cells) =>
        text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    private static void AppendGroup(StringBuilder text, FindingGroup group)
    {
        text.Append("\n### ").Append(Escaped($"{group.Severity}: {group.Heading}")).Append('\n');
        if (group.Findings.Count == 1) text.Append('\n').Append(Found(group.Findings[0])).Append('\n');
        else AppendItems(text, group.Findings.Select(Found));
        text.Append("\nTo do: ").Append(Escaped(group.Remedy)).Append('\n');
        text.Append('\n').Append(Escaped($"Rule: {group.Rule}. Source: {group.Source}.")).Append('\n');
    }

    private static string Found(Finding finding) =>
        Escaped($"{finding.About.Name}: {finding.Message} {FindingGroup.Evidence(finding)}".TrimEnd());

    // Whatever Markdown or HTML could take for its own, anywhere in a line, and what would end a cell.
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char c in PlainText.Of(text))
        {
            if (c is '<') escaped.Append("&lt;");
            else if (c is '&') escaped.Append("&amp;");
            else if (c is '\\' or '`' or '*' or '_' or '{' or '}' or '[' or ']' or '#' or '|' or '~' or '>' or '$' or '!') escaped.Append(
                '\\').Append(c);
            else escaped.Append(c);
        }

        return escaped.ToString();
    }
}
