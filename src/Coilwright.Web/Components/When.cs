using System.Globalization;

namespace Coilwright.Web.Components;

/// <summary>Moments as a page shows them.</summary>
internal static class When
{
    /// <summary>On this machine's clock, to the minute: <c>2026-01-31 09:30</c>, the same in every language.</summary>
    public static string Of(DateTimeOffset at) => at.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
