using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Coilwright.Core.Faults;
using Coilwright.Core.Made;
using Coilwright.Core.Stock;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Made;

/// <summary>A step as its row keeps it: a word for its kind, and what it says as JSON. Whom it names and what was noted have a table of their own.</summary>
internal static class MadeText
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    public static string Kind(MadeStep step) => step switch
    {
        MadeStep.Make => "make",
        MadeStep.Ask => "ask",
        MadeStep.Sell => "sell",
        MadeStep.Give => "give",
        MadeStep.ComeBack => "come-back",
        MadeStep.Mend => "mend",
        MadeStep.Lose => "lose",
        MadeStep.TakeApart => "take-apart",
        MadeStep.Pack => "pack",
        MadeStep.Unpack => "unpack",
        MadeStep.TakeBack => "take-back",
        MadeStep.Erase => "erase",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Of(MadeStep step) => JsonSerializer.Serialize(step switch
    {
        MadeStep.Make make => new Parts { Title = make.Title, Count = make.Count, WristMm = make.WristMm, Used = Lines(make.Used) },
        MadeStep.Ask ask => new Parts { Amount = ask.Price.Amount, Currency = ask.Price.Currency },
        MadeStep.Sell sell => new Parts { Count = sell.Count, Amount = sell.Received.Amount, Currency = sell.Received.Currency, Fees = sell.Fees, Where = sell.Where, Show = sell.Show },
        MadeStep.Give give => new Parts { Count = give.Count, Show = give.Show },
        MadeStep.ComeBack back => new Parts { Count = back.Count, Step = back.Gone, Amount = back.Refund?.Amount, Currency = back.Refund?.Currency },
        MadeStep.Mend mend => new Parts { Title = mend.Done, Amount = mend.Fee?.Amount, Currency = mend.Fee?.Currency, WristMm = mend.WristMm, Used = Lines(mend.Used) },
        MadeStep.Lose lose => new Parts { Count = lose.Count, Show = lose.Show },
        MadeStep.TakeApart apart => new Parts { Count = apart.Count, Used = Lines(apart.Back) },
        MadeStep.Pack pack => new Parts { Count = pack.Count, Show = pack.Show },
        MadeStep.Unpack unpack => new Parts { Count = unpack.Count, Show = unpack.Show },
        MadeStep.TakeBack back => new Parts { Step = back.Step },
        MadeStep.Erase => new Parts(),
        _ => throw new System.Diagnostics.UnreachableException(),
    }, Options);

    /// <summary>The step of a row.</summary>
    /// <exception cref="ShelfUnreadableException">The row is none.</exception>
    public static MadeStep Read(MadeRow row)
    {
        try
        {
            return Whole(row, JsonSerializer.Deserialize<Parts>(row.Content, Options) ?? throw new JsonException()) with { Who = row.Who, Note = row.Note };
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            throw Unreadable(FaultCodes.FieldType);
        }
    }

    /// <summary>Records of rows, by number.</summary>
    /// <exception cref="ShelfUnreadableException">They do not follow from each other: no program of ours wrote them so.</exception>
    public static ImmutableArray<MadeRecord> Records(IEnumerable<MadeRow> rows)
    {
        try
        {
            return
            [
                .. rows.GroupBy(r => r.Made)
                    .Select(g => new MadeRecord(g.First().RecordNumber ?? throw Unreadable(FaultCodes.MadeNoRecord), [.. g.Select(r => new MadeEntry(r.Place, r.At, Read(r)))]))
                    .OrderBy(r => r.Number),
            ];
        }
        catch (Exception e) when (e is ArgumentException or InvalidCastException)
        {
            throw Unreadable(FaultCodes.MadeRestsOn);
        }
    }

    private static ShelfUnreadableException Unreadable(string detail) => new(Fault.Of(FaultCodes.MadeUnreadable, "", "", ("detail", detail)));

    private static MadeStep Whole(MadeRow row, Parts parts)
    {
        var (id, made, on) = (row.Id, row.Made, row.On);
        return row.Kind switch
        {
            "make" => new MadeStep.Make(id, on, parts.Title!, parts.Count!.Value) { Piece = row.Piece, Revision = row.Revision, WristMm = parts.WristMm, Used = Lines(parts.Used) },
            "ask" => new MadeStep.Ask(id, made, on, parts.Money!),
            "sell" => new MadeStep.Sell(id, made, on, parts.Count!.Value, parts.Money!) { Fees = parts.Fees ?? 0, Where = parts.Where, Show = parts.Show },
            "give" => new MadeStep.Give(id, made, on, parts.Count!.Value) { Show = parts.Show },
            "come-back" => new MadeStep.ComeBack(id, made, on, parts.Step!.Value, parts.Count!.Value) { Refund = parts.Money },
            "mend" => new MadeStep.Mend(id, made, on, parts.Title!) { Fee = parts.Money, WristMm = parts.WristMm, Used = Lines(parts.Used) },
            "lose" => new MadeStep.Lose(id, made, on, parts.Count!.Value) { Show = parts.Show },
            "take-apart" => new MadeStep.TakeApart(id, made, on, parts.Count!.Value) { Back = Lines(parts.Used) },
            "pack" => new MadeStep.Pack(id, made, on, parts.Count!.Value, parts.Show!),
            "unpack" => new MadeStep.Unpack(id, made, on, parts.Count!.Value, parts.Show!),
            "take-back" => new MadeStep.TakeBack(id, made, on, parts.Step!.Value),
            _ => new MadeStep.Erase(id, made, on),
        };
    }

    private static Line[]? Lines(ImmutableArray<UsedBeads> used) => used.IsEmpty ? null : [.. used.Select(u => new Line(u.Item, u.Quantity.Thousandths, u.Lot, u.Movement))];

    private static ImmutableArray<UsedBeads> Lines(Line[]? lines) =>
        lines is null ? [] : [.. lines.Select(l => new UsedBeads(l.Item, new Quantity(l.Thousandths)) { Lot = l.Lot, Movement = l.Movement })];

    private sealed record Line(string Item, long Thousandths, Guid? Lot, Guid? Movement);

    private sealed record Parts
    {
        public string? Title { get; init; }

        public int? Count { get; init; }

        public double? WristMm { get; init; }

        public decimal? Amount { get; init; }

        public string? Currency { get; init; }

        public decimal? Fees { get; init; }

        public string? Where { get; init; }

        public string? Show { get; init; }

        public Guid? Step { get; init; }

        public Line[]? Used { get; init; }

        [JsonIgnore]
        public Paid? Money => Amount is { } amount && Currency is { } currency ? new Paid(amount, currency) : null;
    }
}

/// <summary>A row of the book's table, with the names beside it.</summary>
internal sealed record MadeRow(long Place, Guid Id, Guid Made, string Kind, DateOnly On, DateTimeOffset At, long? RecordNumber, Guid? Piece, long? Revision, string Content, string? Who, string? Note);
