using Microsoft.JSInterop;

namespace Coilwright.Web;

/// <summary>Her settings while a page is open: changed here, shown at once, kept in her browser.</summary>
public sealed class PreferencesKeeper(IJSRuntime js)
{
    /// <summary>The settings changed.</summary>
    public event Action? Changed;

    /// <summary>The settings now.</summary>
    public Preferences Now { get; private set; } = new();

    /// <summary>Takes what the browser kept.</summary>
    public void Begin(Preferences kept) => Now = kept;

    /// <summary>Changes them and keeps them.</summary>
    public async Task ChangeAsync(Preferences preferences)
    {
        Now = preferences;
        Changed?.Invoke();
        await js.InvokeVoidAsync("coilwright.keepLook", Preferences.CookieName, preferences.Text, preferences.Light.Word(), preferences.TextSize.Word(),
            preferences.Language.Code);
    }
}
