using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes a piece of a file's values, noting everything wrong with them.</summary>
internal sealed class PieceBinder(ReckoningData data, FaultList faults)
{
    private static readonly Limits CutLoops = Limits.Above0To(5000, "");

    private readonly List<Bead> _beads = [];
    private readonly List<string> _ids = [];
    private bool _idsSound = true;

    /// <summary>The piece; null, with faults noted, when it cannot be made.</summary>
    public Piece? Bind(JsonValue root)
    {
        if (Fields.Of(root, PieceFields.Piece, faults) is not { } fields) return null;
        var title = fields.Require("title") ? fields.Text("title", mayBeEmpty: false) : null;
        var beadsSound = Beads(fields);
        var measured = new MeasuredBinder(faults);
        if (fields.Has("measured")) measured.Read(fields);
        var wire = Wire(fields, measured);
        var ends = Ends(fields, measured);
        var wearer = Wearer(fields);
        // An order is read against the ids as written, so that a bead with a wrong size does not also make every mention of it unknown.
        var order = new OrderBinder(_ids, _idsSound, faults).Read(fields);
        var wishes = Wishes(fields, order.Order);
        var pattern = PatternBinder.Read(fields, faults);
        if (beadsSound && order.Order is { } strung)
            measured.CheckRows(strung, [.. _beads], data.Choices.MeasuredAbsurdShare);
        if (faults.Count > 0 || title is null || wire is null || ends is null || wearer is null || wishes is null || pattern is null || order.Order is null) return null;
        return new Piece
        {
            Title = title,
            Beads = [.. _beads],
            Wire = wire,
            Ends = ends,
            Wearer = wearer,
            Order = order.Order,
            Written = order.Written,
            MeasuredRows = measured.Rows,
            Wishes = wishes,
            Pattern = pattern,
        };
    }

    private bool Beads(Fields piece)
    {
        if (!piece.Require("beads") || piece.List("beads") is not { } items) return false;
        var before = faults.Count;
        var firstById = new Dictionary<string, JsonValue>(StringComparer.Ordinal);
        foreach (var item in items)
        {
            if (faults.Full) return false;
            var (id, bead) = new BeadBinder(data, faults).Bind(item);
            if (id is null || !Bead.CheckName("id", id).IsEmpty || firstById.ContainsKey(id)) _idsSound = false;
            if (id is null) continue;
            if (firstById.TryGetValue(id, out var first))
                faults.Add(item.Under("id"), FaultCodes.IdTwice, ("first", first.Path));
            else
            {
                firstById.Add(id, item);
                _ids.Add(id);
                if (bead is not null) _beads.Add(bead);
            }
        }
        if (_ids.Count == 0 && faults.Count == before)
            piece.Fault("beads", FaultCodes.ValueAtLeast, ("min", "1"), ("unit", ""));
        return faults.Count == before;
    }

    internal CoilWire? Wire(Fields piece, MeasuredBinder measured)
    {
        if (!piece.Require("stringingMaterial") || piece.Inner("stringingMaterial", PieceFields.StringingMaterial) is not { } fields) return null;
        if (fields.Require("kind")) fields.Word("kind", PieceFields.MaterialKinds);
        var thickness = CoilBinder.Thickness(fields);
        var steel = CoilBinder.Steel(fields, data);

        var writtenLoopMm = fields.Number("loopMm", PieceRules.LoopMm);
        var insideMm = fields.Number("insideMm", PieceRules.CoilMm);
        var centreMm = fields.Number("centreMm", PieceRules.CoilMm);
        if (fields.Has("insideMm") && fields.Has("centreMm"))
            fields.Fault("centreMm", FaultCodes.CoilSize, ("fields", "insideMm, centreMm"));
        else if (!measured.MeasuresLoop && !(Given("insideMm") || Given("centreMm") || Given("loopMm")))
            fields.Missing("loopMm", FaultCodes.CoilSize, ("fields", "loopMm, insideMm, centreMm"));

        // What was measured overrules what is written, and either overrules a label.
        var loopMm = measured.LoopMm ?? writtenLoopMm;
        var cutMm = fields.Number("cutMm", PieceRules.CutMm);
        var cutLoops = fields.Number("cutLoops", CutLoops);
        if (fields.Has("cutMm") && fields.Has("cutLoops"))
            fields.Fault("cutLoops", FaultCodes.FieldOneOf, ("fields", "cutMm, cutLoops"), ("given", "2"));
        if (thickness is not var (thick, gauge)) return null;
        var (datum, size) = loopMm is { } loop ? (CoilDatum.MeasuredLoop, loop)
            : insideMm is { } inside ? (CoilDatum.Inside, inside)
            : (CoilDatum.CentreLine, centreMm ?? 0);
        if (size == 0) return null;
        var wire = new CoilWire(thick, datum, size, steel) { GaugeName = gauge };
        return wire with { CutMm = cutMm ?? cutLoops * wire.LoopMm };

        bool Given(string size) => fields.Has(size) || fields.Wrong(size);
    }

