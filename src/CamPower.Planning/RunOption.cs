using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>A run that may feed a camera: alone on some of the boxes it keeps every rule.</summary>
/// <param name="Camera">Number of the camera.</param>
/// <param name="Slot">Number of the slot.</param>
/// <param name="Cable">The cable.</param>
/// <param name="Length">The route.</param>
/// <param name="Cost">What the run costs.</param>
/// <param name="Draws">What it draws from the box.</param>
/// <param name="Offers">Numbers of the boxes on which it may be.</param>
internal sealed record RunOption(int Camera, int Slot, Cable Cable, Length Length, double Cost, RunDraw Draws, IReadOnlyList<int> Offers);
