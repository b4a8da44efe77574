using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using CamPower.Conductors;
using CamPower.Tests.Reference;
using FsCheck;

namespace CamPower.Tests.Conductors;

public class StandardSizesTests
{
    private static readonly WireSizeSeries[] Every = [WireSizeSeries.Awg, WireSizeSeries.SquareMillimeters, WireSizeSeries.Kcmil, WireSizeSeries.Diameter];

    public static TheoryData<WireSizeSeries> AllSeries => [.. Every];

    [Theory]
    [MemberData(nameof(AllSeries))]
    public void Series_GoesUpwards_AndEachSizeIsNextToItsNeighbors(WireSizeSeries series)
    {
        IReadOnlyList<WireSize> sizes = WireSize.Standard(series);
        Assert.All(sizes, s => Assert.Equal(series, s.Series));
        for (int i = 0; i < sizes.Count; i++)
        {
            Assert.Equal(i == 0 ? null : sizes[i - 1], sizes[i].NextSmaller());
            Assert.Equal(i == sizes.Count - 1 ? null : sizes[i + 1], sizes[i].NextLarger());
            Assert.True(i == 0 || sizes[i - 1] < sizes[i]);
        }
    }

    [Theory]
    [InlineData("18 AWG", "16 AWG", "17 AWG")]
    [InlineData("1/0 AWG", "3/0 AWG", "2/0 AWG")]
    [InlineData("1.5 mm2", "4 mm2", "2.5 mm2")]
    [InlineData("250 kcmil", "350 kcmil", "300 kcmil")]
    [InlineData("0.8 mm wire", "1 mm wire", "0.9 mm wire")]
    public void Next_IsOneStep(string smaller, string larger, string between)
    {
        Assert.Equal(between, WireSize.Parse(smaller).NextLarger().ToString());
        Assert.Equal(between, WireSize.Parse(larger).NextSmaller().ToString());
    }

    [Theory]
    [InlineData("0.823 mm2", "0.75 mm2", "1 mm2")]
    [InlineData("0.3 mm2", null, "0.5 mm2")]
    [InlineData("1200 mm2", "1000 mm2", null)]
    [InlineData("260 kcmil", "250 kcmil", "300 kcmil")]
    public void Next_OfANonStandardSize_IsTheStandardOneBeside(string size, string? smaller, string? larger)
    {
        Assert.Equal(smaller, WireSize.Parse(size).NextSmaller()?.ToString());
        Assert.Equal(larger, WireSize.Parse(size).NextLarger()?.ToString());
    }

    [Fact]
    public void NoSeries_HasNoSizesAndNoNeighbors()
    {
        Assert.Empty(WireSize.Standard(WireSizeSeries.None));
        Assert.Null(default(WireSize).NextLarger());
        Assert.Null(default(WireSize).NextSmaller());
        Assert.Throws<ArgumentOutOfRangeException>(() => WireSize.Awg(18).NearestIn(WireSizeSeries.None));
        Assert.Throws<InvalidOperationException>(() => default(WireSize).NearestIn(WireSizeSeries.Awg));
    }

    // 18 AWG is 0.823 mm² and 1.024 mm across; 1 mm² lies between 17 AWG (1.04) and 18 AWG (0.823); 120 mm² are 236.8 kcmil.
    // 0.625 mm² lies in the middle of 0.5 and 0.75 mm²: the thicker.
    [Theory]
    [InlineData("18 AWG", WireSizeSeries.SquareMillimeters, "0.75 mm2")]
    [InlineData("18 AWG", WireSizeSeries.Diameter, "1 mm wire")]
    [InlineData("1 mm2", WireSizeSeries.Awg, "17 AWG")]
    [InlineData("120 mm2", WireSizeSeries.Kcmil, "250 kcmil")]
    [InlineData("0.625 mm2", WireSizeSeries.SquareMillimeters, "0.75 mm2")]
    [InlineData("2 mm2", WireSizeSeries.SquareMillimeters, "2.5 mm2")]
    [InlineData("18 AWG", WireSizeSeries.Awg, "18 AWG")]
    [InlineData("44 AWG", WireSizeSeries.Kcmil, "250 kcmil")]
    public void Nearest_IsByArea(string size, WireSizeSeries series, string nearest) =>
        Assert.Equal(nearest, WireSize.Parse(size).NearestIn(series).ToString());

    [SeededProperty(MaxTest = 300)]
    public void Nearest_LeavesNoNearerOne(PositiveInt micro)
    {
        WireSize size = WireSize.SquareMillimeters(micro.Get / 37.0);
        foreach (WireSizeSeries series in Every)
        {
            double found = Math.Abs(size.NearestIn(series).Area.SquareMillimeters - size.Area.SquareMillimeters);
            double least = WireSize.Standard(series).Min(s => Math.Abs(s.Area.SquareMillimeters - size.Area.SquareMillimeters));
            Assert.Equal(least, found, 1e-9 * size.Area.SquareMillimeters);
        }
    }

    // Every size that the printed tables of IEC 60228 give a limit for is a size of the series.
    [Fact]
    public void SquareMillimeters_HoldTheSizesOfIec60228() => Assert.All(
        ReferenceData.Rows.Where(r => r.Id.StartsWith("S04-", StringComparison.Ordinal) && r.Quantity.Contains("class", StringComparison.Ordinal)),
        r => Assert.Contains(WireSize.SquareMillimeters(double.Parse(Regex.Match(r.Quantity, @"([\d.]+) mm2$").Groups[1].Value, CultureInfo.InvariantCulture)),
            WireSize.Standard(WireSizeSeries.SquareMillimeters)));
}
