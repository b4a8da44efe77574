using CamPower;

namespace SiteCheck;

/// <summary>How much is shown. A site with much wrong is told in fewer words, the worst still in full, so that it stays a few screens long.</summary>
internal sealed record Shown
{
    /// <summary>Every finding by itself, every condition and every fault.</summary>
    public static Shown Everything { get; } = new() { IsEverything = true };

    /// <summary>From most to least.</summary>
    public static Shown[] InBrief { get; } =
    [
        new(),
        new() { RemediesFrom = Severity.Failure },
        new() { RemediesFrom = Severity.Failure, SentencesFrom = Severity.Failure },
        new() { RemediesFrom = Severity.Failure, SentencesFrom = Severity.Failure, HasWorkingDevices = false },
        new() { RemediesFrom = Severity.Danger, SentencesFrom = Severity.Failure, HasWorkingDevices = false, MostNames = 3 },
        new() { RemediesFrom = Severity.Danger, SentencesFrom = Severity.Failure, HasWorkingDevices = false, MostNames = 3, MostLines = 3 },
        new() { RemediesFrom = Severity.Danger, SentencesFrom = Severity.Danger, HasWorkingDevices = false, MostNames = 3, MostLines = 3 },
        new() { RemediesFrom = Severity.Danger, SentencesFrom = Severity.Danger, HasWorkingDevices = false, MostNames = 3, MostLines = 3, HasUnstatedPlaces = false },
    ];

    public bool IsEverything { get; private init; }

    /// <summary>Whether it is shown where what is not stated is missing.</summary>
    public bool HasUnstatedPlaces { get; private init; } = true;

    /// <summary>Findings of less are only named.</summary>
    public Severity SentencesFrom { get; private init; } = Severity.Note;

    /// <summary>Of findings of less it is not said what to do. A danger always has its fix.</summary>
    public Severity RemediesFrom { get; private init; } = Severity.Note;

    /// <summary>Whether the tables show the devices that work, too.</summary>
    public bool HasWorkingDevices { get; private init; } = true;

    /// <summary>The most lines of findings of one rule.</summary>
    public int MostLines { get; private init; } = 4;

    /// <summary>The most names in a list where sentences are too long already.</summary>
    public int MostNames { get; private init; } = int.MaxValue;

    /// <summary>What only the details show, in a sentence; nothing where nothing of note is left out.</summary>
    public string LeftOut => this == InBrief[0] ? "" : "Left out: some fixes. ";
}
