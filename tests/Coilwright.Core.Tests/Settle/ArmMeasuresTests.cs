using Coilwright.Core.Settle;

namespace Coilwright.Core.Tests.Settle;

/// <summary>An arm as a maker measures it, and what is settled with.</summary>
public class ArmMeasuresTests
{
    [Fact]
    public void What_was_not_measured_is_taken_as_usual() => Assert.Equal(new SettleRequest(165), ArmMeasures.Usual.On(165));

    [Fact]
    public void One_of_width_and_thickness_alone_changes_nothing()
    {
        Assert.Equal(new SettleRequest(165), new ArmMeasures { WidthMm = 60 }.On(165));
        Assert.Equal(new SettleRequest(165), new ArmMeasures { ThicknessMm = 40 }.On(165));
    }

    [Fact]
    public void Thickness_over_width_is_how_oval_it_is_and_the_way_the_girth_grows_is_how_it_widens()
    {
        var request = new ArmMeasures { Pose = ArmPose.Hanging, WidthMm = 60, ThicknessMm = 48, GirthUpMm = 175 }.On(165)!;
        Assert.Equal((165, ArmPose.Hanging), (request.WristMm, request.Pose));
        // 48 / 60, and 10 mm over 50 mm; as exact as a quotient is.
        Near.Equal(0.8, request.Aspect, 1e-15);
        Near.Equal(0.2, request.Taper, 1e-15);
        Near.Equal(-0.1, new ArmMeasures { GirthUpMm = 160 }.On(165)!.Taper, 1e-15);
    }

    // What it becomes up there is what the wrist's own form is as large as: 175 for 165 is 35/33 of it.
    [Fact]
    public void The_form_is_as_large_up_the_arm_as_was_measured_there() =>
        Near.Equal(175.0 / 165, new ArmMeasures { GirthUpMm = 175 }.On(165)!.Wrist.ScaleAt(ArmMeasures.UpMm), 1e-12);

    [Theory]
    [InlineData(60, 17.9, false)]
    [InlineData(60, 18, true)]
    [InlineData(60, 60, true)]
    [InlineData(60, 60.1, false)]
    public void A_wrist_is_no_thicker_than_wide_and_no_flatter_than_can_be_settled_on(double wide, double thick, bool goes)
    {
        var arm = new ArmMeasures { WidthMm = wide, ThicknessMm = thick };
        Assert.Equal(goes, arm.On(165) is not null);
        if (goes) return;
        var trouble = Assert.Single(arm.TroubleOn(165));
        Assert.Equal(new ArmTrouble(ArmMeasure.Thickness, 18, 60), trouble);
    }

    [Theory]
    [InlineData(139.9, false)]
    [InlineData(140, true)]
    [InlineData(190, true)]
    [InlineData(190.1, false)]
    public void The_girth_up_the_arm_is_within_what_can_be_settled_on(double up, bool goes)
    {
        var arm = new ArmMeasures { GirthUpMm = up };
        Assert.Equal(goes, arm.On(165) is not null);
        if (!goes) Assert.Equal(new ArmTrouble(ArmMeasure.GirthUp, 140, 190), Assert.Single(arm.TroubleOn(165)));
        // On another wrist the same arm may be another matter.
        Assert.NotNull(arm.On(up));
    }

    [Fact]
    public void Every_way_of_holding_the_arm_has_a_word_and_the_word_asks_for_it()
    {
        Assert.Equal(Enum.GetValues<ArmPose>(), ArmPoses.Words.Select(w => ArmPoses.Of(w)!.Value));
        Assert.All(Enum.GetValues<ArmPose>(), pose => Assert.Equal(pose, ArmPoses.Of(ArmPoses.Word(pose).ToUpperInvariant())));
        Assert.Null(ArmPoses.Of("hangng"));
    }
}
