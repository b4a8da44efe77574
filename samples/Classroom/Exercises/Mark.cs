namespace Classroom.Exercises;

/// <summary>What is said of an answer that was handed in.</summary>
public enum Mark
{
    /// <summary>No number was written.</summary>
    NotANumber,

    /// <summary>Outside the tolerance.</summary>
    Wrong,

    /// <summary>Within the tolerance.</summary>
    Right,
}
