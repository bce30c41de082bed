using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Measures;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Pieces;

/// <summary>The rules that the parts of a piece must meet, whether they are read from a file or typed at the bench.</summary>
/// <remarks>Ranges only keep out slips; whether a sound piece can be made or worn is for the readings to say. What meets them can be written to a piece
/// file and read back. Fields of faults are named as in a piece file, relative to the part.</remarks>
public static class PieceRules
{
    /// <summary>Characters in a title, a name or a remark: longer than any label, short of a page.</summary>
    public const int MostText = 200;

    // Wire from a fine bead thread to a stiff bangle; coils from a finger's to a choker's; wrists from a newborn's to beyond any adult's.

    /// <summary>Thickness of the wire.</summary>
    public static readonly Limits WireMm = Limits.Between(0.2, 3, "mm");

    /// <summary>Diameter of the coil, inside or on the centre line.</summary>
    public static readonly Limits CoilMm = Limits.Between(10, 200, "mm");

    /// <summary>Length of one loop of the coil.</summary>
    public static readonly Limits LoopMm = Limits.Between(30, 630, "mm");

    /// <summary>Wire that is cut: a million millimetres is a kilometre, more than anyone cuts at once.</summary>
    public static readonly Limits CutMm = Limits.Above0To(1_000_000, "mm");

    /// <summary>Round the wrist.</summary>
    public static readonly Limits WristMm = Limits.Between(Wearer.LeastWristMm, Wearer.MostWristMm, "mm");

    /// <summary>Ease.</summary>
    public static readonly Limits EaseMm = Limits.Between(-20, 100, "mm");

    /// <summary>Bearing reach.</summary>
    public static readonly Limits ReachMm = Limits.Between(0, 100, "mm");

    /// <summary>Angle of the starting end.</summary>
    public static readonly Limits StartAngleDeg = Limits.Between(-360, 360, "°");

    /// <summary>Size of a finish: the inside of an end loop, the depth of a cap.</summary>
    public static readonly Limits EndMm = Limits.Above0To(50, "mm");

    /// <summary>Wire that a practice bend of an end used.</summary>
    public static readonly Limits EndWireMm = Limits.Above0To(200, "mm");

    /// <summary>How far a dangle hangs down.</summary>
    public static readonly Limits DangleMm = Limits.Above0To(300, "mm");

    /// <summary>Wire for the pliers to hold.</summary>
    public static readonly Limits GripMm = Limits.Between(0, 200, "mm");

    /// <summary>Wire to spare.</summary>
    public static readonly Limits SpareMm = Limits.Between(0, 1000, "mm");

    /// <summary>Overlap of the ends.</summary>
    public static readonly Limits OverlapMm = Limits.Between(-100, 500, "mm");

    /// <summary>A place round the wrist.</summary>
    public static readonly Limits BearingDeg = Limits.Between(-180, 180, "°");

    /// <summary>How far off the top the focal may lie.</summary>
    public static readonly Limits FocalWithinDeg = Limits.Between(0, 180, "°");

    /// <summary>The fewest and the most beads of a run that is free to change.</summary>
    public static readonly Limits RunBeads = Limits.Between(1, 1000, "");

    /// <summary>By how much the beaded length may change when a better order is looked for.</summary>
    public static readonly Limits LengthWithinMm = Limits.Between(0, 1000, "mm");

    /// <summary>Beads of a kind to hand.</summary>
    public static readonly Limits BeadsOnHand = Limits.Between(0, 1_000_000, "");

    /// <summary>How much a wrist counts among others.</summary>
    public static readonly Limits Weight = Limits.Above0To(1_000_000, "");

    /// <summary>The most of one kind in a row, where a rule limits it.</summary>
    public static readonly Limits LongestRun = Limits.Between(1, 1000, "");

    /// <summary>How many of some kinds a row may have.</summary>
    public static readonly Limits UpTo = Limits.Between(0, 999, "");

    /// <summary>How many neighbours such a row is.</summary>
    public static Limits OfAny(int upTo) => Limits.Between(upTo + 1, 1000, "");

    /// <summary>The most beads of a run whose fewest are given.</summary>
    public static Limits MostOfRun(int least) => Limits.Between(least, RunBeads.Max, "");

