using System.Collections.Concurrent;
using System.Globalization;
using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

/// <summary>The worksheet as one weaver has it open.</summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly ConcurrentQueue<string> _complaints = [];

    private readonly bool _owns;

    private Visit(IBrowserContext context, IPage page, StudioProcess server, bool owns)
    {
        _context = context;
        _owns = owns;
        Server = server;
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") _complaints.Enqueue(message.Text);
        };
        page.PageError += (_, error) => _complaints.Enqueue(error);
    }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>The server that is visited.</summary>
    public StudioProcess Server { get; }

    /// <summary>What the browser complained of, refusals by the content security policy among them.</summary>
    public IReadOnlyCollection<string> Complaints => _complaints;

    /// <summary>Ends in the tally.</summary>
    public async Task<int> EndsAsync() => int.Parse(await Page.Locator("#tally-ends").InnerTextAsync(), CultureInfo.InvariantCulture);

    /// <summary>What stands in a blank.</summary>
    /// <param name="id">Id of the blank.</param>
    public Task<string> BlankAsync(string id) => Page.Locator($"#{id}").InputValueAsync();

    /// <summary>Writes into a blank and leaves it.</summary>
    /// <param name="id">Id of the blank.</param>
    /// <param name="text">What is written.</param>
    public async Task WriteAsync(string id, string text)
    {
        ILocator blank = Page.Locator($"#{id}");
        await blank.FillAsync(text);
        await blank.PressAsync("Tab");
    }

    /// <summary>Waits until the last step is kept.</summary>
    public Task KeptAsync() => Assertions.Expect(Page.Locator(".state")).ToHaveTextAsync("every step kept on this device");

    /// <summary>Loads the page anew.</summary>
    public async Task ReloadAsync()
    {
        await KeptAsync();
        await Page.ReloadAsync();
        await Page.WaitForSelectorAsync(".tally");
    }

    internal static async Task<Visit> BeginAsync(IBrowserContext context, StudioProcess server, bool owns, string address)
    {
        var visit = new Visit(context, await context.NewPageAsync(), server, owns);
        await visit.Page.GotoAsync($"/{address}");
        await visit.Page.WaitForSelectorAsync(address.Length == 0 ? ".tally" : ".studio-nav");
        return visit;
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        if (_owns) await Server.DisposeAsync();
    }
}
