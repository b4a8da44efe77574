namespace CamPower.Tests.Assessment;

/// <summary>A device of a <see cref="TreeCase"/>: the node that it hangs on, its power and current, and when it turns on and drops out; turn-on 0 where it does not say.</summary>
public sealed record TreeDevice(int Node, double Watts, double Amperes, double TurnOn, double DropOut, bool? Soft)
{
    internal bool IsDeclared => TurnOn > 0;

    internal Load Load => Sites.SmallSite.Watts(Watts) + Sites.SmallSite.Amperes(Amperes);
}
