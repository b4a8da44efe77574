using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using CamPower.Files.Formats;

namespace CamPower.Files.Schedules;

/// <summary>Puts the rows of a schedule among the runs and devices of a site file, as if they were in it.</summary>
internal sealed class ScheduleReading
{
    private readonly Place _root;
    private readonly ScheduleTable _table;
    private readonly Place _cables, _models, _runs, _devices;
    private readonly HashSet<string> _cableNames, _modelNames, _deviceNames;

    private ScheduleReading(Place root, ScheduleTable table)
    {
        (_root, _table) = (root, table);
        (_cables, _models, _runs, _devices) = (List(root, "cables"), List(root, "models"), List(root, "runs"), List(root, "devices"));
        (_cableNames, _modelNames, _deviceNames) = (NamesIn(_cables), NamesIn(_models), NamesIn(_devices));
    }

    /// <summary>Adds what a schedule holds to a file.</summary>
    internal static void Add(string csv, Place root)
    {
        if (root.Kind != JsonTokenType.StartObject) return;
        foreach (string brought in (string[])["cables", "models", "runs", "devices"]) List(root, brought);
        if (ScheduleTable.Read(csv, root.File) is not ScheduleTable table) return;
        var reading = new ScheduleReading(root, table);
        foreach ((int number, string[] cells) in table.Rows) reading.AddRow(number, cells);
    }

    private void AddRow(int number, string[] cells)
    {
        Cell row = _table.CellAt(number, ScheduleColumns.Name);
        Place device = Object(_devices, null, row), run = Object(_runs, null, row);
        Text(device, "name", cells, number, ScheduleColumns.Name, "the name of the device");
        Model(device, cells, number);
        string name = _table.TextAt(cells, ScheduleColumns.Name);
        if (!string.IsNullOrWhiteSpace(name) && !_deviceNames.Add(name))
        {
            device.Member("name").Error($"the name {Phrase.Quoted(name)} is used twice");
        }

        // The far end of the run has the name of the device where none is given.
        string end = string.IsNullOrWhiteSpace(_table.TextAt(cells, ScheduleColumns.Junction))
            ? ScheduleColumns.Name
            : ScheduleColumns.Junction;
        Text(device, "at", cells, number, end, null);
        Place from = Object(run, "from", row);
        Text(from, "box", cells, number, ScheduleColumns.Box, "the name of a box");
        Leaf(from, "output", cells, number, ScheduleColumns.Output, "the number of an output", JsonTokenType.Number);
        Text(run, "to", cells, number, end, null);
        if (!string.IsNullOrWhiteSpace(_table.TextAt(cells, ScheduleColumns.Installation)))
        {
            Text(run, "installationMethod", cells, number, ScheduleColumns.Installation, null);
        }

        Place part = Object(new Place(_root.File, run, "parts", 0, 0, JsonTokenType.StartArray, null) { Cell = row }, null, row);
        Text(part, "cable", cells, number, ScheduleColumns.Cable, "the name of a cable");
        AddUsualCable(_table.TextAt(cells, ScheduleColumns.Cable), _table.CellAt(number, ScheduleColumns.Cable));
        Leaf(part, "length", cells, number, ScheduleColumns.Length, "a length, such as 120 ft or 36.5 m", JsonTokenType.String);
    }

    // Either the name of a model, or watts and the voltages that the camera accepts.
    private void Model(Place device, string[] cells, int number)
    {
        string model = _table.TextAt(cells, ScheduleColumns.Model), watts = _table.TextAt(cells, ScheduleColumns.Watts);
        if (model.Length > 0 && watts.Length > 0)
        {
            Missing(device, "model", _table.CellAt(number, ScheduleColumns.Watts), "a row has a model or watts, not both");
        }
        else if (watts.Length == 0)
        {
            string column = _table.Has(ScheduleColumns.Model) ? ScheduleColumns.Model : ScheduleColumns.Watts;
            Text(device, "model", cells, number, column, "a model, or watts");
        }
        else
        {
            string name = WattsModel.Name(
                watts.Trim(), _table.TextAt(cells, ScheduleColumns.Lowest).Trim(), _table.TextAt(cells, ScheduleColumns.Highest).Trim());
            Leaf(device, "model", name, _table.CellAt(number, ScheduleColumns.Watts), JsonTokenType.String);
            if (_modelNames.Add(name)) AddModel(name, cells, number);
        }
    }

    private void AddModel(string name, string[] cells, int number)
    {
        Cell watts = _table.CellAt(number, ScheduleColumns.Watts);
        Place model = Object(_models, null, watts);
        Leaf(model, "name", name, watts, JsonTokenType.String);
        Leaf(model, "kind", "camera", watts, JsonTokenType.String);
        Place accepted = Object(model, "dc", watts);
        Leaf(accepted, "lowest", cells, number, ScheduleColumns.Lowest, "beside watts the lowest voltage that the camera accepts",
            JsonTokenType.String);
        Leaf(accepted, "highest", cells, number, ScheduleColumns.Highest, "beside watts the highest voltage that the camera accepts",
            JsonTokenType.String);
        Leaf(Object(model, "draw", watts), "base", cells, number, ScheduleColumns.Watts, "watts", JsonTokenType.String);
    }

    // A cable of the catalog need not be listed in the site file.
    private void AddUsualCable(string name, Cell cell)
    {
        if (CableCatalog.All.All(c => !string.Equals(c.Name, name, StringComparison.Ordinal)) || !_cableNames.Add(name)) return;
        Place cable = Object(_cables, null, cell);
        Leaf(cable, "name", name, cell, JsonTokenType.String);
        Leaf(cable, "usual", name, cell, JsonTokenType.String);
    }

    private void Text(Place parent, string member, string[] cells, int number, string column, string? expected) =>
        Leaf(parent, member, cells, number, column, expected, JsonTokenType.String);

    private void Leaf(Place parent, string member, string[] cells, int number, string column, string? expected, JsonTokenType kind)
    {
        string text = _table.TextAt(cells, column);
        Cell cell = _table.CellAt(number, column);
        bool isName = member is "name" or "at" or "to" or "box" or "cable" or "model";
        string wanted = expected ?? "the name of the device";
        if (string.IsNullOrWhiteSpace(text)) Missing(parent, member, cell, $"this cell is empty: write {wanted}");
        else Leaf(parent, member, isName ? text : text.Trim(), cell, kind);
    }

    private void Leaf(Place parent, string member, string text, Cell cell, JsonTokenType kind) =>
        _ = new Place(_root.File, parent, member, 0, 0, kind, text) { Cell = cell };

    private void Missing(Place parent, string member, Cell cell, string message) =>
        new Place(_root.File, parent, member, 0, 0, JsonTokenType.None, null) { Cell = cell }.Error(message);

    private Place Object(Place parent, string? name, Cell cell) =>
        new(_root.File, parent, name, 0, 0, JsonTokenType.StartObject, null) { Cell = cell };

    // A small site file may leave out what the schedule brings.
    private static Place List(Place root, string name) =>
        root.Children.FirstOrDefault(child => string.Equals(child.Name, name, StringComparison.Ordinal))
        ?? new Place(root.File, root, name, root.Offset, root.Offset, JsonTokenType.StartArray, null);

    private static HashSet<string> NamesIn(Place list) =>
        new(list.Children.SelectMany(part => part.Children).Where(c => c.Name is "name").Select(c => c.Text)
            .OfType<string>(), StringComparer.Ordinal);
}
