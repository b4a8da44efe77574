using BenchmarkDotNet.Running;
using CamPower.Benchmarks;

if (args is ["chart", string folder]) SiteSizeChart.Draw(folder);
else BenchmarkSwitcher.FromAssembly(typeof(RunBenchmarks).Assembly).Run(args);
