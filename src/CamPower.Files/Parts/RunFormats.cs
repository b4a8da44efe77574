using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Runs, from where they start to where they end.</summary>
internal static class RunFormats
{
    private static readonly ObjectFormat<RunOrigin> Origin = new(o =>
    {
        var box = o.OfForm("box", "Name of the box.", Words.Name, from => from.BoxName);
        var output = o.OfForm("output", "Number of the output, from 1.", Quantities.Count,
            from => from.JunctionName is null ? from.OutputNumber : null).Parameter("number");
        var junction = o.OfForm("junction", "Name of the junction where another run ends.", Words.Name, from => from.JunctionName);
        o.OneOf(new Form(box, output), new Form(junction));

        // Where the junction is missing, an output of a box of no name stands in: nothing follows from it.
        return at => junction.IsGiven(at) ? RunOrigin.Junction(junction[at]) : RunOrigin.Output(box[at], output[at]);
    });

    private static readonly ObjectFormat<RunPart> Part = new(o =>
    {
        var cable = o.OfForm("cable", "Name of the cable.", CableFormats.Cables.Reference, p => (p as CableSegment)?.Cable);
        var length = o.OfForm("length", "Length along the route, one way.", Quantities.Length, p => (p as CableSegment)?.OneWayLength)
            .Parameter("oneWayLength");
        var joint = o.OfForm("joint", "What the joint or connector is.", Words.Name, p => OwnJoint(p)?.Name);
        var resistance = o.OfForm("resistance", "Resistance that the joint adds to the loop, both poles together.", Quantities.Resistance,
            p => OwnJoint(p)?.LoopResistance).Parameter("loopResistance");
        var ratedCurrent = o.Optional("ratedCurrent", "What each contact of the joint carries all the time.", Quantities.Current,
            p => OwnJoint(p)?.RatedCurrent);
        var usualJoint = o.OfForm("usualJoint", "A joint from the catalog of the library, with its usual resistance.", Words.UsualJoint,
            UsualJoint);
        o.OneOf(new Form(cable, length), new Form(joint, resistance) { Optional = ratedCurrent }, new Form(usualJoint));
        return at =>
        {
            if (usualJoint.IsGiven(at)) return usualJoint[at];
            bool isJoint = joint.IsGiven(at) || resistance.IsGiven(at);
            return isJoint ? new Joint(joint[at], resistance[at], ratedCurrent: ratedCurrent[at]) : new CableSegment(cable[at], length[at]);
        };
    });

    private static readonly Format<CableRun> Parts = new MadeFormat<IReadOnlyList<RunPart>, CableRun>(
        new ListFormat<RunPart>(Part), parts => new CableRun([.. parts]), run => run.Parts);

    /// <summary>A run.</summary>
    internal static ObjectFormat<SiteRun> Run { get; } = new(o =>
    {
        var from = o.Required("from", "Where it starts: an output of a box, or a junction.", Origin, r => r.From);
        var to = o.Required("to", "Name of the junction at its far end.", Words.Name, r => r.To);
        var parts = o.Required("parts", "Lengths of cable and joints, from the source to the load; at least one length of cable.", Parts,
            r => r.Run).Else(StandIn.Run);
        var returnAt = o.Optional("returnAt", "Name of the junction whose negative it shares in place of a return conductor of its own.",
            Words.Name, r => r.ReturnAt);
        var installationMethod =
            o.Optional("installationMethod", "How it lies, as far as its heat is concerned.", Words.InstallationMethod,
            r => r.InstallationMethod);
        return at => new SiteRun(from[at], to[at], parts[at], returnAt[at], installationMethod[at]);
    });

    private static Joint? UsualJoint(RunPart part) => part is Joint joint && JointCatalog.All.Contains(joint) ? joint : null;

    private static Joint? OwnJoint(RunPart part)
    {
        if (part is not Joint joint || UsualJoint(joint) is not null) return null;
        return joint.Source is null
            ? joint
            : throw new NotSupportedException($"A site file cannot express the source '{joint.Source}' of the joint '{joint.Name}'.");
    }
}
