using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes materials, steels and choices of the program's data files. Strict: an unknown field, a wrong unit or a missing source is a fault.</summary>
internal static class DataBinder
{
    // A figure with where it came from; basis says how it came of the source when it was not simply read there.
    private static readonly FieldSet Figure = new("value", "unit", "from", "to", "basis", "source", "note");
    private static readonly FieldSet Chosen = new("value", "unit", "basis", "reason", "source");
    private static readonly FieldSet MaterialFields = new("key", "name", "isMetal", "look", "density");
    private static readonly WordSet<MaterialLook> Looks = new(("plain", MaterialLook.Plain), ("glass", MaterialLook.Glass), ("stone", MaterialLook.Stone),
        ("metal", MaterialLook.Metal), ("pearl", MaterialLook.Pearl), ("wood", MaterialLook.Wood));
    private static readonly FieldSet CatalogueFields = new("key", "kind", "label", "bead", "sizes");
    private static readonly FieldSet SizesFields = new("source", "note");
    private static readonly FieldSet SteelFields = new("key", "name", "density", "youngsModulus", "shearModulus", "tensileStrength");
    private static readonly FieldSet StrengthFields = new("unit", "diameterUnit", "source", "note", "rows");
    private static readonly FieldSet StrengthRow = new("over", "upTo", "min", "max", "note");

    private static readonly FieldSet WristTableFields = new("source", "basis", "wrists");
    private static readonly FieldSet WristFields = new("wristMm", "share", "of");

    private const string OurChoice = "our choice";

    /// <summary>Reads one file.</summary>
    /// <param name="at">Its outermost value.</param>
    /// <param name="fileName">Its name without the ending: the key must be the same.</param>
    /// <param name="faults">Takes what is wrong.</param>
    internal delegate T? Reader<T>(JsonValue at, string fileName, FaultList faults) where T : class;

    /// <summary>A bead material.</summary>
    public static BeadMaterial? Material(JsonValue at, string fileName, FaultList faults)
    {
        if (Fields.Of(at, MaterialFields, faults) is not { } fields) return null;
        var key = Key(fields, fileName);
        if (fields.Require("name")) fields.Text("name", mayBeEmpty: false);
        var metal = fields.Require("isMetal") ? fields.YesOrNo("isMetal") : null;
        var look = fields.Require("look") ? fields.Word("look", Looks) : null;
        var density = Read(fields, "density", "g/cm3", Limits.Above0To(25, "g/cm3"));
        return key is not null && metal is { } m && look is { } l && density is { } d ? new BeadMaterial(key, d.Value, m, d.Source) { Look = l } : null;
    }

    /// <summary>A bead of the catalogue: its own fields are those of a piece file.</summary>
    public static CatalogueBead? Catalogue(JsonValue at, string fileName, ReckoningData data, FaultList faults)
    {
        if (Fields.Of(at, CatalogueFields, faults) is not { } fields) return null;
        var key = Key(fields, fileName);
        var kind = fields.Require("kind") ? fields.Text("kind", mayBeEmpty: false) : null;
        var label = fields.Require("label") ? fields.Text("label", mayBeEmpty: false) : null;
        string? source = null;
        if (fields.Require("sizes") && fields.Inner("sizes", SizesFields) is { } sizes)
        {
            source = sizes.Require("source") ? sizes.Text("source", most: 1000, mayBeEmpty: false) : null;
            sizes.Text("note", most: 1000);
        }
        var bead = fields.Require("bead") && fields["bead"] is { } described ? new BeadBinder(data, faults).Bind(described).Bead : null;
        if (bead is not null && bead.Id != key) fields.Fault("key", FaultCodes.WordUnknown, ("known", bead.Id), ("nearest", bead.Id));
        return key is not null && kind is not null && label is not null && source is not null && bead is not null
            ? new CatalogueBead(key, kind, label, bead, source) : null;
    }

    /// <summary>A steel of coil wire.</summary>
    public static WireSteel? Steel(JsonValue at, string fileName, FaultList faults)
    {
        if (Fields.Of(at, SteelFields, faults) is not { } fields) return null;
        var key = Key(fields, fileName);
        if (fields.Require("name")) fields.Text("name", mayBeEmpty: false);
        var density = Read(fields, "density", "g/cm3", Limits.Above0To(25, "g/cm3"));
        var young = Read(fields, "youngsModulus", "MPa", Limits.Above0To(1_000_000, "MPa"));
        var shear = Read(fields, "shearModulus", "MPa", Limits.Above0To(1_000_000, "MPa"));
        var strengths = Strengths(fields, faults);
        if (key is null || density is not { } d || young is not { } e || shear is not { } g) return null;
        var sources = new[] { d.Source, e.Source, g.Source }.Distinct();
        return new WireSteel(key, d.Value, e.Value, g.Value, string.Join("; ", sources)) { Strengths = strengths };
    }

