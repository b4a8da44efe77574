using System;
using System.IO;
using System.Text;

namespace CamPower.Files.Tests;

/// <summary>A file that is not JSON has one fault, with its line and column.</summary>
public class NotJsonTests
{
    [Theory]
    [InlineData("¶", "it is empty")]
    [InlineData("¶ \n ", "it is empty")]
    [InlineData("{\n  ¶// a comment\n}", "a comment is not allowed; take it out")]
    [InlineData("{\n  \"formatVersion\": 1,\n¶}", "there is a comma before the end of a list or object; take it out")]
    [InlineData("{\n  \"cables\": [1, ¶]}", "there is a comma before the end of a list or object; take it out")]
    [InlineData("{ \"a\": 1 } ¶{", "'{' is not expected here")]
    [InlineData("{ \"formatVersion\": 1¶", "it ends too early; close every text, list and object")]
    [InlineData("{ ¶'name': 1 }", "a single quote is not allowed here; write \" around texts")]
    [InlineData("{ \"naïve\": ¶yes }", "'y' is not expected here")]
    [InlineData("{ \"a\": 0¶1 }", "'1' is not expected here")]
    [InlineData("{ \"a\": ¶\"\\ud800\" }", "an escape that is no character")]
    [InlineData("{ ¶\"\\udc00\": 1 }", "an escape that is no character")]
    public void TheOneFault_HasItsPlace(string marked, string message)
    {
        var file = new Marked(marked);
        SiteFileResult result = SiteFile.Read(file.Text);
        Assert.Null(result.Site);
        SiteFileError fault = Assert.Single(result.Errors);
        Assert.Equal(("$", file.Line, file.Column), (fault.Path, fault.Line, fault.Column));
        Assert.StartsWith("this is not JSON: ", fault.Message, StringComparison.Ordinal);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("LineNumber", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AByteOrderMark_IsNoPartOfTheText()
    {
        Assert.Empty(SiteFile.Read("\uFEFF" + Samples.Minimal).Errors);
        SiteFileError fault = SiteFile.Read("\uFEFF{ yes }").Errors[0];
        Assert.Equal((1, 3), (fault.Line, fault.Column));
    }

    [Fact]
    public void HalfASurrogatePair_HasItsPlace()
    {
        SiteFileError fault = Assert.Single(SiteFile.Read("{\n \"a\": \"\uD800\" }").Errors);
        Assert.Equal((2, 8, "this is not JSON: half of a surrogate pair is alone here"), (fault.Line, fault.Column, fault.Message));
    }

    [Theory]
    [InlineData("utf-16", true)]
    [InlineData("utf-16", false)]
    [InlineData("utf-16BE", true)]
    [InlineData("utf-16BE", false)]
    public void Utf16_IsNamed(string encoding, bool hasMark)
    {
        var utf16 = Encoding.GetEncoding(encoding);
        byte[] bytes = [.. hasMark ? utf16.GetPreamble() : [], .. utf16.GetBytes(Samples.Minimal)];
        SiteFileError fault = Assert.Single(SiteFile.Read(new MemoryStream(bytes)).Errors);
        Assert.Equal((1, 1, "this is not JSON: it is UTF-16; save it as UTF-8"), (fault.Line, fault.Column, fault.Message));
    }

    [Fact]
    public void InvalidUtf8_HasItsPlace()
    {
        byte[] bytes = [.. "{\n \"a\": \"é"u8, 0xC3, .. "\" }"u8];
        SiteFileError fault = Assert.Single(SiteFile.Read(new MemoryStream(bytes)).Errors);
        Assert.Equal((2, 9, "this is not JSON: it is not UTF-8 here"), (fault.Line, fault.Column, fault.Message));
    }

    [Fact]
    public void VeryDeepNesting_IsRead()
    {
        SiteFileResult result = SiteFile.Read(new string('[', 100_000));
        Assert.Single(result.Errors);
        Assert.NotEmpty(SiteFile.Read(new string('[', 100_000) + new string(']', 100_000)).Errors);
    }

    [Fact]
    public void TooLarge_IsOneFault()
    {
        int length = Encoding.UTF8.GetByteCount(Samples.Minimal);
        var justEnough = new SiteFileOptions { MaxBytes = length };
        var tooLittle = new SiteFileOptions { MaxBytes = length - 1 };
        Assert.NotNull(SiteFile.Read(Samples.Minimal, justEnough).Site);
        Assert.NotNull(SiteFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(Samples.Minimal)), justEnough).Site);
        foreach (SiteFileResult result in new[] { SiteFile.Read(Samples.Minimal, tooLittle), SiteFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(Samples.Minimal)), tooLittle) })
        {
            SiteFileError fault = Assert.Single(result.Errors);
            Assert.Equal(("$", 1, 1), (fault.Path, fault.Line, fault.Column));
            Assert.Equal(FormattableString.Invariant($"the file is too large: more than {length - 1} bytes are not read"), fault.Message);
        }
    }

    [Fact]
    public void Limits_HaveARange()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new SiteFileOptions { MaxBytes = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new SiteFileOptions { MaxDepth = 0 });
    }
}
