using Clothwright.Cli;

Console.CancelKeyPress += (_, _) =>
{
    OutputFolder.Abandon();
    Console.Error.WriteLine("clothwright: stopped; nothing is left half written.");
    Environment.Exit(ExitCode.Stopped);
};

return ClothwrightCommand.Run(args, Console.Out, Console.Error, Environment.GetEnvironmentVariable(ProgramFault.TraceSetting) == "1");
