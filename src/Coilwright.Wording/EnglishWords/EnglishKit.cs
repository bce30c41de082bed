namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="KitWords"/>.</summary>
internal static class EnglishKit
{
    internal static KitWords Make() => new()
    {
        Verb = "Pack kits of several pieces: what lies in which bag, what to fetch from which drawer, how many kits what is at home makes; with labels for the bags.",
        SparesOption = "Beads beside those that are used: 2 with each piece go into its bag; 5% of all are laid aside for the batch; chip=10% is for one bead alone. Without it: none.",
        HomeOption = "How many of a bead are at home, as chip=23: then it is told how many kits that makes.",
        ShelfOption = "In place of --home: the folder that the bench keeps its pieces in. What is free in its stock is at home, in the drawers that it names.",
        OutOption = "The folder to write labels.pdf and pick-list.pdf to.",
        LabelsOption = "The sheet of labels, in mm: columns x rows, width x height of a label, then, where the sheet is not in the middle of its paper, margins left x top, and gaps across x down. Without it: {usual}.",
        Title = "Kits",
        SaysStop = "The report of {name} says stop. Look at it before you pack kits of it.",
        KitHeading = "{count} {count:kit|kits} of {name}{?version: (version {version})}, in each",
        LetterColumn = "key",
        BagColumn = "in the bag",
        Wire = "Wire: {loops} {loops:loop|loops}, {cutMm:cut}.",
        PickHeading = "Pick list",
        ByDrawer = "Drawer by drawer; what lies in none stands last.",
        DrawerColumn = "drawer",
        TakeColumn = "take",
        IntoColumn = "for",
        ShortColumn = "missing",
        Into = "{times}\u00a0× {count} into {?letter:{letter} of }{name}",
        Aside = "{count}\u00a0aside",
        AsideNote = "What is laid aside lies in no bag: it makes good what breaks while you pack.",
        CutAll = "{count}\u00a0× wire for {name}, {loops} {loops:loop|loops}, {cutMm:cut} each",
        NowHeading = "What is at home makes now",
        Now = "{count} {count:kit|kits} of {name}, if nothing else is made of it. First to run out: {first}.",
        OneMorePack = "With one more pack of each of these ({packs}): {count} {count:kit|kits}; then the first to run out: {first}.",
        NoPackKnown = "What one more pack would bring cannot be told: not of every one of these is a pack known.",
        NowNote = "Wire, caps, dangles and glue are not counted in it.",
        Written = "{file} is written.",
        LabelsTitle = "Bag labels",
        LabelSpare = "{use} and {spare} to spare",
        LabelBeads = "{beads} {beads:bead|beads} in {bags} {bags:bag|bags}",
        LabelWire = "Cut the wire to {cutMm:cut}",
        LabelVersion = "version {version}",
        EachHeading = "How many kits each bead makes",
        EachSays = "Bars, the shortest first: how many kits of {name} each bead at home makes. {beads}.",
        EachBead = "{letter}, {bead}: {count}",
        LabelAlt = "Label{?letter: {letter}}: {count} of {name}, for {piece}",
        KitLabelAlt = "Label of the whole kit: {piece}",
    };
}
