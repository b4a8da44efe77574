using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Formats;

/// <summary>An object of the file, stated once: its members, and how a part of the library is built from them.</summary>
/// <remarks>
/// A member that is missing or wrong has a stand-in, so that building always gives something: every other fault is then
/// found too, and none is found that only follows from the first. A file with a fault gives no site in the end.
/// </remarks>
internal sealed class ObjectFormat<T> : Format<T>
    where T : class
{
    private readonly Dictionary<string, Member> _byName = new(StringComparer.Ordinal);
    private readonly List<Member> _members = [];
    private readonly List<Action<SiteWriter, T>> _writing = [];
    private readonly Func<Place, T> _build;
    private readonly T? _standIn;
    private Form[] _forms = [];

    /// <summary>States the format.</summary>
    /// <param name="describe">States the members, in the order in which they are read and written, and gives what builds
    /// the part: it may run more than once, with a stand-in for each member that proved wrong.</param>
    /// <param name="standIn">Stands in for the whole where the stand-ins of its members do not go with the rest.</param>
    internal ObjectFormat(Func<ObjectFormat<T>, Func<Place, T>> describe, T? standIn = null)
    {
        _build = describe(this);
        _standIn = standIn;
    }

    internal override string Expected => "an object";

    /// <summary>The name of the part itself.</summary>
    internal Member<string> Name(Func<T, string> get, string description) => Required("name", description, NameFormat.Instance, get);

    /// <summary>A member that every such object has.</summary>
    internal Member<TValue> Required<TValue>(string name, string description, Format<TValue> format, Func<T, TValue> get) =>
        Add<TValue>(name, description, isRequired: true, format, format.StandIn, Always(name, format, get));

    /// <summary>A member that may be left out: null then, and where it is wrong.</summary>
    internal Member<TValue?> Optional<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : class =>
        Add<TValue?>(name, description, isRequired: false, format, _ => null, IfAny(name, format, get));

    /// <inheritdoc cref="Optional{TValue}(string, string, Format{TValue}, Func{T, TValue})"/>
    internal Member<TValue?> Optional<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : struct =>
        Add<TValue?>(name, description, isRequired: false, format, _ => null, IfAny(name, format, get));

    /// <summary>A member that belongs to one of the forms.</summary>
    internal Member<TValue> OfForm<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : class =>
        Add<TValue>(name, description, isRequired: false, format, format.StandIn, IfAny(name, format, get));

    /// <inheritdoc cref="OfForm{TValue}(string, string, Format{TValue}, Func{T, TValue})"/>
    internal Member<TValue> OfForm<TValue>(string name, string description, Format<TValue> format, Func<T, TValue?> get)
        where TValue : struct =>
        Add<TValue>(name, description, isRequired: false, format, format.StandIn, IfAny(name, format, get));

    /// <summary>States the forms, of which an object takes exactly one.</summary>
    internal void OneOf(params Form[] forms) => _forms = forms;

    internal override bool Fits(JsonTokenType kind) => kind == JsonTokenType.StartObject;

    internal override JsonObject Schema()
    {
        var schema = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject(_members.Select(m => KeyValuePair.Create(m.Name, (JsonNode?)m.Schema()))),
        };
        string[] required = [.. _members.Where(m => m.IsRequired).Select(m => m.Name)];
        if (required.Length > 0) schema["required"] = new JsonArray([.. required.Select(name => (JsonNode)name)]);
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

    /// <summary>What is built of stand-ins alone.</summary>
    internal override T StandIn(Place at)
    {
        at.TakeMembers(_members.Count);
        return _standIn ?? _build(at);
    }

    protected override object? ReadFrom(Place at)
    {
        at.TakeMembers(_members.Count);
        TakeMembers(at);
        foreach (Member member in _members.Where(member => member.IsGiven(at))) member.Read(at);
        NoteMissing(_members.Where(m => m.IsRequired), at);
        if (_forms.Length > 0) CheckForms(at);
        return Build(at);
    }

    private Member<TValue> Add<TValue>(string name, string description, bool isRequired, Format format, Func<Place, TValue> standIn,
        Action<SiteWriter, T> write)
    {
        var member = new Member<TValue>(name, description, _members.Count, isRequired, format, standIn);
        _byName.Add(name, member);
        _members.Add(member);
        _writing.Add(write);
        return member;
    }

    private static Action<SiteWriter, T> Always<TValue>(string name, Format<TValue> format, Func<T, TValue> get) => (writer, part) =>
    {
        writer.Json.WritePropertyName(name);
        format.Write(writer, get(part));
    };

    private static Action<SiteWriter, T> IfAny<TValue>(string name, Format<TValue> format, Func<T, TValue?> get)
        where TValue : class => (writer, part) =>
    {
        if (get(part) is TValue value) Always(name, format, (T _) => value)(writer, part);
    };

    private static Action<SiteWriter, T> IfAny<TValue>(string name, Format<TValue> format, Func<T, TValue?> get)
        where TValue : struct => (writer, part) =>
    {
        if (get(part) is TValue value) Always(name, format, (T _) => value)(writer, part);
    };

    private void TakeMembers(Place at)
    {
        HashSet<string>? unknown = null;
        foreach (Place child in at.Children)
        {
            string name = child.Name!;
            if (_byName.TryGetValue(name, out Member? member)) at.Take(member, child);
            else if ((unknown ??= new(StringComparer.Ordinal)).Add(name)) child.FaultOfName($"there is no member {Phrase.Quoted(name)} here{Hint(name)}");
            else child.FaultOfName($"{Phrase.Quoted(name)} is written twice in the same object");
        }
    }

    private string Hint(string name)
    {
        string nearest = Phrase.DidYouMean(name, _byName.Keys);
        return nearest.Length > 0 ? nearest : $"; the members are {Phrase.List(_members.Select(m => m.Name), "and")}";
    }

    private static void NoteMissing(IEnumerable<Member> needed, Place at)
    {
        foreach (Member member in needed.Where(m => !m.IsGiven(at))) at[member].Fault($"missing member {Phrase.Quoted(member.Name)}");
    }

    private void CheckForms(Place at)
    {
        Place[] given = [.. at.Children.Where(child => !child.IsMissing)];
        Form[] begun = [.. _forms.Where(form => given.Any(place => form.Has(place.Name)))];
        switch (begun.Length)
        {
            case 0:
                at.Fault($"missing: {Phrase.List(_forms.Select(f => f.ToString()), "or")}");
                break;
            case 1:
                NoteMissing(begun[0].AllNeeded, at);
                break;
            default:
                Place second = given.First(place => begun[1].Has(place.Name));
                second.Fault($"only one of these can be given: {Phrase.List(begun.Select(f => f.ToString()), "or")}");
                break;
        }
    }

    // What the part says is wrong is noted at the member that it names.
    private T Build(Place at)
    {
        while (true)
        {
            try
            {
                return _build(at);
            }
            catch (ArgumentException e) when (!ToBlame(e, at).IsFaulty)
            {
                // Once more, with a stand-in for what was just noted.
                Place place = ToBlame(e, at);
                place.Fault(Phrase.MessageOf(e, place.Name));
                place.Value = null;
            }
            catch (ArgumentException) when (_standIn is not null)
            {
                return _standIn;
            }
        }
    }

    private Place ToBlame(ArgumentException e, Place at)
    {
        Member[] named = [.. _members.Where(m => string.Equals(m.Parameter, e.ParamName, StringComparison.Ordinal))];
        Member? member = Array.Find(named, m => m.IsGiven(at)) ?? named.FirstOrDefault();
        return member is null ? at.Member(e.ParamName ?? string.Empty) : at[member];
    }
}
