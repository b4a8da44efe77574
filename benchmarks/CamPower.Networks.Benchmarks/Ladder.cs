using System.Runtime.InteropServices;
using CamPower.Circuits;

namespace CamPower.Networks.Benchmarks;

/// <summary>The same ladder in C.</summary>
internal static partial class Ladder
{
    [LibraryImport("libladder.so", EntryPoint = "ladder")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.AssemblyDirectory)]
    internal static unsafe partial int Solve(int count, Rung* rungs, LoadRow* loads, double source, double* volts, double* behind);
}
