using System;

namespace CamPower;

/// <summary>Faces of an enclosure, as seen from in front of it; and which of them are free in the usual ways to mount one.</summary>
[Flags]
public enum EnclosureFaces
{
    /// <summary>No face.</summary>
    None = 0,

    /// <summary>The lid.</summary>
    Top = 1,

    /// <summary>The underside.</summary>
    Bottom = 2,

    /// <summary>The front, width by height.</summary>
    Front = 4,

    /// <summary>The back, width by height.</summary>
    Back = 8,

    /// <summary>The left side, depth by height.</summary>
    Left = 16,

    /// <summary>The right side, depth by height.</summary>
    Right = 32,

    /// <summary>Mounted on a wall in a row of others: both sides and the back are covered.</summary>
    InRowOnWall = Top | Bottom | Front,

    /// <summary>Mounted on a wall: the back is covered.</summary>
    OnWall = InRowOnWall | Left | Right,

    /// <summary>On the floor, away from walls: the bottom is covered.</summary>
    OnFloor = Top | Front | Back | Left | Right,

    /// <summary>Free on every side, as on a pole.</summary>
    FreeInAir = OnFloor | Bottom,
}
