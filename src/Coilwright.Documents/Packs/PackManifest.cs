using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Coilwright.Documents.Packs;

/// <summary>What is in a pack, for programs: <c>coilwright.pack/1</c>, described in docs/pack.schema.json, and promised to outsiders.</summary>
internal static class PackManifest
{
    /// <summary>Its name in the pack.</summary>
    public const string Name = "manifest.json";

    private const string Schema = "coilwright.pack/1";

    public static byte[] Of(PackRequest request, ImmutableArray<PackedFile> files)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("schema", Schema);
            json.WriteString("title", request.Listing.Reckoned.Piece.Title);
            json.WriteString("pieceFormat", request.PieceFormat);
            json.WriteString("language", request.Language.Code);
            json.WriteString("paper", request.Setup.Paper.Name.ToLowerInvariant());
            json.WriteBoolean("largePrint", request.Setup.LargePrint);
            json.WriteBoolean("greyscale", request.Setup.Greyscale);
            json.WriteBoolean("inkSaving", request.Setup.InkSaving);
            if (request.Made is { } made) json.WriteString("made", made.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));
            json.WriteStartArray("files");
            foreach (var file in files)
            {
                json.WriteStartObject();
                json.WriteString("name", file.Name);
                json.WriteString("is", file.Kind switch { PackedKind.Document => "document", PackedKind.Picture => "picture", PackedKind.Model => "model", PackedKind.Materials => "materials", _ => "listing" });
                json.WriteString("mediaType", file.MediaType);
                json.WriteString("about", file.About);
                if (file.Pixels is var (width, height))
                {
                    json.WriteNumber("widthPx", width);
                    json.WriteNumber("heightPx", height);
                }
                json.WriteNumber("bytes", file.Bytes.Length);
                json.WriteString("sha256", file.Sha256);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return [.. bytes.WrittenSpan, (byte)'\n'];
    }
}
