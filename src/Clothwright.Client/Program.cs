using Clothwright.Client;
using Clothwright.Client.Sheet;
using Clothwright.Client.Texts;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.RootComponents.Add<HeadOutlet>("head::after");
builder.Logging.SetMinimumLevel(LogLevel.Warning);
builder.Services.AddSingleton(Phrases.English);
builder.Services.AddSingleton<StepKeeper>();
builder.Services.AddSingleton<Desk>();
await PageScript.LoadAsync();
await builder.Build().RunAsync();
