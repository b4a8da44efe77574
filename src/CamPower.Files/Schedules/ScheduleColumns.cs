namespace CamPower.Files.Schedules;

/// <summary>The columns of a schedule.</summary>
internal static class ScheduleColumns
{
    internal const string Name = "name", Model = "model", Watts = "watts", Lowest = "lowest", Highest = "highest", Box = "box",
        Output = "output", Cable = "cable", Length = "length", Junction = "junction", Installation = "installation";

    /// <summary>In the order in which they are written.</summary>
    internal static string[] All { get; } = [Name, Model, Watts, Lowest, Highest, Box, Output, Cable, Length, Junction, Installation];

    /// <summary>Those that every schedule has; beside them it has a column of models, of watts, or both.</summary>
    internal static string[] Required { get; } = [Name, Box, Output, Cable, Length];
}
