using System.Text.Json;
using Coilwright.Core.Scenes;
using Coilwright.Documents.Scenes;
using Coilwright.Documents.Tests.Rendering;
using SharpGLTF.Schema2;

namespace Coilwright.Documents.Tests.Scenes;

/// <summary>The piece as a model: by the format's own validator, and read back against the core.</summary>
public class CoilModelTests
{
    // The Khronos Group's validator (npm gltf-validator); its report is plain data.
    private const string Validate = """
        const [, validator, ...files] = process.argv;
        const { validateBytes } = require(validator);
        const { readFileSync } = require('fs');
        (async () => {
          const all = [];
          for (const file of files) all.push(await validateBytes(new Uint8Array(readFileSync(file)), { uri: file, maxIssues: 0 }));
          console.log(JSON.stringify(all));
        })();
        """;

    [Fact]
    public void The_formats_own_validator_finds_no_error_and_nothing_to_warn_of()
    {
        using var place = new Workplace();
        string[] files = [.. DrawnPieces.All().Where(p => p.Piece.Order.Count <= 400).SelectMany(p => new[] { CoilPose.Worn, CoilPose.AtRest }.Select(pose =>
            place.File($"{p.Name}-{pose}.glb", CoilModel.Glb(CoilScene.Of(DrawnPieces.Reckoned(p.Name), pose)))))];
        var report = JsonDocument.Parse(Programs.Output("node", ["-e", Validate, Path.Combine(Programs.NodeModules, "gltf-validator"), .. files])).RootElement;
        Assert.Equal(files.Length, report.GetArrayLength());
        Assert.All(report.EnumerateArray(), one =>
        {
            var issues = one.GetProperty("issues");
            Assert.True(issues.GetProperty("numErrors").GetInt32() == 0 && issues.GetProperty("numWarnings").GetInt32() == 0, issues.ToString());
            Assert.Equal("2.0", one.GetProperty("info").GetProperty("version").GetString());
        });
    }

    [Fact]
    public void A_broken_model_is_found_broken_by_that_validator()
    {
        using var place = new Workplace();
        var bytes = CoilModel.Glb(CoilScene.Of(DrawnPieces.Reckoned("single"), CoilPose.AtRest));
        // The last corner of the last triangle is one that no mesh has.
        bytes[^1] = 0x7f;
        var report = JsonDocument.Parse(Programs.Output("node", "-e", Validate, Path.Combine(Programs.NodeModules, "gltf-validator"), place.File("broken.glb", bytes))).RootElement;
        Assert.NotEqual(0, report[0].GetProperty("issues").GetProperty("numErrors").GetInt32());
    }

    [Fact]
    public void Read_back_each_bead_is_where_and_as_large_as_the_core_says_in_metres()
    {
        var scene = CoilScene.Of(DrawnPieces.Reckoned("focal"), CoilPose.Worn);
        var model = ModelRoot.ParseGLB(CoilModel.Glb(scene));
        var nodes = model.LogicalNodes.Where(n => n.Extras?["bead"] is not null).ToArray();
        Assert.Equal(scene.Beads.Length, nodes.Length);
        foreach (var (node, bead) in nodes.Zip(scene.Beads))
        {
            var kind = scene.Kinds[bead.Kind];
            Assert.Equal($"{bead.Index + 1} {kind.Count.Letter} {kind.Count.Bead.Name}", node.Name);
            Assert.Equal((bead.Index + 1, kind.Count.Letter, scene.Lie.Turn(bead.Index)), ((int)node.Extras["bead"]!, (string)node.Extras["letter"]!, (int)node.Extras["turn"]!));
            var at = node.WorldMatrix.Translation;
            // Single precision holds a tenth of a metre to a hundred-millionth of one; a tenth of a thousandth of a millimetre is left.
            Assert.InRange(Math.Abs(at.X - bead.Place.X / 1000) + Math.Abs(at.Y - bead.Place.Y / 1000) + Math.Abs(at.Z - bead.Place.Z / 1000), 0, 1e-7);
            var volume = VolumeM3(node.Mesh);
            var meant = kind.Meshes[bead.Mesh].VolumeMm3 * 1e-9;
            Assert.InRange(volume / meant, 1 - 1e-4, 1 + 1e-4);
        }
        // A kind's beads share its mesh.
        Assert.Equal(scene.Kinds.Sum(k => k.Meshes.Length) + 2, model.LogicalMeshes.Count);
        Assert.Equal(["wire", "wrist"], model.LogicalNodes.Where(n => n.Mesh is not null && n.Extras is null).Select(n => n.Name));
        Assert.Equal(["wire"], ModelRoot.ParseGLB(CoilModel.Glb(scene, withForm: false)).LogicalNodes.Where(n => n.Mesh is not null && n.Extras is null).Select(n => n.Name));
    }

