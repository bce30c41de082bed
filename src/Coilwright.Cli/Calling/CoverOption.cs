using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Documents.Patterns;
using Coilwright.Documents.Rasters;
using Coilwright.Storage.Shelf;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of a picture for a pattern's cover.</summary>
internal static class CoverOption
{
    public static Option<string?> Make(Language language) => new("--cover") { Description = language.Help.PatternCover, HelpName = "FILE" };

    /// <summary>Reads it; null where none was asked for. A fault where it is no picture that can be printed.</summary>
    public static (CoverPicture? Cover, Fault? Fault) Read(string? file)
    {
        if (file is null) return (null, null);
        var (bytes, fault) = PhotoFile.ReadFrom(file);
        if (fault is not null) return (null, fault);
        return RasterReading.Of(bytes) switch
        {
            RasterRead.Is picture => (new CoverPicture(picture.Raster), null),
            RasterRead.IsNot not => (null, not.Why),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
