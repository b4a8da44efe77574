using System;

namespace SiteCheck;

/// <summary>One line: its first part may have a color.</summary>
internal readonly record struct PageLine(string Lead, ConsoleColor? Color, string Rest)
{
    public override string ToString() => Lead + Rest;
}
