using System.Collections.Concurrent;
using System.Globalization;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

/// <summary>The worksheet as one weaver has it open.</summary>
public sealed class Visit : IAsyncDisposable
{
    // What the driver says in a browser that is not to keep the page.
    private const string NotKept = "Service Worker registration blocked by Playwright";

    private readonly IBrowserContext _context;
    private readonly ConcurrentQueue<string> _complaints = [];

    private readonly Holding _holds;

    private Visit(IBrowserContext context, IPage page, StudioProcess server, Holding holds)
    {
        _context = context;
        _holds = holds;
        Server = server;
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" && message.Text != NotKept) _complaints.Enqueue(message.Text);
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

    /// <summary>What hinders people who read, hear or steer the page in other ways, as the axe rules find it; empty for nothing.</summary>
    public async Task<string> HindrancesAsync()
    {
        AxeResult result = await Page.RunAxe();
        return string.Join('\n', result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help} {n.Html}")));
    }

    /// <summary>Drops a file on the page.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="text">What it holds.</param>
    public Task DropAsync(string name, string text) => Page.EvaluateAsync(
        """
        ([name, text]) => {
          const data = new DataTransfer();
          data.items.add(new File([text], name));
          document.querySelector('main').dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
        }
        """,
        new[] { name, text });

    /// <summary>Goes on by the tab key until something has the focus.</summary>
    /// <param name="id">Its id.</param>
    public async Task TabToAsync(string id)
    {
        await Page.WaitForSelectorAsync($"#{id}");
        for (int stop = 0; await Page.EvaluateAsync<string>("document.activeElement.id") != id; stop++)
        {
            if (stop == 200) throw new InvalidOperationException($"#{id} cannot be reached by the tab key.");
            await Page.Keyboard.PressAsync("Tab");
        }
    }

    /// <summary>Waits until the studio has the last step.</summary>
    public Task KeptAsync() => StandsAsync("Saved");

    /// <summary>Waits until the page says how the last step is kept.</summary>
    /// <param name="state">Name of the state, for example <c>Away</c>.</param>
    public Task StandsAsync(string state) => Assertions.Expect(Page.Locator("#state")).ToHaveAttributeAsync("data-state", state);

    /// <summary>Waits until the browser keeps the page whole.</summary>
    public Task PageKeptAsync() => WaitForAsync(() => Page.EvaluateAsync<bool>("() => navigator.serviceWorker.controller?.state === 'activated'"));

    /// <summary>The versions of the page that the browser keeps.</summary>
    public Task<string[]> KeptVersionsAsync() => Page.EvaluateAsync<string[]>("() => caches.keys().then(all => all.filter(name => name.startsWith('clothwright ') && name !== 'clothwright windows'))");

    /// <summary>Opens another tab of the same browser.</summary>
    /// <param name="address">The page that is opened, without the slash at its beginning.</param>
    public async Task<Visit> TabAsync(string address = "")
    {
        var tab = new Visit(_context, await _context.NewPageAsync(), Server, Holding.Page);
        await tab.GoAsync(address);
        return tab;
    }

    /// <summary>Waits until something has come about, for at most a minute.</summary>
    /// <param name="come">Whether it has.</param>
    public async Task WaitForAsync(Func<Task<bool>> come)
    {
        ArgumentNullException.ThrowIfNull(come);
        for (DateTime end = DateTime.UtcNow.AddSeconds(60); !await come();)
        {
            if (DateTime.UtcNow > end) throw new TimeoutException("It has not come about in a minute.");
            await Page.WaitForTimeoutAsync(200);
        }
    }

    /// <summary>Goes to a page by its address.</summary>
    /// <param name="address">The address, without the slash at its beginning.</param>
    public async Task GoAsync(string address)
    {
        await Page.GotoAsync($"/{address}");
        await Page.WaitForSelectorAsync(".studio-nav");
    }

    /// <summary>Loads the page anew.</summary>
    public async Task ReloadAsync()
    {
        await KeptAsync();
        await Page.ReloadAsync();
        await Page.WaitForSelectorAsync(".tally");
    }

    internal static async Task<Visit> BeginAsync(IBrowserContext context, StudioProcess server, bool owns, string address)
    {
        var visit = new Visit(context, await context.NewPageAsync(), server, owns ? Holding.Server : Holding.Browser);
        await visit.GoAsync(address);
        return visit;
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        if (_holds == Holding.Page) await Page.CloseAsync();
        else await _context.DisposeAsync();
        if (_holds == Holding.Server) await Server.DisposeAsync();
    }

    // What ends with the visit.
    private enum Holding
    {
        Page,
        Browser,
        Server,
    }
}
