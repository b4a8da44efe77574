using BenchmarkDotNet.Running;
using CamPower.Benchmarks;

if (args is ["chart", string folder]) SiteSizeChart.Draw(folder);
else if (args is ["batch"]) BatchComparison.Print();
else BenchmarkSwitcher.FromAssembly(typeof(RunBenchmarks).Assembly).Run(args);
