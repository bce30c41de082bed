using Coilwright.Core.Faults;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English sentences of edits that cannot be done, and of what is lost beside one.</summary>
internal static class EnglishEdits
{
    internal static IEnumerable<KeyValuePair<string, FaultSentence>> Make() => new Dictionary<string, FaultSentence>(StringComparer.Ordinal)
    {
        [FaultCodes.EditNoSuchBead] = new("There is no bead {value}: the order has {beads} {beads:bead|beads}.",
            "Beads are counted from 1 at the starting end.", "Look at the rows again: the order may have changed."),
        [FaultCodes.EditNothingChosen] = new("Nothing is chosen.", "It takes at least one bead.", "Tap a bead, or a group."),
        [FaultCodes.EditTooFew] = new("Only {value} {value:bead is|beads are} chosen.", "At least {least} {least:is|are} needed.", "Choose more beads."),
        [FaultCodes.EditNotTogether] = new("Other beads stand between the ones chosen.", "They must be neighbours on the wire.",
            "Choose one row of beads without a gap."),
        [FaultCodes.EditCutsGroup] = new("The beads chosen hold only a part of the group \"{group}\".",
            "A group stands wholly inside another, or wholly outside it.", "Choose all of \"{group}\", or none of it."),
        [FaultCodes.EditNoGroup] = new("These beads stand in no group together.", "Only a group can be ungrouped.", "Choose beads of one group."),
        [FaultCodes.EditGroupDiffers] = new("There is a group \"{value}\" already, and it has other beads.",
            "A group's name stands for the same beads wherever it is used.", "Choose another name."),
        [FaultCodes.EditNotStrung] = new("That part of the order strings no bead.", "What is changed must be on the wire.",
            "String it first, or change the order's text."),
        [FaultCodes.EditChangesNothing] = new("That would change nothing.", "It is like that already.", ""),
        [FaultCodes.EditNothingLeft] = new("That would leave no bead on the wire.", "An order has at least one bead.",
            "Keep one, or put the new beads on first."),
        [FaultCodes.EditNotWritten] = new("The order's text cannot say that here.", "An order is written with counts, brackets, groups and mirrors.",
            "Change the text itself in this place."),
        [FaultCodes.EditBeadUnknown] = new("The piece has no bead \"{value}\".", "It must be one of the piece's beads.",
            "{?nearest:Did you mean \"{nearest}\"?}"),
        [FaultCodes.EditBeadInUse] = new("The bead \"{value}\" is strung {times} {times:time|times}.",
            "Only a bead that the order does not name can be taken out of the piece.", "Take it off the wire first, or replace it everywhere."),
        [FaultCodes.EditBeadInGroup] = new("The bead \"{value}\" is still named in the order{?group:, in the group \"{group}\"}, although it is not strung.",
            "Only a bead that the order does not name can be taken out of the piece.", "Take its name out of the order's text, or replace it everywhere."),
        [FaultCodes.EditNoSuchRow] = new("There is no measured row {value}.", "Measured rows are counted from 1.", ""),
        [FaultCodes.EditRowLost] = new("The row measured over beads {first} to {last}, {total} mm, no longer counts.",
            "A measured row is of the very beads that lie there.", "Measure again once the beads are on the wire."),
    };
}
