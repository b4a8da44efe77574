using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

public sealed partial class VersionTests
{
    // Scripts and notebooks name the version that they use: it is the one that is packed.
    [Theory]
    [InlineData("samples/scripts", "*.cs")]
    [InlineData("samples/notebooks", "*.ipynb")]
    public void EverySample_NamesTheVersionOfToday(string folder, string pattern)
    {
        string version = typeof(VersionTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "PackageVersion").Value!;
        string[] files = Directory.GetFiles(RepositoryFiles.PathOf(folder), pattern);
        Assert.NotEmpty(files);
        foreach (string file in files)
        {
            MatchCollection named = Version().Matches(File.ReadAllText(file));
            Assert.NotEmpty(named);
            Assert.All(named, m => Assert.Equal(version, m.Groups[1].Value));
        }
    }

    [GeneratedRegex(@"CamPower(?:\.\w+)?(?:@|, )(\d[\w.-]*)")]
    private static partial Regex Version();
}
