using System.Collections.Generic;

namespace CamPower.Planning;

/// <summary>A camera alone on a box: what the run costs, what it draws, and what the rules object to.</summary>
/// <param name="Cost">What the run costs.</param>
/// <param name="Draws">What it draws.</param>
/// <param name="Objections">Findings of the camera, its run or its output that a plan may not have.</param>
internal sealed record RunTrial(double Cost, RunDraw Draws, IReadOnlyList<Finding> Objections);
