using System.Net;
using System.Net.Sockets;
using Coilwright.Web.Bench;
using Coilwright.Web.Components;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.FileProviders;

namespace Coilwright.Web.Hosting;

/// <summary>Puts the bench together: a web server that only this machine can reach.</summary>
/// <remarks>Listens on 127.0.0.1 whatever the environment says, answers only to the names of this machine, and sends nothing anywhere but to
/// a database that was named.</remarks>
public static class BenchHost
{
    /// <summary>Makes the server; it is not started yet.</summary>
    public static WebApplication Build(BenchOptions options)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(BenchHost).Assembly.GetName().Name,
            ContentRootPath = options.ProgramFolder,
        });
        // Built but not published, the style sheets and scripts still lie in the sources: also outside development.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(IPAddress.Loopback, options.Port ?? FreePort(BenchOptions.UsualPort));
        });
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning);
        // What keeps it from starting is told once, in words, where it is started.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);
        // Kestrel warns when it listens elsewhere than the environment says; it is meant to.
        builder.Logging.AddFilter("Microsoft.AspNetCore.Server.Kestrel", LogLevel.Error);
        // The keys that the forms are signed with lie unencrypted in the user's own folder, like all else of hers: nothing to warn of.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.Configure<HostFilteringOptions>(o =>
        {
            o.AllowedHosts = ["localhost", "127.0.0.1"];
            o.AllowEmptyHosts = false;
            o.IncludeFailureMessage = false;
        });
        builder.Services.AddAntiforgery(o =>
        {
            o.Cookie.Name = "coilwright-forms";
            o.Cookie.SameSite = SameSiteMode.Strict;
        });
        // Keys for the pages that are open: a page that outlives the program is loaded anew, so nothing needs to lie on the disk.
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddResponseCompression(o => o.Providers.Add<GzipCompressionProvider>());
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddBench(options);

        var app = builder.Build();
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<SameSiteOnly>();
        app.UseResponseCompression();
        app.UseStatusCodePagesWithReExecute("/not-found");
        app.UseMiddleware<ShelfTroubleAnswer>();
        app.UseRouting();
        app.UseAntiforgery();
        app.UseStaticFiles(Fonts(options));
        app.UseStaticFiles(Scripts(options));
        app.MapStaticAssets();
        app.MapPieceFiles();
        app.MapPaperFiles();
        app.MapBackupFile();
        app.MapJobFiles();
        app.MapStockFiles();
        app.MapTrayFiles();
        app.MapMadeFiles();
        app.MapShopFiles();
        app.MapPriceFiles();
        app.MapKitFiles();
        app.MapSellingFiles();
        app.MapQuoteFiles();
        app.MapClassFiles();
        app.MapBatchFiles();
        app.MapCoilFiles();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }

    // The typefaces lie beside the program, not in the sources, and never change under one name.
    private static StaticFileOptions Fonts(BenchOptions options) => new()
    {
        RequestPath = "/fonts",
        FileProvider = new PhysicalFileProvider(Path.Combine(options.ProgramFolder, "fonts")),
        OnPrepareResponse = file => file.Context.Response.Headers.CacheControl = "public, max-age=604800",
    };

    // Put together from npm at build, so it lies beside the program too. It changes under its name: asked for each time, sent when it did.
    private static StaticFileOptions Scripts(BenchOptions options) => new()
    {
        RequestPath = "/scripts",
        FileProvider = new PhysicalFileProvider(Path.Combine(options.ProgramFolder, "scripts")),
        OnPrepareResponse = file => file.Context.Response.Headers.CacheControl = "no-cache",
    };

    /// <summary>The port itself when nobody listens on it, else 0: any free one.</summary>
    private static int FreePort(int port)
    {
        try
        {
            using var probe = new TcpListener(IPAddress.Loopback, port);
            probe.ExclusiveAddressUse = true;
            probe.Start();
            return port;
        }
        catch (SocketException)
        {
            return 0;
        }
    }
}
