namespace SiteCheck;

/// <summary>What <c>--help</c> prints.</summary>
internal static class Help
{
    public const string Text = """
        Usage: SiteCheck [site file] [options]

        Says what is wrong with the camera power of a site and what to do about it.
        Without a site file it checks the boatyard that comes with it.

        Options, each with an example:
          --details          all findings in full, every condition, trim and faults
                             SiteCheck yard.json --details
          --json             print verdicts and findings as JSON, for programs
                             SiteCheck yard.json --json > yard.verdicts.json
          --csv              print the schedule, a row for each device
                             SiteCheck yard.json --csv > yard.csv
          --html FILE        write the report as one page too
                             SiteCheck yard.json --html yard.html
          --markdown FILE    write the report as Markdown too
                             SiteCheck yard.json --markdown yard.md
          --help             print this
                             SiteCheck --help

        Exit status: 0 notes at most, 1 cautions, 2 failures or danger, 3 a file or
        command line that cannot be read, or a file that cannot be written.
        The text is as wide as the terminal, or as COLUMNS says, or 80 columns.
        """;
}
