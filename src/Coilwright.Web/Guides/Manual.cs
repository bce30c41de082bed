using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Wording;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Coilwright.Web.Guides;

/// <summary>A part of a chapter, from one heading to the next.</summary>
/// <param name="Id">Its place in the page; empty for what stands before the first heading.</param>
/// <param name="Heading">Its heading; the chapter's where it has none.</param>
/// <param name="Text">What it says, without marks.</param>
public sealed record ManualPart(string Id, string Heading, string Text);

/// <summary>A chapter.</summary>
/// <param name="Name">Its name in the address.</param>
/// <param name="Title">Its title.</param>
/// <param name="Html">What stands under the title.</param>
/// <param name="Parts">Its parts.</param>
public sealed record ManualChapter(string Name, string Title, string Html, ImmutableArray<ManualPart> Parts);

/// <summary>A place in the manual that has the words.</summary>
/// <param name="Chapter">The chapter.</param>
/// <param name="Part">The part of it.</param>
/// <param name="Around">What stands around the first of the words.</param>
public sealed record ManualPlace(ManualChapter Chapter, ManualPart Part, string Around);

/// <summary>The manual: Markdown from <c>docs/manual</c> that was put into the program when it was built.</summary>
/// <remarks>Read once for each language; one without a manual has the English one. HTML in it would be shown as text.</remarks>
public sealed class Manual
{
    private const int Around = 60;

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UseAutoIdentifiers(AutoIdentifierOptions.GitHub).UsePipeTables().DisableHtml().Build();
    private static readonly ImmutableDictionary<string, Lazy<Manual>> All = Languages.All.ToImmutableDictionary(l => l.Code, l => new Lazy<Manual>(() => new Manual(l.Code)));

    private Manual(string language)
    {
        var assembly = typeof(Manual).Assembly;
        var chapters = ImmutableArray.CreateBuilder<ManualChapter>();
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith($"manual/{language}/", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
            chapters.Add(Read(NameOf(name), reader.ReadToEnd()));
        }
        Chapters = chapters.ToImmutable();
    }

    /// <summary>The chapters in their order.</summary>
    public ImmutableArray<ManualChapter> Chapters { get; }

    /// <summary>The manual in a language.</summary>
    public static Manual In(Language language) => All[language.Code].Value is { Chapters.IsEmpty: false } manual ? manual : All[Languages.English.Code].Value;

    /// <summary>The chapter of a name; null when there is none.</summary>
    public ManualChapter? Find(string name) => Chapters.FirstOrDefault(c => c.Name == name);

    /// <summary>The parts that have every word, whatever its case; those with one of them in their heading first.</summary>
    public ImmutableArray<ManualPlace> Search(string text)
    {
        var words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0) return [];
        return
        [
            .. from chapter in Chapters
               from part in chapter.Parts
               where words.All(w => Has(part.Heading, w) || Has(part.Text, w))
               orderby words.Any(w => Has(part.Heading, w)) ? 0 : 1
               select new ManualPlace(chapter, part, Excerpt(part.Text, words)),
        ];
    }

    private static bool Has(string text, string word) => CultureInfo.InvariantCulture.CompareInfo.IndexOf(text, word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace) >= 0;

    private static string Excerpt(string text, string[] words)
    {
        var at = words.Select(w => CultureInfo.InvariantCulture.CompareInfo.IndexOf(text, w, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace)).Where(i => i >= 0).DefaultIfEmpty(0).Min();
        var from = at <= Around ? 0 : text.LastIndexOf(' ', at - Around) + 1;
        var to = at + 2 * Around >= text.Length ? text.Length : text.LastIndexOf(' ', at + 2 * Around) is var space && space > at ? space : at + 2 * Around;
        return (from > 0 ? "… " : "") + text[from..to] + (to < text.Length ? " …" : "");
    }

    // "manual/en/10-first-piece.md": the figures are for the order alone.
    private static string NameOf(string resource)
    {
        var file = Path.GetFileNameWithoutExtension(resource[(resource.LastIndexOf('/') + 1)..]);
        return file[(file.IndexOf('-', StringComparison.Ordinal) + 1)..];
    }

    private static ManualChapter Read(string name, string markdown)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        // From chapter to chapter by their addresses here.
        foreach (var link in document.Descendants<LinkInline>())
            if (link.Url is { } url && url.EndsWith(".md", StringComparison.Ordinal)) link.Url = "/manual/" + NameOf(url);
        var (title, id, heading) = ("", "", "");
        var parts = ImmutableArray.CreateBuilder<ManualPart>();
        var text = new StringBuilder();
        foreach (var block in document.ToArray())
        {
            if (block is HeadingBlock { Level: 1 } first)
            {
                title = heading = Plain(first);
                document.Remove(first);
            }
            else if (block is HeadingBlock head)
            {
                Close();
                (id, heading) = (head.GetAttributes().Id ?? "", Plain(head));
            }
            else text.Append(Plain(block)).Append(' ');
        }
        Close();
        return new ManualChapter(name, title, document.ToHtml(Pipeline), parts.ToImmutable());

        void Close()
        {
            if (text.Length > 0) parts.Add(new ManualPart(id, heading, text.ToString().Trim()));
            text.Clear();
        }
    }

    private static string Plain(MarkdownObject block)
    {
        var text = new StringBuilder();
        foreach (var part in block is LeafBlock leaf ? leaf.Inline?.Descendants() ?? [] : block.Descendants())
            if (part is LiteralInline literal) text.Append(literal.Content.ToString());
            else if (part is CodeInline code) text.Append(code.Content);
            else if (part is LineBreakInline or ParagraphBlock) text.Append(' ');
        return string.Join(' ', text.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
