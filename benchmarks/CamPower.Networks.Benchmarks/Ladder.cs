using System.Runtime.InteropServices;

namespace CamPower.Networks.Benchmarks;

/// <summary>The same ladder in C.</summary>
internal static partial class Ladder
{
    [LibraryImport("libladder.so", EntryPoint = "ladder")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.AssemblyDirectory)]
    internal static unsafe partial int Solve(int count, int* parents, double* ohms, double* watts, double* amperes,
        double* siemens, double source, double* volts, double* behind);
}