    internal static WireEnds? Ends(Fields piece, MeasuredBinder measured)
    {
        if (!piece.Require("ends") || piece.Inner("ends", PieceFields.Ends) is not { } fields) return null;
        var start = End(fields, "start");
        var finish = End(fields, "finish");
        // No grip and no spare written is none cut: a maker who trims nothing writes nothing.
        var grip = fields.Has("gripMm") ? fields.Number("gripMm", PieceRules.GripMm) : 0;
        var spare = fields.Has("spareMm") ? fields.Number("spareMm", PieceRules.SpareMm) : 0;
        var overlap = fields.Number("overlapMm", PieceRules.OverlapMm);
        start = measured.Applied(start, WhichEnd.Start);
        finish = measured.Applied(finish, WhichEnd.Finish);
        return start is null || finish is null || grip is null || spare is null ? null
            : new WireEnds(start, finish, grip.Value, spare.Value) { OverlapMm = overlap };
    }

    private static WireEnd? End(Fields ends, string name)
    {
        if (!ends.Require(name) || ends.Inner(name, PieceFields.End) is not { } fields) return null;
        if (!fields.Require("finish") || fields.Word("finish", PieceFields.Finishes) is not { } finish) return null;
        var (takes, not) = finish == EndFinish.GluedCap ? ("depthMm", "insideMm") : ("insideMm", "depthMm");
        foreach (var field in finish == EndFinish.Dangle ? (ReadOnlySpan<string>)[not] : [not, "dangle", "dangleMm"])
            fields.NotWith(field, fields.At.Path + ".finish", PieceFields.Finishes.WordOf(finish));
        var size = fields.Require(takes) ? fields.Number(takes, PieceRules.EndMm) : null;
        var used = fields.Number("measuredMm", PieceRules.EndWireMm);
        var (dangle, hangs) = finish == EndFinish.Dangle ? (fields.Text("dangle", mayBeEmpty: false), fields.Number("dangleMm", PieceRules.DangleMm)) : default;
        return size is { } mm ? new WireEnd(finish, mm) { MeasuredMm = used, Dangle = dangle, DangleMm = hangs } : null;
    }

    internal static Wearer? Wearer(Fields piece)
    {
        if (!piece.Require("wearer") || piece.Inner("wearer", PieceFields.Wearer) is not { } fields) return null;
        var wrist = fields.Require("wristMm") ? fields.Number("wristMm", PieceRules.WristMm) : null;
        var ease = fields.Number("easeMm", PieceRules.EaseMm) ?? 0;
        var reach = fields.Number("bearingReachMm", PieceRules.ReachMm);
        var child = fields.YesOrNo("child") ?? false;
        var (angle, onTop) = StartAngle(fields);
        if (wrist is not { } mm) return null;
        var wearer = new Wearer(mm, ease) { BearingReachMm = reach, FocalOnTop = onTop, IsChild = child };
        return angle is { } deg ? wearer with { StartAngleDeg = deg } : wearer;
    }

    private static (double? Deg, bool OnTop) StartAngle(Fields fields)
    {
        switch (fields["startAngleDeg"])
        {
            case null:
                return (null, false);
            case { Kind: JsonKind.Number }:
                return (fields.Number("startAngleDeg", PieceRules.StartAngleDeg), false);
            case { Kind: JsonKind.Text } word:
                if (word.Text == PieceFields.FocalOnTop) return (null, true);
                fields.Fault("startAngleDeg", FaultCodes.WordUnknown, ("known", PieceFields.FocalOnTop),
                    ("nearest", NearestName.Of(word.Text, [PieceFields.FocalOnTop]) ?? ""));
                return (null, false);
            case { } other:
                fields.WrongType("startAngleDeg", other, FaultTypes.NumberOrWord);
                return (null, false);
        }
    }

