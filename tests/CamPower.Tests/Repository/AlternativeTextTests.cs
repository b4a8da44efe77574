using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace CamPower.Tests.Repository;

/// <summary>What a page says of a picture in words is in the picture, so that nobody who cannot see it reads other numbers.</summary>
public partial class AlternativeTextTests
{
    [Fact]
    public void NumbersOfAlternativeTexts_AreInThePicture() => Assert.Empty(
        from page in RepositoryFiles.Under("docs", ".md")
        from Match picture in Picture().Matches(File.ReadAllText(page))
        let path = Path.Combine(Path.GetDirectoryName(page)!, picture.Groups["path"].Value)
        let shown = NumbersIn(string.Join(' ', XElement.Load(path).DescendantNodes().OfType<XText>().Select(text => text.Value))).ToHashSet()
        from number in NumbersIn(picture.Groups["text"].Value)
        where !shown.Contains(number)
        select $"{Path.GetFileName(page)}: {number} is not in {Path.GetFileName(path)}");

    [Fact]
    public void Pictures_AreFound() => Assert.InRange(RepositoryFiles.Under("docs", ".md").Sum(page => Picture().Count(File.ReadAllText(page))), 12, 500);

    [Theory]
    [InlineData("from 11.65 V to 12.1 V.", new[] { "11.65", "12.1" })]
    [InlineData("16 AWG, 300 ft, version 1.2.3", new string[0])]
    public void Numbers_AreThoseWithADecimalPoint(string text, string[] numbers) => Assert.Equal(numbers, NumbersIn(text));

    // Whole numbers are lengths, sizes and counts as well, and "nearly 300 ft" is a good text.
    private static IEnumerable<string> NumbersIn(string text) => Number().Matches(text).Select(match => match.Value);

    [GeneratedRegex(@"!\[(?<text>[^\]]*)\]\((?<path>[^)]*\.svg)\)")]
    private static partial Regex Picture();

    [GeneratedRegex(@"(?<![\w.])[0-9]+\.[0-9]+(?!\.?[0-9])")]
    private static partial Regex Number();
}
