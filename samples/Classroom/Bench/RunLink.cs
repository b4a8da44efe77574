using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace Classroom.Bench;

/// <summary>The entries of the page as the query of a link, so that a class opens the same run.</summary>
public static class RunLink
{
    /// <summary>The query of a link that opens with these entries.</summary>
    public static string Of(RunEntry entry) => "?" + string.Join('&', new (string Name, string Text)[]
    {
        ("lengths", entry.LengthScale.Symbol), ("temperatures", Letter(entry.TemperatureScale)), ("length", entry.Length.Text),
        ("size", entry.Size.ToString()), ("stranding", entry.Stranding.Name), ("material", entry.Material.Name),
        ("temperature", entry.Temperature.Text), ("supply", entry.Supply.Text), ("keeps", entry.LoadKind.ToString()),
        ("load", entry.Load.Text), ("lowest", entry.Lowest.Text), ("highest", entry.Highest.Text),
    }.Select(part => part.Name + "=" + Uri.EscapeDataString(part.Text)));

    /// <summary>Puts what a link says into the entries; what it does not say, or says of nothing that there is, stays as it was.</summary>
    public static void Read(string query, RunEntry entry)
    {
        Dictionary<string, string> said = query.TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries)
            .Select(part => part.Split('=', 2)).Where(part => part.Length == 2).DistinctBy(part => part[0])
            .ToDictionary(part => part[0], part => Uri.UnescapeDataString(part[1].Replace('+', ' ')), StringComparer.Ordinal);
        if (said.TryGetValue("lengths", out string? symbol) && symbol == LengthScale.Meters.Symbol) entry.Use(LengthScale.Meters);
        if (said.TryGetValue("temperatures", out string? letter) && letter == Letter(TemperatureScale.Fahrenheit)) entry.Use(TemperatureScale.Fahrenheit);
        if (said.TryGetValue("size", out string? size)) entry.Size = RunEntry.Sizes.Where(s => s.ToString() == size).Append(entry.Size).First();
        if (said.TryGetValue("stranding", out string? lay)) entry.Stranding = RunEntry.Strandings.FirstOrDefault(s => s.Name == lay) ?? entry.Stranding;
        if (said.TryGetValue("material", out string? metal)) entry.Material = RunEntry.Materials.FirstOrDefault(m => m.Name == metal) ?? entry.Material;
        if (said.TryGetValue("keeps", out string? keeps) && Enum.GetNames<LoadKind>().Contains(keeps)) entry.LoadKind = Enum.Parse<LoadKind>(keeps);
        foreach ((string name, NumberField field) in new[]
        {
            ("length", entry.Length), ("temperature", entry.Temperature), ("supply", entry.Supply), ("load", entry.Load),
            ("lowest", entry.Lowest), ("highest", entry.Highest),
        })
        {
            if (said.TryGetValue(name, out string? text)) field.Text = text;
        }
    }

    private static string Letter(TemperatureScale scale) => scale.Symbol[1..];
}
