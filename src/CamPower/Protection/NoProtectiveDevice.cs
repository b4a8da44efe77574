using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Protection;

/// <summary>The device that is not there.</summary>
internal sealed class NoProtectiveDevice() : ProtectiveDevice("no protective device", voltageRating: null, breakingCapacity: null)
{
    internal override double LeastOhms => 0;

    internal override double GreatestOhms => 0;

    internal override double CurrentFactorAt(Temperature ambient, string parameter) => 1;

    internal override double CarriedAmperes(double currentFactor) => double.PositiveInfinity;

    internal override double CertainAmperes(double currentFactor) => double.PositiveInfinity;

    internal override Judgment JudgeInrush(double peakAmperes, double ampereSquaredSeconds, double currentFactor) => OfWithstand(0);

    internal override OpeningTimes OpeningAt(double amperes, double currentFactor) => OpeningTimes.Never;

    internal override IEnumerable<double> StepsAt(double currentFactor) => [];
}
