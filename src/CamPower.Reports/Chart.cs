using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Charts;
using CamPower.Reports.Diagrams;
using OxyPlot;
using UnitsNet;

namespace CamPower.Reports;

/// <summary>A picture of an answer, as SVG, with what it shows in words.</summary>
/// <remarks>
/// Immutable. Line styles, markers and labels carry the meaning, color only repeats it. The SVG holds no script and refers to nothing
/// outside; its bytes depend neither on the machine nor on the culture. No font is in it: text is laid out with room for the
/// wider of the usual sans-serif fonts, and names are shortened to fit; <see cref="Description"/> has them in full.
/// </remarks>
/// <example>
/// <code>
/// Chart chart = Chart.VoltageAlong(run.Feed(camera, from, conductorAt), accepted);
/// File.WriteAllText("volts.svg", chart.ToSvg());
/// </code>
/// </example>
public sealed class Chart
{
    private readonly string _svg;

    internal Chart(string title, string description, PlotModel model, double height = ChartFrame.Height)
        : this(title, description, SvgDrawing.Of(model, height))
    {
    }

    internal Chart(string title, string description, string svg)
    {
        Title = PlainText.Of(title);
        Description = PlainText.Of(description);
        _svg = svg;
    }

    /// <summary>Title of the chart.</summary>
    public string Title { get; }

    /// <summary>Description of the chart in words, for those who do not see it.</summary>
    public string Description { get; }

    /// <summary>The volts along one run, and the window that the load accepts.</summary>
    /// <param name="result">The answer for the run.</param>
    /// <param name="accepted">The voltage that the load accepts, or null where it is not stated.</param>
    /// <exception cref="InvalidOperationException">There is no operating point: nothing lies along the run.</exception>
    public static Chart VoltageAlong(RunResult result, VoltageRange? accepted = null) => VoltageAlongChart.Of(result, accepted);

    /// <summary>The volts along the way to each of several devices, and the windows that they accept.</summary>
    /// <param name="devices">The devices, each in a condition; most often those of one output.</param>
    /// <remarks>One without a voltage along its runs is not drawn; the description says so.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="devices"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">None of them has a voltage along its runs.</exception>
    /// <example>
    /// <code>
    /// Chart chart = Chart.VoltageAlong(assessment.Devices.Select(d =&gt; d.Worst));
    /// </code>
    /// </example>
    public static Chart VoltageAlong(IEnumerable<DeviceInCondition> devices) => VoltageAlongChart.Of(Given.Items(devices, nameof(devices)));

    /// <summary>The volts at a load against the length of the run, for several cables.</summary>
    /// <param name="cables">From 1 to 12 cables.</param>
    /// <param name="load">The load.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="conductorAt">Temperature of every conductor, inside their materials' ranges.</param>
    /// <param name="longest">The longest run shown, one way, above 0; the chart counts in feet where this is in feet or inches, else in
    /// meters.</param>
    /// <param name="accepted">The voltage that the load accepts, or null where it is not stated.</param>
    /// <remarks>A curve ends where the cable can carry the load no farther.</remarks>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or there are no cables or too many.</exception>
    public static Chart VoltageAgainstLength(
        IReadOnlyList<Cable> cables, Load load, ElectricPotential from, Temperature conductorAt, Length longest,
        VoltageRange? accepted = null) =>
        VoltageAgainstLengthChart.Of(
            Given.Items(cables, nameof(cables)), Given.NotNull(load, nameof(load)), from, conductorAt, longest, accepted);

    /// <summary>The current of each used output of a box in each condition, and that of its supply, as a share of what each may
    /// carry.</summary>
    /// <param name="box">The box, solved.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    public static Chart OutputLoad(BoxAssessment box) => OutputLoadChart.Of(Given.NotNull(box, nameof(box)));

    /// <summary>What the run can give and what the load takes, against the voltage at the load: both operating points, or none.</summary>
    /// <param name="result">The answer for the run.</param>
    /// <exception cref="InvalidOperationException"><paramref name="result"/> is the default value.</exception>
    /// <exception cref="ArgumentException">The run has no resistance: its load line is upright.</exception>
    public static Chart LoadLine(RunResult result) => LoadLineChart.Of(result);

    /// <summary>When a protective device opens, against current: not before one line, not after another, with the time limits of a fuse and
    /// the currents of faults.</summary>
    /// <param name="device">The device.</param>
    /// <param name="ambient">Temperature of the air around it, inside its ambient curve.</param>
    /// <param name="shorts">The faults whose currents are drawn, studied behind this device; null for none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="device"/> or one of the shorts is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="device"/> never opens: it is <see cref="ProtectiveDevice.None"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is outside the device's curve.</exception>
    public static Chart OpeningTimes(ProtectiveDevice device, Temperature ambient, IEnumerable<ShortCircuit>? shorts = null) =>
        OpeningTimesChart.Of(Given.NotNull(device, nameof(device)), ambient, Given.Items(shorts ?? [], nameof(shorts)));

    /// <summary>All devices of a box: lowest and highest volts over all conditions against what each accepts, least margin first.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="box">A box of it.</param>
    /// <remarks>A device that does not stay up has a cross instead of a line. Devices of the other kind of current are left out.</remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Chart DeviceVolts(SiteAssessment assessment, BoxAssessment box) =>
        DeviceVoltsChart.Of(Given.NotNull(box, nameof(box)),
            Given.NotNull(assessment, nameof(assessment)).Devices.Where(d => d.Box == box.Box));

    /// <summary>A box on one line each: supply, outputs with their protection, runs, junctions and devices, with what is wrong at its
    /// place.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="box">A box of it.</param>
    /// <param name="findings">What the rules found on the site; cautions and worse are marked, in shape and in words.</param>
    /// <remarks>Symbols of IEC 60617 (from memory) where there is one. Volts are the lowest and the highest that a device may see in any
    /// condition.</remarks>
    /// <exception cref="ArgumentNullException">An argument or a finding is null.</exception>
    public static Chart OneLine(SiteAssessment assessment, BoxAssessment box, IEnumerable<Finding> findings) =>
        OneLineDiagram.Of(Given.NotNull(assessment, nameof(assessment)), Given.NotNull(box, nameof(box)),
            Given.Items(findings, nameof(findings)));

    /// <summary>The picture as an SVG element, which is a document as well: with a role, its title and its description.</summary>
    /// <param name="idPrefix">Begins every id in it, a letter first, then letters, digits and hyphens: another one for each picture of a
    /// page.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idPrefix"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="idPrefix"/> is not such a name.</exception>
    public string ToSvg(string idPrefix = "chart") => SvgDrawing.Labeled(_svg, Given.Id(idPrefix, nameof(idPrefix)), Title, Description);

    /// <summary>The title; never throws.</summary>
    public override string ToString() => Title;
}
