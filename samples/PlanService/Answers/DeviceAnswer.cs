using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace PlanService.Answers;

/// <summary>One device in every condition.</summary>
public sealed record DeviceAnswer
{
    /// <summary>Name of the device.</summary>
    public required string Name { get; init; }

    /// <summary>The box that feeds it.</summary>
    public required string Box { get; init; }

    /// <summary>The output that feeds it.</summary>
    public required int Output { get; init; }

    /// <summary>The condition that is worst for it.</summary>
    public required string WorstCondition { get; init; }

    /// <summary>The most that its terminals may see while it runs, as text.</summary>
    public required string LightLoadVoltage { get; init; }

    /// <summary>The most that its terminals may see while it runs. [V]</summary>
    public required double LightLoadVoltageInVolts { get; init; }

    /// <summary>The device in each condition, in the order of the file.</summary>
    public required IReadOnlyList<DeviceConditionAnswer> InConditions { get; init; }

    internal static DeviceAnswer Of(DeviceAssessment device) => new()
    {
        Name = device.Device.Name,
        Box = device.Box.Name,
        Output = device.Output.Number,
        WorstCondition = device.Worst.Condition.Name,
        LightLoadVoltage = Written.Text(device.LightLoadVoltage),
        LightLoadVoltageInVolts = device.LightLoadVoltage.Volts,
        InConditions = [.. device.InConditions.Select(DeviceConditionAnswer.Of)],
    };
}
