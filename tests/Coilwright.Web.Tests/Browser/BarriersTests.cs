using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What looks for barriers finds them: a page without any is only worth something then.</summary>
[Collection(InBrowser.Name)]
public sealed class BarriersTests(BenchInBrowser bench)
{
    [Theory]
    [InlineData("image-alt", "const all = document.createElement('img'); all.src = '/favicon.svg';")]
    [InlineData("color-contrast", "const all = document.createElement('p'); all.textContent = 'faint'; all.style.color = '#eee'; all.style.background = '#fff';")]
    [InlineData("target-size", "const all = document.createElement('p'); for (const name of ['a', 'b']) { const tap = document.createElement('button'); tap.textContent = name; tap.style.cssText = 'width: 12px; height: 12px; min-height: 0; min-width: 0; padding: 0; margin: 0; border: 0; font-size: 9px; display: inline-block'; all.append(tap); }")]
    [InlineData("image-alt", "const image = document.createElement('img'); image.src = '/favicon.svg'; const all = document.createElement('details'); all.innerHTML = '<summary>More</summary>'; all.append(image);")]
    [InlineData("wide", "const all = document.createElement('p'); all.textContent = 'wide'; all.style.width = '3000px';")]
    public async Task A_barrier_that_is_put_on_a_page_is_found(string barrier, string putting)
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, Light.Day);
        await visit.OpenAsync("/keys");
        await Barriers.NoneAsync(visit.Page);
        await visit.Page.EvaluateAsync($"() => {{ {putting} all.id = 'put-here'; document.querySelector('main').append(all); }}");
        await Expect(visit.Page.Locator("#put-here")).ToBeVisibleAsync();
        var found = await Assert.ThrowsAnyAsync<Xunit.Sdk.XunitException>(() => Barriers.NoneAsync(visit.Page));
        Assert.Contains(barrier, found.Message, StringComparison.Ordinal);
        Assert.Contains("en, day", found.Message, StringComparison.Ordinal);
    }
}
