using Microsoft.JSInterop;

namespace Coilwright.Web;

/// <summary>Her settings while a page is open: changed here, shown at once, kept in her browser.</summary>
public sealed class PreferencesKeeper(IJSRuntime js)
{
    /// <summary>The cookie that keeps how wide her page was last.</summary>
    public const string WidthCookie = "coilwright-width";

    /// <summary>The cookie that keeps that she was asked whether she wants a look round.</summary>
    public const string WayCookie = "coilwright-way";

    /// <summary>The settings changed.</summary>
    public event Action? Changed;

    /// <summary>The settings now.</summary>
    public Preferences Now { get; private set; } = new();

    /// <summary>How wide her page was last, CSS pixels: what a first drawing reckons with. A desk's where nothing is known.</summary>
    public double WidthPx { get; private set; } = 1360;

    /// <summary>Whether she was asked for a look round, and took it or left it out.</summary>
    public bool KnowsItsWay { get; private set; }

    /// <summary>Takes what the browser kept.</summary>
    public void Begin(Preferences kept, double? widthPx, bool knowsItsWay)
    {
        (Now, KnowsItsWay) = (kept, knowsItsWay);
        WidthPx = widthPx ?? WidthPx;
    }

    /// <summary>She is not asked for a look round again.</summary>
    public async Task KnowTheWayAsync()
    {
        if (KnowsItsWay) return;
        KnowsItsWay = true;
        await js.InvokeVoidAsync("coilwright.keepCookie", WayCookie, "known");
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
