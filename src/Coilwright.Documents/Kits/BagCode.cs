using System.Globalization;
using Coilwright.Core.Colour;
using Coilwright.Core.Kits;
using Coilwright.Documents.Drawing;
using QRCoder;

namespace Coilwright.Documents.Kits;

/// <summary>The square code on a bag's label: a short plain text of our own, which any reader of QR codes shows.</summary>
/// <remarks>QR code (ISO/IEC 18004), error correction M, with the four modules of white round it that the standard asks for.</remarks>
internal static class BagCode
{
    /// <summary>A module smaller than this is not read reliably from common paper: four dots of a printer of 300 to the inch.</summary>
    public const double LeastModuleMm = 0.33;

    /// <summary>The text: <c>coilwright:kit:PIECE:LETTER:COUNT</c>, what is not a plain letter, figure, hyphen, dot, underscore or tilde written as in addresses (RFC 3986).</summary>
    public static string TextOf(Kit kit, KitBag bag) =>
        string.Create(CultureInfo.InvariantCulture, $"coilwright:kit:{Uri.EscapeDataString(kit.Name)}:{bag.Letter}:{bag.Count}");

    /// <summary>The modules, dark where true, white round them included.</summary>
    public static bool[,] Modules(string text)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var size = data.ModuleMatrix.Count;
        var modules = new bool[size, size];
        for (var y = 0; y < size; y++)
            for (var x = 0; x < size; x++) modules[x, y] = data.ModuleMatrix[y][x];
        return modules;
    }

    /// <summary>The code in a square: dark modules side by side are one area, so that no seam shows between them.</summary>
    public static Mark Draw(bool[,] modules, Box square)
    {
        var size = modules.GetLength(0);
        var module = square.WidthMm / size;
        var runs = new List<Outline>();
        for (var y = 0; y < size; y++)
            for (var x = 0; x < size; x++)
            {
                var from = x;
                while (x < size && modules[x, y]) x++;
                if (x > from) runs.Add(Outline.Rectangle(Box.At(square.LeftMm + from * module, square.TopMm + y * module, (x - from) * module, module)));
            }
        return new Drawn(Outline.Together(runs), Paint.Filled(new Srgb(0, 0, 0))) { Class = "code" };
    }
}
