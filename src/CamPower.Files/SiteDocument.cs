using System;
using System.IO;
using CamPower.Files.Fleets;

namespace CamPower.Files;

/// <summary>One site file of many: its name, and the text that is read when the site is checked.</summary>
/// <remarks>Immutable. <see cref="Fleet"/> makes them from a stream or a folder, and checks them on all cores.</remarks>
/// <example>
/// <code>
/// CheckedSite gate = new SiteDocument("gate", utf8).Check(RuleSet.Standard);
/// Console.WriteLine(gate.CountOf(Severity.Danger));
/// </code>
/// </example>
public sealed class SiteDocument
{
    private readonly Func<SiteFileOptions, SiteFileResult> _read;

    /// <summary>Makes a document of a text.</summary>
    /// <param name="name">A name that tells it from the others, such as its file or its line.</param>
    /// <param name="utf8Json">The text of a site file in UTF-8. It must not change afterwards.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is null or empty.</exception>
    public SiteDocument(string name, ReadOnlyMemory<byte> utf8Json)
        : this(name, options => SiteFile.Read(utf8Json, options))
    {
    }

    private SiteDocument(string name, Func<SiteFileOptions, SiteFileResult> read)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name;
        _read = read;
    }

    /// <summary>Name of the document.</summary>
    public string Name { get; }

    /// <summary>Reads, assesses and checks the site on this thread.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="options">Limits of a file; null for <see cref="SiteFileOptions.Default"/>.</param>
    /// <returns>The findings, or why there are none. What a document holds never throws.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rules"/> is null.</exception>
    public CheckedSite Check(RuleSet rules, SiteFileOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return DocumentCheck.Of(Name, () => _read(options ?? SiteFileOptions.Default), rules);
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>A file that is opened when its site is checked, named as in its folder.</summary>
    internal static SiteDocument OfFile(string path) => new(Path.GetFileName(path), options =>
    {
        using FileStream file = File.OpenRead(path);
        return SiteFile.Read(file, options);
    });
}
