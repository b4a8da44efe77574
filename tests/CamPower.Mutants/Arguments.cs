using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;

namespace CamPower.Mutants;

/// <summary>What the command line asks for.</summary>
internal sealed class Arguments
{
    private const string Usage =
        "Usage: [--room Heat] [--room Faults] [--sample N] [--list known.txt] [--again survivors.txt] [--jobs N]. Every room without one.";

    private readonly List<string> _rooms = [];

    /// <summary>The rooms whose mutants are tried; none means every room.</summary>
    public IReadOnlyList<string> Rooms => _rooms;

    /// <summary>Every how many mutants of a room one is tried.</summary>
    public int Sample { get; private set; } = 1;

    /// <summary>How many processes run tests at the same time.</summary>
    public int Jobs { get; private set; } = 1;

    /// <summary>The mutants that change nothing, listed by hand with the reason.</summary>
    public MutantList Equivalent { get; private set; } = MutantList.Empty;

    /// <summary>The only mutants to try, as a list of survivors has them; null tries all.</summary>
    public MutantList? Again { get; private set; }

    public static Arguments Parse(IReadOnlyList<string> args)
    {
        if (args.Count % 2 != 0) throw new InvalidOperationException(Usage);
        var parsed = new Arguments();
        for (int i = 0; i < args.Count; i += 2) parsed.Take(args[i], args[i + 1]);
        return parsed;
    }

    private void Take(string name, string value)
    {
        switch (name)
        {
            case "--room":
                _rooms.Add(value);
                break;
            case "--sample" when Whole(value) > 0:
                Sample = Whole(value);
                break;
            case "--jobs" when Whole(value) > 0:
                Jobs = Whole(value);
                break;
            case "--list" when File.Exists(value):
                Equivalent = MutantList.Read(value, withReason: true);
                break;
            case "--again" when File.Exists(value):
                Again = MutantList.Read(value, withReason: false);
                break;
            default:
                throw new InvalidOperationException($"{name} {value} is not understood, or there is no such file. {Usage}");
        }
    }

    private static int Whole(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
}
