using System.Globalization;
using Coilwright.Cli.Calling;

// Before anything else: under a locale with a decimal comma a parser would read 160.5 as 1605.
CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentUICulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;

return await Call.RunAsync(args).ConfigureAwait(false);
