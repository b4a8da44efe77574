using System.Collections.Generic;
using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

/// <summary>A whole site file. The entries are the one description of the format: reader, writer and schema follow them.</summary>
[Description("An installation: its cables, device models, conditions, boxes, runs and devices.")]
internal sealed class SiteEntry
{
    internal const int CurrentVersion = 1;

    [JsonRequired, Description("Version of the format: 1.")]
    public int? FormatVersion { get; set; }

    [JsonRequired, Description("How the site is called.")]
    public string? Name { get; set; }

    [Description("Its height above the sea; left out where it does not matter.")]
    public Written<Length>? Altitude { get; set; }

    [JsonRequired, Description("The kinds of cable that the runs are made of.")]
    public List<CableEntry?>? Cables { get; set; }

    [JsonRequired, Description("The models of camera and other device.")]
    public List<ModelEntry?>? Models { get; set; }

    [Description("The protective devices of the outputs, beside those of the library.")]
    public List<ProtectiveDeviceEntry?>? ProtectiveDevices { get; set; }

    [Description("The cabinets in which several boxes stand together and share the air.")]
    public List<CabinetEntry?>? Cabinets { get; set; }

    [JsonRequired, Description("The conditions that the site must survive; at least one.")]
    public List<ConditionEntry?>? Conditions { get; set; }

    [Description("The outlets that boxes are plugged into.")]
    public List<OutletEntry?>? Outlets { get; set; }

    [JsonRequired, Description("The distribution boxes and adapters.")]
    public List<BoxEntry?>? Boxes { get; set; }

    [JsonRequired, Description("The runs, each from an output or a junction to a junction.")]
    public List<RunEntry?>? Runs { get; set; }

    [JsonRequired, Description("The devices, each at a junction.")]
    public List<DeviceEntry?>? Devices { get; set; }

    [Description("The shields of video cables, where a device's power negative and its video ground are one.")]
    public List<VideoLinkEntry?>? VideoLinks { get; set; }

    [Description("The connections from grounds where shields meet to the negatives of boxes.")]
    public List<BondEntry?>? Bonds { get; set; }

    [Description("The outputs that somebody joined.")]
    public List<TieEntry?>? Ties { get; set; }
}
