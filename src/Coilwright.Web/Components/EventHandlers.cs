using Microsoft.AspNetCore.Components;

namespace Coilwright.Web.Components;

/// <summary>A tap on a bead, or beside all of them.</summary>
public sealed class BeadTapEventArgs : EventArgs
{
    /// <summary>The bead's place in the order, from 0; -1 beside all of them.</summary>
    public int Bead { get; set; }

    /// <summary>Whether the bead is to be added to what is selected, or taken out.</summary>
    public bool Adds { get; set; }

    /// <summary>Whether everything up to the bead is to be selected.</summary>
    public bool Extends { get; set; }
}

/// <summary>A key pressed on the rows.</summary>
public sealed class RowKeyEventArgs : EventArgs
{
    /// <summary>The key by its name in the browser; <c>All</c> for "select all".</summary>
    public string Key { get; set; } = "";

    /// <summary>Whether Ctrl, or the like, is held.</summary>
    public bool Adds { get; set; }

    /// <summary>Whether Shift is held.</summary>
    public bool Extends { get; set; }

    /// <summary>Whether Alt is held.</summary>
    public bool Moves { get; set; }
}

/// <summary>Events that wwwroot/bench.js makes of the browser's own.</summary>
[EventHandler("onbeadtap", typeof(BeadTapEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
[EventHandler("onrowkey", typeof(RowKeyEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
public static class EventHandlers;
