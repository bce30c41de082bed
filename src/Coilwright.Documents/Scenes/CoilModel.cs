using System.Globalization;
using System.Numerics;
using System.Runtime.InteropServices;
using System.Text.Json.Nodes;
using Coilwright.Core.Colour;
using Coilwright.Core.Geometry;
using Coilwright.Core.Readings;
using Coilwright.Core.Scenes;
using Coilwright.Core.Settle;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;
using SharpGLTF.Transforms;

namespace Coilwright.Documents.Scenes;

/// <summary>A piece in space as a model for other programs: glTF 2.0, one binary file.</summary>
/// <remarks>
/// <para>Metres, +Y up, right-handed, as the format wants it (Khronos, glTF 2.0, section 3.4); +Z looks at the top of the wrist. Beads of a kind share a mesh, each bead is a node of its own under the
/// piece's, named by its place, key letter and name, as <c>12 B Ebony disc</c>, with the same as data (<c>bead</c>, <c>letter</c>, <c>turn</c>); then <c>wire</c> and, where worn, <c>wrist</c>.</para>
/// <para>Materials are metallic-roughness; glass, clear coat and pearl are told by the extensions KHR_materials_transmission, _ior, _volume, _clearcoat and _iridescence, which a program that does not know
/// them leaves out. Nothing in it moves, and no picture is in it. The same scene gives the same bytes.</para>
/// </remarks>
public static class CoilModel
{
    /// <summary>Its media type (registered with IANA).</summary>
    public const string MediaType = "model/gltf-binary";

    private const double MetresPerMm = 0.001;

    // Steel by daylight, and the pale clay of the form. Our choice.
    private static readonly Srgb Steel = new(0xb4, 0xb1, 0xab), Clay = new(0xe2, 0xdb, 0xd0);

    // Thickness of pearl's layers as the format counts them, nm. Our choice, of the size that pearls have.
    private const float PearlFromNm = 180, PearlToNm = 420;

    /// <summary>Writes the model.</summary>
    /// <param name="scene">The piece in space.</param>
    /// <param name="withForm">Whether the form that stands for the wrist is in it, where the piece is worn.</param>
    public static byte[] Glb(CoilScene scene, bool withForm = true)
    {
        var model = ModelRoot.CreateModel();
        model.Asset.Generator = "Coilwright";
        var shown = model.UseScene(0);
        shown.Name = scene.Reckoned.Piece.Title;
        shown.Extras = new JsonObject { ["unit"] = "metre", ["up"] = "+Y", ["pose"] = scene.Pose switch { CoilPose.Worn => "worn", CoilPose.AtRest => "atRest", _ => "settled" } };
        var piece = shown.CreateNode(scene.Reckoned.Piece.Title);
        var meshes = scene.Kinds.Select(kind =>
        {
            var name = $"{kind.Count.Letter} {kind.Count.Bead.Name}";
            var material = MaterialOf(model, name, kind.Colour, kind.Finish, kind.Count.Bead.ThicknessMm);
            return kind.Meshes.Select((mesh, i) => MeshOf(model, kind.Meshes.Length == 1 ? name : $"{name}, {i + 1}", mesh, material)).ToArray();
        }).ToArray();
        foreach (var bead in scene.Beads)
        {
            var count = scene.Kinds[bead.Kind].Count;
            var number = (bead.Index + 1).ToString(CultureInfo.InvariantCulture);
            var node = piece.CreateNode($"{number} {count.Letter} {count.Bead.Name}");
            node.Mesh = meshes[bead.Kind][bead.Mesh];
            node.LocalTransform = new AffineTransform(null, Turned(bead), Metres(bead.Place));
            node.Extras = new JsonObject { ["bead"] = bead.Index + 1, ["letter"] = count.Letter, ["turn"] = scene.Lie.Turn(bead.Index) };
        }
        piece.CreateNode("wire").Mesh = MeshOf(model, "wire", scene.Wire, MaterialOf(model, "wire", Steel, SurfaceFinish.Wire, 0));
        if (withForm && scene.Form is { } form) piece.CreateNode("wrist").Mesh = MeshOf(model, "wrist", form, MaterialOf(model, "wrist", Clay, SurfaceFinish.Form, 0));
        return [.. model.WriteGLB(new WriteSettings { MergeBuffers = true })];
    }

    /// <summary>The name of the file of a piece as it sits.</summary>
    public const string SettledFile = "coil-as-it-sits.glb";

