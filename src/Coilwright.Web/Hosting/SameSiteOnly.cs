namespace Coilwright.Web.Hosting;

/// <summary>Refuses what another site's page asks of this server in her browser; following a link to it is let through.</summary>
/// <remarks>Two signs that browsers set and pages cannot forge: <c>Origin</c>, sent with web sockets and with everything that changes something,
/// and <c>Sec-Fetch-Site</c>, sent with every request. Programs without a browser send neither and are let through: they run on this machine.</remarks>
public sealed class SameSiteOnly(RequestDelegate next)
{
    /// <summary>Lets a request through, or answers 403.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (!IsForeign(context.Request)) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }

    private static bool IsForeign(HttpRequest request)
    {
        var origin = request.Headers.Origin.ToString();
        if (origin.Length > 0 && !string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase)) return true;
        if (request.Headers["Sec-Fetch-Site"].ToString() is not ("cross-site" or "same-site")) return false;
        return !HttpMethods.IsGet(request.Method) || request.Headers["Sec-Fetch-Mode"] != "navigate";
    }
}
