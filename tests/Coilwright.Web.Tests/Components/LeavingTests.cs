using Bunit;
using Coilwright.Storage.Lists;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;
using Coilwright.Web.Components;
using Coilwright.Web.Components.Pages;
using Coilwright.Web.Components.Tray;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;

namespace Coilwright.Web.Tests.Components;

/// <summary>A page that is gone cannot be asked to put anything away, and that is no trouble: nothing is told as a defect in the log of a bench that goes on.</summary>
public sealed class LeavingTests : BunitContext
{
    /// <summary>How the framework says it: a call that comes too late, and one that was on its way when the connection ended or its page no longer answered.</summary>
    public static TheoryData<bool> Ways => [false, true];

    [Theory, MemberData(nameof(Ways))]
    public async Task The_guide_at_the_wire_leaves_quietly(bool underWay)
    {
        var shelf = new MemoryShelf(TimeProvider.System);
        Services.AddSingleton(Examples.Data);
        Services.AddSingleton<IPieceShelf>(shelf);
        Services.AddSingleton<IKeptLists>(new MemoryKeptLists(TimeProvider.System));
        Services.AddSingleton<Reckoner>();
        Services.AddSingleton<PieceNews>();
        Services.AddSingleton<StringingPlaces>();
        Services.AddSingleton<PreferencesKeeper>();
        var id = ((ShelfAnswer.Kept)await shelf.AddAsync(Examples.Boardwalk, Xunit.TestContext.Current.CancellationToken)).Now.Id;
        await LeavesQuietly<StringingPage>(underWay, p => p.Add(c => c.Id, id), page => page.WaitForElement(".stringing"));
    }

    [Theory, MemberData(nameof(Ways))]
    public Task A_picture_as_wide_as_its_room_leaves_quietly(bool underWay) => LeavesQuietly<Measured>(underWay, p => p.Add(c => c.Guess, 300));

    [Theory, MemberData(nameof(Ways))]
    public Task A_photo_leaves_quietly(bool underWay) => LeavesQuietly<PhotoColourPicker>(underWay, _ => { });

    private async Task LeavesQuietly<T>(bool underWay, Action<ComponentParameterCollectionBuilder<T>> with, Action<IRenderedComponent<T>>? seen = null) where T : IComponent, IAsyncDisposable
    {
        var browser = new Browser { Leaves = underWay ? new TaskCanceledException() : new JSDisconnectedException("gone") };
        Services.AddSingleton<IJSRuntime>(browser);
        var page = Render(with);
        seen?.Invoke(page);
        page.WaitForAssertion(() => Assert.NotEqual(0, browser.Given));
        browser.IsGone = true;
        await page.InvokeAsync(() => page.Instance.DisposeAsync().AsTask());
        Assert.NotEqual(0, browser.Refused);
    }

    /// <summary>A browser that gives what it is asked for until it is gone.</summary>
    private sealed class Browser : IJSRuntime, IJSObjectReference
    {
        public required Exception Leaves { get; init; }

        public bool IsGone { get; set; }

        public int Given { get; private set; }

        public int Refused { get; private set; }

        public ValueTask<T> InvokeAsync<T>(string identifier, object?[]? args) => InvokeAsync<T>(identifier, default, args);

        public ValueTask<T> InvokeAsync<T>(string identifier, CancellationToken cancellationToken, object?[]? args)
        {
            if (IsGone)
            {
                Refused++;
                return ValueTask.FromException<T>(Leaves);
            }
            if (typeof(T) != typeof(IJSObjectReference)) return new ValueTask<T>(default(T)!);
            Given++;
            return new ValueTask<T>((T)(object)this);
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
