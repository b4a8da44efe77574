using System.Collections.Generic;

namespace CamPower.Planning;

/// <summary>Room for one box at a place.</summary>
/// <param name="Index">Its number among all.</param>
/// <param name="Place">The place.</param>
/// <param name="Name">Name of the box in it.</param>
/// <param name="Offers">The boxes that may be put into it.</param>
internal sealed record BoxSlot(int Index, BoxPlace Place, string Name, IReadOnlyList<OfferedBox> Offers);
