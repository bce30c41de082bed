using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Shelf;

/// <summary>A photo in a file of hers.</summary>
public static class PhotoFile
{
    /// <summary>Its bytes, without what they say of its taking (<see cref="PhotoCleaning"/>), or why it cannot be read. Whether they are a photo is not looked at.</summary>
    public static (ReadOnlyMemory<byte> Bytes, Fault? Fault) ReadFrom(string path)
    {
        if (FileReading.Bytes(path, PhotoSize.MostBytes, out var fault) is { } bytes) return (PhotoCleaning.Of(bytes), null);
        return (default, fault!.Code == FaultCodes.FileUnreadable ? fault : PhotoSize.Check(PhotoSize.MostBytes + 1L));
    }
}
