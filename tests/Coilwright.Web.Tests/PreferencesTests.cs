using Coilwright.Wording;
using CsCheck;

namespace Coilwright.Web.Tests;

public sealed class PreferencesTests
{
    [Fact]
    public void What_is_kept_reads_back_the_same() =>
        Gen.Select(Gen.Enum<LengthUnits>(), Gen.Enum<Light>(), Gen.Enum<TextSize>(), Gen.Int[0, Languages.All.Length - 1].Select(i => Languages.All[i]))
            .Sample((units, light, text, language) =>
            {
                var kept = new Preferences { Units = units, Light = light, TextSize = text, Language = language };
                return Preferences.Read(kept.Text) == kept;
            });

    [Fact]
    public void Whatever_the_cookie_holds_there_are_settings() => Gen.String.Sample(text => Preferences.Read(text).Language is not null);

    [Fact]
    public void A_browser_that_kept_nothing_gets_the_usual_settings() => Assert.Equal(new Preferences(), Preferences.Read(null));
}
