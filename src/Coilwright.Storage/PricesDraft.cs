using System.Text.Json.Nodes;
using Coilwright.Core.Buying;
using Coilwright.Storage.Binding;

namespace Coilwright.Storage;

/// <summary>A file of prices that <see cref="PricesFile"/> reads, with one thing in it said otherwise. All else stays as it is written.</summary>
public static class PricesDraft
{
    /// <summary>The file with the days that a supplier's goods take. A supplier that only stands with offers is listed then.</summary>
    /// <param name="text">The file.</param>
    /// <param name="supplier">The supplier, by name.</param>
    /// <param name="days">Days, 0 to <see cref="Supplier.MostLeadDays"/>; null takes them out.</param>
    public static string WithLeadDays(string text, string supplier, int? days)
    {
        var root = (JsonObject)JsonNode.Parse(text)!;
        if (root["suppliers"] is not JsonArray suppliers) root["suppliers"] = suppliers = [];
        if (suppliers.OfType<JsonObject>().FirstOrDefault(s => (string?)s["name"] == supplier) is not { } its) suppliers.Add(its = new JsonObject { ["name"] = supplier });
        if (days is { } told) its["leadDays"] = told;
        else its.Remove("leadDays");
        return root.ToJsonString(PieceWriter.Options).ReplaceLineEndings("\n") + "\n";
    }
}
