import { spellColourName } from "../../colour/colourName.ts";
import { WHEEL_HUES, wheelHue } from "../../colour/wheel.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { isNeutral } from "../palette.ts";
import { seenColours } from "../seenColours.ts";
import { belongingOf } from "../strays.ts";
import { finding, listed, percent } from "./make.ts";

/** A hue counts from this share of all colour that is seen (neutrals left out). Our own choice, no source. */
const COUNTS = 0.05;
/** So many strays a restrained room bears; common practice, no source. */
const STRAYS = 3;

/** Hues of what is seen, largest first; neighbours on the wheel are one hue to the eye of a decorator. */
function huesSeen(input: FindingInput): { hue: string; share: number }[] {
  const areas = new Map<string, number>();
  let whole = 0;
  for (const c of seenColours(input)) {
    const animal = c.part.cloth !== null && input.swatches.get(c.part.cloth)?.animal === true;
    const hue = animal || isNeutral(c.hex) ? null : wheelHue(c.hex);
    if (!hue) continue;
    areas.set(hue, (areas.get(hue) ?? 0) + c.areaMm2);
    whole += c.areaMm2;
  }
  const order = [...areas]
    .map(([hue, area]) => ({ hue, area }))
    .sort((a, b) => b.area - a.area || (a.hue < b.hue ? -1 : 1));
  const groups: { hue: string; area: number }[] = [];
  for (const one of order) {
    const place = WHEEL_HUES.indexOf(one.hue as (typeof WHEEL_HUES)[number]);
    const near = groups.find((g) => {
      const apart = Math.abs(WHEEL_HUES.indexOf(g.hue as (typeof WHEEL_HUES)[number]) - place);
      return Math.min(apart, 12 - apart) <= 1;
    });
    if (near) near.area += one.area;
    else groups.push({ ...one });
  }
  return groups
    .map((g) => ({ hue: g.hue, share: whole > 0 ? g.area / whole : 0 }))
    .filter((g) => g.share >= COUNTS);
}

/**
 * A restrained scheme: one or two hues, told apart by scale and value; a few strays are allowed, and counted. Only for rooms of that
 * approach; common practice, no source.
 */
export function restrainedFindings(input: FindingInput): Finding[] {
  const { say, room } = input;
  if (room.fields.approach !== "restrained") return [];
  const hues = huesSeen(input);
  const few = hues.length <= 2;
  const names = listed(hues.map((h) => say`${h.hue} ${percent(h.share)}`));
  const out: Finding[] = [];
  if (hues.length > 0)
    out.push(
      finding(
        room,
        few ? "hues-few" : "hues-many",
        few ? "works" : "worth-a-look",
        {
          message: few
            ? say`The colour that is seen is of ${hues.length === 1 ? say`one hue` : say`two hues`}: ${names}.`
            : say`The colour that is seen is of ${hues.length} hues: ${names}.`,
          reason: say`A restrained scheme keeps to one or two hues, and tells its cloths apart by scale and by light and dark (common practice).`,
        },
        { hues: hues.length },
        [],
        ["approach"],
      ),
    );
  const palette = input.palette.colours;
  const strays = input.roles.flatMap((role) => {
    const swatch = input.swatches.get(role.cloth);
    return swatch && palette.length > 0
      ? belongingOf(swatch, palette).strays.map(
          (c) => `${spellColourName(c.name, input.language)} in ${swatch.name}`,
        )
      : [];
  });
  if (strays.length > 0) {
    const works = strays.length <= STRAYS;
    out.push(
      finding(
        room,
        "strays-counted",
        works ? "works" : "worth-a-look",
        {
          message: say`${strays.length} ${strays.length === 1 ? say`colour strays` : say`colours stray`} from the palette: ${listed(strays)}.`,
          reason: say`A few strays keep a restrained room from looking too well behaved; more than ${STRAYS} and it is no longer restrained (common practice).`,
        },
        { strays: strays.length, usual: STRAYS },
        [],
        ["approach"],
      ),
    );
  }
  return out;
}
