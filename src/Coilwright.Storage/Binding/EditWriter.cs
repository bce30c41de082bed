using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using Coilwright.Core.Editing;

namespace Coilwright.Storage.Binding;

/// <summary>Writes an edit as JSON, on one line. Parts of a piece are written as in a piece file.</summary>
internal static class EditWriter
{
    public static byte[] Write(PieceEdit edit)
    {
        var buffer = new ArrayBufferWriter<byte>(256);
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("format", EditJson.Format);
            json.WriteString("edit", edit.Code);
            Fields(json, edit);
            if (edit is OrderEdit { EveryPass: true }) json.WriteBoolean("everyPass", true);
            json.WriteEndObject();
        }
        return buffer.WrittenSpan.ToArray();
    }

    private static void Fields(Utf8JsonWriter json, PieceEdit edit)
    {
        switch (edit)
        {
            case InsertBeads insert:
                json.WriteNumber("at", insert.At);
                Texts(json, "what", insert.What);
                Beside(json, insert.Beside);
                break;
            case RemoveBeads remove:
                Where(json, remove.Where);
                break;
            case MoveBeads move:
                Where(json, move.Where);
                json.WriteNumber("to", move.To);
                Beside(json, move.Beside);
                break;
            case ReplaceBeads replace:
                Where(json, replace.Where);
                json.WriteString("with", replace.With);
                break;
            case ReplaceEverywhere replace:
                json.WriteString("bead", replace.Bead);
                json.WriteString("with", replace.With);
                break;
            case DuplicateBeads duplicate:
                Where(json, duplicate.Where);
                break;
            case RepeatBeads repeat:
                Where(json, repeat.Where);
                json.WriteNumber("times", repeat.Times);
                break;
            case MirrorBeads mirror:
                Where(json, mirror.Where);
                json.WriteNumber("centre", mirror.Centre);
                break;
            case PutBetween between:
                Where(json, between.Where);
                Texts(json, "what", between.What);
                break;
            case NameGroup name:
                Where(json, name.Where);
                json.WriteString("name", name.Name);
                break;
            case Ungroup ungroup:
                Where(json, ungroup.Where);
                break;
            case SetRuns set:
                Runs(json, set.Runs);
                break;
            case Restring restring:
                json.WriteStartArray("swaps");
                foreach (var swap in restring.Swaps)
                {
                    json.WriteStartObject();
                    json.WriteNumber("first", swap.First);
                    json.WriteNumber("count", swap.Count);
                    json.WriteNumber("otherFirst", swap.OtherFirst);
                    json.WriteNumber("otherCount", swap.OtherCount);
                    json.WriteEndObject();
                }
                json.WriteEndArray();
                json.WriteStartArray("standIns");
                foreach (var standIn in restring.StandIns)
                {
                    json.WriteStartObject();
                    json.WriteNumber("first", standIn.First);
                    json.WriteNumber("count", standIn.Count);
                    json.WriteString("bead", standIn.Bead);
                    json.WriteString("with", standIn.With);
                    json.WriteEndObject();
                }
                json.WriteEndArray();
                Runs(json, restring.Runs);
                break;
            case SetOrderText set:
                json.WriteStartArray("text");
                foreach (var line in set.Text.Split('\n')) json.WriteStringValue(line);
                json.WriteEndArray();
                break;
            case AddBead add:
                json.WritePropertyName("bead");
                PieceWriter.WriteBead(json, add.Bead);
                break;
            case ChangeBead change:
                json.WriteString("id", change.Id);
                json.WritePropertyName("bead");
                PieceWriter.WriteBead(json, change.Bead);
                break;
            case RemoveBead remove:
                json.WriteString("id", remove.Id);
                break;
            case SetTitle set:
                json.WriteString("title", set.Title);
                break;
            case SetWire set:
                PieceWriter.WriteWire(json, set.Wire);
                break;
            case SetEnds set:
                PieceWriter.WriteEnds(json, set.Ends);
                break;
            case SetWearer set:
                PieceWriter.WriteWearer(json, set.Wearer);
                break;
            case SetWishes set:
                PieceWriter.WriteWishes(json, set.Wishes);
                break;
            case SetPattern set:
                PieceWriter.WritePattern(json, set.Pattern);
                break;
            case AddMeasuredRow add:
                PieceWriter.WriteMeasured(json, [add.Row]);
                break;
            case RemoveMeasuredRow remove:
                json.WriteNumber("index", remove.Index);
                break;
            default:
                throw new ArgumentException("A kind of edit without a form.", nameof(edit));
        }
    }

    private static void Runs(Utf8JsonWriter json, ImmutableArray<RunCount> runs)
    {
        json.WriteStartArray("runs");
        foreach (var run in runs)
        {
            json.WriteStartObject();
            json.WriteNumber("first", run.First);
            json.WriteNumber("count", run.Count);
            json.WriteNumber("to", run.To);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Where(Utf8JsonWriter json, BeadPlaces where)
    {
        switch (where)
        {
            case BeadPlaces.Row row:
                json.WriteStartObject("row");
                json.WriteNumber("first", row.First);
                json.WriteNumber("count", row.Count);
                json.WriteEndObject();
                break;
            case BeadPlaces.Each each:
                json.WriteStartArray("each");
                foreach (var bead in each.Beads) json.WriteNumberValue(bead);
                json.WriteEndArray();
                break;
            default:
                throw new ArgumentException("A part of the text means nothing without its tree: store the edit as its outcome gives it.", nameof(where));
        }
    }

    private static void Beside(Utf8JsonWriter json, Beside beside)
    {
        if (beside != Core.Editing.Beside.Apart) json.WriteString("beside", EditFields.Besides.WordOf(beside));
    }

    private static void Texts(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