    /// <summary>The models of a piece as files, as it is worn and as it lies at rest.</summary>
    /// <param name="reckoned">Its readings.</param>
    /// <param name="settled">How the same piece lies, to have it worn as it sits and not as reckoned; a rest was found.</param>
    public static IEnumerable<DocumentFile> Files(Reckoned reckoned, Settled? settled = null) =>
    [
        settled is null ? new DocumentFile("coil-worn.glb", Glb(CoilScene.Of(reckoned, CoilPose.Worn)), []) : new DocumentFile(SettledFile, Glb(CoilScene.Of(reckoned, settled)), []),
        new DocumentFile("coil-at-rest.glb", Glb(CoilScene.Of(reckoned, CoilPose.AtRest)), []),
    ];

    private static Vector3 Metres(Point3 mm) => Plain(mm * MetresPerMm);

    private static Vector3 Plain(Point3 at) => new((float)at.X, (float)at.Y, (float)at.Z);

    // Rows: where the mesh's own axes point.
    private static Quaternion Turned(StandingBead bead)
    {
        Point3 x = bead.Along, y = bead.Outwards, z = x.Cross(y);
        return Quaternion.Normalize(Quaternion.CreateFromRotationMatrix(new Matrix4x4(
            (float)x.X, (float)x.Y, (float)x.Z, 0, (float)y.X, (float)y.Y, (float)y.Z, 0, (float)z.X, (float)z.Y, (float)z.Z, 0, 0, 0, 0, 1)));
    }

    private static Material MaterialOf(ModelRoot model, string name, Srgb colour, SurfaceFinish finish, double thicknessMm)
    {
        var material = model.CreateMaterial(name);
        var extensions = new List<string>();
        if (finish.Coat > 0) extensions.Add("ClearCoat");
        if (finish.LetsThrough > 0) extensions.AddRange(["Transmission", "IndexOfRefraction", "Volume"]);
        if (finish.Lustre > 0) extensions.Add("Iridescence");
        material.InitializePBRMetallicRoughness([.. extensions]);
        var own = material.FindChannel("BaseColor")!.Value;
        own.Color = new Vector4(Light(colour), 1);
        Set("MetallicRoughness", "MetallicFactor", finish.IsMetal ? 1 : 0);
        Set("MetallicRoughness", "RoughnessFactor", finish.Roughness);
        if (finish.Coat > 0)
        {
            Set("ClearCoat", "ClearCoatFactor", finish.Coat);
            Set("ClearCoatRoughness", "RoughnessFactor", 0.12);
        }
        if (finish.LetsThrough > 0)
        {
            Set("Transmission", "TransmissionFactor", finish.LetsThrough);
            Set("VolumeThickness", "ThicknessFactor", thicknessMm * MetresPerMm);
            material.IndexOfRefraction = (float)finish.RefractiveIndex;
        }
        if (finish.Lustre > 0)
        {
            Set("Iridescence", "IridescenceFactor", finish.Lustre);
            Set("IridescenceThickness", "Minimum", PearlFromNm);
            Set("IridescenceThickness", "Maximum", PearlToNm);
        }
        return material;

        void Set(string channel, string factor, double value) => material.FindChannel(channel)!.Value.SetFactor(factor, (float)value);
    }

    // The format counts in linear light.
    private static Vector3 Light(Srgb colour)
    {
        var (red, green, blue) = LinearLight.FromSrgb(colour);
        return new Vector3((float)red, (float)green, (float)blue);
    }

    private static Mesh MeshOf(ModelRoot model, string name, SolidMesh solid, Material material)
    {
        var mesh = model.CreateMesh(name);
        var primitive = mesh.CreatePrimitive();
        primitive.Material = material;
        primitive.DrawPrimitiveType = PrimitiveType.TRIANGLES;
        Put("POSITION", [.. solid.Places.Select(Metres)]);
        Put("NORMAL", [.. solid.Normals.Select(n => Vector3.Normalize(Plain(n)))]);
        if (!solid.Colours.IsEmpty) Put("COLOR_0", [.. solid.Colours.Select(Light)]);
        var corners = MemoryMarshal.AsBytes(solid.Triangles.AsSpan()).ToArray();
        var indices = model.CreateAccessor();
        indices.SetIndexData(model.UseBufferView(corners, 0, null, 0, BufferMode.ELEMENT_ARRAY_BUFFER), 0, solid.Triangles.Length, IndexEncodingType.UNSIGNED_INT);
        primitive.SetIndexAccessor(indices);
        return mesh;

        void Put(string attribute, Vector3[] values)
        {
            var bytes = MemoryMarshal.AsBytes(values.AsSpan()).ToArray();
            var accessor = model.CreateAccessor();
            accessor.SetVertexData(model.UseBufferView(bytes, 0, null, 0, BufferMode.ARRAY_BUFFER), 0, values.Length, new AttributeFormat(DimensionType.VEC3, EncodingType.FLOAT, false));
            primitive.SetVertexAccessor(attribute, accessor);
        }
    }
}
