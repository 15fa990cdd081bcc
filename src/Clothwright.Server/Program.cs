using Clothwright.Server;

return await ServerHost.RunAsync(args);