    /// <summary>Our own choices: every field of <see cref="ReckoningChoices"/>, each with its unit and reason.</summary>
    public static ReckoningChoices? Choices(JsonValue at, string fileName, FaultList faults)
    {
        if (Fields.Of(at, ChoiceReading.Names, faults) is not { } fields) return null;
        var read = new ChoiceReading(fields);
        var choices = new ReckoningChoices
        {
            BearingShare = read.Number("bearingShare", "1", 0, 1),
            WornBandWristMm = read.Number("wornBandWristMm", "mm", 0, 100),
            WornBandLabelMm = read.Number("wornBandLabelMm", "mm", 0, 100),
            WornBandMeasuredMm = read.Number("wornBandMeasuredMm", "mm", 0, 100),
            LeastAveragingMm = read.Number("leastAveragingMm", "mm", 0, 100),
            LinesUpFrom = read.Number("linesUpFrom", "1", 0, 1),
            MixedUpTo = read.Number("mixedUpTo", "1", 0, 1),
            ShowsByRole = read.ByRole("showsByRole"),
            LikenessColourWidth = read.Number("likenessColourWidth", "CIEDE2000", 0.001, 1000),
            LikenessAreaWidth = read.Number("likenessAreaWidth", "1", 0.001, 100),
            LikenessFloor = read.Number("likenessFloor", "1", 0, 1),
            VanishDifference = read.Number("vanishDifference", "CIEDE2000", 0.001, 100),
            GreyStep = read.Number("greyStep", "L*", 0.001, 100),
            Shuffles = (int)read.Number("shuffles", "1", 1, 1_000_000, whole: true),
            LeastOverShare = read.Number("leastOverShare", "1", 0, 1),
            FocalWithinDeg = read.Number("focalWithinDeg", "degree", 0, 180),
            OverlapToleranceMm = read.Number("overlapToleranceMm", "mm", 0, 100),
            BoreToleranceMm = read.Number("boreToleranceMm", "mm", 0, 10),
            FewerTurnsFrom = read.Number("fewerTurnsFrom", "turn", 0, 10),
            LooseFromMm = read.Number("looseFromMm", "mm", 0, 200),
            GapesOverMm = read.Number("gapesOverMm", "mm", 0, 100),
            TipsOverDeg = read.Number("tipsOverDeg", "degree", 0, 180),
            CurveFromMm = read.Number("curveFromMm", "mm", 50, 400),
            CurveToMm = read.Number("curveToMm", "mm", 50, 400),
            CurveStepMm = read.Number("curveStepMm", "mm", 0.1, 100),
            SpreadDraws = (int)read.Number("spreadDraws", "1", 1, 1_000_000, whole: true),
            JudgedDraws = (int)read.Number("judgedDraws", "1", 1, 100_000, whole: true),
            HeavyTurnG = read.Number("heavyTurnG", "g", 0, 1000),
            StressShareFrom = read.Number("stressShareFrom", "1", 0, 10),
            RulerErrorMm = read.Number("rulerErrorMm", "mm", 0, 10),
            FreeRunReach = (int)read.Number("freeRunReach", "1", 0, 100, whole: true),
            SizeRunReach = (int)read.Number("sizeRunReach", "1", 0, 100, whole: true),
            SameWireMm = read.Number("sameWireMm", "mm", 0, 1),
            SameLoopShare = read.Number("sameLoopShare", "1", 0, 0.5),
            KeepOffcutLoops = read.Number("keepOffcutLoops", "loop", 0, 100),
            MeasuredAbsurdShare = read.Number("measuredAbsurdShare", "1", 0, 10),
        };
        return faults.Count == 0 ? choices : null;
    }

    /// <summary>Wrists of many people, each with its share of them.</summary>
    public static WristTable? Wrists(JsonValue at, string fileName, FaultList faults)
    {
        if (Fields.Of(at, WristTableFields, faults) is not { } fields) return null;
        if (fields.Require("source")) fields.Text("source", most: 1000, mayBeEmpty: false);
        fields.Text("basis", most: 1000, mayBeEmpty: false);
        var wrists = ImmutableArray.CreateBuilder<WeighedWrist>();
        foreach (var item in (fields.Require("wrists") ? fields.List("wrists") : null) ?? [])
        {
            if (Fields.Of(item, WristFields, faults) is not { } row) continue;
            var wrist = row.Require("wristMm") ? row.Number("wristMm", PieceRules.WristMm) : null;
            var share = row.Require("share") ? row.Number("share", Limits.Above0To(1, "")) : null;
            if (row.Require("of")) row.Text("of", mayBeEmpty: false);
            if (wrist is { } mm && share is { } s) wrists.Add(new WeighedWrist(mm, s));
        }
        return faults.Count == 0 ? new WristTable(wrists.ToImmutable()) : null;
    }

    /// <summary>Wrists, as read.</summary>
    internal sealed record WristTable(ImmutableArray<WeighedWrist> Wrists);

    internal static string? Key(Fields fields, string fileName)
    {
        if (!fields.Require("key") || fields.Text("key", mayBeEmpty: false) is not { } key) return null;
        if (key == fileName) return key;
        fields.Fault("key", FaultCodes.WordUnknown, ("known", fileName), ("nearest", fileName));
        return null;
    }

