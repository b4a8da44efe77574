namespace Classroom.Browser;

/// <summary>Tests that share the browser, one after another: times are measured in it.</summary>
[CollectionDefinition(Name)]
public sealed class InChromium : ICollectionFixture<Chromium>
{
    public const string Name = "in Chromium";
}
