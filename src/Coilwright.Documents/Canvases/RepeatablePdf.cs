using System.Globalization;
using System.Security;
using System.Security.Cryptography;
using System.Text;
using Coilwright.Documents.Pages;

namespace Coilwright.Documents.Canvases;

/// <summary>Takes out of a finished PDF what changes from run to run, so that one document is one file.</summary>
/// <remarks>
/// <para>PDFsharp draws at random the file's id, the tags of embedded faces and two ids in the metadata, and stamps the time. Here the id and the
/// tags come from the file's own content, the metadata are written anew (PDFsharp's are also no sound XML when a title holds an ampersand), and the
/// time is the document's own or none.</para>
/// <para>Everything is exchanged byte for byte at the same length, except the metadata and the creation date: these are the last object, so only
/// the table of objects behind them moves, and a date, which is blanked.</para>
/// </remarks>
internal static class RepeatablePdf
{
    /// <summary>The file made repeatable.</summary>
    /// <exception cref="InvalidDataException">The file is not laid out as PDFsharp 6.2.4 does.</exception>
    public static byte[] Of(byte[] file, PageDocument document)
    {
        Dates(file, document);
        file = Metadata(file, document);
        var tags = FaceTags(file);
        foreach (var tag in tags) "AAAAAA"u8.CopyTo(file.AsSpan(tag.At));
        var ids = Ids(file);
        foreach (var at in ids) file.AsSpan(at, IdDigits).Fill((byte)'0');

        var hash = SHA256.HashData(file);
        var id = Encoding.ASCII.GetBytes(Convert.ToHexString(hash.AsSpan(0, IdDigits / 2)));
        foreach (var at in ids) id.CopyTo(file.AsSpan(at));
        // Two documents with different letters of one face must not carry the same tag, or joining them would mix the faces up.
        foreach (var (at, face) in tags)
        {
            var own = SHA256.HashData([.. hash, .. Encoding.ASCII.GetBytes(face)]);
            for (var i = 0; i < TagLetters; i++) file[at + i] = (byte)('A' + own[i] % 26);
        }
        return file;
    }

    private const int IdDigits = 32;
    private const int TagLetters = 6;

    private static void Dates(byte[] file, PageDocument document)
    {
        for (var at = Find(file, "/CreationDate"u8, 0); at >= 0; at = Find(file, "/CreationDate"u8, at + 1))
        {
            var length = Find(file, ")"u8, at) + 1 - at;
            var written = document.Created is { } when
                ? "/CreationDate (D:" + when.UtcDateTime.ToString("yyyyMMddHHmmss", CultureInfo.InvariantCulture) + "Z)"
                : "";
            if (length < Math.Max(written.Length, 1)) throw new InvalidDataException("The PDF's date is shorter than expected.");
            Encoding.ASCII.GetBytes(written.PadRight(length)).CopyTo(file.AsSpan(at));
        }
    }

    // The metadata are the last object, so that only the table of objects behind them moves.
    private static byte[] Metadata(byte[] file, PageDocument document)
    {
        var table = file.AsSpan().LastIndexOf("\nxref\n"u8) + 1;
        var begins = table <= 0 ? -1 : file.AsSpan(0, table).LastIndexOf(" 0 obj\n"u8) + " 0 obj\n".Length;
        if (begins < " 0 obj\n".Length || Find(file, "/Subtype/XML"u8, begins) is var subtype && (subtype < 0 || subtype > table))
            throw new InvalidDataException("The PDF's metadata are not its last object.");
        var startsAt = file.AsSpan().LastIndexOf("startxref\n"u8) + "startxref\n".Length;
        var startsTo = Find(file, "\n"u8, startsAt);

        var metadata = Encoding.UTF8.GetBytes(Xmp(document));
        byte[] before = [.. file.AsSpan(0, begins), .. Encoding.ASCII.GetBytes("<<\n/Length " + metadata.Length.ToString(CultureInfo.InvariantCulture)
            + "\n/Subtype /XML\n/Type /Metadata\n>>\nstream\n"), .. metadata, .. "\nendstream\nendobj\n"u8];
        return [.. before, .. file.AsSpan(table, startsAt - table), .. Encoding.ASCII.GetBytes(before.Length.ToString(CultureInfo.InvariantCulture)), .. file.AsSpan(startsTo)];
    }

    private static List<(int At, string Face)> FaceTags(byte[] file)
    {
        var found = new List<(int, string)>();
        for (var plus = Find(file, "+Atkinson"u8, 0); plus >= 0; plus = Find(file, "+Atkinson"u8, plus + 1))
        {
            var at = plus - TagLetters;
            if (at < 1 || file[at - 1] != '/' || file.AsSpan(at, TagLetters).ContainsAnyExceptInRange((byte)'A', (byte)'Z')) continue;
            var end = plus;
            while (file[end] is not ((byte)'/' or (byte)' ' or (byte)'\n' or (byte)']' or (byte)'>')) end++;
            found.Add((at, Encoding.ASCII.GetString(file, plus + 1, end - plus - 1)));
        }
        return found;
    }

    private static int[] Ids(byte[] file)
    {
        var trailer = file.AsSpan().LastIndexOf("\ntrailer\n"u8);
        var id = trailer < 0 ? -1 : Find(file, "/ID"u8, trailer);
        if (id < 0) throw new InvalidDataException("The PDF has no id where one was expected.");
        var first = Find(file, "<"u8, id) + 1;
        var second = Find(file, "<"u8, first) + 1;
        if (first == 0 || second == 0 || file[first + IdDigits] != '>' || file[second + IdDigits] != '>')
            throw new InvalidDataException("The PDF's id has not the form that was expected.");
        return [first, second];
    }

    private static int Find(byte[] file, ReadOnlySpan<byte> what, int from) => file.AsSpan(from).IndexOf(what) is var at and >= 0 ? from + at : -1;

    private static string Xmp(PageDocument document)
    {
        static string Safe(string words) => SecurityElement.Escape(new string([.. words.Where(c => c >= ' ')]));
        var xmp = new StringBuilder();
        xmp.Append("<?xpacket begin=\"\ufeff\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n")
            .Append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n")
            .Append("<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n")
            .Append("<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">").Append(Safe(document.Title)).Append("</rdf:li></rdf:Alt></dc:title>\n")
            .Append("<dc:language><rdf:Bag><rdf:li>").Append(Safe(document.Language)).Append("</rdf:li></rdf:Bag></dc:language>\n");
        if (document.Author is { } author)
            xmp.Append("<dc:creator><rdf:Seq><rdf:li>").Append(Safe(author)).Append("</rdf:li></rdf:Seq></dc:creator>\n");
        xmp.Append("<xmp:CreatorTool>Coilwright</xmp:CreatorTool>\n");
        if (document.Created is { } at)
            xmp.Append("<xmp:CreateDate>").Append(at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture)).Append("</xmp:CreateDate>\n");
        return xmp.Append("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>").ToString();
    }
}
