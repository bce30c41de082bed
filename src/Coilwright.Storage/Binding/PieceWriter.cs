using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Storage.Binding;

/// <summary>Writes a piece as JSON, in the newest format.</summary>
/// <remarks>Two blanks a level; numbers in the shortest form that reads back to the same number; letters as they are, not as escapes; what is absent in the
/// piece is absent in the file.</remarks>
internal static class PieceWriter
{
    /// <summary>How JSON is written where a tree is.</summary>
    public static JsonSerializerOptions Options { get; } = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static byte[] Write(Piece piece)
    {
        var buffer = new ArrayBufferWriter<byte>(4096);
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions
        {
            Indented = true,
            IndentSize = 2,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            MaxDepth = JsonDepth,
        }))
        {
            json.WriteStartObject();
            json.WriteString("format", PieceFile.Format);
            json.WriteString("title", piece.Title);
            json.WriteStartArray("beads");
            foreach (var bead in piece.Beads) WriteBead(json, bead.Description);
            json.WriteEndArray();
            WriteWire(json, piece.Wire);
            WriteEnds(json, piece.Ends);
            WriteWearer(json, piece.Wearer);
            WriteMeasured(json, piece.MeasuredRows);
            WriteOrder(json, piece);
            WriteWishes(json, piece.Wishes);
            WritePattern(json, piece.Pattern);
            json.WriteEndObject();
        }
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    private const int JsonDepth = 64;

    internal static void WriteBead(Utf8JsonWriter json, BeadDescription d)
    {
        json.WriteStartObject();
        json.WriteString("id", d.Id);
        Text(json, "name", d.Name);
        json.WriteString("shape", d.Shape);
        switch (d.Length)
        {
            case BeadLength.Nominal nominal:
                json.WriteNumber("lengthMm", nominal.Mm);
                if (nominal.ToleranceMm != 0) json.WriteNumber("toleranceMm", nominal.ToleranceMm);
                break;
            case BeadLength.Range range:
                OnOneLine(json, "lengthRangeMm", [.. new[] { range.MinMm, range.MaxMm }.Select(v => v.ToString("R", CultureInfo.InvariantCulture))]);
                break;
            case BeadLength.Row row:
                json.WriteStartObject("row");
                json.WriteNumber("count", row.Count);
                json.WriteNumber("totalMm", row.TotalMm);
                json.WriteEndObject();
                break;
        }
        Number(json, "widthMm", d.WidthMm);
        Number(json, "thicknessMm", d.ThicknessMm);
        Number(json, "boreMm", d.BoreMm);
        Number(json, "holeOffsetMm", d.HoleOffsetMm);
        Number(json, "endFaceMm", d.EndFaceMm);
        Number(json, "wallMm", d.WallMm);
        Number(json, "curveRadiusMm", d.CurveRadiusMm);
        if (d.Matched) json.WriteBoolean("matched", true);
        if (d.CurvedLength is { } lengthIs) json.WriteString("lengthIs", PieceFields.LengthIs.WordOf(lengthIs));
        if (d.Seat is { } seat)
        {
            json.WriteStartObject("seat");
            json.WriteNumber("lengthMm", seat.LengthMm);
            json.WriteNumber("clearMm", seat.ClearMm);
            json.WriteEndObject();
        }
        if (!d.Colours.IsDefaultOrEmpty) OnOneLine(json, "colours", [.. d.Colours.Select(c => $"\"{c}\"")]);
        Text(json, "coating", d.Coating);
        Text(json, "material", d.Material?.Key ?? d.OtherMaterial);
        Number(json, "densityGPerCm3", d.DensityGPerCm3);
        Number(json, "massG", d.MassG);
        json.WriteString("role", PieceFields.Roles.WordOf(d.Role));
        Number(json, "shows", d.Shows);
        if (d.Pack is { } pack)
        {
            json.WriteStartObject("pack");
            json.WriteString("unit", pack.Unit);
            json.WriteNumber("beads", pack.Beads);
            json.WriteEndObject();
        }
        if (d.Price is { } price) json.WriteNumber("price", price);
        Text(json, "lot", d.Lot);
        if (!d.Aliases.IsDefaultOrEmpty)
        {
            json.WriteStartArray("aliases");
            foreach (var alias in d.Aliases) json.WriteStringValue(alias);
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    internal static void WriteWire(Utf8JsonWriter json, CoilWire wire)
    {
        json.WriteStartObject("stringingMaterial");
        json.WriteString("kind", PieceFields.MaterialKinds.WordOf(MaterialKind.MemoryWire));
        if (wire.GaugeName is { } gauge) json.WriteString("gauge", gauge);
        else json.WriteNumber("wireMm", wire.WireMm);
        Text(json, "steel", wire.Steel?.Key);
        json.WriteNumber(NameOf(wire.Datum), wire.SizeMm);
        Number(json, "cutMm", wire.CutMm);
        json.WriteEndObject();
    }

    private static string NameOf(CoilDatum datum) => datum switch
    {
        CoilDatum.Inside => "insideMm",
        CoilDatum.CentreLine => "centreMm",
        _ => "loopMm",
    };

    internal static void WriteEnds(Utf8JsonWriter json, WireEnds ends)
    {
        json.WriteStartObject("ends");
        WriteEnd(json, "start", ends.Start);
        WriteEnd(json, "finish", ends.Finish);
        json.WriteNumber("gripMm", ends.GripMm);
        json.WriteNumber("spareMm", ends.SpareMm);
        Number(json, "overlapMm", ends.OverlapMm);
        json.WriteEndObject();
    }

    private static void WriteEnd(Utf8JsonWriter json, string name, WireEnd end)
    {
        json.WriteStartObject(name);
        json.WriteString("finish", PieceFields.Finishes.WordOf(end.Finish));
        json.WriteNumber(end.IsTurned ? "insideMm" : "depthMm", end.InsideMm);
        Number(json, "measuredMm", end.MeasuredMm);
        Text(json, "dangle", end.Dangle);
        Number(json, "dangleMm", end.DangleMm);
        json.WriteEndObject();
    }

    internal static void WriteWearer(Utf8JsonWriter json, Wearer wearer)
    {
        json.WriteStartObject("wearer");
        json.WriteNumber("wristMm", wearer.WristMm);
        if (wearer.EaseMm != 0) json.WriteNumber("easeMm", wearer.EaseMm);
        Number(json, "bearingReachMm", wearer.BearingReachMm);
        if (wearer.FocalOnTop) json.WriteString("startAngleDeg", PieceFields.FocalOnTop);
        else json.WriteNumber("startAngleDeg", wearer.StartAngleDeg);
        if (wearer.IsChild) json.WriteBoolean("child", true);
        json.WriteEndObject();
    }

    internal static void WriteMeasured(Utf8JsonWriter json, ImmutableArray<MeasuredRow> rows)
    {
        if (rows.IsDefaultOrEmpty) return;
        json.WriteStartArray("measured");
        foreach (var row in rows)
        {
            json.WriteStartObject();
            json.WriteString("what", PieceFields.MeasuredWhats.WordOf(MeasuredWhat.Row));
            json.WriteNumber("firstBead", row.FirstBead);
            json.WriteNumber("lastBead", row.LastBead);
            json.WriteNumber("totalMm", row.TotalMm);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteOrder(Utf8JsonWriter json, Piece piece)
    {
        json.WriteStartObject("order");
        if (piece.OrderText is { } text)
        {
            json.WriteStartArray("text");
            foreach (var line in text.Split('\n')) json.WriteStringValue(line);
            json.WriteEndArray();
        }
        else
        {
            json.WriteStartArray("list");
            WriteItems(json, OrderList.Of(piece.Order, [.. piece.Beads.Select(b => b.Id)]));
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static void WriteItems(Utf8JsonWriter json, ImmutableArray<OrderListItem> items)
    {
        foreach (var item in items)
            switch (item)
            {
                case OrderListItem.Bead bead:
                    json.WriteStringValue(bead.Id);
                    break;
                case OrderListItem.Group group:
                    json.WriteStartObject();
                    json.WriteString("group", group.Name);
                    json.WriteStartArray("of");
                    WriteItems(json, group.Of);
                    json.WriteEndArray();
                    json.WriteEndObject();
                    break;
            }
    }

    internal static void WritePattern(Utf8JsonWriter json, PatternNotes pattern)
    {
        if (pattern.IsEmpty) return;
        json.WriteStartObject("pattern");
        Text(json, "introduction", pattern.Introduction);
        if (pattern.Level is { } level) json.WriteString("level", PieceFields.Levels.WordOf(level));
        if (pattern.Minutes is { } minutes) json.WriteNumber("minutes", minutes);
        if (!pattern.Techniques.IsDefaultOrEmpty)
        {
            json.WriteStartArray("techniques");
            foreach (var technique in pattern.Techniques) json.WriteStringValue(technique);
            json.WriteEndArray();
        }
        Text(json, "care", pattern.Care);
        Text(json, "usage", pattern.Usage);
        Text(json, "by", pattern.By);
        if (!pattern.Words.IsDefaultOrEmpty)
        {
            json.WriteStartArray("words");
            foreach (var words in pattern.Words)
            {
                json.WriteStartObject();
                Anchor(words.At);
                json.WriteString("text", words.Text);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        if (!pattern.Testers.IsDefaultOrEmpty)
        {
            json.WriteStartArray("testers");
            foreach (var note in pattern.Testers)
            {
                json.WriteStartObject();
                if (note.At is { } at) Anchor(at);
                json.WriteString("note", note.Note);
                if (note.By.Length > 0) json.WriteString("by", note.By);
                if (note.Version.Length > 0) json.WriteString("version", note.Version);
                if (note.Settled) json.WriteBoolean("settled", true);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        json.WriteEndObject();

        void Anchor(StepAnchor at)
        {
            json.WriteString("step", at.Step);
            if (at.Strings.Length > 0) json.WriteString("strings", at.Strings);
            if (at.After.Length > 0) json.WriteString("after", at.After);
            if (at.Before.Length > 0) json.WriteString("before", at.Before);
        }
    }

    internal static void WriteWishes(Utf8JsonWriter json, Wishes wishes)
    {
        if (wishes.LiningUp == LiningUpWish.Any && wishes.Places.IsDefaultOrEmpty && wishes.Groups.IsEmpty && wishes.Rules.IsDefaultOrEmpty && wishes.Turns is null
            && wishes.FocalWithinDeg is null && wishes.Free.IsUsual && wishes.JudgedBy == JudgedBy.Mean && wishes.Wrists.IsDefaultOrEmpty)
            return;
        json.WriteStartObject("wishes");
        json.WriteString("liningUp", PieceFields.LiningUp.WordOf(wishes.LiningUp));
        if (!wishes.Places.IsDefaultOrEmpty)
        {
            json.WriteStartArray("places");
            foreach (var place in wishes.Places)
            {
                json.WriteStartObject();
                json.WriteNumber("fromDeg", place.FromDeg);
                json.WriteNumber("toDeg", place.ToDeg);
                json.WriteString("liningUp", PieceFields.LiningUp.WordOf(place.LiningUp));
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        if (!wishes.Groups.IsEmpty)
        {
            json.WriteStartObject("groups");
            foreach (var (name, wish) in wishes.Groups) json.WriteString(name, PieceFields.LiningUp.WordOf(wish));
            json.WriteEndObject();
        }
        WriteRules(json, wishes.Rules);
        Number(json, "turns", wishes.Turns);
        Number(json, "focalWithinDeg", wishes.FocalWithinDeg);
        WriteFree(json, wishes.Free);
        if (wishes.JudgedBy != JudgedBy.Mean) json.WriteString("judgedBy", PieceFields.JudgedBys.WordOf(wishes.JudgedBy));
        if (!wishes.Wrists.IsDefaultOrEmpty)
        {
            json.WriteStartArray("wrists");
            foreach (var wrist in wishes.Wrists)
            {
                json.WriteStartObject();
                json.WriteNumber("wristMm", wrist.WristMm);
                json.WriteNumber("weight", wrist.Weight);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static void WriteFree(Utf8JsonWriter json, FreeToChange free)
    {
        if (free.IsUsual) return;
        json.WriteStartObject("free");
        if (!free.Runs.IsEmpty)
        {
            json.WriteStartArray("runs");
            foreach (var (bead, range) in free.Runs)
            {
                json.WriteStartObject();
                json.WriteString("bead", bead);
                json.WriteNumber("least", range.Least);
                json.WriteNumber("most", range.Most);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        Number(json, "lengthWithinMm", free.LengthWithinMm);
        if (!free.OnHand.IsEmpty)
        {
            json.WriteStartArray("onHand");
            foreach (var (bead, beads) in free.OnHand)
            {
                json.WriteStartObject();
                json.WriteString("bead", bead);
                json.WriteNumber("beads", beads);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        if (free.MirroredHalves) json.WriteBoolean("mirroredHalves", true);
        if (free.GroupOrder) json.WriteBoolean("groupOrder", true);
        if (!free.StandIns.IsDefaultOrEmpty)
        {
            json.WriteStartArray("standIns");
            foreach (var standIn in free.StandIns)
            {
                json.WriteStartObject();
                json.WriteString("bead", standIn.Bead);
                json.WriteString("with", standIn.With);
                if (standIn.Everywhere) json.WriteBoolean("everywhere", true);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        if (!free.Coils.IsDefaultOrEmpty)
        {
            json.WriteStartArray("coils");
            foreach (var (datum, sizeMm) in free.Coils)
            {
                json.WriteStartObject();
                json.WriteNumber(NameOf(datum), sizeMm);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        if (free.StartAngle is { } start)
        {
            json.WriteStartObject("startAngle");
            json.WriteNumber("fromDeg", start.FromDeg);
            json.WriteNumber("toDeg", start.ToDeg);
            json.WriteNumber("stepDeg", start.StepDeg);
            json.WriteEndObject();
        }
        if (free.Turns is { } turns)
        {
            json.WriteStartObject("turns");
            json.WriteNumber("least", turns.Least);
            json.WriteNumber("most", turns.Most);
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }

    private static void WriteRules(Utf8JsonWriter json, ImmutableArray<OrderRule> rules)
    {
        if (rules.IsDefaultOrEmpty) return;
        foreach (var alike in rules.GroupBy(PieceRules.FieldOf))
        {
            json.WritePropertyName(alike.Key);
            if (alike.First() is OrderRule.StartsWith or OrderRule.EndsWith)
            {
                json.WriteStringValue(alike.First().Named[0]);
                continue;
            }
            json.WriteStartArray();
            foreach (var rule in alike)
            {
                json.WriteStartObject();
                switch (rule)
                {
                    case OrderRule.LongestRun run:
                        json.WriteString("name", run.Name);
                        json.WriteNumber("most", run.Most);
                        break;
                    case OrderRule.InAnyRow row:
                        json.WriteStartArray("names");
                        foreach (var name in row.Names) json.WriteStringValue(name);
                        json.WriteEndArray();
                        json.WriteNumber("upTo", row.UpTo);
                        json.WriteNumber("ofAny", row.OfAny);
                        break;
                    default:
                        json.WriteString("name", rule.Named[0]);
                        json.WriteString("beside", rule.Named[1]);
                        break;
                }
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
    }

    private static void Text(Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null) json.WriteString(name, text);
    }

    private static void Number(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value) json.WriteNumber(name, value);
    }

    /// <summary>A short list reads best on one line; the framework would give each item its own.</summary>
    private static void OnOneLine(Utf8JsonWriter json, string name, string[] items)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(Encoding.UTF8.GetBytes("[" + string.Join(", ", items) + "]"), skipInputValidation: true);
    }
}
