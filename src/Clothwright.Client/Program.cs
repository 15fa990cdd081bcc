using Clothwright.Client;
using Clothwright.Client.Sheet;
using Clothwright.Client.Texts;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.RootComponents.Add<HeadOutlet>("head::after");
builder.Logging.SetMinimumLevel(LogLevel.Warning);
builder.Services.AddSingleton<StepKeeper>();
builder.Services.AddSingleton<Desk>();
await PageScript.LoadAsync();
builder.Services.AddSingleton(Phrases.For(PageScript.Languages().Split(',')));
await builder.Build().RunAsync();
