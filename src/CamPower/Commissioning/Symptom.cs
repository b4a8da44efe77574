using System;

namespace CamPower.Commissioning;

/// <summary>What somebody has seen, in words: of a device, or of several at once.</summary>
/// <remarks>Immutable. It counts as evidence, not as proof: a dark camera may be a broken one.</remarks>
/// <example>
/// <code>
/// Diagnosis found = site.Diagnose(readings, [Symptom.Dark("gate plate"), Symptom.Works("gate house")]);
/// </code>
/// </example>
public sealed class Symptom
{
    private Symptom(SymptomKind kind, string? device)
    {
        Kind = kind;
        Device = device;
    }

    /// <summary>Several devices failed at once.</summary>
    public static Symptom SeveralAtOnce { get; } = new(SymptomKind.SeveralAtOnce, null);

    /// <summary>The name of the device, or null where it is about several.</summary>
    public string? Device { get; }

    internal SymptomKind Kind { get; }

    /// <summary>A device works as it should.</summary>
    /// <param name="device">Its name. Not empty.</param>
    /// <exception cref="ArgumentException"><paramref name="device"/> is empty.</exception>
    public static Symptom Works(string device) => Of(SymptomKind.Works, device);

    /// <summary>A device is dark: no picture at any time.</summary>
    /// <param name="device">Its name. Not empty.</param>
    /// <exception cref="ArgumentException"><paramref name="device"/> is empty.</exception>
    public static Symptom Dark(string device) => Of(SymptomKind.Dark, device);

    /// <summary>A device restarts again and again.</summary>
    /// <param name="device">Its name. Not empty.</param>
    /// <exception cref="ArgumentException"><paramref name="device"/> is empty.</exception>
    public static Symptom Restarts(string device) => Of(SymptomKind.Restarts, device);

    /// <summary>A device works by day and fails or flickers when its infrared comes on.</summary>
    /// <param name="device">Its name. Not empty.</param>
    /// <exception cref="ArgumentException"><paramref name="device"/> is empty.</exception>
    public static Symptom FlickersAtDusk(string device) => Of(SymptomKind.FlickersAtDusk, device);

    /// <summary>Bars roll through the picture of a device.</summary>
    /// <param name="device">Its name. Not empty.</param>
    /// <exception cref="ArgumentException"><paramref name="device"/> is empty.</exception>
    public static Symptom HumBars(string device) => Of(SymptomKind.HumBars, device);

    /// <summary>The infrared of a device is weaker than that of its like.</summary>
    /// <param name="device">Its name. Not empty.</param>
    /// <exception cref="ArgumentException"><paramref name="device"/> is empty.</exception>
    public static Symptom DimInfrared(string device) => Of(SymptomKind.DimInfrared, device);

    /// <summary>A device that fails in its place works on the bench.</summary>
    /// <param name="device">Its name. Not empty.</param>
    /// <exception cref="ArgumentException"><paramref name="device"/> is empty.</exception>
    public static Symptom WorksOnTheBench(string device) => Of(SymptomKind.WorksOnTheBench, device);

    /// <summary>What was seen, and of which device; never throws.</summary>
    public override string ToString() => Device is null ? SymptomWords.Of(Kind) : $"{Device}: {SymptomWords.Of(Kind)}";

    /// <summary>Reads what <see cref="ToString"/> writes: "gate plate: restarts".</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text is none of those.</exception>
    public static Symptom Parse(string text)
    {
        string words = Require.NotNull(text, nameof(text)).Trim();
        if (string.Equals(words, SymptomWords.Of(SymptomKind.SeveralAtOnce), StringComparison.OrdinalIgnoreCase)) return SeveralAtOnce;
        int colon = words.LastIndexOf(':');
        if (colon > 0)
        {
            string seen = words.Substring(colon + 1).Trim();
            foreach (SymptomKind kind in SymptomWords.OfDevices)
            {
                if (string.Equals(seen, SymptomWords.Of(kind), StringComparison.OrdinalIgnoreCase)) return Of(kind, words.Substring(0,
                    colon).Trim());
            }
        }

        throw new FormatException($"'{text}' is no symptom. Write a device, a colon, and one of: {SymptomWords.All}; or: several at once.");
    }

    private static Symptom Of(SymptomKind kind, string device) => new(kind, Require.Name(device, nameof(device)));
}
