using Microsoft.JSInterop;

namespace Coilwright.Web;

/// <summary>Her settings while a page is open: changed here, shown at once, kept in her browser.</summary>
public sealed class PreferencesKeeper(IJSRuntime js)
{
    /// <summary>The cookie that keeps how wide her page was last.</summary>
    public const string WidthCookie = "coilwright-width";

    /// <summary>The settings changed.</summary>
    public event Action? Changed;

    /// <summary>The settings now.</summary>
    public Preferences Now { get; private set; } = new();

    /// <summary>How wide her page was last, CSS pixels: what a first drawing reckons with. A desk's where nothing is known.</summary>
    public double WidthPx { get; private set; } = 1360;

    /// <summary>Takes what the browser kept.</summary>
    public void Begin(Preferences kept, double? widthPx)
    {
        Now = kept;
        WidthPx = widthPx ?? WidthPx;
    }

    /// <summary>Changes them and keeps them.</summary>
    public async Task ChangeAsync(Preferences preferences)
    {
        Now = preferences;
        Changed?.Invoke();
        await js.InvokeVoidAsync("coilwright.keepLook", Preferences.CookieName, preferences.Text, preferences.Light.Word(), preferences.TextSize.Word(),
            preferences.Language.Code);
    }
}
