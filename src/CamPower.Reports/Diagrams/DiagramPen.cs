using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using CamPower.Reports.Charts;
using OxyPlot;
using static System.FormattableString;

namespace CamPower.Reports.Diagrams;

/// <summary>Draws lines, texts and the symbols of a one-line diagram into SVG.</summary>
/// <remarks>Symbols follow IEC 60617 (from memory): the converter, the transformer, the fuse, the thermistor that stands for a
/// resettable fuse, the junction. A camera, and the shapes of the severities, are our own.</remarks>
internal sealed class DiagramPen
{
    internal const double TextSize = 11, MarkLine = 14;
    private const double Symbol = 15, MarkSize = 4.5, Bold = FontWeights.Bold;
    private const string Black = "#000000", Red = "#8b0000", Brown = "#8a5a00", Font = "Verdana, DejaVu Sans, Arial, sans-serif";
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private readonly List<XElement> _drawn = [];

    /// <summary>The drawing as it is, white behind it.</summary>
    internal string ToSvg(double width, double height) => new XElement(Svg + "svg",
        new XAttribute("width", Said(width)), new XAttribute("height", Said(height)),
        Element("rect", ("width", Said(width)), ("height", Said(height)), ("fill", "#ffffff")), _drawn).ToString(SaveOptions.None);

    internal void Line(double x1, double y1, double x2, double y2) =>
        Add("line", ("x1", Said(x1)), ("y1", Said(y1)), ("x2", Said(x2)), ("y2", Said(y2)), ("stroke", Black), ("stroke-width", "1.4"));

    internal void Text(double x, double y, string text, double room, bool isBold = false)
    {
        double weight = isBold ? Bold : FontWeights.Normal;
        XElement drawn = Element("text", ("transform", $"translate({Said(x)},{Said(y)})"), ("font-size", Said(TextSize)),
            ("font-family", Font), ("font-weight", Said(weight)), ("text-anchor", "start"), ("fill", Black));
        drawn.Add(TextRoom.Fitted(text, room, TextSize, weight));
        _drawn.Add(drawn);
    }

    /// <summary>Marks below each other, each with the shape of its severity; gives the height taken.</summary>
    internal double Marks(double x, double y, IReadOnlyList<DiagramMark> marks, double room)
    {
        double taken = 0;
        foreach (DiagramMark mark in marks)
        {
            Shape(x + MarkSize, y + taken, mark.Severity);
            foreach (string line in TextRoom.Lines(mark.Words, room - (3 * MarkSize), TextSize, Bold))
            {
                Text(x + (3 * MarkSize), y + taken + 4, line, room, isBold: true);
                taken += MarkLine;
            }
        }

        return taken;
    }

    /// <summary>A square with a diagonal, alternating current in and direct current out; a transformer's two windings for AC.</summary>
    internal void Supply(double x, double y, CurrentKind kind)
    {
        if (kind == CurrentKind.Ac)
        {
            Circle(x - 6, y, Symbol * 0.7, "none");
            Circle(x + 6, y, Symbol * 0.7, "none");
            return;
        }

        Box(x - Symbol, y - Symbol, 2 * Symbol, 2 * Symbol);
        Line(x - Symbol, y + Symbol, x + Symbol, y - Symbol);
        Text(x - 12, y - 3, "~", Symbol);
        Text(x + 3, y + 12, "=", Symbol);
    }

    /// <summary>The protective device on the line at this height, between two ends; a gap in words where none is stated.</summary>
    internal void Protection(double x, double y, ProtectiveDevice? device)
    {
        const double half = 13, high = 5;
        if (device is null || device == ProtectiveDevice.None) return;
        Box(x - half, y - high, 2 * half, 2 * high);
        if (device is not ElectronicLimit) Line(x - half, y, x + half, y);
        if (device is ElectronicLimit) Text(x - 8, y + 4, "I >", 2 * half);
        if (device is ResettableFuse) Path($"M {Said(x - half - 3)} {Said(y + 10)} h 5 L {Said(x + half)} {Said(y - 10)}");
    }

    /// <summary>A battery that hangs on the line at this height, behind its fuse where it has one; gives the height taken below the
    /// line.</summary>
    internal double Battery(double x, double y, ProtectiveDevice? fuse)
    {
        const double lead = 12, high = 14, half = 4, cell = 5, wide = 9, narrow = 5;
        Line(x, y, x, y + lead + high + half);
        if (fuse is not null && fuse != ProtectiveDevice.None) Box(x - half, y + lead, 2 * half, high);
        for (int i = 0; i < 2; i++)
        {
            double top = y + lead + high + half + (2 * i * cell);
            Line(x - wide, top, x + wide, top);
            Line(x - narrow, top + cell, x + narrow, top + cell);
        }

        return lead + high + half + (3 * cell);
    }

    internal void Junction(double x, double y) => Circle(x, y, 2.5, Black);

    /// <summary>A body with a lens for a camera, a plain box for any other load.</summary>
    internal void Device(double x, double y, DeviceKind kind)
    {
        Box(x, y - 6, 18, 12);
        if (kind == DeviceKind.Converter) Line(x, y + 6, x + 18, y - 6);
        if (kind == DeviceKind.Camera) Path($"M {Said(x + 18)} {Said(y - 2)} l 6 -4 v 12 l -6 -4 Z");
    }

    // Told apart without color: a filled diamond, a cross in a circle, a triangle.
    private void Shape(double x, double y, Severity severity)
    {
        if (severity == Severity.Danger) Path($"M {Said(x)} {Said(y - 6)} l 6 6 l -6 6 l -6 -6 Z", Red, Red);
        else if (severity == Severity.Caution) Path($"M {Said(x)} {Said(y - 5)} l 5.5 10 h -11 Z", Brown);
        else
        {
            Circle(x, y, 5.5, "none", Red);
            Path($"M {Said(x - 3)} {Said(y - 3)} l 6 6 m 0 -6 l -6 6", Red);
        }
    }

    private void Box(double x, double y, double width, double height) => Add("rect", ("x", Said(x)), ("y", Said(y)),
        ("width", Said(width)), ("height", Said(height)), ("fill", "none"), ("stroke", Black), ("stroke-width", "1.4"));

    private void Circle(double x, double y, double radius, string fill, string stroke = Black) =>
        Add("circle", ("cx", Said(x)), ("cy", Said(y)),
        ("r", Said(radius)), ("fill", fill), ("stroke", stroke), ("stroke-width", "1.4"));

    private void Path(string d, string stroke = Black, string fill = "none") =>
        Add("path", ("d", d), ("fill", fill), ("stroke", stroke), ("stroke-width", "1.4"));

    private void Add(string name, params (string Name, string Value)[] attributes) => _drawn.Add(Element(name, attributes));

    private static XElement Element(string name, params (string Name, string Value)[] attributes) =>
        new(Svg + name, attributes.Select(a => new XAttribute(a.Name, a.Value)));

    private static string Said(double number) => Invariant($"{number:0.##}");
}
