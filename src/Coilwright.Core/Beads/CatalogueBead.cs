namespace Coilwright.Core.Beads;

/// <summary>A kind of bead as the trade knows it, to begin a bead of one's own with. Not a bead of any piece: its sizes are the usual ones.</summary>
/// <param name="Key">Name in the data, as <c>round-6</c>.</param>
/// <param name="Kind">What it is, by a word of its own: <c>round</c>, <c>bugle</c>. Several sizes share it.</param>
/// <param name="Label">Its size as a label has it: <c>4 x 6</c>, <c>11/0</c>.</param>
/// <param name="Bead">The bead; its colour is left to whoever takes it.</param>
/// <param name="Source">Where the sizes were read.</param>
public sealed record CatalogueBead(string Key, string Kind, string Label, Bead Bead, string Source);
