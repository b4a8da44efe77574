namespace Classroom.Exercises;

/// <summary>What an exercise asks for.</summary>
public enum ExerciseKind
{
    /// <summary>The resistance out and back, from size, stranding, material and temperature.</summary>
    LoopResistance,

    /// <summary>The voltage lost to a load of constant current.</summary>
    DropAtConstantCurrent,

    /// <summary>The voltage lost to a load of constant power: a quadratic equation.</summary>
    DropAtConstantPower,

    /// <summary>The most constant power that a run carries.</summary>
    MaximumPower,

    /// <summary>How many times a load could grow before the run collapses, or that it already has.</summary>
    MarginToCollapse,

    /// <summary>The longest run on which a load still gets its lowest voltage.</summary>
    LongestRun,

    /// <summary>The smallest gauge on which a load still gets its lowest voltage.</summary>
    SmallestGauge,
}
