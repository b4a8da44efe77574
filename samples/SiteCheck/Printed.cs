namespace SiteCheck;

/// <summary>What goes to standard output.</summary>
internal enum Printed
{
    /// <summary>The report, for people.</summary>
    Text,

    /// <summary>Verdicts and findings, for programs.</summary>
    Json,

    /// <summary>The schedule, a row for each device, for spreadsheets.</summary>
    Csv,
}
