using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;

namespace CamPower.Tests.Repository;

/// <summary>XML comments of the packages and pages of the docs keep to the words of the trade.</summary>
public partial class CommentWordsTests
{
    [Fact]
    public void XmlComments_HaveNoForbiddenWord() => Assert.Empty(RepositoryFiles.Under("src", ".cs")
        .SelectMany(file => Found(file, line => line.TrimStart().StartsWith("///", StringComparison.Ordinal))));

    [Fact]
    public void PagesOfTheDocs_HaveNoForbiddenWord() =>
        Assert.Empty(RepositoryFiles.Under("docs", ".md").SelectMany(file => Found(file, _ => true)));

    [Theory]
    [InlineData("what the conductors stand", "stand")]
    [InlineData("It carries 2 A for good.", "for good")]
    [InlineData("null where nobody says", "nobody")]
    [InlineData("the device clears the fault", "clears")]
    [InlineData("a thicker cable", "thicker")]
    public void ForbiddenWord_IsFound(string line, string word) => Assert.Equal(word, Forbidden().Match(line).Value);

    [Theory]
    [InlineData("a stand-in for what is missing")]
    [InlineData("what the symbol stands for")]
    [InlineData("what the conductors withstand")]
    [InlineData("sheet 3 mm thick")]
    public void WordOfTheTrade_IsNotFound(string line) => Assert.DoesNotMatch(Forbidden(), line);

    [GeneratedRegex(@"\b(stands?|stood)\b(?! for|-in| in for)|\bfor (good|ever|want of)\b|\b(nobody|whoever)\b|\bclear(s|ed)\b|" +
        @"\b(thicker|thickest|thinner|thinnest)\b|\btouchable\b|\binlets?\b|\bmost power\b|\bhow it lies\b|\blaying\b|\bdragged\b", RegexOptions.IgnoreCase)]
    private static partial Regex Forbidden();

    private static IEnumerable<string> Found(string file, Func<string, bool> isProse) =>
        from line in File.ReadLines(file).Select((text, i) => (Text: text, Number: i + 1))
        where isProse(line.Text) && Forbidden().IsMatch(line.Text)
        select $"{Path.GetRelativePath(RepositoryFiles.Root, file)}({line.Number}): {Forbidden().Match(line.Text).Value}: {line.Text.Trim()}";
}