    private static double VolumeM3(Mesh mesh)
    {
        var primitive = mesh.Primitives.Single();
        var places = primitive.GetVertexAccessor("POSITION").AsVector3Array();
        var six = 0.0;
        foreach (var (a, b, c) in primitive.GetTriangleIndices())
        {
            var (p, q, r) = (places[a], places[b], places[c]);
            six += (double)p.X * ((double)q.Y * r.Z - (double)q.Z * r.Y) + (double)p.Y * ((double)q.Z * r.X - (double)q.X * r.Z) + (double)p.Z * ((double)q.X * r.Y - (double)q.Y * r.X);
        }
        return six / 6;
    }

    [Fact]
    public void Colours_and_finish_are_those_of_the_kind()
    {
        var scene = CoilScene.Of(DrawnPieces.Reckoned("tidewrack"), CoilPose.AtRest);
        var model = ModelRoot.ParseGLB(CoilModel.Glb(scene));
        Material Of(string id) => model.LogicalMaterials.Single(m => m.Name.EndsWith(scene.Kinds.Single(k => k.Count.Bead.Id == id).Count.Bead.Name, StringComparison.Ordinal));
        // Silver #c0c4c8: 0xc0 is 0.5271 in linear light by the published curve.
        var silver = Of("dot");
        Assert.InRange(silver.FindChannel("BaseColor")!.Value.Color.X, 0.5270f, 0.5272f);
        Assert.Equal(1, silver.FindChannel("MetallicRoughness")!.Value.GetFactor("MetallicFactor"));
        // Frosted glass lets light through and does not mirror it.
        Assert.True(Of("pebble").FindChannel("Transmission")!.Value.GetFactor("TransmissionFactor") > 0.3);
        Assert.True(Of("pebble").FindChannel("MetallicRoughness")!.Value.GetFactor("RoughnessFactor") > 0.5);
        Assert.Null(Of("disc").FindChannel("Transmission"));
        // Two colours are on the corners, and the material leaves them as they are.
        Assert.Equal(System.Numerics.Vector4.One, Of("nugget").FindChannel("BaseColor")!.Value.Color);
        Assert.All(model.LogicalMeshes.Where(m => m.Name.Contains("nugget", StringComparison.Ordinal)), m => Assert.NotNull(m.Primitives.Single().GetVertexAccessor("COLOR_0")));
    }

    [Fact]
    public void The_same_piece_is_the_same_bytes() =>
        Assert.Equal(CoilModel.Glb(CoilScene.Of(DrawnPieces.Reckoned("child"), CoilPose.Worn)), CoilModel.Glb(CoilScene.Of(DrawnPieces.Reckon(DrawnPieces.Child()), CoilPose.Worn)));

    [Fact]
    public void Units_and_axes_stand_in_the_file()
    {
        var extras = ModelRoot.ParseGLB(CoilModel.Glb(CoilScene.Of(DrawnPieces.Reckoned("child"), CoilPose.Worn))).DefaultScene.Extras;
        Assert.Equal(("metre", "+Y", "worn"), ((string)extras["unit"]!, (string)extras["up"]!, (string)extras["pose"]!));
    }
}
