using System.Globalization;
using System.Text;
using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Canvases;

/// <summary>The style sheet of a written HTML page: the same typeface, inks and proportions as on paper.</summary>
internal static class HtmlStyle
{
    /// <summary>The style sheet.</summary>
    /// <param name="setup">Paper, size and colour.</param>
    /// <param name="document">Whose words stand at the foot of printed pages.</param>
    /// <param name="slanted">Whether the slanted face is used at all.</param>
    public static string Of(PageSetup setup, PageDocument document, bool slanted)
    {
        string Ink(Srgb ink) => (setup.Greyscale ? ink.Grey() : ink).ToString();
        string Mm(double mm) => mm.ToString("0.###", CultureInfo.InvariantCulture) + "mm";
        var style = new StringBuilder();
        Face(style, FaceStyle.Regular, 400, "normal");
        Face(style, FaceStyle.Bold, 700, "normal");
        if (slanted) Face(style, FaceStyle.Italic, 400, "italic");
        style.Append(CultureInfo.InvariantCulture, $$"""
            :root { --ink: {{Ink(PageInks.Ink)}}; --quiet: {{Ink(PageInks.Quiet)}}; --accent: {{Ink(PageInks.Accent)}}; --hairline: {{Ink(PageInks.Hairline)}}; --wash: {{Ink(setup.InkSaving ? PageInks.White : PageInks.Wash)}}; --white: {{Ink(PageInks.White)}};
              font-size: {{(setup.LargePrint ? "150%" : "100%")}}; }

            """);
        style.Append("""
            * { box-sizing: border-box; }
            body { margin: 0; background: var(--white); color: var(--ink); font: 1rem/1.42 "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", "DejaVu Sans", sans-serif; font-kerning: none; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
            main { max-width: 44rem; margin: 0 auto; padding: 3rem 1.25rem 4rem; overflow-wrap: anywhere; }
            h1, h2, h3 { line-height: 1.2; margin: 1.7rem 0 0.5rem; break-after: avoid; }
            h1 { font-size: 2.5rem; margin: 0 0 1.1rem; }
            h1::after { content: ""; display: block; width: 3.4rem; height: 0.22rem; margin-top: 0.55rem; background: var(--accent); }
            h2 { font-size: 1.34rem; color: var(--accent); }
            h3 { font-size: 1.04rem; margin-top: 1.1rem; }
            p { margin: 0.6rem 0; }
            .lead { font-size: 1.2rem; color: var(--quiet); }
            .small, figcaption { font-size: 0.84rem; color: var(--quiet); }
            .quiet { color: var(--quiet); }
            .key { display: inline-block; min-width: 1.3em; padding: 0 0.28em; margin: 0 0.09em; border: 0.06em solid; border-radius: 0.7em; text-align: center; line-height: 1.2; }
            ul, ol { margin: 0.5rem 0 0.9rem; padding-left: 1.6rem; }
            li { margin: 0.28rem 0; break-inside: avoid; }
            li::marker { color: var(--accent); font-weight: 700; }
            .ticks { list-style: none; padding-left: 0; }
            .stays { break-after: avoid; }
            .ticks label { display: flex; gap: 0.7rem; align-items: baseline; }
            .ticks input { flex: none; width: 1.1rem; height: 1.1rem; margin: 0; accent-color: var(--accent); position: relative; top: 0.15rem; }
            table { border-collapse: collapse; width: 100%; margin: 0.7rem 0 1.1rem; font-size: 0.94rem; }
            caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
            th, td { text-align: left; vertical-align: middle; padding: 0.36rem 0.45rem; border-bottom: 1px solid var(--hairline); overflow-wrap: break-word; }
            th:first-child, td:first-child { padding-left: 0; }
            th:last-child, td:last-child { padding-right: 0; }
            thead th, thead td { font-size: 0.8rem; color: var(--quiet); vertical-align: bottom; border-bottom: 0.085rem solid var(--ink); }
            tbody th { font-weight: 400; }
            tr { break-inside: avoid; }
            td:not([class]) { min-width: min(8rem, 45vw); }
            .right { text-align: right; }
            .right + :not(.right) { padding-left: 0.95rem; }
            .centre { text-align: center; }
            .whole { white-space: nowrap; }
            .inset { display: inline-block; vertical-align: middle; margin-right: 0.6rem; }
            .inset.alone { margin-right: 0; }
            figure { margin: 0.9rem 0 1.1rem; break-inside: avoid; }
            figcaption { margin-top: 0.5rem; }
            .footed { display: grid; }
            .footed > * { grid-area: 1 / 1; }
            .footed figcaption { align-self: end; margin: 0; }
            .strip figcaption { margin: 0 0 0.35rem; font-size: 1rem; color: var(--ink); }
            .picture { max-width: 100%; }
            .picture.centred { margin: 0 auto; }
            svg { display: block; max-width: none; }
            .picture svg, .inset svg { width: 100%; height: auto; }
            svg text { font-family: "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", "DejaVu Sans", sans-serif; }
            .joint { display: flex; justify-content: space-between; margin: 0.4rem 0 0; font-size: 0.84rem; color: var(--quiet); }
            .joint span { padding: 0 0.3rem; }
            .joint span:first-child:not(:empty) { border-left: 1px dashed var(--accent); }
            .joint span:last-child:not(:empty) { border-right: 1px dashed var(--accent); }
            .scroll { overflow-x: auto; }
            .strip .scroll { width: max-content; max-width: calc(50vw + 50% - 1.25rem); }
            .scroll:focus-visible { outline: 0.15rem solid var(--accent); outline-offset: 0.2rem; }
            .note { margin: 1rem 0 1.1rem; padding: 0.95rem; background: var(--wash); border-left: 0.28rem solid var(--accent); break-inside: avoid; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
            .note > :first-child { margin-top: 0; }
            .note > :last-child { margin-bottom: 0; }
            .note-title { font-weight: 700; margin-bottom: 0.25rem; }
            .columns { columns: var(--count) 15rem; column-gap: 2rem; margin: 0.6rem 0 0.9rem; }
            .columns > :first-child, .columns > :first-child > :first-child { margin-top: 0; }
            .beside { display: flex; flex-wrap: wrap; gap: 0 2rem; break-inside: avoid; }
            .beside > div { min-width: 0; max-width: 100%; }
            .beside > div > :first-child { margin-top: 0.6rem; }
            .together { break-inside: avoid; }
            .narrow { display: none; }
            @media screen and (max-width: 34rem) {
              .wide { display: none; }
              .narrow { display: inline; }
              table { font-size: 0.88rem; }
              th, td { padding-left: 0.2rem; padding-right: 0.2rem; }
              td:not([class]) { min-width: 6.5rem; }
            }
            @media (max-width: 30rem) { tbody th.whole { white-space: normal; } }
            hr { border: 0; border-top: 1px solid var(--hairline); margin: 1rem 0; }

            """);
        style.Append(CultureInfo.InvariantCulture, $$"""
            @page { size: {{setup.Paper.Name}}; margin: {{Mm(setup.TopMm)}} {{Mm(setup.SideMm)}} {{Mm(setup.BottomMm)}}; @bottom-left { content: {{Quoted(document.Foot ?? document.Title)}}; font: {{(setup.LargePrint ? "14pt" : "9.4pt")}} "Atkinson Hyperlegible Next", "DejaVu Sans", sans-serif; color: {{Ink(PageInks.Quiet)}}; } @bottom-right { content: counter(page) " / " counter(pages); font: {{(setup.LargePrint ? "14pt" : "9.4pt")}} "Atkinson Hyperlegible Next", "DejaVu Sans", sans-serif; color: {{Ink(PageInks.Quiet)}}; } }
            @page turned { size: {{setup.Paper.Name}} landscape; margin: {{Mm(setup.TurnedMarginMm)}} {{Mm(setup.TurnedMarginMm)}} {{Mm(setup.BottomMm)}}; }
            @media print {
              :root { font-size: {{(setup.LargePrint ? "18pt" : "12pt")}}; }
              main { max-width: none; padding: 0; }
              .scroll, .strip .scroll { overflow: visible; max-width: none; }
              .sheet + .sheet { break-before: page; }
              .turned { page: turned; }
              svg { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
            }

            """);
        return style.ToString();
    }

    private static void Face(StringBuilder style, FaceStyle face, int weight, string slant) =>
        style.Append("@font-face { font-family: \"").Append(HouseFaces.Family).Append("\"; font-weight: ").Append(weight.ToString(CultureInfo.InvariantCulture))
            .Append("; font-style: ").Append(slant).Append("; src: url(data:font/ttf;base64,")
            .Append(Convert.ToBase64String(HouseFaces.Of(face).File.Span)).Append(") format(\"truetype\"); }\n");

    // A CSS string may hold any character but a quote, a backslash and a line's end; a less-than sign could end the style element.
    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in HtmlCanvas.Allowed(text))
            if (rune.Value is '"' or '\\' or '<' or '>' or '&')
                quoted.Append('\\').Append(rune.Value.ToString("x", CultureInfo.InvariantCulture)).Append(' ');
            else quoted.Append(rune.ToString());
        return quoted.Append('"').ToString();
    }
}