    internal static (double Value, string Source)? Read(Fields fields, string name, string unit, Limits limits)
    {
        if (!fields.Require(name) || fields.Inner(name, Figure) is not { } figure) return null;
        var value = figure.Require("value") ? figure.Number("value", limits) : null;
        figure.Number("from", limits);
        figure.Number("to", limits);
        Unit(figure, "unit", unit);
        figure.Text("basis", mayBeEmpty: false);
        figure.Text("note", most: 1000);
        var source = figure.Require("source") ? figure.Text("source", most: 1000, mayBeEmpty: false) : null;
        return value is { } v && source is not null ? (v, source) : null;
    }

    private static void Unit(Fields fields, string name, string unit)
    {
        if (fields.Require(name) && fields.Text(name) is { } written && written != unit)
            fields.Fault(name, FaultCodes.WordUnknown, ("known", unit), ("nearest", unit));
    }

    private static ImmutableArray<StrengthBand> Strengths(Fields steel, FaultList faults)
    {
        if (steel.Inner("tensileStrength", StrengthFields) is not { } table) return [];
        Unit(table, "unit", "MPa");
        Unit(table, "diameterUnit", "mm");
        if (table.Require("source")) table.Text("source", most: 1000, mayBeEmpty: false);
        table.Text("note", most: 1000);
        var bands = ImmutableArray.CreateBuilder<StrengthBand>();
        if (!table.Require("rows")) return [];
        foreach (var item in table.List("rows") ?? [])
        {
            if (Fields.Of(item, StrengthRow, faults) is not { } row) continue;
            // Bands follow one another from thin to thick without a gap or overlap, so that one row at most holds for a wire.
            var from = bands.Count == 0 ? 0 : bands[^1].ToMm;
            var over = row.Require("over") ? row.Number("over", Limits.Between(from, bands.Count == 0 ? 10 : from, "mm")) : null;
            var upTo = row.Require("upTo") ? row.Number("upTo", new Limits(over ?? 0, false, 10, "mm")) : null;
            var min = row.Require("min") ? row.Number("min", Limits.Above0To(10_000, "MPa")) : null;
            var max = row.Number("max", Limits.Between(min ?? 0, 10_000, "MPa"));
            row.Text("note", most: 1000);
            if (over is { } o && upTo is { } u && min is { } m) bands.Add(new StrengthBand(o, u, m, max));
        }
        return bands.ToImmutable();
    }

    /// <summary>Reads the entries of choices.json.</summary>
    private sealed class ChoiceReading(Fields fields)
    {
        public static FieldSet Names { get; } = new("bearingShare", "wornBandWristMm", "wornBandLabelMm", "wornBandMeasuredMm", "leastAveragingMm",
            "linesUpFrom", "mixedUpTo", "showsByRole", "likenessColourWidth", "likenessAreaWidth", "likenessFloor", "vanishDifference", "greyStep", "shuffles", "leastOverShare",
            "focalWithinDeg", "overlapToleranceMm", "boreToleranceMm", "fewerTurnsFrom", "looseFromMm", "gapesOverMm", "tipsOverDeg", "curveFromMm", "curveToMm", "curveStepMm",
            "spreadDraws", "judgedDraws", "heavyTurnG", "stressShareFrom", "rulerErrorMm", "freeRunReach", "sizeRunReach", "sameWireMm", "sameLoopShare",
            "keepOffcutLoops", "measuredAbsurdShare");

        private static readonly FieldSet RoleNames = new([.. PieceFields.Roles.Words]);

        public double Number(string name, string unit, double least, double most, bool whole = false)
        {
            if (Entry(name, unit) is not { } entry || !entry.Require("value")) return 0;
            var value = whole ? entry.Whole("value", Limits.Between(least, most, "")) : entry.Number("value", Limits.Between(least, most, unit));
            return value ?? 0;
        }

        public ImmutableSortedDictionary<Role, double> ByRole(string name)
        {
            var byRole = ImmutableSortedDictionary.CreateBuilder<Role, double>();
            if (Entry(name, "1") is not { } entry || !entry.Require("value") || entry.Inner("value", RoleNames) is not { } roles)
                return byRole.ToImmutable();
            foreach (var word in PieceFields.Roles.Words)
                if (roles.Require(word) && roles.Number(word, Limits.Between(0, 1, "")) is { } shows)
                    byRole[PieceFields.Roles.Find(word)!.Value] = shows;
            return byRole.ToImmutable();
        }

        private Fields? Entry(string name, string unit)
        {
            if (!fields.Require(name) || fields.Inner(name, Chosen) is not { } entry) return null;
            Unit(entry, "unit", unit);
            if (entry.Require("basis") && entry.Text("basis") is { } basis && basis != OurChoice)
                entry.Fault("basis", FaultCodes.WordUnknown, ("known", OurChoice), ("nearest", OurChoice));
            if (entry.Require("reason")) entry.Text("reason", most: 1000, mayBeEmpty: false);
            entry.Text("source", most: 1000);
            return entry;
        }
    }
}
