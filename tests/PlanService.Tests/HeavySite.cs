using System;
using System.Linq;
using System.Text;

namespace PlanService.Tests;

/// <summary>The costliest site that is known: each camera returns over the negative of the one before, too far away to stay up, in as many as fit into a file.</summary>
internal static class HeavySite
{
    public static string Text { get; } = Of(cameras: 400);

    private static string Of(int cameras)
    {
        string supply = """{"name":"s","output":"DC","nominal":"12 V","ratedCurrent":"500 A","tolerance":"1 %","derating":"generic enclosed","trim":{"lowest":"12 V","highest":"14 V"}}""";
        string text = $$$$"""
            {"formatVersion":1,"name":"heavy",
            "cables":[{"name":"p","size":"16 AWG","stranding":"class B stranded","material":"annealed copper"}],
            "models":[{"name":"m","kind":"camera","dc":{"lowest":"10.8 V","highest":"13.2 V"},"draw":{"base":"4.6 W"},"starting":{"turnOn":"9 V","dropOut":"8 V","softStart":"unknown"}}],
            "conditions":[{"given":"night","cable":"20 C","box":"20 C","camera":"20 C"}],
            "boxes":[{"name":"b","supply":{{{{supply}}}},"outputs":{{{{cameras}}}},"outputLimit":"2 A"}],
            "runs":[{{{{Each(Run)}}}}],
            "devices":[{{{{Each(Device)}}}}]}
            """;
        Assert.InRange(Encoding.UTF8.GetByteCount(text), 48 * 1024, 64 * 1024);
        return text;

        static string Device(int i) => $$"""{"name":"{{i}}","model":"m","at":"{{i}}"}""";

        static string Run(int i) =>
            $$"""{"from":{"box":"b","output":{{i}} },"to":"{{i}}",{{(i > 1 ? $"\"returnAt\":\"{i - 1}\"," : "")}}"parts":[{"cable":"p","length":"100 m"}]}""";

        string Each(Func<int, string> entry) => string.Join(',', Enumerable.Range(1, cameras).Select(entry));
    }
}
