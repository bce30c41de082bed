using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Web.Papers;

/// <summary>How she wants a paper of a piece: on which sheet, for which wrist, in which language and units.</summary>
/// <param name="WristMm">The wrist that it is for, mm.</param>
/// <param name="Setup">Paper, size of the letters, ink.</param>
/// <param name="Language">Its language, in the units of its lengths.</param>
public sealed record SheetChoice(double WristMm, PageSetup Setup, Language Language)
{
    // More would be no table that fits a page.
    private const int MostColourways = 12;

    /// <summary>What the written pattern shows as its colourways.</summary>
    public ImmutableArray<ColourwayState> Colourways { get; init; } = [];

    /// <summary>The picture on the written pattern's cover, by the shelf's name for it; null has the coil drawn there.</summary>
    public Guid? Cover { get; init; }

    /// <summary>The choice as the part of an address after the question mark.</summary>
    public string Query => string.Create(CultureInfo.InvariantCulture,
        $"?wrist={WristMm:R}&paper={Setup.Paper.Name.ToLowerInvariant()}&large={Setup.LargePrint}&grey={Setup.Greyscale}&spare={Setup.InkSaving}&language={Language.Code}&units={Language.Units.Word()}{string.Concat(Colourways.Select(c => "&with=" + c.Text))}{(Cover is { } cover ? "&cover=" + cover.ToString("D") : "")}");

    /// <summary>Reads a choice. What is missing or not understood is as usual: an address can be typed by anyone.</summary>
    /// <param name="query">The part of an address after the question mark.</param>
    /// <param name="usualWristMm">The piece's own wrist, mm.</param>
    public static SheetChoice Read(IQueryCollection query, double usualWristMm)
    {
        var wrist = double.TryParse(query["wrist"], NumberStyles.Float, CultureInfo.InvariantCulture, out var mm)
            && mm is >= Core.Pieces.Wearer.LeastWristMm and <= Core.Pieces.Wearer.MostWristMm ? mm : usualWristMm;
        var setup = new PageSetup
        {
            Paper = Is("paper", Paper.Letter.Name) ? Paper.Letter : Paper.A4,
            LargePrint = Is("large", "true"),
            Greyscale = Is("grey", "true"),
            InkSaving = Is("spare", "true"),
        };
        var units = Enum.GetValues<LengthUnits>().FirstOrDefault(u => Is("units", u.Word()));
        return new SheetChoice(wrist, setup, (Languages.Find(query["language"].ToString()) ?? Languages.English).In(units))
        {
            Colourways = [.. query["with"].Select(ColourwayState.Read).OfType<ColourwayState>().Distinct().Take(MostColourways)],
            Cover = Guid.TryParseExact(query["cover"], "D", out var cover) ? cover : null,
        };

        bool Is(string name, string value) => string.Equals(query[name], value, StringComparison.OrdinalIgnoreCase);
    }
}
