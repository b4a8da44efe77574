using System;
using System.Collections.Generic;

namespace SiteCheck.Tests;

/// <summary>What a run of the program gave the shell.</summary>
public sealed record ProgramRun(int Exit, string Printed, string Errors)
{
    /// <summary>The lines that it printed.</summary>
    public IReadOnlyList<string> Lines => Printed.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');

    /// <summary>What it printed in one line, as it was before it was wrapped.</summary>
    public string Unwrapped => string.Join(' ', Printed.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
}
