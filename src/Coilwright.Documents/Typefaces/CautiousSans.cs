using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace Coilwright.Documents.Typefaces;

/// <summary>A sans serif of which nobody knows which one it will be: each character as wide as in the widest of the faces that the picture asks for.</summary>
/// <remarks>
/// <para>An SVG names its faces and the reader's machine chooses: Atkinson Hyperlegible (Next) where it is there, else DejaVu Sans, which is wider. Text laid
/// out by these widths has room in either. Another face that a machine puts in their place may be wider still; none of the common sans serifs is.</para>
/// <para>Kerning is not counted. Widths: <c>sans-widths.csv</c> beside this file; a character that is not in it counts as a full em.</para>
/// </remarks>
public sealed class CautiousSans : ITypeface
{
    private static readonly FrozenDictionary<int, (double Regular, double Bold)> Widths = Read();

    private CautiousSans() { }

    /// <summary>The one there is.</summary>
    public static CautiousSans Instance { get; } = new();

    /// <inheritdoc/>
    public double WidthEm(string text, TextWeight weight)
    {
        var em = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            var (regular, bold) = Widths.GetValueOrDefault(rune.Value, (1, 1));
            em += weight == TextWeight.Bold ? bold : regular;
        }
        return em;
    }

    /// <inheritdoc/>
    /// <remarks>The tallest plain letters (b, d, l) of DejaVu Sans.</remarks>
    public double AscentEm => 0.76;

    /// <inheritdoc/>
    /// <remarks>The descender of DejaVu Sans.</remarks>
    public double DescentEm => 0.236;

    /// <inheritdoc/>
    /// <remarks>DejaVu Sans; Atkinson Hyperlegible has 0.668.</remarks>
    public double CapitalEm => 0.729;

    private static FrozenDictionary<int, (double, double)> Read()
    {
        using var stream = typeof(CautiousSans).Assembly.GetManifestResourceStream("sans-widths.csv")!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var widths = new Dictionary<int, (double, double)>();
        var heading = true;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('#')) continue;
            if (heading)
            {
                heading = false;
                continue;
            }
            var fields = line.Split(',');
            int from = int.Parse(fields[0], NumberStyles.HexNumber, CultureInfo.InvariantCulture),
                to = int.Parse(fields[1], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            var width = (int.Parse(fields[2], CultureInfo.InvariantCulture) / 1000.0, int.Parse(fields[3], CultureInfo.InvariantCulture) / 1000.0);
            for (var c = from; c <= to; c++) widths.Add(c, width);
        }
        return widths.ToFrozenDictionary();
    }
}
