using BenchmarkDotNet.Running;
using CamPower.Benchmarks;

BenchmarkSwitcher.FromAssembly(typeof(RunBenchmarks).Assembly).Run(args);
