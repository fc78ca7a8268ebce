import { lightReflectance } from "../../colour/luminance.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { lampHeights } from "../lamps.ts";
import { darkAndLight, toldApart } from "../lightness.ts";
import { seenColours } from "../seenColours.ts";
import { KNOWN_ENOUGH } from "./colours.ts";
import { finding } from "./make.ts";

/** Light and dark: whether what is seen has both, by light reflectance. From photographs, so an estimate. */
function lightAndDark(input: FindingInput): Finding[] {
  const { say } = input;
  const areas = seenColours(input).map((c) => ({
    lrv: lightReflectance(c.hex),
    areaMm2: c.areaMm2,
  }));
  const found = darkAndLight(areas);
  if (!found || areas.length < 2) return [];
  const spread = found.light - found.dark;
  const works = toldApart(spread) === "yes" || toldApart(spread) === "borderline";
  // A room of textures may be of one tone; and of a room of which half is unknown nothing is said.
  if (!works && (input.traditions.has("room-of-textures") || input.knownShare < KNOWN_ENOUGH))
    return [];
  const [from, to] = [Math.round(found.dark), Math.round(found.light)];
  return [
    finding(
      input.room,
      "light-and-dark",
      works ? "works" : "worth-a-look",
      {
        message: works
          ? say`What is seen runs from dark to light: ${from} to ${to} points of light reflectance.`
          : say`What is seen is of one lightness: only ${Math.round(spread)} points of light reflectance between its dark and its light.`,
        reason: say`Surfaces that differ by 30 points or more are told apart in any light (measure borrowed from BS 8300-2:2018, here an estimate from photographs).`,
      },
      { dark: found.dark, light: found.light, spread },
      [],
      ["colours"],
    ),
  ];
}

/** A room that is lit from one height: said only where its lamps are named, in `light` or as objects. */
function oneLight(input: FindingInput): Finding[] {
  const { say } = input;
  const said = input.room.fields.light ?? [];
  const named = lampHeights(said);
  const objects = input.seen
    .filter((s) => s.object !== null && /\blamp\b/i.test(s.title))
    .map((s) => s.zone);
  const candles = (input.room.fields.accessories ?? []).flatMap((a) =>
    lampHeights([a.what]).map((zone) => a.height ?? zone),
  );
  const heights = [...new Set([...named, ...objects, ...candles])];
  if (said.length === 0 || named.length === 0 || heights.length !== 1) return [];
  const where = heights[0] === "overhead" ? "overhead" : `${heights[0]} height`;
  return [
    finding(
      input.room,
      "one-light",
      "worth-a-look",
      {
        message: say`All the lamps stand at one level: ${where}.`,
        reason: say`Light from two or three heights gives a room depth in the evening (common practice). A table lamp or a floor lamp is the cheapest second level.`,
      },
      { heights: heights.length, level: heights[0] ?? "" },
      [],
      ["light"],
    ),
  ];
}

/** Light and dark in the colours, and the levels of the lamps. */
export function lightFindings(input: FindingInput): Finding[] {
  if (input.room.fields.approach === "free") return [];
  return [...lightAndDark(input), ...oneLight(input)];
}
