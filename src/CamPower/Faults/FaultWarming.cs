using System;
using System.Linq;
using CamPower.Conductors;
using CamPower.Supplies;

namespace CamPower.Faults;

/// <summary>How the conductors on the way to a fault warm by its current, and how that lowers it.</summary>
/// <remarks>
/// The current can only fall while they warm. So they are never warmer than the current of the first moment makes them by then, and never
/// warmer than where the current and their temperature settle together. The cooler of the two bounds holds.
/// </remarks>
internal sealed class FaultWarming
{
    private const int Halvings = 60;

    private readonly FaultLoop _loop;
    private readonly Func<double, double> _heating;
    private readonly Func<double, LimitedCurrent> _flowing;
    private readonly double _ohms, _startCelsius;
    private readonly Lazy<double> _settledOhms;

    /// <param name="loop">The way to the fault and back.</param>
    /// <param name="loopOhms">Its resistance before it warms. [Ω]</param>
    /// <param name="heating">The most that heats it at a resistance of the loop, never rising with it. [A]</param>
    /// <param name="flowing">What flows at a resistance of the loop.</param>
    /// <param name="startCelsius">Temperature of the conductors at first, and of the air. [°C]</param>
    internal FaultWarming(FaultLoop loop, double loopOhms, Func<double, double> heating, Func<double, LimitedCurrent> flowing,
        double startCelsius)
    {
        _loop = loop;
        _ohms = loopOhms;
        _heating = heating;
        _flowing = flowing;
        _startCelsius = startCelsius;
        _settledOhms = new Lazy<double>(SettledOhms);
    }

    /// <summary>What still flows when the conductors have warmed for a time. [s]</summary>
    internal LimitedCurrent CurrentAfter(double seconds) => _flowing(Math.Min(OhmsAfter(seconds, _heating(_ohms)), _settledOhms.Value));

    private double OhmsAfter(double seconds, double amperes) =>
        _ohms + _loop.Conductors.Sum(c => c.OhmsAdded(amperes, _startCelsius, seconds));

    // The more that flows the warmer it settles, and the warmer the less flows: halved from the side of the warmer.
    private double SettledOhms()
    {
        double below = 0, above = _heating(_ohms);
        for (int halving = 0; halving < Halvings; halving++)
        {
            double middle = (below + above) / 2;
            if (_heating(OhmsAfter(double.PositiveInfinity, middle)) < middle) above = middle;
            else below = middle;
        }

        return OhmsAfter(double.PositiveInfinity, above);
    }
}
