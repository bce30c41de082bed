namespace Coilwright.Web.Hosting;

/// <summary>Tells the browser what a page of ours may do: load from this server, and nothing else.</summary>
/// <remarks>No inline script or style is ever written, so neither is allowed: a name that smuggled one in would stay text.</remarks>
public sealed class SecurityHeaders(RequestDelegate next)
{
    /// <summary>The content security policy of every answer.</summary>
    public const string Policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
        + "connect-src 'self'; frame-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    /// <summary>Adds the headers.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "geolocation=(), microphone=(), payment=(), usb=()";
        return next(context);
    }
}
