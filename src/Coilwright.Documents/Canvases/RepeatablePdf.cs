using System.Globalization;
using System.Security;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
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
internal static partial class RepeatablePdf
{
    /// <summary>The file made repeatable.</summary>
    /// <exception cref="InvalidDataException">The file is not laid out as PDFsharp 6.2.4 does.</exception>
    public static byte[] Of(byte[] file, PageDocument document)
    {
        // Latin-1 maps every byte to one character and back.
        var text = new StringBuilder(Encoding.Latin1.GetString(file));
        Dates(text, document);
        Metadata(text, document);
        var tags = FaceTags().Matches(text.ToString());
        foreach (Match tag in tags) Put(text, tag.Groups[1].Index, "AAAAAA");
        var ids = FileId().Match(text.ToString());
        if (!ids.Success) throw new InvalidDataException("The PDF has no id where one was expected.");
        Put(text, ids.Groups[1].Index, new string('0', 32));
        Put(text, ids.Groups[2].Index, new string('0', 32));

        var hash = SHA256.HashData(Encoding.Latin1.GetBytes(text.ToString()));
        var id = Convert.ToHexString(hash.AsSpan(0, 16));
        Put(text, ids.Groups[1].Index, id);
        Put(text, ids.Groups[2].Index, id);
        // Two documents with different letters of one face must not carry the same tag, or joining them would mix the faces up.
        foreach (Match tag in tags)
        {
            var own = SHA256.HashData([.. hash, .. Encoding.ASCII.GetBytes(tag.Groups[2].Value)]);
            Put(text, tag.Groups[1].Index, string.Concat(own.Take(6).Select(b => (char)('A' + b % 26))));
        }
        return Encoding.Latin1.GetBytes(text.ToString());
    }

    private static void Dates(StringBuilder text, PageDocument document)
    {
        foreach (Match date in CreationDate().Matches(text.ToString()))
        {
            var written = document.Created is { } at
                ? "/CreationDate (D:" + at.UtcDateTime.ToString("yyyyMMddHHmmss", CultureInfo.InvariantCulture) + "Z)"
                : "";
            if (written.Length > date.Length) throw new InvalidDataException("The PDF's date is shorter than expected.");
            Put(text, date.Index, written.PadRight(date.Length));
        }
    }

    private static void Metadata(StringBuilder text, PageDocument document)
    {
        var whole = text.ToString();
        var found = MetadataObject().Match(whole);
        if (!found.Success) throw new InvalidDataException("The PDF's metadata are not its last object.");
        var metadata = Latin(Xmp(document));
        var body = found.Groups[1].Value + "<<\n/Length " + metadata.Length.ToString(CultureInfo.InvariantCulture) +
            "\n/Subtype /XML\n/Type /Metadata\n>>\nstream\n" + metadata + "\nendstream\nendobj\n";
        text.Remove(found.Index, found.Length).Insert(found.Index, body);
        var start = StartXref().Match(text.ToString());
        if (!start.Success) throw new InvalidDataException("The PDF does not say where its table begins.");
        text.Remove(start.Groups[1].Index, start.Groups[1].Length)
            .Insert(start.Groups[1].Index, (found.Index + body.Length).ToString(CultureInfo.InvariantCulture));
    }

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

    private static string Latin(string words) => Encoding.Latin1.GetString(Encoding.UTF8.GetBytes(words));

    private static void Put(StringBuilder text, int at, string words)
    {
        for (var i = 0; i < words.Length; i++) text[at + i] = words[i];
    }

    [GeneratedRegex(@"/([A-Z]{6})\+(Atkinson[^\s/\[\]<>()]+)")]
    private static partial Regex FaceTags();

    [GeneratedRegex(@"/ID\s*\[\s*<([0-9A-Fa-f]{32})>\s*<([0-9A-Fa-f]{32})>\s*\]")]
    private static partial Regex FileId();

    [GeneratedRegex(@"/CreationDate\s*\(D:[^)]*\)")]
    private static partial Regex CreationDate();

    [GeneratedRegex(@"(\d+ 0 obj\n)<<(?:(?!endobj).)*?/Subtype\s*/XML.*?endobj\n(?=xref\n)", RegexOptions.Singleline)]
    private static partial Regex MetadataObject();

    [GeneratedRegex(@"startxref\n(\d+)\n%%EOF\s*$")]
    private static partial Regex StartXref();
}
