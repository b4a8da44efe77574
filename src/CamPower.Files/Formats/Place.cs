using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json;

namespace CamPower.Files.Formats;

/// <summary>A place in a file: what is there, what was read from it, and whether there is an error in it.</summary>
internal sealed class Place
{
    private readonly int _nameOffset;
    private List<Place>? _children;
    private Place?[] _slots = [];
    private int? _tooDeepAt;

    /// <summary>A place where something is.</summary>
    internal Place(SiteReading file, Place? parent, string? name, int nameOffset, int offset, JsonTokenType kind, string? text)
    {
        (File, Parent, Name, _nameOffset, Offset, Kind, Text) = (file, parent, name, nameOffset, offset, kind, text);
        if (parent is null) return;
        parent._children ??= [];
        Index = parent._children.Count;
        parent._children.Add(this);
    }

    /// <summary>The reading of the whole file.</summary>
    internal SiteReading File { get; }
    internal Place? Parent { get; }

    /// <summary>The name of a member; null of an item.</summary>
    internal string? Name { get; }
    internal int Offset { get; }

    /// <summary>The cell of a schedule that it was read from; null of what is in the site file itself.</summary>
    internal Cell? Cell { get => field ?? Parent?.Cell; init; }

    /// <summary>The kind of JSON value; <see cref="JsonTokenType.None"/> where something is missing.</summary>
    internal JsonTokenType Kind { get; }

    /// <summary>The text of a string or number.</summary>
    internal string? Text { get; }
    internal bool IsMissing => Kind == JsonTokenType.None;

    /// <summary>Whether there is an error at this place or inside it.</summary>
    internal bool HasError { get; private set; }

    /// <summary>The value that was read here; null where it is missing or wrong.</summary>
    internal object? Value { get; set; }

    /// <summary>The number of this place in its list, from 0.</summary>
    internal int Index { get; }

    /// <summary>The members of an object or the items of a list, in the order of the file.</summary>
    internal IReadOnlyList<Place> Children => _children ?? (IReadOnlyList<Place>)[];

    /// <summary>The path, as RFC 9535 writes it: $.runs[3].from['odd name'].</summary>
    internal string Path => Parent is null ? "$" : Parent.Path + Step;

    private string Step => Name is null
        ? "[" + Index.ToString(CultureInfo.InvariantCulture) + "]"
        : IsPlain(Name) ? "." + Name : $"['{Escaped(Name)}']";

    /// <summary>The place of a member, also of one that is missing: it lies where the object lies that lacks it.</summary>
    internal Place Member(string name) =>
        _children?.Find(child => string.Equals(child.Name, name, StringComparison.Ordinal))
        ?? new Place(File, this, name, Offset, Offset, JsonTokenType.None, null);

    /// <summary>Makes room for the members of a format.</summary>
    internal void TakeMembers(int count) => _slots = new Place?[count];

    /// <summary>The place of a member of the format that reads this object; made up where it is missing.</summary>
    internal Place this[Member member] => _slots[member.Index] ??= Member(member.Name);

    /// <summary>Whether something is at the place of a member.</summary>
    internal bool Has(Member member) => _slots[member.Index] is { IsMissing: false };

    /// <summary>The value that was read of a member; null where it is missing or wrong.</summary>
    internal object? ValueOf(Member member) => _slots[member.Index]?.Value;

    /// <summary>Takes a child for a member, or notes that the member has one already.</summary>
    internal void Take(Member member, Place child)
    {
        if (_slots[member.Index] is not Place first) _slots[member.Index] = child;
        else first.Error($"{Phrase.Quoted(member.Name)} is written twice in the same object", child._nameOffset);
    }

    /// <summary>Notes an error here.</summary>
    internal void Error(string message) => Error(message, Offset);

    /// <summary>Notes an error here unless there is one already: what follows from an error is none.</summary>
    internal void ErrorOnce(string message)
    {
        if (!HasError) Error(message);
    }

    /// <summary>The value made of this place; null, and an error, where the library refuses what is written here.</summary>
    internal T? Try<T>(Func<T> make)
    {
        try
        {
            return make();
        }
        catch (Exception e) when (e is FormatException or ArgumentException or InvalidOperationException)
        {
            Error(e is ArgumentException refused ? Phrase.MessageOf(refused) : e.Message.TrimEnd('.'));
            return default;
        }
    }

    /// <summary>Notes an error of the name of this member, and passes over what is there.</summary>
    internal void ErrorOfName(string message)
    {
        Error(message, _nameOffset);
        NoteDepth();
    }

    /// <summary>Notes that something else is expected here.</summary>
    internal void Refuse(string expected)
    {
        bool isBare = Kind == JsonTokenType.Number && expected.Contains("text: ", StringComparison.Ordinal);
        Error($"expected {expected}, but found {Found}{(isBare ? "; write it in quotes, with its unit" : "")}");
        NoteDepth();
    }

    /// <summary>Remembers that what is here is nested too deep, and so was not read.</summary>
    internal void IsTooDeep()
    {
        for (Place? at = this; at is { _tooDeepAt: null }; at = at.Parent) at._tooDeepAt = Offset;
    }

    /// <summary>Notes that this is nested too deep, or says that it is not.</summary>
    internal bool NoteOwnDepth() => _tooDeepAt == Offset && NoteDepth();

    private bool NoteDepth()
    {
        if (_tooDeepAt is int offset) Error(FormattableString.Invariant($"nested too deep: more than {File.MaxDepth} levels"), offset);
        return true;
    }

    private void Error(string message, int offset)
    {
        File.Add(message, offset, this);
        for (Place? at = this; at is { HasError: false }; at = at.Parent) at.HasError = true;
    }

    private string Found => Kind switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => "text",
        JsonTokenType.Number => "a number",
        JsonTokenType.Null => "null",
        _ => "true or false",
    };

    private static bool IsPlain(string name) =>
        name.Length > 0 && !char.IsAsciiDigit(name[0]) && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '_');

    private static string Escaped(string name) => string.Concat(name.Select(c => c switch
    {
        '\'' or '\\' => $"\\{c}",
        < ' ' => FormattableString.Invariant($"\\u{(int)c:x4}"),
        _ => c.ToString(),
    }));
}
