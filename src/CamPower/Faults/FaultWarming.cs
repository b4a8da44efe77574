using System;
using CamPower.Conductors;
using CamPower.Supplies;

namespace CamPower.Faults;

/// <summary>Warming of the conductors on the way to a fault by its current, which lowers the current.</summary>
/// <remarks>
/// The current can only fall while they warm. So they are never warmer than the current of the first moment makes them by then, and never
/// warmer than where the current and their temperature settle together. The cooler of the two bounds holds.
/// </remarks>
/// <param name="setting">What is behind the fault.</param>
/// <param name="loop">The way to the fault and back.</param>
/// <param name="condition">The place of the condition in its list.</param>
/// <param name="flowing">What flows at a resistance of the loop.</param>
internal sealed class FaultWarming(FaultSetting setting, FaultLoop loop, int condition, Func<double, LimitedCurrent> flowing)
{
    private const int Halvings = 60;

    private readonly double _ohms = loop.OhmsIn(condition), _startCelsius = setting.ConductorCelsiusIn(condition);

    private double? _settledOhms;

    /// <summary>What still flows when the conductors have warmed for a time. [s]</summary>
    internal LimitedCurrent CurrentAfter(double seconds)
    {
        double ohms = OhmsAfter(seconds, HeatingAt(_ohms));

        // Where it would go on warming it has not settled yet.
        bool hasSettled = !(ohms <= OhmsAfter(double.PositiveInfinity, HeatingAt(ohms)));
        return flowing(hasSettled ? Math.Min(ohms, _settledOhms ??= SettledOhms()) : ohms);
    }

    private double HeatingAt(double loopOhms) => setting.HeatingAt(loopOhms, condition);

    private double OhmsAfter(double seconds, double amperes)
    {
        double added = 0;
        for (int i = 0; i < loop.Conductors.Count; i++) added += loop.Conductors[i].OhmsAdded(amperes, _startCelsius, seconds);
        return _ohms + added;
    }

    // The more that flows the warmer it settles, and the warmer the less flows: halved from the side of the warmer.
    private double SettledOhms()
    {
        double settled = Bisection.LastHeld(HeatingAt(_ohms), 0, Halvings, middle => HeatingAt(SettledAt(middle)) < middle);
        return SettledAt(settled);

        double SettledAt(double amperes) => OhmsAfter(double.PositiveInfinity, amperes);
    }
}
