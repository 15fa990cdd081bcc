using BenchmarkDotNet.Running;
using Clothwright.Benchmarks.Weaves;

// "quick" prints the processor times of a short run; anything else goes to BenchmarkDotNet, for example: --filter '*'.
if (args is ["quick", ..])
{
    Console.WriteLine(WeaveTimes.Table());
    Console.WriteLine(FittingTimes.Table());
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
