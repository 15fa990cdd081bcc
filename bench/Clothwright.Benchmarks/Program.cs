using BenchmarkDotNet.Running;
using Clothwright.Benchmarks.Plans;
using Clothwright.Benchmarks.Weaves;

// "quick" prints the processor times of a short run, "plan samples" those of planning each sample; anything else goes to BenchmarkDotNet, for example: --filter '*'.
if (args is ["quick", ..])
{
    Console.WriteLine(WeaveTimes.Table());
    Console.WriteLine(FittingTimes.Table());
    return;
}

if (args is ["plan", var samples])
{
    Console.WriteLine(PlanTimes.Table(samples));
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
