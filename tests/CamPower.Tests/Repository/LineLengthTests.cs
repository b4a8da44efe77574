using System.Collections.Generic;
using System.IO;
using System.Linq;

namespace CamPower.Tests.Repository;

/// <summary>Sources are read beside others, in half of a screen.</summary>
public class LineLengthTests
{
    private const int Longest = 140;

    [Fact]
    public void LinesOfTheSources_AreAtMost140Characters() => Assert.Empty(TooLong());

    private static IEnumerable<string> TooLong() =>
        from file in RepositoryFiles.Under("src", ".cs")
        from line in File.ReadLines(file).Select((text, i) => (text, number: i + 1))
        where line.text.Length > Longest
        select $"{Path.GetRelativePath(RepositoryFiles.Root, file)}:{line.number} has {line.text.Length} characters";
}
