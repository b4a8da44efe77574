using System.Linq;
using System.Reflection;
using System.Runtime.Versioning;

namespace CamPower.Tests.Repository;

public class LoadedBuildTests
{
    // Continuous integration runs these tests against each build of the package; this one says that it really does.
    [Fact]
    public void BuildThatIsLoaded_IsTheOneThatWasMeant()
    {
        string meant = typeof(LoadedBuildTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
            .Single(a => a.Key == "CamPowerTarget").Value!;
        string loaded = typeof(Cable).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName;
        Assert.Equal(
            meant switch { "net10.0" => ".NETCoreApp,Version=v10.0", "netstandard2.0" => ".NETStandard,Version=v2.0", _ => meant },
            loaded);
    }
}
