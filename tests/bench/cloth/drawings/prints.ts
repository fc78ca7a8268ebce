import { type Make, rect } from "./draw.ts";
import { blooms, branches, broadLeaves, thicket } from "./florals.ts";
import { arabesque, scrolls, suzani } from "./ornaments.ts";
import { buta, conversational, ditsy, tossed, vine } from "./smallPrints.ts";

/* The prints by which the kinds are judged, and some of them tone on tone. */

/** A print with its colours moved most of the way to its ground, as a jacquard shows it tone on tone. */
function tonal(make: Make): Make {
  return (random) => {
    const drawn = make(random);
    const ground = /fill="(#[0-9a-f]{6})"/.exec(drawn.body)?.[1] ?? "#888888";
    const veil = rect(0, 0, drawn.width, drawn.height, ground, 'fill-opacity="0.8"');
    return { ...drawn, body: drawn.body + veil };
  };
}

export const PRINTS = {
  broadLeaves,
  branches,
  blooms,
  suzani,
  scrolls,
  ditsy,
  buta,
  conversational,
  vine,
  tossed,
  thicket,
  arabesque,
  tonalScrolls: tonal(scrolls),
  tonalBlooms: tonal(blooms),
  tonalButa: tonal(buta),
};
