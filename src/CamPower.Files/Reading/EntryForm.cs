using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.Json.Serialization.Metadata;
using CamPower.Files.Entries;
using CamPower.Files.Formats;

namespace CamPower.Files.Reading;

/// <summary>Whether an entry has the members that it needs, and takes exactly one of its forms.</summary>
internal static class EntryForm
{
    internal static void Check(JsonTypeInfo type, IReadOnlySet<string> written, JsonPath at, FaultLog faults)
    {
        NoteMissing(type.Properties.Where(p => p.IsRequired).Select(p => p.Name), written, at, faults);
        FormAttribute[] forms = Of(type);
        if (forms.Length > 0) CheckForms(forms, written, at, faults);
    }

    /// <summary>The forms that the entries of a type can take; empty where there is only one.</summary>
    internal static FormAttribute[] Of(JsonTypeInfo type) => [.. type.Type.GetCustomAttributes<FormAttribute>()];

    private static void CheckForms(FormAttribute[] forms, IReadOnlySet<string> written, JsonPath at, FaultLog faults)
    {
        FormAttribute[] begun = [.. forms.Where(form => written.Any(form.Has))];
        switch (begun.Length)
        {
            case 0:
                faults.Add(at, $"missing: {Phrase.List(forms.Select(f => f.ToString()), "or")}");
                break;
            case 1:
                NoteMissing(begun[0].AllNeeded, written, at, faults);
                break;
            default:
                string second = written.First(begun[1].Has);
                faults.Add(at.Member(second), $"only one of these can be given: {Phrase.List(begun.Select(f => f.ToString()), "or")}");
                break;
        }
    }

    private static void NoteMissing(IEnumerable<string> needed, IReadOnlySet<string> written, JsonPath at, FaultLog faults)
    {
        foreach (string name in needed.Where(n => !written.Contains(n))) faults.Add(at.Member(name), $"missing member {Phrase.Quoted(name)}");
    }
}