    internal Wishes? Wishes(Fields piece, StringingOrder? order)
    {
        if (!piece.Has("wishes")) return Core.Pieces.Wishes.None;
        if (piece.Inner("wishes", PieceFields.Wishes) is not { } fields) return null;
        var places = ImmutableArray.CreateBuilder<PlaceWish>();
        foreach (var item in fields.List("places") ?? [])
        {
            if (Fields.Of(item, PieceFields.PlaceWish, faults) is not { } place) continue;
            var from = place.Require("fromDeg") ? place.Number("fromDeg", PieceRules.BearingDeg) : null;
            var to = place.Require("toDeg") ? place.Number("toDeg", PieceRules.BearingDeg) : null;
            var wish = place.Require("liningUp") ? place.Word("liningUp", PieceFields.LiningUp) : null;
            if (from is { } f && to is { } t && wish is { } w) places.Add(new PlaceWish(f, t, w));
        }
        return new Wishes
        {
            LiningUp = fields.Word("liningUp", PieceFields.LiningUp) ?? LiningUpWish.Any,
            Places = places.ToImmutable(),
            Groups = GroupWishes(fields, order),
            Rules = new RuleBinder(_ids, order, faults).Read(fields),
            Turns = fields.Number("turns", PieceRules.Turns),
            FocalWithinDeg = fields.Number("focalWithinDeg", PieceRules.FocalWithinDeg),
            Free = Free(fields),
            JudgedBy = fields.Word("judgedBy", PieceFields.JudgedBys) ?? JudgedBy.Mean,
            Wrists = Wrists(fields),
        };
    }

    private FreeToChange Free(Fields wishes)
    {
        if (!wishes.Has("free") || wishes.Inner("free", PieceFields.Free) is not { } fields) return FreeToChange.Usual;
        var runs = ImmutableSortedDictionary.CreateBuilder<string, RunRange>(StringComparer.Ordinal);
        foreach (var item in fields.List("runs") ?? [])
        {
            if (Fields.Of(item, PieceFields.FreeRun, faults) is not { } run) continue;
            var bead = KindOnce(run, runs.Keys);
            var least = run.Require("least") ? run.Whole("least", PieceRules.RunBeads) : null;
            var most = run.Require("most") ? run.Whole("most", PieceRules.MostOfRun(least ?? 1)) : null;
            if (bead is not null && least is { } l && most is { } m) runs[bead] = new RunRange(l, m);
        }
        var onHand = ImmutableSortedDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        foreach (var item in fields.List("onHand") ?? [])
        {
            if (Fields.Of(item, PieceFields.OnHand, faults) is not { } kind) continue;
            var bead = KindOnce(kind, onHand.Keys);
            if ((kind.Require("beads") ? kind.Whole("beads", PieceRules.BeadsOnHand) : null) is { } beads && bead is not null) onHand[bead] = beads;
        }
        return new FreeToChange
        {
            Runs = runs.ToImmutable(),
            LengthWithinMm = fields.Number("lengthWithinMm", PieceRules.LengthWithinMm),
            OnHand = onHand.ToImmutable(),
            MirroredHalves = fields.YesOrNo("mirroredHalves") ?? false,
            Coils = Coils(fields),
            GroupOrder = fields.YesOrNo("groupOrder") ?? false,
            StandIns = StandIns(fields),
            StartAngle = FreeStart(fields),
            Turns = FreeTurns(fields),
        };
    }

    private static StartRange? FreeStart(Fields free)
    {
        if (!free.Has("startAngle") || free.Inner("startAngle", PieceFields.StartRange) is not { } fields) return null;
        var from = fields.Require("fromDeg") ? fields.Number("fromDeg", PieceRules.BearingDeg) : null;
        var to = fields.Require("toDeg") ? fields.Number("toDeg", PieceRules.BearingDeg) : null;
        var step = fields.Has("stepDeg") ? fields.Number("stepDeg", PieceRules.StepDeg) : StartRange.UsualStepDeg;
        return from is { } f && to is { } t && step is { } s ? new StartRange(f, t, s) : null;
    }

    private static TurnsRange? FreeTurns(Fields free)
    {
        if (!free.Has("turns") || free.Inner("turns", PieceFields.TurnsRange) is not { } fields) return null;
        var least = fields.Require("least") ? fields.Number("least", PieceRules.Turns) : null;
        var most = fields.Require("most") ? fields.Number("most", PieceRules.MostTurns(least ?? 0)) : null;
        return least is { } l && most is { } m ? new TurnsRange(l, m) : null;
    }

