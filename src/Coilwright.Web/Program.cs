using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Web.Bench;
using Coilwright.Web.Hosting;
using Coilwright.Wording;

// A decimal point in every locale: a comma locale must never change a number that she types or reads.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;

var words = Languages.English.Bench.Start;
if (!BenchOptions.TryRead(args, Environment.GetEnvironmentVariable(BenchOptions.DatabaseVariable), out var options, out var slip))
{
    Console.Error.WriteLine(slip switch
    {
        BenchSlip.NotUnderstood not => Languages.English.Fill(words.BadOption, ("option", not.Option)),
        BenchSlip.TwoPlaces => words.TwoPlaces,
        BenchSlip.Address address => Said(address.Why),
        _ => throw new System.Diagnostics.UnreachableException(),
    });
    return 2;
}

WebApplication app;
try
{
    app = BenchHost.Build(options);
}
catch (ShelfShutException shut)
{
    Console.Error.WriteLine(Said(shut.Why));
    return 2;
}
try
{
    await app.StartAsync();
}
catch (IOException) when (options.Port is { } port)
{
    Console.Error.WriteLine(Languages.English.Fill(words.PortTaken, ("port", port)));
    return 2;
}
foreach (var address in app.Urls) Console.WriteLine(Languages.English.Fill(words.OpenAt, ("address", address)));
Console.WriteLine(words.ToStop);
await app.WaitForShutdownAsync();
return 0;

static string Said(Fault why) => Languages.English.Say(why) is var said ? $"{said.Message} {said.Mend}".TrimEnd() : "";