    /// <summary>From one place of the starting end that is tried to the next.</summary>
    public static readonly Limits StepDeg = Limits.Between(1, 90, "°");

    /// <summary>The most turns where the fewest are given.</summary>
    public static Limits MostTurns(double least) => Limits.Between(least, Turns.Max, "");

    /// <summary>Turns designed for.</summary>
    public static readonly Limits Turns = Limits.Above0To(1000, "");

    /// <summary>Length of a measured row.</summary>
    public static readonly Limits RowMm = Limits.Above0To(10_000_000, "mm");

    /// <summary>Beads of a row that a bead's length is measured by.</summary>
    public static readonly Limits RowBeads = Limits.Between(1, 10_000, "");

    /// <summary>Beads in one unit of sale.</summary>
    public static readonly Limits PackBeads = Limits.Between(1, 1_000_000, "");

    /// <summary>Price of one unit of sale.</summary>
    public static readonly Limits Price = Limits.Between(0, 1_000_000, "");

    /// <summary>What is wrong with a title.</summary>
    public static ImmutableArray<Fault> OfTitle(string title) => OfText("title", title, mayBeEmpty: false);

    /// <summary>What is wrong with a line of text in her own words.</summary>
    /// <param name="field">What the line is, as faults name it.</param>
    /// <param name="text">The line.</param>
    /// <param name="mayBeEmpty">Whether nothing may be said.</param>
    public static ImmutableArray<Fault> OfText(string field, string text, bool mayBeEmpty)
    {
        var rules = new RuleList();
        rules.Text(field, text, mayBeEmpty);
        return rules.Faults;
    }

    /// <summary>What is wrong with a bead's description; empty, with the bead, when nothing is.</summary>
    public static ImmutableArray<Fault> OfBead(BeadDescription description, ReckoningData data, out Bead? bead)
    {
        var rules = new RuleList();
        if (!Bead.TryMake(description, out bead, out var faults)) rules.Add(faults);
        rules.Text("name", description.Name);
        rules.Text("coating", description.Coating);
        rules.Text("lot", description.Lot);
        for (var i = 0; i < (description.Aliases.IsDefault ? 0 : description.Aliases.Length); i++)
            rules.Text(string.Create(CultureInfo.InvariantCulture, $"aliases[{i}]"), description.Aliases[i]);
        if (description.Pack is { } pack)
        {
            rules.Text("pack.unit", pack.Unit, mayBeEmpty: false);
            if (pack.Beads > 0) rules.Number("pack.beads", pack.Beads, PackBeads);
        }
        if (description.Price is >= 0) rules.Number("price", (double)description.Price, Price);
        if (description.Length is BeadLength.Row { Count: > 0 } row) rules.Number("row.count", row.Count, RowBeads);
        if (description.Material is { } material && !data.Materials.ContainsKey(material.Key)) rules.Add(UnknownMaterial(material.Key, data));
        if (description.OtherMaterial is { } other)
        {
            rules.Text("material", other, mayBeEmpty: false);
            if (description.Material is null && description.DensityGPerCm3 is null && description.MassG is null) rules.Add(UnknownMaterial(other, data));
        }
        if (!rules.Faults.IsEmpty) bead = null;
        return rules.Faults;
    }

    /// <summary>What is wrong with a wire.</summary>
    public static ImmutableArray<Fault> OfWire(CoilWire wire, ReckoningData data)
    {
        var rules = new RuleList();
        rules.Number("wireMm", wire.WireMm, WireMm);
        if (wire.Datum == CoilDatum.MeasuredLoop) rules.Number("loopMm", wire.SizeMm, LoopMm);
        else rules.Number(wire.Datum == CoilDatum.Inside ? "insideMm" : "centreMm", wire.SizeMm, CoilMm);
        rules.Number("cutMm", wire.CutMm, CutMm);
        if (wire.Steel is { } steel && !data.Steels.ContainsKey(steel.Key))
            rules.Add(Fault.Of(FaultCodes.SteelUnknown, "steel", RuleList.Shown(steel.Key), ("known", string.Join(", ", data.Steels.Keys)),
                ("nearest", NearestName.Of(steel.Key, data.Steels.Keys) ?? "")));
        // The gauge is what is written down, so it must be the wire's own.
        if (wire.GaugeName is { } gauge && !(WireGauge.TryParse(gauge, out var mm, out var name) && mm == wire.WireMm && name == gauge))
            rules.Add(Fault.Of(FaultCodes.GaugeForm, "gauge", RuleList.Shown(gauge)));
        return rules.Faults;
    }