    private ImmutableArray<CoilSize> Coils(Fields free)
    {
        var coils = ImmutableArray.CreateBuilder<CoilSize>();
        foreach (var item in free.List("coils") ?? [])
        {
            if (Fields.Of(item, PieceFields.Coil, faults) is not { } fields) continue;
            (string Name, CoilDatum Datum, Limits Limits)[] ways =
                [("loopMm", CoilDatum.MeasuredLoop, PieceRules.LoopMm), ("insideMm", CoilDatum.Inside, PieceRules.CoilMm), ("centreMm", CoilDatum.CentreLine, PieceRules.CoilMm)];
            var said = ways.Where(way => fields.Has(way.Name)).ToArray();
            if (said.Length == 0) fields.Missing("loopMm", FaultCodes.CoilSize, ("fields", "loopMm, insideMm, centreMm"));
            else if (said.Length > 1) fields.Fault(said[1].Name, FaultCodes.CoilSize, ("fields", string.Join(", ", said.Select(way => way.Name))));
            else if (fields.Number(said[0].Name, said[0].Limits) is { } size) coils.Add(new CoilSize(said[0].Datum, size));
        }
        return coils.ToImmutable();
    }

    private ImmutableArray<StandIn> StandIns(Fields free)
    {
        var standIns = ImmutableArray.CreateBuilder<StandIn>();
        foreach (var item in free.List("standIns") ?? [])
        {
            if (Fields.Of(item, PieceFields.StandIn, faults) is not { } fields) continue;
            var (bead, with) = (KindOnce(fields, []), Kind(fields, "with"));
            var everywhere = fields.YesOrNo("everywhere") ?? false;
            if (bead is null || with is null) continue;
            if (bead == with) fields.Fault("with", FaultCodes.StandInItself);
            else standIns.Add(new StandIn(bead, with, everywhere));
        }
        return standIns.ToImmutable();
    }

    // A bead of the piece that was not named before; anything else is a fault.
    private string? KindOnce(Fields fields, IEnumerable<string> before)
    {
        if (Kind(fields, "bead") is not { } bead) return null;
        if (!before.Contains(bead)) return bead;
        fields.Fault("bead", FaultCodes.IdTwice, ("first", bead));
        return null;
    }

    // A bead of the piece; anything else is a fault.
    private string? Kind(Fields fields, string field)
    {
        if (!fields.Require(field) || fields.Text(field, mayBeEmpty: false) is not { } bead) return null;
        if (_ids.Count == 0 || _ids.Contains(bead)) return bead;
        fields.Fault(field, FaultCodes.OrderUnknownName, ("nearest", NearestName.Of(bead, _ids) ?? ""));
        return null;
    }

    private ImmutableArray<WeighedWrist> Wrists(Fields wishes)
    {
        var wrists = ImmutableArray.CreateBuilder<WeighedWrist>();
        foreach (var item in wishes.List("wrists") ?? [])
        {
            if (Fields.Of(item, PieceFields.Wrist, faults) is not { } fields) continue;
            var wrist = fields.Require("wristMm") ? fields.Number("wristMm", PieceRules.WristMm) : null;
            var weight = fields.Has("weight") ? fields.Number("weight", PieceRules.Weight) : 1;
            if (wrist is { } mm && weight is { } w) wrists.Add(new WeighedWrist(mm, w));
        }
        return wrists.ToImmutable();
    }

    private ImmutableSortedDictionary<string, LiningUpWish> GroupWishes(Fields fields, StringingOrder? order)
    {
        var wishes = ImmutableSortedDictionary.CreateBuilder<string, LiningUpWish>(StringComparer.Ordinal);
        if (fields["groups"] is not { } groups) return wishes.ToImmutable();
        if (groups.Kind != JsonKind.Fields)
        {
            fields.WrongType("groups", groups, FaultTypes.Fields);
            return wishes.ToImmutable();
        }
        var known = order is null ? null : PieceRules.NamesForWishes(order, _ids);
        var firsts = new Dictionary<string, JsonValue>(StringComparer.Ordinal);
        foreach (var (name, value) in groups.Fields)
        {
            var group = name.Text;
            if (!firsts.TryAdd(group, name))
            {
                faults.Add(name, FaultCodes.FieldTwice, ("firstLine", firsts[group].Place.Line.ToString(CultureInfo.InvariantCulture)));
                continue;
            }
            if (known is not null && !known.Contains(group))
                faults.Add(name, FaultCodes.OrderUnknownName, ("nearest", NearestName.Of(group, known) ?? ""));
            if (value.Kind != JsonKind.Text)
                faults.Add(value, FaultCodes.FieldType, ("expected", FaultTypes.Text), ("found", value.KindWord));
            else if (PieceFields.LiningUp.Find(value.Text) is { } wish)
                wishes[group] = wish;
            else
                faults.Add(value, FaultCodes.WordUnknown, ("known", PieceFields.LiningUp.Listed), ("nearest", PieceFields.LiningUp.Nearest(value.Text)));
        }
        return wishes.ToImmutable();
    }
}
