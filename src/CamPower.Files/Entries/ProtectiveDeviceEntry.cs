using System.ComponentModel;
using System.Text.Json.Serialization;

namespace CamPower.Files.Entries;

[Form("fuse")]
[Form("resettable")]
[Form("electronicLimit")]
internal sealed class ProtectiveDeviceEntry
{
    [JsonRequired, Description("The name by which outputs refer to it.")]
    public string? Name { get; set; }

    [Description("A fuse.")]
    public FuseEntry? Fuse { get; set; }

    [Description("A resettable fuse, as its data sheet describes it in still air of 20 C.")]
    public ResettableFuseEntry? Resettable { get; set; }

    [Description("An electronic limit, which holds the current and then opens.")]
    public ElectronicLimitEntry? ElectronicLimit { get; set; }
}
