namespace Coilwright.Storage.Tests;

/// <summary>Sound files that between them have every field of a piece file, each in every way it can be written.</summary>
internal static class FilesWithEveryField
{
    public static string[] All => [First, Second, Third];

    private const string First = """
        {
          "format": "coilwright.piece/1",
          "title": "Every field, one way",
          "beads": [
            { "id": "round", "name": "Round", "shape": "round", "lengthMm": 6, "toleranceMm": 0.1, "boreMm": 1, "holeOffsetMm": 0.1,
              "wallMm": 0.3, "colours": ["#336699", "#FFFFFF"], "coating": "matt", "material": "quartz", "densityGPerCm3": 2.6, "massG": 0.4,
              "role": "accent", "shows": 0.7, "pack": { "unit": "strand", "beads": 60 }, "price": 3.5, "lot": "7", "aliases": ["ball six"] },
            { "id": "chip", "shape": "chip", "row": { "count": 20, "totalMm": 90 }, "widthMm": 8, "thicknessMm": 6, "material": "lava", "massG": 0.2 },
            { "id": "nugget", "shape": "nugget", "lengthRangeMm": [8, 11], "widthMm": 9, "thicknessMm": 8 },
            { "id": "disc", "shape": "rondelle", "lengthMm": 2, "widthMm": 6, "endFaceMm": 4, "role": "spacer" },
            { "id": "tube", "shape": "curved-tube", "lengthMm": 24, "widthMm": 3, "curveRadiusMm": 30, "matched": true, "lengthIs": "chord", "role": "connector" },
            { "id": "star", "shape": "focal", "lengthMm": 30, "widthMm": 20, "thicknessMm": 8, "holeOffsetMm": 2, "seat": { "lengthMm": 11, "clearMm": 2 }, "role": "focal" }
          ],
          "stringingMaterial": { "kind": "memoryWire", "wireMm": 0.62, "steel": "music-wire", "loopMm": 185, "insideMm": 57, "cutMm": 900 },
          "ends": {
            "start": { "finish": "turnedLoop", "insideMm": 3, "measuredMm": 12 },
            "finish": { "finish": "gluedCap", "depthMm": 4 },
            "gripMm": 10, "spareMm": 20, "overlapMm": 5
          },
          "wearer": { "wristMm": 160, "easeMm": 2, "bearingReachMm": 3, "startAngleDeg": 170, "child": false },
          "measured": [
            { "what": "row", "firstBead": 1, "lastBead": 2, "totalMm": 10.6 },
            { "what": "loop", "loops": 3, "totalMm": 555 },
            { "what": "endLoop", "end": "start", "pliers": "round-nose", "wireMm": 11.5 }
          ],
          "order": { "text": ["cluster = round, chip   # a pair", "cluster, tube, nugget, disc, star, cluster"] },
          "wishes": {
            "liningUp": "mix", "places": [{ "fromDeg": -30, "toDeg": 30, "liningUp": "any" }], "groups": { "cluster": "columns" },
            "longestRun": [{ "name": "disc", "most": 3 }], "inAnyRow": [{ "names": ["round", "chip"], "upTo": 2, "ofAny": 4 }],
            "apart": [{ "name": "star", "beside": "tube" }], "together": [{ "name": "star", "beside": "disc" }], "startsWith": "cluster", "endsWith": "chip",
            "turns": 1.5, "focalWithinDeg": 10,
            "free": { "runs": [{ "bead": "disc", "least": 1, "most": 3 }], "lengthWithinMm": 8, "onHand": [{ "bead": "disc", "beads": 12 }], "mirroredHalves": true,
              "groupOrder": true, "standIns": [{ "bead": "chip", "with": "nugget", "everywhere": true }], "coils": [{ "insideMm": 55 }, { "loopMm": 200 }, { "centreMm": 58.5 }],
              "startAngle": { "fromDeg": 150, "toDeg": -150, "stepDeg": 10 }, "turns": { "least": 1.5, "most": 2.5 } },
            "judgedBy": "nineteenInTwenty",
            "wrists": [{ "wristMm": 150, "weight": 2 }, { "wristMm": 165.5, "weight": 1 }]
          },
          "pattern": {
            "introduction": "For a first try.\nTwo turns.", "level": "intermediate", "minutes": 90, "techniques": ["turned loops"], "care": "Keep it dry.", "usage": "For yourself.", "by": "M.",
            "words": [{ "step": "cluster.1", "strings": "round, chip", "before": "tube, nugget, disc, star", "text": "Now the pair." }, { "step": "cut", "text": "Snip." }],
            "testers": [
              { "step": "after.cluster.1", "strings": "tube, nugget, disc, star", "after": "round, chip", "before": "round, chip", "note": "Which way round?", "by": "T.", "version": "2", "settled": true },
              { "note": "Took me two hours." }
            ]
          }
        }
        """;

    private const string Second = """
        {
          "format": "coilwright.piece/1",
          "title": "Every field, another way",
          "beads": [{ "id": "round", "shape": "round", "lengthMm": 6 }, { "id": "bar", "shape": "tube", "lengthMm": 12, "widthMm": 2 }],
          "stringingMaterial": { "kind": "memoryWire", "gauge": "22 AWG", "centreMm": 58, "cutLoops": 3 },
          "ends": { "start": { "finish": "dangle", "insideMm": 3, "dangle": "silver leaf", "dangleMm": 14.5 }, "finish": { "finish": "turnedLoop", "insideMm": 3 } },
          "wearer": { "wristMm": 160, "startAngleDeg": "focalOnTop", "child": true },
          "measured": [{ "what": "endLoop", "end": "both", "wireMm": 12 }],
          "order": { "list": ["round", { "group": "pair", "of": ["round", { "group": "inner", "of": ["bar"] }] }, "bar"] }
        }
        """;

    private const string Third = """
        {
          "format": "coilwright.piece/1",
          "title": "Only a measured loop",
          "beads": [{ "id": "round", "shape": "round", "lengthMm": 6 }],
          "stringingMaterial": { "kind": "memoryWire", "gauge": "24 SWG" },
          "ends": { "start": { "finish": "turnedLoop", "insideMm": 3 }, "finish": { "finish": "turnedLoop", "insideMm": 3 } },
          "wearer": { "wristMm": 160 },
          "measured": [{ "what": "loop", "loops": 1, "totalMm": 180 }],
          "order": { "list": ["round"] }
        }
        """;
}
