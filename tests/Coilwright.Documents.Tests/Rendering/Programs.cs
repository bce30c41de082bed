using System.ComponentModel;
using System.Diagnostics;
using System.Reflection;
using System.Text;

namespace Coilwright.Documents.Tests.Rendering;

/// <summary>Runs the real programs that read what we write. A program that is not there fails the test: nothing is skipped.</summary>
public static class Programs
{
    /// <summary>Where npm put the page checkers.</summary>
    public static string NodeModules { get; } =
        typeof(Programs).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "NodeModules").Value!;

    /// <summary>Runs a program to its end and gives what it wrote.</summary>
    public static (int Code, string Out, string Complaint) Run(string program, params ReadOnlySpan<string> arguments)
    {
        var start = new ProcessStartInfo(program)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = new UTF8Encoding(false),
        };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        try
        {
            using var process = Process.Start(start)!;
            var complaint = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, output, complaint.GetAwaiter().GetResult());
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException($"'{program}' is needed by the tests and is not installed; .ci/run shows the package.", missing);
        }
    }

    /// <summary>Runs a program that must succeed and gives what it wrote.</summary>
    public static string Output(string program, params ReadOnlySpan<string> arguments)
    {
        var (code, output, complaint) = Run(program, arguments);
        Assert.True(code == 0, $"{program} ended with {code}: {complaint}{output}");
        return output;
    }
}

/// <summary>A folder that is gone when the test ends.</summary>
public sealed class Workplace : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("page-tests-");

    /// <summary>A file in it.</summary>
    public string File(string name) => Path.Combine(_folder.FullName, name);

    /// <summary>A file in it with a content.</summary>
    public string File(string name, ReadOnlyMemory<byte> content)
    {
        System.IO.File.WriteAllBytes(File(name), content.ToArray());
        return File(name);
    }

    public void Dispose() => _folder.Delete(true);
}

/// <summary>Pages drawn by Poppler: what a printer would print.</summary>
public static class Poppler
{
    /// <summary>A page's pixels at a resolution, three bytes each from the left top corner.</summary>
    public static Pixels Draw(string pdf, int page, int dotsPerInch)
    {
        using var place = new Workplace();
        var target = place.File("page");
        var number = page.ToString(System.Globalization.CultureInfo.InvariantCulture);
        Programs.Output("pdftoppm", "-r", dotsPerInch.ToString(System.Globalization.CultureInfo.InvariantCulture), "-f", number, "-l", number,
            "-singlefile", pdf, target);
        return Pixels.Read(File.ReadAllBytes(target + ".ppm"));
    }
}

/// <summary>An eight-bit colour picture in the portable pixmap format (P6).</summary>
public sealed class Pixels
{
    private readonly byte[] _file;
    private readonly int _start;

    private Pixels(byte[] file, int start, int width, int height) => (_file, _start, Width, Height) = (file, start, width, height);

    public int Width { get; }

    public int Height { get; }

    public (byte Red, byte Green, byte Blue) this[int x, int y]
    {
        get
        {
            var at = _start + 3 * (y * Width + x);
            return (_file[at], _file[at + 1], _file[at + 2]);
        }
    }

    public bool Dark(int x, int y) => this[x, y] is { Red: < 128, Green: < 128, Blue: < 128 };

    public static Pixels Read(byte[] file)
    {
        var at = 0;
        string Word()
        {
            while (char.IsWhiteSpace((char)file[at])) at++;
            var from = at;
            while (!char.IsWhiteSpace((char)file[at])) at++;
            return Encoding.ASCII.GetString(file, from, at - from);
        }
        Assert.Equal("P6", Word());
        int Number() => int.Parse(Word(), System.Globalization.CultureInfo.InvariantCulture);
        int width = Number(), height = Number();
        Assert.Equal(255, Number());
        return new Pixels(file, at + 1, width, height);
    }
}
