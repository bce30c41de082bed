namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="KitWords"/>.</summary>
internal static class GermanKit
{
    internal static KitWords Make() => new()
    {
        Verb = "Materialpackungen für mehrere Stücke packen: was in welches Tütchen kommt, was aus welcher Schublade zu holen ist, wie viele Packungen das Vorhandene ergibt; mit Etiketten für die Tütchen.",
        SparesOption = "Perlen über die verarbeiteten hinaus: 2 zu jedem Stück kommen in sein Tütchen; 5% von allen werden für alle Packungen zusammen beiseitegelegt; splitter=10% gilt für eine Perle allein. Ohne: keine.",
        HomeOption = "Wie viele von einer Perle zu Hause sind, wie splitter=23: Dann steht da, wie viele Packungen das ergibt.",
        ShelfOption = "Statt --home: der Ordner, in dem die Werkbank ihre Stücke aufbewahrt. Was in ihrem Vorrat frei ist, ist zu Hause, in den Schubladen, die dort stehen.",
        OutOption = "Der Ordner für labels.pdf und pick-list.pdf.",
        LabelsOption = "Der Etikettenbogen, in mm: Spalten x Zeilen, Breite x Höhe eines Etiketts, dann, wo der Bogen nicht in der Mitte des Papiers liegt, Ränder links x oben, und Abstände quer x längs. Ohne: {usual}.",
        Title = "Materialpackungen",
        SaysStop = "Der Bericht zu {name} sagt Stopp. Ansehen, bevor Packungen davon gemacht werden.",
        KitHeading = "{count} {count:Packung|Packungen} für {name}{?version: (Fassung {version})}, in jeder",
        LetterColumn = "Kürzel",
        BagColumn = "im Tütchen",
        Wire = "Draht: {loops} {loops:Ring|Ringe}, {cutMm:cut}.",
        PickHeading = "Was zu holen ist",
        ByDrawer = "Schublade für Schublade; was in keiner liegt, steht zuletzt.",
        DrawerColumn = "Schublade",
        TakeColumn = "nehmen",
        IntoColumn = "für",
        ShortColumn = "fehlen",
        Into = "{times}\u00a0× {count} in {?letter:{letter} von }{name}",
        Aside = "{count}\u00a0beiseite",
        AsideNote = "Was beiseitegelegt wird, kommt in kein Tütchen: Es ersetzt, was beim Packen zerbricht.",
        CutAll = "{count}\u00a0× Draht für {name}, je {loops} {loops:Ring|Ringe}, {cutMm:cut}",
        NowHeading = "Was das Vorhandene jetzt ergibt",
        Now = "{count} {count:Packung|Packungen} für {name}, wenn sonst nichts daraus gemacht wird. Zuerst geht aus: {first}.",
        OneMorePack = "Mit je einer Packung mehr davon ({packs}): {count} {count:Packung|Packungen}; dann geht zuerst aus: {first}.",
        NoPackKnown = "Was eine Packung mehr brächte, ist nicht zu sagen: Nicht von jeder dieser Perlen ist eine Packung bekannt.",
        NowNote = "Draht, Kappen, Anhänger und Kleber sind nicht mitgezählt.",
        Written = "{file} ist geschrieben.",
        LabelsTitle = "Etiketten für die Tütchen",
        LabelSpare = "{use} und {spare} als Ersatz",
        LabelBeads = "{beads} {beads:Perle|Perlen} in {bags} Tütchen",
        LabelWire = "Draht auf {cutMm:cut} schneiden",
        LabelVersion = "Fassung {version}",
        EachHeading = "Wie viele Packungen jede Perle ergibt",
        EachSays = "Balken, der kürzeste zuerst: wie viele Packungen von {name} jede Perle zu Hause ergibt. {beads}.",
        EachBead = "{letter}, {bead}: {count}",
        LabelAlt = "Etikett{?letter: {letter}}: {count} von {name}, für {piece}",
        KitLabelAlt = "Etikett der ganzen Packung: {piece}",
    };
}
