using System.ComponentModel;
using System.Text.Json.Nodes;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

/// <summary>What a supply does in overload: what it holds, folds back, pulses or shuts down at, or that nothing limits it.</summary>
[Form("constantCurrent")]
[Form("foldback", "shortCircuit")]
[Form("hiccup", "pulse", "period")]
[Form("shutdown", "within")]
internal sealed class OverloadEntry : IHasTextForm
{
    [Description("The current that it holds.")]
    public Written<ElectricCurrent>? ConstantCurrent { get; set; }

    [Description("The current at which it begins to fold back.")]
    public Written<ElectricCurrent>? Foldback { get; set; }

    [Description("The current into a short at its terminals.")]
    public Written<ElectricCurrent>? ShortCircuit { get; set; }

    [Description("The current of each pulse by which it tries again.")]
    public Written<ElectricCurrent>? Hiccup { get; set; }

    [Description("How long a pulse lasts.")]
    public Written<Duration>? Pulse { get; set; }

    [Description("From one pulse to the next.")]
    public Written<Duration>? Period { get; set; }

    [Description("The largest current until it shuts down for good.")]
    public Written<ElectricCurrent>? Shutdown { get; set; }

    [Description("The longest time until it has shut down.")]
    public Written<Duration>? Within { get; set; }

    string IHasTextForm.TextDescription => Words.Overload.Description;

    JsonObject IHasTextForm.TextSchema => Words.Overload.Schema;

    /// <summary>The behaviour that has a name, or null where the members say it.</summary>
    internal OverloadBehaviour? Named { get; set; }

    void IHasTextForm.ReadText(string text) => Named = Words.Overload.Parse(text);

    string? IHasTextForm.WriteText() => Named is null ? null : Words.Overload.Format(Named);
}
