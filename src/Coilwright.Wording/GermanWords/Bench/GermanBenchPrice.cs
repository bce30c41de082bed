using System.Collections.Frozen;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="PricePageWords"/>.</summary>
internal static class GermanBenchPrice
{
    internal static PricePageWords Make() => new()
    {
        Heading = "Preise",
        Lead = "Was ein Stück kostet, aufgeschlüsselt bis zur letzten Zeile, und was nach den eigenen Regeln dafür zu verlangen ist, nebeneinander.",
        WhatHeading = "Welches Stück",
        Piece = "Stück",
        Together = "Wie viele zusammen gemacht werden",
        BeadsAt = "Perlen kosten",
        AtList = "was die Preise sagen",
        AtAverage = "was jene im Vorrat kosten, im Durchschnitt",
        AtFirstIn = "was jene im Vorrat kosten, zuerst gekommen, zuerst gegangen",
        AtHint = "Wo genug von einer Perle im Vorrat ist, kostet sie, was dafür bezahlt wurde; sonst, was die Preise sagen. Jede Zeile sagt, welches.",
        Working = "Es wird gerechnet…",
        NoPiece = "Noch liegt kein Stück im Regal.",
        NotPriced = "Es lässt sich nicht ausrechnen:",
        Unreadable = "Die aufbewahrten Kosten lassen sich nicht lesen. Eine Datei hereinholen, die an ihre Stelle tritt.",
        OpenHint = "Eine Zeile öffnen, um zu sehen, woraus sie besteht.",
        AtPrice = "Ein anderer Preis",
        AtPriceHint = "Einen Preis eingeben, um zu sehen, was er nach jeder Regel übrig lässt.",
        HowHeading = "Wie jeder Preis zustande kommt",
        CostsHeading = "Eigene Kosten und Regeln",
        CostsLead = "Jede Zahl lässt sich hier ändern; was leer ist, zählt nicht. Aufbewahrt, sobald sich alles lesen lässt.",
        CostsKept = "Aufbewahrt {date}.",
        CostsNone = "Noch ist nichts gesagt: hier schreiben, oder eine Datei hereinholen.",
        NotYet = "Noch nicht aufbewahrt: Erst muss in Ordnung, was unten markiert ist. Was aufbewahrt ist, bleibt, wie es war.",
        Bring = "Eine Datei mit Kosten hereinholen (.costs.json)",
        Save = "Als Datei speichern",
        Back = "Die letzte Änderung zurücknehmen",
        AddLine = "Noch eine",
        TakeOut = "Herausnehmen",
        LineOf = "{list}, Zeile {number}",
        StillEmpty = "Ausfüllen, was markiert ist, oder die Zeile herausnehmen.",
        FormulaHelp = "Eine Formel hat Zahlen mit Dezimalpunkt, + - * / ( ) %, min, max, up(Wert, Schritt), ending(Wert, Endung), die Namen anderer Regeln und diese Größen: {figures}.",
        FormulaHelpHead = "Was in einer Formel stehen kann",
        NoFees = "Noch sind keine Gebühren geschrieben.",
        Sold = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["piece"] = "Stück",
            ["kit"] = "Bausatz",
            ["pattern"] = "Anleitung",
        }.ToFrozenDictionary(StringComparer.Ordinal),
        Lists = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [""] = "Allgemeines",
            ["wire"] = "Eine Packung Draht",
            ["findings"] = "Zubehör",
            ["packaging"] = "Verpackung",
            ["steps"] = "Arbeit, Schritt für Schritt",
            ["overheads"] = "Laufende Kosten",
            ["fees"] = "Gebühren",
            ["outlays"] = "Einmal Bezahltes",
            ["rules"] = "Regeln für Preise",
        }.ToFrozenDictionary(StringComparer.Ordinal),
        Fields = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["currency"] = "Währung (drei Buchstaben)",
            ["wagePerHour"] = "Eine Stunde Arbeit",
            ["wastePercent"] = "Perlen, die zerbrechen, %",
            ["price"] = "Preis einer Packung",
            ["loops"] = "Windungen darin",
            ["pieces"] = "oder: Stücke daraus",
            ["name"] = "Name",
            ["count"] = "Wie viele in einem",
            ["holds"] = "Eine Packung fasst",
            ["for"] = "Für",
            ["minutes"] = "Minuten",
            ["perBatch"] = "Einmal für alle zusammen",
            ["percent"] = "Vom Hundert",
            ["perHour"] = "oder: je Stunde",
            ["perMonth"] = "oder: im Monat",
            ["monthPieces"] = "Stücke im Monat",
            ["fixed"] = "Je Verkauf",
            ["amount"] = "Betrag",
            ["sells"] = "Verkauft",
            ["formula"] = "Formel",
            ["fees"] = "Gebühren",
            ["roundUpTo"] = "Auf das nächste",
            ["endIn"] = "oder: endet auf",
        }.ToFrozenDictionary(StringComparer.Ordinal),
    };
}
