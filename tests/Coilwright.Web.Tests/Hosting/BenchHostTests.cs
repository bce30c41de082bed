using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Hosting;
using Coilwright.Web.Tests.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Coilwright.Web.Tests.Hosting;

public sealed partial class BenchHostTests(RunningBench bench) : IClassFixture<RunningBench>
{
    private static readonly HttpClient Client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false });

    private async Task<HttpResponseMessage> Ask(string path, HttpMethod? method = null, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method ?? HttpMethod.Get, new Uri(bench.Address, path));
        foreach (var (name, value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        return await Client.SendAsync(request);
    }

    [Fact]
    public void Only_this_machine_can_reach_it()
    {
        Assert.Equal(IPAddress.Loopback.ToString(), bench.Address.Host);
    }

    [Fact]
    public async Task It_listens_on_loopback_whatever_addresses_the_environment_asks_for()
    {
        const string name = "ASPNETCORE_URLS";
        using var shelf = new OwnShelf();
        Environment.SetEnvironmentVariable(name, "http://0.0.0.0:0");
        try
        {
            await using var app = BenchHost.Build(new BenchOptions { Port = 0, Shelf = shelf.Folder });
            await app.StartAsync();
            Assert.Equal("127.0.0.1", new Uri(Assert.Single(app.Urls)).Host);
        }
        finally
        {
            Environment.SetEnvironmentVariable(name, null);
        }
    }

    [Fact]
    public async Task A_taken_port_gives_way_to_a_free_one_unless_she_asked_for_it()
    {
        using var shelf = new OwnShelf();
        using var taken = new TcpListener(IPAddress.Loopback, BenchOptions.UsualPort);
        try
        {
            taken.Start();
        }
        catch (SocketException)
        {
            // Somebody else on this machine holds it already: as good.
        }
        await using var app = BenchHost.Build(new BenchOptions { Shelf = shelf.Folder });
        await app.StartAsync();
        Assert.NotEqual(BenchOptions.UsualPort, new Uri(Assert.Single(app.Urls)).Port);
        await using var asked = BenchHost.Build(new BenchOptions { Port = BenchOptions.UsualPort, Shelf = shelf.Folder });
        await Assert.ThrowsAnyAsync<IOException>(() => asked.StartAsync());
    }

    [Theory]
    [InlineData("pieces.example")]
    [InlineData("127.0.0.1.example:80")]
    [InlineData("10.0.0.5")]
    public async Task A_request_under_another_name_than_this_machines_is_refused(string host)
    {
        using var answer = await Ask("/", headers: [("Host", host)]);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("GET", "Origin", "https://elsewhere.example")]
    [InlineData("POST", "Origin", "http://127.0.0.1:1")]
    [InlineData("POST", "Origin", "null")]
    [InlineData("GET", "Sec-Fetch-Site", "cross-site")]
    [InlineData("POST", "Sec-Fetch-Site", "cross-site")]
    [InlineData("GET", "Sec-Fetch-Site", "same-site")]
    public async Task What_another_sites_page_asks_is_refused(string method, string header, string value)
    {
        foreach (var path in (string[])["/", "/_blazor/negotiate?negotiateVersion=1", "/bench.js"])
        {
            using var answer = await Ask(path, new HttpMethod(method), (header, value));
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        }
    }

    [Fact]
    public async Task A_link_that_leads_here_from_another_site_can_be_followed()
    {
        using var answer = await Ask("/", headers: [("Sec-Fetch-Site", "cross-site"), ("Sec-Fetch-Mode", "navigate")]);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/pieces")]
    [InlineData("/no-such-page")]
    [InlineData("/bench.js")]
    [InlineData("/_framework/blazor.web.js")]
    public async Task Every_answer_carries_a_policy_that_allows_no_inline_script_and_no_other_site(string path)
    {
        using var answer = await Ask(path);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("style-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/pieces")]
    [InlineData("/no-such-page")]
    public async Task A_page_has_no_inline_script_or_style_and_loads_nothing_from_elsewhere(string path)
    {
        using var answer = await Ask(path);
        var html = await answer.Content.ReadAsStringAsync();
        Assert.Contains("</html>", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(InlineCode(), html);
        Assert.All(Links().Matches(html).Select(m => m.Groups[1].Value), link => Assert.DoesNotMatch("^([a-z]+:|//)", link));
    }

    [Theory]
    [InlineData("/no-such-page")]
    [InlineData("/a/b/no-such-page")]
    [InlineData("/piece/no-name")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/history")]
    public async Task What_is_not_there_is_answered_as_not_found_with_a_way_on(string path)
    {
        using var answer = await Ask(path);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        var html = await answer.Content.ReadAsStringAsync();
        Assert.Contains("class=\"button\" href=\"/pieces\"", html, StringComparison.Ordinal);
        // With the pieces on it in the first answer, before the page comes to life.
        Assert.Matches("""<a href="/piece/[0-9a-f-]{36}">Tidewrack</a>""", html);
    }

    [Theory]
    [InlineData("--port")]
    [InlineData("--shelf")]
    [InlineData("--port", "65536")]
    [InlineData("--port", "-1")]
    [InlineData("--urls", "http://0.0.0.0:80")]
    public void An_option_that_is_not_understood_is_refused(params string[] args)
    {
        Assert.False(BenchOptions.TryRead(args, null, out _, out var slip));
        Assert.Equal(new BenchSlip.NotUnderstood(args[0]), slip);
    }

    [Fact]
    public async Task A_shelf_that_cannot_be_opened_is_told_where_it_was_started()
    {
        using var shelf = new OwnShelf();
        var file = Path.Combine(shelf.Folder, "a file and no folder");
        await File.WriteAllTextAsync(file, "");
        using var program = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Coilwright.Web.dll"), "--port", "0", "--shelf", file])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        })!;
        var said = await program.StandardError.ReadToEndAsync();
        await program.WaitForExitAsync();
        Assert.Equal(2, program.ExitCode);
        Assert.Contains(file, said, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_kept_is_there_for_the_next_start()
    {
        using var shelf = new OwnShelf();
        Guid copied;
        await using (var app = BenchHost.Build(new BenchOptions { Port = 0, Shelf = shelf.Folder }))
        {
            var pieces = app.Services.GetRequiredService<IPieceShelf>();
            copied = Assert.IsType<ShelfAnswer.Kept>(await pieces.AddAsync(Examples.Boardwalk with { Title = "Kept" })).Now.Id;
        }
        await using var again = BenchHost.Build(new BenchOptions { Port = 0, Shelf = shelf.Folder });
        Assert.Equal("Kept", (await again.Services.GetRequiredService<IPieceShelf>().OpenAsync(copied))!.Piece.Title);
    }

    // Style attributes, event attributes, style elements and script elements with something in them.
    [GeneratedRegex("""<script(?![^>]*\ssrc=)[^>]*>|<style|\sstyle\s*=|\son[a-z]+\s*=""", RegexOptions.IgnoreCase)]
    private static partial Regex InlineCode();

    [GeneratedRegex("""\s(?:href|src|action|data)="([^"]*)""", RegexOptions.IgnoreCase)]
    private static partial Regex Links();
}
