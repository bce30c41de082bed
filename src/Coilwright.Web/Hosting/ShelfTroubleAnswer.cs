using Coilwright.Core.Faults;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Hosting;

/// <summary>Answers with the page of an unreadable shelf where a file was asked for and the shelf could not give it. Pages tell it themselves.</summary>
public sealed class ShelfTroubleAnswer(RequestDelegate next)
{
    private static readonly object Key = new();

    /// <summary>What was wrong; null when nothing was.</summary>
    public static Fault? Of(HttpContext context) => context.Items.TryGetValue(Key, out var why) ? why as Fault : null;

    /// <summary>Lets a request through, and answers 503 when the shelf fails it.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await next(context);
        }
        catch (ShelfUnreadableException e) when (!context.Response.HasStarted)
        {
            context.Items[Key] = e.Why;
            context.Response.Headers.Remove("Content-Disposition");
            context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            // Chosen anew for the page; what was chosen for the file is forgotten.
            context.SetEndpoint(null);
            context.Request.RouteValues.Clear();
            (context.Request.Path, context.Request.QueryString) = ("/shelf-trouble", QueryString.Empty);
            await next(context);
        }
    }
}
