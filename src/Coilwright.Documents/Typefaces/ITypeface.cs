namespace Coilwright.Documents.Typefaces;

/// <summary>How heavy letters are.</summary>
public enum TextWeight
{
    /// <summary>For reading.</summary>
    Regular,

    /// <summary>For what must catch the eye.</summary>
    Bold,
}

/// <summary>What layout must know of a typeface: how wide text is, and how far letters reach from their base line. All in shares of the type size (em).</summary>
public interface ITypeface
{
    /// <summary>How wide a line of text is set.</summary>
    double WidthEm(string text, TextWeight weight);

    /// <summary>How far letters reach above the base line, accents on capitals left out.</summary>
    double AscentEm { get; }

    /// <summary>How far letters reach below the base line.</summary>
    double DescentEm { get; }

    /// <summary>Height of a capital.</summary>
    double CapitalEm { get; }
}
