using BenchmarkDotNet.Running;
using CamPower.Benchmarks;

if (args is ["chart", string folder]) SiteSizeChart.Draw(folder);
else if (args is ["batch"]) BatchComparison.Print();
else if (args is ["ratios", .. string[] sizes]) SiteRatios.Print(sizes);
else BenchmarkSwitcher.FromAssembly(typeof(RunBenchmarks).Assembly).Run(args);
