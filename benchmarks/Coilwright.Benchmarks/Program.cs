using Coilwright.Benchmarks.Buying;
using Coilwright.Benchmarks.Cutting;
using Coilwright.Benchmarks.Draws;
using Coilwright.Benchmarks.Ideas;
using Coilwright.Benchmarks.LiningUp;
using Coilwright.Benchmarks.Reckon;
using Coilwright.Benchmarks.Running;
using Coilwright.Benchmarks.Settle;
using Coilwright.Benchmarks.Sheet;
using Coilwright.Benchmarks.Size;

// Every claim that is measured. See benchmarks/README.md.
Claim[] claims = [LiningUpClaim.Claim, ReckonClaim.Claim, SizeClaim.Claim, DrawsClaim.Claim, SheetClaim.Claim, IdeasClaim.Claim, RivalClaim.Claim, CutClaim.Claim, BuyingClaim.Claim, SettleClaim.Claim, WholePiecesClaim.Claim];

const string RoundsOption = "--rounds=";
var rounds = 3;
var asked = new List<Claim>();
foreach (var arg in args)
{
    if (arg == "all") asked.AddRange(claims.Where(c => c != RivalClaim.Claim && c != CutClaim.Claim && c != WholePiecesClaim.Claim));
    else if (claims.FirstOrDefault(c => c.Name == arg) is { } claim) asked.Add(claim);
    else if (!arg.StartsWith(RoundsOption, StringComparison.Ordinal) || !int.TryParse(arg.AsSpan(RoundsOption.Length), out rounds) || rounds < 1) return Usage();
}
if (asked.Count == 0) return Usage();

var lines = new List<string>();
var allMet = true;
foreach (var claim in asked)
{
    Console.WriteLine($"# {claim.Says}");
    lines.Add($"{claim.Name}: {claim.Says}");
    foreach (var verdict in claim.Measure(rounds))
    {
        lines.Add($"    {verdict}");
        allMet &= verdict.Met;
    }
}
Console.WriteLine();
foreach (var line in lines) Console.WriteLine(line);
return allMet ? 0 : 1;

int Usage()
{
    Console.WriteLine($"Say what to measure: all, or one or more of {string.Join(", ", claims.Select(c => c.Name))}. {RoundsOption}N measures in N rounds; 3 when not said.");
    foreach (var claim in claims) Console.WriteLine($"  {claim.Name,-10} {claim.Says}");
    return 2;
}