    /// <summary>What is wrong with the ends.</summary>
    public static ImmutableArray<Fault> OfEnds(WireEnds ends)
    {
        var rules = new RuleList();
        foreach (var (at, end) in ((string, WireEnd)[])[("start", ends.Start), ("finish", ends.Finish)])
        {
            rules.Number(at + (end.IsTurned ? ".insideMm" : ".depthMm"), end.InsideMm, EndMm);
            rules.Number(at + ".measuredMm", end.MeasuredMm, EndWireMm);
            rules.Text(at + ".dangle", end.Dangle, mayBeEmpty: false);
            rules.Number(at + ".dangleMm", end.DangleMm, DangleMm);
            if (end.Finish == EndFinish.Dangle) continue;
            var (field, value) = end.Dangle is { } dangle ? (".dangle", RuleList.Shown(dangle)) : (".dangleMm", end.DangleMm?.ToString(CultureInfo.InvariantCulture));
            if (value is not null)
                rules.Add(Fault.Of(FaultCodes.FieldNotWith, at + field, value, ("other", end.IsTurned ? "turnedLoop" : "gluedCap"), ("otherField", at + ".finish")));
        }
        rules.Number("gripMm", ends.GripMm, GripMm);
        rules.Number("spareMm", ends.SpareMm, SpareMm);
        rules.Number("overlapMm", ends.OverlapMm, OverlapMm);
        return rules.Faults;
    }

    /// <summary>What is wrong with the wearer.</summary>
    public static ImmutableArray<Fault> OfWearer(Wearer wearer)
    {
        var rules = new RuleList();
        rules.Number("wristMm", wearer.WristMm, WristMm);
        rules.Number("easeMm", wearer.EaseMm, EaseMm);
        rules.Number("bearingReachMm", wearer.BearingReachMm, ReachMm);
        rules.Number("startAngleDeg", wearer.StartAngleDeg, StartAngleDeg);
        return rules.Faults;
    }

