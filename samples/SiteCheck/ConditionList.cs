using CamPower;

namespace SiteCheck;

/// <summary>The conditions of a site with their temperatures.</summary>
internal static class ConditionList
{
    public static void Write(Page page, Site site)
    {
        page.Blank();
        page.Line("Conditions:");
        foreach (Condition condition in site.Conditions)
        {
            page.Text($"{condition.Name}: cables {Spoken.Celsius(condition.At.Cable)}, boxes {Spoken.Celsius(condition.At.Box)}", indent: 2);
        }
    }
}
