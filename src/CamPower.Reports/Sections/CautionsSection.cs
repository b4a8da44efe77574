using CamPower.Reports.Contents;

namespace CamPower.Reports.Sections;

/// <summary>What these numbers are not.</summary>
internal static class CautionsSection
{
    internal static Section Of() => new("Cautions",
    [
        new ItemList(
        [
            "Everything here is worked out from what was put in, not measured: "
                + "measure every device in its worst condition at commissioning.",
            "Mains wiring, batteries, heat and enclosures can hurt people: "
                + "follow the local code, and leave licensed work to a licensed electrician.",
            "Nothing here is a listing or an approval of equipment.",
        ]),
    ]);
}