    /// <summary>What is wrong with wishes for a piece of this order and these beads.</summary>
    public static ImmutableArray<Fault> OfWishes(Wishes wishes, StringingOrder order, ImmutableArray<Bead> beads)
    {
        var rules = new RuleList();
        for (var i = 0; i < (wishes.Places.IsDefault ? 0 : wishes.Places.Length); i++)
        {
            rules.Number(string.Create(CultureInfo.InvariantCulture, $"places[{i}].fromDeg"), wishes.Places[i].FromDeg, BearingDeg);
            rules.Number(string.Create(CultureInfo.InvariantCulture, $"places[{i}].toDeg"), wishes.Places[i].ToDeg, BearingDeg);
        }
        rules.Number("turns", wishes.Turns, Turns);
        rules.Number("focalWithinDeg", wishes.FocalWithinDeg, FocalWithinDeg);
        var ids = beads.Select(bead => bead.Id).ToImmutableSortedSet(StringComparer.Ordinal);
        foreach (var (id, range) in wishes.Free.Runs)
        {
            rules.Number("free.runs.least", range.Least, RunBeads);
            rules.Number("free.runs.most", range.Most, MostOfRun(Math.Max(1, range.Least)));
            Known("free.runs.bead", id, ids);
        }
        foreach (var (id, onHand) in wishes.Free.OnHand)
        {
            rules.Number("free.onHand.beads", onHand, BeadsOnHand);
            Known("free.onHand.bead", id, ids);
        }
        rules.Number("free.lengthWithinMm", wishes.Free.LengthWithinMm, LengthWithinMm);
        for (var i = 0; i < (wishes.Free.Coils.IsDefault ? 0 : wishes.Free.Coils.Length); i++)
        {
            var (datum, sizeMm) = wishes.Free.Coils[i];
            var (name, limits) = datum switch { CoilDatum.Inside => ("insideMm", CoilMm), CoilDatum.CentreLine => ("centreMm", CoilMm), _ => ("loopMm", LoopMm) };
            rules.Number(string.Create(CultureInfo.InvariantCulture, $"free.coils[{i}].{name}"), sizeMm, limits);
        }
        rules.Number("free.startAngle.fromDeg", wishes.Free.StartAngle?.FromDeg, BearingDeg);
        rules.Number("free.startAngle.toDeg", wishes.Free.StartAngle?.ToDeg, BearingDeg);
        rules.Number("free.startAngle.stepDeg", wishes.Free.StartAngle?.StepDeg, StepDeg);
        if (wishes.Free.Turns is { } turns)
        {
            rules.Number("free.turns.least", turns.Least, Turns);
            rules.Number("free.turns.most", turns.Most, MostTurns(Math.Clamp(turns.Least, 0, Turns.Max)));
        }
        for (var i = 0; i < (wishes.Wrists.IsDefault ? 0 : wishes.Wrists.Length); i++)
        {
            rules.Number(string.Create(CultureInfo.InvariantCulture, $"wrists[{i}].wristMm"), wishes.Wrists[i].WristMm, WristMm);
            rules.Number(string.Create(CultureInfo.InvariantCulture, $"wrists[{i}].weight"), wishes.Wrists[i].Weight, Weight);
        }
        foreach (var standIn in wishes.Free.StandIns.IsDefault ? [] : wishes.Free.StandIns)
        {
            Known("free.standIns.bead", standIn.Bead, ids);
            Known("free.standIns.with", standIn.With, ids);
            if (standIn.With == standIn.Bead) rules.Add(Fault.Of(FaultCodes.StandInItself, "free.standIns.with", RuleList.Shown(standIn.With)));
        }
        var named = NamesForRules(order, ids);
        foreach (var rule in wishes.Rules.IsDefault ? [] : wishes.Rules)
        {
            foreach (var name in rule.Named) Known(FieldOf(rule), name, named);
            if (MixedWith(rule, ids, named) is { } other) rules.Add(Fault.Of(FaultCodes.RuleMixed, FieldOf(rule), RuleList.Shown(rule.Named[0]), ("other", other)));
            if (rule is OrderRule.LongestRun run) rules.Number(FieldOf(rule) + ".most", run.Most, LongestRun);
            if (rule is not OrderRule.InAnyRow row) continue;
            rules.Number(FieldOf(rule) + ".upTo", row.UpTo, UpTo);
            rules.Number(FieldOf(rule) + ".ofAny", row.OfAny, OfAny(Math.Clamp(row.UpTo, 0, 999)));
            if (row.Names.IsDefaultOrEmpty) rules.Add(Fault.Of(FaultCodes.TextEmpty, FieldOf(rule) + ".names", ""));
        }
        var known = NamesForWishes(order, ids);
        foreach (var name in wishes.Groups.Keys) Known($"groups.{RuleList.Shown(name)}", name, known);
        return rules.Faults;

        void Known(string field, string name, ImmutableSortedSet<string> known)
        {
            if (!known.Contains(name))
                rules.Add(Fault.Of(FaultCodes.OrderUnknownName, field, RuleList.Shown(name), ("nearest", NearestName.Of(name, known) ?? "")));
        }
    }

    /// <summary>The names that wishes may be for: groups that are strung and, for an order read in runs of one kind, the beads.</summary>
    public static ImmutableSortedSet<string> NamesForWishes(StringingOrder order, IEnumerable<string> beadIds) =>
        order.Groups.Select(group => group.Name).Concat(beadIds).ToImmutableSortedSet(StringComparer.Ordinal);

    /// <summary>The names that rules of the order may be for: groups that read as one thing, and the beads.</summary>
    public static ImmutableSortedSet<string> NamesForRules(StringingOrder order, IEnumerable<string> beadIds) =>
        order.ReadingGroups.Select(group => group.Name).Concat(beadIds).ToImmutableSortedSet(StringComparer.Ordinal);

    /// <summary>For a rule that names beads and groups, so that it cannot be said what it counts: the first name that is not what the rule's first name
    /// is. Null when all are of one sort, or one is not known.</summary>
    public static string? MixedWith(OrderRule rule, IReadOnlySet<string> beadIds, IReadOnlySet<string> known) =>
        rule.Named.All(known.Contains) ? rule.Named.FirstOrDefault(name => beadIds.Contains(name) != beadIds.Contains(rule.Named[0])) : null;

