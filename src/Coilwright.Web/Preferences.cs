using Coilwright.Wording;

namespace Coilwright.Web;

/// <summary>Light or dark.</summary>
public enum Light
{
    /// <summary>As the device has it.</summary>
    Device,

    /// <summary>Dark ink on light paper.</summary>
    Day,

    /// <summary>Light ink on a dark ground.</summary>
    Evening,
}

/// <summary>How large letters are.</summary>
public enum TextSize
{
    /// <summary>As designed.</summary>
    Usual,

    /// <summary>An eighth larger.</summary>
    Larger,

    /// <summary>A third larger.</summary>
    Largest,
}

/// <summary>How she wants the bench to look. Kept in her browser; says nothing about any piece.</summary>
public sealed record Preferences
{
    /// <summary>The cookie that keeps them.</summary>
    public const string CookieName = "coilwright-look";

    /// <summary>Units of the lengths shown.</summary>
    public LengthUnits Units { get; init; } = LengthUnits.Both;

    /// <summary>Light or dark.</summary>
    public Light Light { get; init; }

    /// <summary>How large letters are.</summary>
    public TextSize TextSize { get; init; }

    /// <summary>The language of the words.</summary>
    public Language Language { get; init; } = Languages.English;

    /// <summary>The language, in her units.</summary>
    public Language Speech => Language.In(Units);

    /// <summary>The units of a place with room for one only.</summary>
    public LengthUnits OneUnit => Units == LengthUnits.Inches ? LengthUnits.Inches : LengthUnits.Mm;

    /// <summary>As they are kept: <c>both.device.usual.en</c>.</summary>
    public string Text => string.Join('.', Units.Word(), Light.Word(), TextSize.Word(), Language.Code);

    /// <summary>Reads them as they are kept. What is missing or not understood is as if nothing were kept: a cookie can be anything.</summary>
    public static Preferences Read(string? text)
    {
        var words = (text ?? "").Split('.');
        return new Preferences
        {
            Units = Of<LengthUnits>(0),
            Light = Of<Light>(1),
            TextSize = Of<TextSize>(2),
            Language = words.Length > 3 && Languages.Find(words[3]) is { } language ? language : Languages.English,
        };

        T Of<T>(int place) where T : struct, Enum =>
            place < words.Length ? Enum.GetValues<T>().FirstOrDefault(v => v.Word() == words[place]) : default;
    }
}

/// <summary>The words that settings are kept by, which the style sheets know too.</summary>
public static class PreferenceWords
{
    /// <summary>The value's name in small letters.</summary>
    public static string Word<T>(this T value) where T : struct, Enum => value.ToString().ToLowerInvariant();

    /// <summary>How many times as large as usual letters are. The style sheets know the same figures.</summary>
    public static double Factor(this TextSize size) => size switch
    {
        TextSize.Larger => 1.13,
        TextSize.Largest => 1.34,
        _ => 1,
    };
}
