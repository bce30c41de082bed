namespace Coilwright.Core.Spread;

/// <summary>A band that holds nine in ten.</summary>
/// <param name="From">5th percentile.</param>
/// <param name="To">95th percentile.</param>
public readonly record struct SpreadBand(double From, double To);

/// <summary>How a piece may come out. Model: docs/theory/spread.md.</summary>
/// <param name="Draws">Draws behind it.</param>
/// <param name="LengthSdMm">Standard deviation of the wire under the beads, mm, in closed form.</param>
/// <param name="LengthMm">Band of the wire under the beads, mm.</param>
/// <param name="FitsShare">Share of draws that come out as wanted on a turn of the mean size: wire enough, turns as designed, ends as wanted; null when nothing was wanted.</param>
/// <param name="Cover">Band of the headline exactly at each draw's T; null when there is too little to judge.</param>
/// <param name="Relative">Band of lining up by bead against chance.</param>
/// <param name="FocalDeg">Band of the focal's angle, degrees; null without a focal.</param>
public sealed record SpreadReport(int Draws, double LengthSdMm, SpreadBand LengthMm, double? FitsShare, SpreadBand? Cover, SpreadBand? Relative,
    SpreadBand? FocalDeg);