    /// <summary>The field of the wishes that a rule stands in.</summary>
    public static string FieldOf(OrderRule rule) => rule switch
    {
        OrderRule.LongestRun => "longestRun",
        OrderRule.InAnyRow => "inAnyRow",
        OrderRule.Apart => "apart",
        OrderRule.Together => "together",
        OrderRule.StartsWith => "startsWith",
        _ => "endsWith",
    };

    /// <summary>What is wrong with what is written for a pattern.</summary>
    public static ImmutableArray<Fault> OfPattern(PatternNotes pattern)
    {
        var rules = new RuleList();
        foreach (var (where, text) in new[] { ("introduction", pattern.Introduction), ("care", pattern.Care), ("usage", pattern.Usage) }) rules.Text(where, text, most: PatternNotes.MostText);
        rules.Text("by", pattern.By);
        rules.Number("minutes", pattern.Minutes, PatternNotes.TimeMinutes);
        for (var i = 0; i < pattern.Techniques.Length; i++) rules.Text(string.Create(CultureInfo.InvariantCulture, $"techniques[{i}]"), pattern.Techniques[i], mayBeEmpty: false);
        for (var i = 0; i < pattern.Words.Length; i++)
            rules.Text(string.Create(CultureInfo.InvariantCulture, $"words[{i}].text"), pattern.Words[i].Text, mayBeEmpty: false, PatternNotes.MostText);
        for (var i = 0; i < pattern.Testers.Length; i++)
        {
            rules.Text(string.Create(CultureInfo.InvariantCulture, $"testers[{i}].note"), pattern.Testers[i].Note, mayBeEmpty: false, PatternNotes.MostText);
            rules.Text(string.Create(CultureInfo.InvariantCulture, $"testers[{i}].by"), pattern.Testers[i].By);
            rules.Text(string.Create(CultureInfo.InvariantCulture, $"testers[{i}].version"), pattern.Testers[i].Version);
        }
        return rules.Faults;
    }

    /// <summary>What is wrong with a measured row on a piece of this order and these beads.</summary>
    public static ImmutableArray<Fault> OfRow(MeasuredRow row, StringingOrder order, ImmutableArray<Bead> beads, ReckoningData data)
    {
        var rules = new RuleList();
        rules.Number("totalMm", row.TotalMm, RowMm);
        return rules.Faults.IsEmpty ? MeasuredRowCheck.Of(row, order, beads, data.Choices.MeasuredAbsurdShare) : rules.Faults;
    }

    private static Fault UnknownMaterial(string key, ReckoningData data) =>
        Fault.Of(FaultCodes.MaterialUnknown, "material", RuleList.Shown(key), ("known", string.Join(", ", data.Materials.Keys)),
            ("nearest", NearestName.Of(key, data.Materials.Keys) ?? ""));

    /// <summary>Faults as they are found.</summary>
    private sealed class RuleList
    {
        private readonly ImmutableArray<Fault>.Builder _faults = ImmutableArray.CreateBuilder<Fault>();

        public ImmutableArray<Fault> Faults => _faults.ToImmutable();

        public void Add(Fault fault) => _faults.Add(fault);

        public void Add(ImmutableArray<Fault> faults) => _faults.AddRange(faults);

        public void Number(string field, double? value, Limits limits)
        {
            if (value is { } number && limits.Check(number) is { } fault)
                _faults.Add(fault with { Field = field, Value = number.ToString("0.####", CultureInfo.InvariantCulture) });
        }

        public void Text(string field, string? text, bool mayBeEmpty = true, int most = MostText)
        {
            if (text is null) return;
            if (text.Length > most) _faults.Add(Fault.Of(FaultCodes.TextTooLong, field, Shown(text), ("max", most.ToString(CultureInfo.InvariantCulture))));
            else if (!mayBeEmpty && string.IsNullOrWhiteSpace(text)) _faults.Add(Fault.Of(FaultCodes.TextEmpty, field, text));
        }

        public static string Shown(string text) => text.Length <= 60 ? text : text[..60] + "...";
    }
}
