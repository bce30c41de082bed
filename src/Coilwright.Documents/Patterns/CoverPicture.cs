using Coilwright.Documents.Rasters;

namespace Coilwright.Documents.Patterns;

/// <summary>A picture for a pattern's cover, in place of the drawn coil.</summary>
/// <remarks>Pages that spare ink have the drawn coil all the same: a photo is ink from edge to edge, and a pale one shows nothing.</remarks>
/// <param name="Raster">The picture.</param>
/// <param name="IsStill">Whether it is a still of the coil in space, drawn and not photographed: it is said beneath it, since a buyer takes a photo for the thing itself.</param>
public sealed record CoverPicture(Raster Raster, bool IsStill = false)
{
    // On paper a millimetre takes at least so many pixels, 150 to the inch: fewer are seen. Our choice.
    private const double LeastPxPerMm = 150 / 25.4;

    /// <summary>The picture as large as it goes into a room and its pixels allow, with nothing round it.</summary>
    /// <param name="mostWidthMm">Width of the room, mm.</param>
    /// <param name="mostHeightMm">Height of the room, mm.</param>
    /// <param name="enlarged">How much larger than told it is printed.</param>
    /// <param name="title">What it is, in a few words.</param>
    /// <param name="description">What it shows.</param>
    /// <param name="language">Language of both.</param>
    internal Drawing.Picture Within(double mostWidthMm, double mostHeightMm, double enlarged, string title, string description, string language)
    {
        var mmPerPx = Math.Min(1 / (LeastPxPerMm * enlarged), Math.Min(mostWidthMm / Raster.WidthPx, mostHeightMm / Raster.HeightPx));
        var box = new Drawing.Box(0, 0, Raster.WidthPx * mmPerPx, Raster.HeightPx * mmPerPx);
        return new Drawing.Picture(box.WidthMm, box.HeightMm, title, description, [new Drawing.LaidRaster(Raster, box)]) { Language = language };
    }
}
