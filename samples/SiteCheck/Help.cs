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
          --remedies         what removes each finding, tried and ranked by cost
                             SiteCheck yard.json --remedies
          --compare FILE     print what differs from another version of the site
                             SiteCheck yard.json --compare yard-before.json
          --materials FILE   write the bill of materials as CSV too, with the pull
                             list and the output schedule beside it
                             SiteCheck yard.json --materials yard.material.csv
          --json             print verdicts and findings as JSON, for programs
                             SiteCheck yard.json --json > yard.verdicts.json
          --csv              print the schedule, a row for each device
                             SiteCheck yard.json --csv > yard.csv
          --schedule FILE    read the cameras from a schedule beside the site file
                             SiteCheck yard.json --schedule yard.csv
          --split NAME       write a small site file and a schedule too
                             SiteCheck yard.json --split small
          --html FILE        write the report as one page too
                             SiteCheck yard.json --html yard.html
          --markdown FILE    write the report as Markdown too
                             SiteCheck yard.json --markdown yard.md
          --sheet FILE       write the commissioning sheet, in the safe order;
                             .html for paper, .md, .csv or .json
                             SiteCheck yard.json --sheet sheet.html
          --readings FILE    judge the readings of a meter (CSV or JSON) and say
                             what is most probably wrong; --sheet writes the record
                             SiteCheck yard.json --readings readings.csv
          --symptom TEXT     what was seen of a device; the causes by probability, and
                             what to read next; may be given several times
                             SiteCheck yard.json --symptom "gate plate: dark"
          --at TEMPERATURE   temperature of cables and boxes while you
                             measure; 20 C if left out
                             SiteCheck yard.json --sheet sheet.html --at "5 C"
          --profiles         show the volts along every run in the report
                             SiteCheck yard.json --html yard.html --profiles
          --date DATE, --author TEXT, --revision TEXT
                             print them at the head of the report
                             SiteCheck yard.json --html yard.html --date 2026-03-09
                             SiteCheck yard.json --html yard.html --author "A. Tern"
                             SiteCheck yard.json --html yard.html --revision B
          --help             print this
                             SiteCheck --help

        Exit status: 0 no findings, or only notes; 1 cautions; 2 a failure or a
        danger; 3 a file or command line that cannot be read, or a file that cannot
        be written.
        The text is as wide as the terminal, or as COLUMNS says, or 80 columns.
        """;
}
