using Microsoft.JSInterop;

namespace Coilwright.Web.Components;

/// <summary>How it is told that the browser is no longer there to be asked.</summary>
internal static class PageGone
{
    /// <summary>Whether a call to the browser failed because its page is gone. One that is made afterwards is refused; one that was on its way is given up, which looks like a stop that somebody asked for.</summary>
    public static bool Is(Exception e) => e is JSDisconnectedException or OperationCanceledException;
}
