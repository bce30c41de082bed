using System.Collections.Immutable;
using Coilwright.Core.Editing;

namespace Coilwright.Storage.Binding;

/// <summary>Every field of a stored edit, kind by kind.</summary>
internal static class EditFields
{
    public static readonly FieldSet Row = new("first", "count");

    public static readonly FieldSet Run = new("first", "count", "to");

    public static readonly FieldSet Swap = new("first", "count", "otherFirst", "otherCount");

    public static readonly FieldSet StandIn = new("first", "count", "bead", "with");

    public static readonly WordSet<Beside> Besides = new(("apart", Beside.Apart), ("withPrevious", Beside.WithPrevious), ("withNext", Beside.WithNext));

    /// <summary>The fields of each kind of edit, by its code; <c>format</c> and <c>edit</c> are in all of them.</summary>
    public static ImmutableSortedDictionary<string, FieldSet> ByCode { get; } = new Dictionary<string, FieldSet>
    {
        ["insert-beads"] = Of("at", "what", "beside", "everyPass"),
        ["remove-beads"] = Of("row", "each", "everyPass"),
        ["move-beads"] = Of("row", "each", "to", "beside"),
        ["replace-beads"] = Of("row", "each", "with", "everyPass"),
        ["replace-everywhere"] = Of("bead", "with"),
        ["duplicate-beads"] = Of("row", "each", "everyPass"),
        ["repeat-beads"] = Of("row", "each", "times", "everyPass"),
        ["mirror-beads"] = Of("row", "each", "centre", "everyPass"),
        ["put-between"] = Of("row", "each", "what", "everyPass"),
        ["name-group"] = Of("row", "each", "name", "everyPass"),
        ["ungroup"] = Of("row", "each", "everyPass"),
        ["set-runs"] = Of("runs", "everyPass"),
        ["restring"] = Of("swaps", "standIns", "runs"),
        ["set-order-text"] = Of("text"),
        ["add-bead"] = Of("bead"),
        ["change-bead"] = Of("id", "bead"),
        ["remove-bead"] = Of("id"),
        ["set-title"] = Of("title"),
        ["set-wire"] = Of("stringingMaterial"),
        ["set-ends"] = Of("ends"),
        ["set-wearer"] = Of("wearer"),
        ["set-wishes"] = Of("wishes"),
        ["set-pattern"] = Of("pattern"),
        ["add-measured-row"] = Of("measured"),
        ["remove-measured-row"] = Of("index"),
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static FieldSet Of(params string[] names) => new(["format", "edit", .. names]);
}
