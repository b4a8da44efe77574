using System;
using CamPower.Files.Formats;

namespace CamPower.Files.Parts;

/// <summary>What connects parts of a site beside its runs: shields, bonds and ties.</summary>
internal static class LinkFormats
{
    private static readonly ObjectFormat<RunOrigin> Output = new(o =>
    {
        var box = o.Required("box", "Name of the box.", NameFormat.Instance, output => output.BoxName!);
        var number = o.Required("output", "Number of the output, from 1.", NumberFormat.Count, output => output.OutputNumber).ForParameter("number");
        return at => RunOrigin.Output(box[at], number[at]);
    });

    /// <summary>The shield of a video cable.</summary>
    internal static ObjectFormat<VideoLink> VideoLink { get; } = new(o =>
    {
        var device = o.Required("device", "Name of the device whose power negative and video ground are one.", NameFormat.Instance, l => l.Device);
        var ground = o.Required("ground", "Name of the ground where its shield meets others: the recorder's, say.", NameFormat.Instance, l => l.Ground);
        var resistance = o.Required("shieldResistance", "Resistance of the shield from end to end, connectors included.",
            Quantities.Resistance, l => l.ShieldResistance);
        return at => new VideoLink(device[at], ground[at], resistance[at]);
    });

    /// <summary>The connection from a ground to the negative of a box.</summary>
    internal static ObjectFormat<GroundBond> Bond { get; } = new(o =>
    {
        var ground = o.Required("ground", "Name of a ground where shields meet.", NameFormat.Instance, b => b.Ground);
        var box = o.Required("box", "Name of the box to whose negative it is connected.", NameFormat.Instance, b => b.Box);
        var resistance = o.Required("resistance", "Resistance between the two.", Quantities.Resistance, b => b.Resistance);
        return at => new GroundBond(ground[at], box[at], resistance[at]);
    });

    /// <summary>Two outputs that somebody joined.</summary>
    internal static ObjectFormat<OutputTie> Tie { get; } = new(o =>
    {
        var one = o.Required("one", "One of the outputs.", Output, t => RunOrigin.Output(t.OneBox, t.OneOutput));
        var other = o.Required("other", "The output that it is joined to.", Output, t => RunOrigin.Output(t.OtherBox, t.OtherOutput));
        return at =>
        {
            RunOrigin from = one[at], to = other[at];
            bool isItself = string.Equals(from.BoxName, to.BoxName, StringComparison.Ordinal) && from.OutputNumber == to.OutputNumber;
            if (isItself && !at.IsFaulty) at[other].Fault("an output is not joined to itself");
            return new OutputTie(from.BoxName!, from.OutputNumber, to.BoxName!, isItself ? to.OutputNumber + 1 : to.OutputNumber);
        };
    });
}
