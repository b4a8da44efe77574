using System;
using System.Linq;

namespace CamPower.Planning;

/// <summary>A box that may be put at a place: its price, and how many of its outputs may be used.</summary>
/// <param name="Box">The box, in its enclosure, under its name in the catalog.</param>
/// <param name="Cost">What it costs there.</param>
/// <param name="UsableOutputs">How many outputs may be used, so that the spare ones of the policy are left.</param>
internal sealed record OfferedBox(DistributionBox Box, double Cost, int UsableOutputs)
{
    /// <summary>The largest load that it may have in each condition. [A]</summary>
    internal double[] MostAmperes { get; init; } = [];

    /// <summary>The box that runs are tried on.</summary>
    internal DistributionBox BehindOutputs { get; init; } = Box;

    internal static OfferedBox At(BoxPlace place, DistributionBox box, PlanningQuestion question)
    {
        if (Refusal(box) is string refusal) throw new ArgumentException($"{box} cannot be planned with: {refusal}.", nameof(question));
        var alone = new Site(question.Name, question.Conditions, [box], [], []);
        double cost = alone.ListMaterial(question.Material, question.Prices).Cost + question.Prices.Visit + place.Price;
        return new OfferedBox(Dressed(box, place), place.Box is null ? cost : 0, Usable(box.Outputs.Count, question.Sizing));
    }

    // What a binary fraction is above the decimal one is no output.
    private static int Usable(int outputs, SizingPolicy sizing) => Enumerable.Range(0, outputs + 1)
        .Last(used => Math.Ceiling((used * (1 + sizing.SpareOutputs.DecimalFractions)) - 1e-9) <= outputs);

    private static DistributionBox Dressed(DistributionBox box, BoxPlace place)
    {
        DistributionBox dressed = place.Enclosure is Enclosure enclosure ? box.WithEnclosure(enclosure) : box;
        return place.Receptacle is Receptacle receptacle ? dressed.WithReceptacle(receptacle) : dressed;
    }

    // Each of these would make what a camera does alone say nothing of what it does in company.
    private static string? Refusal(DistributionBox box) => box switch
    {
        { Supply.Output: not DcOutput { OpenVoltage: null } } => "its supply must give a regulated direct voltage",
        { FedFrom: not null } => "it is fed from a run",
        { Cabinet: not null } => "it shares a cabinet with other boxes",
        _ => box.Outputs.All(o => o.Limit.Equals(box.Outputs[0].Limit, UnitsNet.ElectricCurrent.Zero)
            && ReferenceEquals(o.Protection, box.Outputs[0].Protection) && o.ClaimedClass == box.Outputs[0].ClaimedClass)
            ? null
            : "its outputs are not all alike",
    };
}
