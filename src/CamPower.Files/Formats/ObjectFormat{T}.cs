using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>An object of the file, stated once: its members, and how a part of the library is built from them.</summary>
/// <remarks>
/// A member that is missing or wrong has a stand-in, so that building always gives something: every other error is then
/// found too, and none is found that only follows from the first. A file with an error gives no site in the end.
/// </remarks>
internal sealed class ObjectFormat<T> : Format<T>
    where T : class
{
    private readonly Dictionary<string, Member> _byName = new(StringComparer.Ordinal);
    private readonly List<Member> _members = [];
    private readonly List<Action<SiteWriter, T>> _writing = [];
    private readonly Func<Place, T> _build;
    private Form[] _forms = [];

    /// <summary>States the format.</summary>
    /// <param name="describe">States the members, in the order in which they are read and written, and gives what builds
    /// the part: it may run more than once, with a stand-in for each member that proved wrong.</param>
    internal ObjectFormat(Func<ObjectFormat<T>, Func<Place, T>> describe)
        : base("an object", JsonTokenType.StartObject) => _build = describe(this);

    /// <summary>Stands in for the whole where the stand-ins of its members do not go with the rest.</summary>
    internal T? Else { get; init; }

    /// <summary>A member that every such object has.</summary>
    internal Member<TValue> Required<TValue>(string name, string description, Format<TValue> format, Func<T, TValue> get) =>
        Add(true, name, description, format, StandInOf(format), (writer, part) => format.Write(Named(writer, name), get(part)));

    /// <summary>A member that may be left out: null then, and where it is wrong.</summary>
    internal Member<TValue?> Optional<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : class => Add<TValue, TValue?>(
            false, name, description, format, (_, _) => null, IfAny(name, format, part => get(part)));

    /// <inheritdoc cref="Optional{TValue}(string, string, Format{TValue}, Func{T, TValue})"/>
    internal Member<TValue?> Optional<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : struct =>
            Add<TValue, TValue?>(false, name, description, format, (_, _) => null, IfAny(name, format, part => get(part)));

    /// <summary>A member that belongs to one of the forms.</summary>
    internal Member<TValue> OfForm<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : class => Add(false, name, description, format, StandInOf(format), IfAny(name, format, part => get(part)));

    /// <inheritdoc cref="OfForm{TValue}(string, string, Format{TValue}, Func{T, TValue})"/>
    internal Member<TValue> OfForm<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : struct => Add(false, name, description, format, StandInOf(format), IfAny(name, format, part => get(part)));

    /// <summary>States the forms, of which an object takes exactly one.</summary>
    internal void OneOf(params Form[] forms) => _forms = forms;

    internal override JsonObject Schema()
    {
        var schema = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject(_members.Select(m => KeyValuePair.Create(m.Name, (JsonNode?)m.Schema()))),
        };
        JsonNode[] required = [.. _members.Where(m => m.IsRequired).Select(m => (JsonNode)m.Name)];
        if (required.Length > 0) schema["required"] = new JsonArray(required);
        schema["additionalProperties"] = false;
        if (_forms.Length > 0) schema["oneOf"] = new JsonArray([.. _forms.Select(f => f.Schema(_forms.Where(other => other != f)))]);
        return schema;
    }

    internal override void Write(SiteWriter writer, T value)
    {
        writer.Json.WriteStartObject();
        foreach (Action<SiteWriter, T> write in _writing) write(writer, value);
        writer.Json.WriteEndObject();
    }

    /// <summary>The object built of stand-ins alone.</summary>
    internal override T StandIn(Place at)
    {
        at.TakeMembers(_members.Count);
        return Else ?? _build(at);
    }

    protected override object? ReadFrom(Place at)
    {
        at.TakeMembers(_members.Count);
        TakeMembers(at);
        foreach (Member member in _members.Where(m => m.IsGiven(at))) member.Read(at[member]);
        HashSet<string> meant = MeantIn(at);
        NoteMissing(_members.Where(m => m.IsRequired && !meant.Contains(m.Name)), at);
        if (_forms.Length > 0) CheckForms(at);
        return Build(at);
    }

    private Member<TMember> Add<TValue, TMember>(bool isRequired, string name, string description, Format<TValue> format,
        Func<Place, Member, TMember> standIn, Action<SiteWriter, T> write)
    {
        var member = new Member<TMember>(name, _members.Count, standIn)
        {
            IsRequired = isRequired,
            Read = at => format.Read(at),
            Schema = () =>
            {
                JsonObject schema = format.Schema();
                schema["description"] = description + format.Note;
                return schema;
            },
        };
        _byName.Add(name, member);
        _members.Add(member);
        _writing.Add(write);
        return member;
    }

    private static Action<SiteWriter, T> IfAny<TValue>(string name, Format<TValue> format, Func<T, object?> get) => (writer, part) =>
    {
        if (get(part) is TValue value) format.Write(Named(writer, name), value);
    };

    private static Func<Place, Member, TValue> StandInOf<TValue>(Format<TValue> format) => (part, member) => format.StandIn(part[member]);

    private static SiteWriter Named(SiteWriter writer, string name)
    {
        writer.Json.WritePropertyName(name);
        return writer;
    }

    private void TakeMembers(Place at)
    {
        HashSet<string>? unknown = null;
        foreach (Place child in at.Children)
        {
            string name = child.Name!;
            if (_byName.TryGetValue(name, out Member? member)) at.Take(member, child);
            else if (OldName.Of(name, _byName.Keys) is string now)
            {
                // Read as what it is now: what it holds may be wrong as well.
                child.ErrorOfName($"{Phrase.Quoted(name)} is now called {Phrase.Quoted(now)}");
                at.Take(_byName[now], child);
            }
            else child.ErrorOfName((unknown ??= new(StringComparer.Ordinal)).Add(name)
                ? $"{Phrase.Quoted(name)} is not known here{Hint(name)}"
                : $"{Phrase.Quoted(name)} is written twice in the same object");
        }
    }

    // What is mistyped is not missing too.
    private HashSet<string> MeantIn(Place at) => [.. at.Children.Select(child => child.Name!).Where(name => !_byName.ContainsKey(name))
        .Select(name => NearestName.Of(name, _byName.Keys)).OfType<string>()];

    private string Hint(string name)
    {
        string nearest = Phrase.DidYouMean(name, _byName.Keys);
        return nearest.Length > 0 ? nearest : $"; the members are {Phrase.List(_members.Select(m => m.Name), "and")}";
    }

    private static void NoteMissing(IEnumerable<Member> needed, Place at)
    {
        foreach (Member member in needed.Where(m => !m.IsGiven(at))) at[member].ErrorOnce($"{Phrase.Quoted(member.Name)} is missing");
    }

    private void CheckForms(Place at)
    {
        Form[] begun = [.. _forms.Where(form => form.IsBegun(at))];
        if (begun.Length == 0) at.Error($"missing: {Phrase.List(_forms.Select(f => f.ToString()), "or")}");
        else if (begun.Length == 1) NoteMissing(begun[0].AllNeeded, at);
        else begun[1].FirstIn(at).Error($"only one of these can be given: {Phrase.List(begun.Select(f => f.ToString()), "or")}");
    }

    // The library refuses one argument at a time. Each turn reports one more member and puts a stand-in in its place, so it ends.
    private T Build(Place at)
    {
        while (true)
        {
            try
            {
                return _build(at);
            }
            catch (ArgumentException e)
            {
                Place place = ToBlame(e, at);
                if (place.HasError)
                {
                    // Its stand-in is refused too.
                    if (Else is null) throw;
                    return Else;
                }

                place.Error(Phrase.InUnitsOf(place.Text, Phrase.MessageOf(e, place.Name)));
                place.Value = null;
            }
        }
    }

    private Place ToBlame(ArgumentException e, Place at)
    {
        Member[] named = [.. _members.Where(m => string.Equals(m.ParameterName, e.ParamName, StringComparison.Ordinal))];
        Member? member = Array.Find(named, m => m.IsGiven(at)) ?? named.FirstOrDefault();
        return member is null ? at.Member(e.ParamName ?? string.Empty) : at[member];
    }
}
