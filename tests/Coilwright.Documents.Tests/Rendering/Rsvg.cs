using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Coilwright.Documents.Tests.Rendering;

/// <summary>Draws SVG by librsvg: a second opinion on whether what we write is sound.</summary>
public static class Rsvg
{
    /// <summary>The picture so many pixels wide. Fails the test with the renderer's own words when it complains.</summary>
    public static Png Draw(string svg, int widthPx)
    {
        var start = new ProcessStartInfo("rsvg-convert")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(false),
        };
        foreach (var argument in new[] { "--width", widthPx.ToString(CultureInfo.InvariantCulture), "--keep-aspect-ratio" }) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var complaint = process.StandardError.ReadToEndAsync();
        using var png = new MemoryStream();
        var drawn = process.StandardOutput.BaseStream.CopyToAsync(png);
        process.StandardInput.Write(svg);
        process.StandardInput.Close();
        drawn.GetAwaiter().GetResult();
        process.WaitForExit();
        Assert.Equal("", complaint.GetAwaiter().GetResult());
        Assert.Equal(0, process.ExitCode);
        return Png.Read(png.ToArray());
    }
}
