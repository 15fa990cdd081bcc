using Clothwright.Cli;

return ClothwrightCommand.Run(args, Console.Out, Console.Error);
