using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Storage.Binding;

/// <summary>Reads what a piece and wire at hand say alike of a wire: thickness and steel.</summary>
internal static class CoilBinder
{
    /// <summary>The thickness, by measure or by gauge, mm, and the gauge's name; null when it is wrong, with a fault.</summary>
    public static (double Mm, string? Gauge)? Thickness(Fields fields)
    {
        switch (fields.OneOf("wireMm", "gauge"))
        {
            case "wireMm":
                return fields.Number("wireMm", PieceRules.WireMm) is { } wireMm ? (wireMm, null) : null;
            case "gauge":
                if (fields.Text("gauge") is not { } name) return null;
                if (!WireGauge.TryParse(name, out var mm, out var gauge)) fields.Fault("gauge", FaultCodes.GaugeForm);
                else if (PieceRules.WireMm.Check(mm) is { } fault) fields.FaultOf("gauge", mm.ToString("0.###", CultureInfo.InvariantCulture), fault);
                else return (mm, gauge);
                return null;
            default:
                return null;
        }
    }

    /// <summary>The steel; null when it is not told, or is not known, with a fault.</summary>
    public static WireSteel? Steel(Fields fields, ReckoningData data)
    {
        WireSteel? steel = null;
        if (fields.Text("steel") is { } key && !data.Steels.TryGetValue(key, out steel))
            fields.Fault("steel", FaultCodes.SteelUnknown, ("known", string.Join(", ", data.Steels.Keys)), ("nearest", NearestName.Of(key, data.Steels.Keys) ?? ""));
        return steel;
    }
}
