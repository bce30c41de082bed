using System.Collections.Immutable;

namespace Coilwright.Web.Guides;

/// <summary>A use of keys.</summary>
/// <param name="Keys">The keys, as a browser calls them; several that are pressed together have a plus between them. Any one of the list does it.</param>
/// <param name="Use">What they do, by its name among the words.</param>
public sealed record KeyUse(ImmutableArray<string> Keys, string Use);

/// <summary>A place where keys do something of their own.</summary>
/// <param name="Name">Its name among the words.</param>
/// <param name="Uses">What they do there.</param>
public sealed record KeyPlace(string Name, ImmutableArray<KeyUse> Uses);

/// <summary>Every key that does more than to go on and to press. A key that is taken anywhere has a line here; a test looks for those that have none.</summary>
public static class KeyList
{
    /// <summary>The places, the widest first.</summary>
    public static ImmutableArray<KeyPlace> All { get; } =
    [
        new("everywhere", [new(["Escape"], "close")]),
        new("bench", [new(["Ctrl+Z"], "undo"), new(["Ctrl+Shift+Z", "Ctrl+Y"], "redo")]),
        new("rows",
        [
            new(["ArrowLeft", "ArrowRight"], "along"),
            new(["ArrowUp", "ArrowDown"], "over"),
            new(["Home", "End"], "ends"),
            new(["Shift"], "more"),
            new([" "], "one-more"),
            new(["Ctrl+A"], "all"),
            new(["Escape"], "none"),
            new(["A–Z"], "letter"),
            new(["2–9"], "times"),
            new(["Delete", "Backspace"], "off"),
            new(["Alt+ArrowLeft", "Alt+ArrowRight"], "move"),
        ]),
        new("string",
        [
            new([" ", "Enter", "ArrowRight", "ArrowDown", "PageDown"], "on"),
            new(["ArrowLeft", "ArrowUp", "PageUp"], "back"),
        ]),
        new("coil",
        [
            new(["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"], "turn"),
            new(["+", "-"], "near"),
            new(["Home"], "first"),
        ]),
        new("coil-beads",
        [
            new(["ArrowRight", "ArrowDown", "ArrowLeft", "ArrowUp"], "bead"),
            new(["PageDown", "PageUp"], "beads"),
            new(["Home", "End"], "ends"),
            new(["Escape"], "pick-none"),
        ]),
        new("photo",
        [
            new(["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"], "ring"),
            new(["Shift"], "ring-fine"),
            new(["+", "-"], "ring-size"),
            new(["Enter", " "], "take"),
        ]),
    ];
}
