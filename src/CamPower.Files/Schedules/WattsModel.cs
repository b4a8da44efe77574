using System;
using CamPower.Files.Formats;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Schedules;

/// <summary>The model of a camera of which a schedule states only watts and the voltages that it accepts.</summary>
internal static class WattsModel
{
    /// <summary>The name of the model: what is stated of it.</summary>
    internal static string Name(string watts, string lowest, string highest) => $"{watts} camera, {lowest} to {highest}";

    /// <summary>The cells that state a model; null where it is another than these cells would give.</summary>
    internal static (string Watts, string Lowest, string Highest)? CellsOf(Device model)
    {
        bool isBare = model is
        {
            Kind: DeviceKind.Camera, DcInput: not null, AcInput: null, Starting: null, Connector: null, Inrush: null, SwitchedInrush: null,
        };
        if (!isBare || model.Draw is not ComponentDraw draw || draw.HasMotor || !IsNone(draw.Infrared) || !IsNone(draw.Heater)
            || !IsNone(draw.StartUp))
        {
            return null;
        }

        // A current of zero in a unit of its own would be lost.
        ElectricCurrent current = draw.Base.CurrentComponent;
        if (current.Value != 0 || current.Unit != ElectricCurrentUnit.Ampere || draw.Base.ResistanceComponent is not null) return null;
        string watts = Quantities.Power.Text(draw.Base.PowerComponent);
        string lowest = Quantities.Voltage.Text(model.DcInput!.Lowest), highest = Quantities.Voltage.Text(model.DcInput.Highest);
        bool isNamedSo = string.Equals(model.Name, Name(watts, lowest, highest), StringComparison.Ordinal);
        return isNamedSo ? (watts, lowest, highest) : null;
    }

    private static bool IsNone(Load load) => ReferenceEquals(load, Load.None);
}
