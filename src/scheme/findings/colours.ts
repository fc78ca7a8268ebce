import { spellColourName } from "../../colour/colourName.ts";
import { difference } from "../../colour/difference.ts";
import { hueRelation, WHEEL, wheelHue } from "../../colour/wheel.ts";
import { cheapPlaces } from "../cheapPlaces.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { isNeutral, type PaletteColour } from "../palette.ts";
import { proportionOf } from "../proportion.ts";
import type { Carried } from "../seenColours.ts";
import { belongingOf } from "../strays.ts";
import { finding, listed, percent } from "./make.ts";

/** A colour is carried around when it stands in this many places, at two heights or more; common practice, no source. */
const PLACES = 3;
const HEIGHTS = 2;

const isEnough = (c: Carried): boolean => c.items.length >= PLACES && c.zones.length >= HEIGHTS;

/** Two strengths of one hue: what a dye is in full and in tint. Our own choice, no source. */
function areStrengths(one: PaletteColour, other: PaletteColour): boolean {
  if (isNeutral(one.hex) || isNeutral(other.hex)) return isNeutral(one.hex) && isNeutral(other.hex);
  return wheelHue(one.hex) === wheelHue(other.hex);
}

/** True where nobody asks that a colour be carried: it was only drawn from a photograph, and a tradition or its own hue excuses it. */
function isExcused(input: FindingInput, c: Carried): boolean {
  if (c.colour.shareOfSource === null) return false;
  // Checks with checks share no colouring: the thin lines of one need no echo.
  const source = input.palette.source.id;
  const ofChecks = input.traditions.found.some(
    (t) => t.name === "checks-together" && source !== null && t.cloths.includes(source),
  );
  if (ofChecks) return true;
  return input.carried.some((o) => o !== c && isEnough(o) && areStrengths(o.colour, c.colour));
}

function carried(input: FindingInput): Finding[] {
  const { say } = input;
  return input.carried.flatMap((c): Finding[] => {
    const places = c.items.map((i) => i.title);
    const enough = isEnough(c);
    if (!enough && isExcused(input, c)) return [];
    const evidence = {
      colour: c.colour.name,
      places: c.items.length,
      heights: c.zones.length,
      at: c.zones.join(", "),
    };
    if (enough) {
      return [
        finding(
          input.room,
          "colour-carried",
          "works",
          {
            message: say`${c.colour.name} is carried around the room: ${listed([...new Set(places)])}.`,
            reason: say`A colour in ${PLACES} places or more, at different heights, holds a room together (common practice).`,
          },
          evidence,
          [c.colour.hex],
          ["colours"],
        ),
      ];
    }
    const oneHeight =
      c.items.length > 1 && c.zones.length < HEIGHTS
        ? say`, all at ${c.zones[0] ?? ""} height`
        : "";
    const where =
      c.items.length === 0
        ? c.touches.length > 0
          ? say`in small touches only, on ${listed([...new Set(c.touches)])}`
          : say`nowhere yet`
        : c.items.length === 1
          ? say`once, on ${places[0] ?? ""}`
          : say`in ${c.items.length} places, ${listed([...new Set(places)])}${oneHeight}`;
    const cheap = cheapPlaces(input, c);
    const carry = cheap.length > 0 ? say` To carry it, cheapest first: ${cheap.join("; ")}.` : "";
    return [
      finding(
        input.room,
        "colour-once",
        "worth-a-look",
        {
          message: say`${c.colour.name} is seen ${where}.${carry}`,
          reason: say`A colour of the palette wants ${PLACES} places at ${HEIGHTS} heights (common practice).`,
        },
        { ...evidence, cheapest: cheap.join("; ") },
        [c.colour.hex],
        ["colours"],
      ),
    ];
  });
}

function belonging(input: FindingInput): Finding[] {
  const palette = input.palette.colours;
  const { say } = input;
  const range = input.room.fields.approach === "collection";
  const checks = input.traditions.found
    .filter((t) => t.name === "checks-together")
    .flatMap((t) => t.cloths);
  if (palette.length === 0) return [];
  return input.roles.flatMap((role): Finding[] => {
    const swatch = input.swatches.get(role.cloth);
    if (!swatch || swatch.colours.length === 0) return [];
    const { cohesion, strays } = belongingOf(swatch, palette);
    if (strays.length === 0) {
      return [
        finding(
          input.room,
          "cloth-belongs",
          "works",
          {
            message: swatch.animal
              ? say`${swatch.name} is an animal marking, and goes with any colours.`
              : say`${percent(cohesion)} of ${swatch.name} is in the room's colours.`,
            reason: say`What a cloth shares with the palette is what ties it to the others (common practice).`,
          },
          { cloth: swatch.name, cohesion, animal: swatch.animal ? "yes" : "" },
          [role.cloth],
        ),
      ];
    }
    // The colours of one range were made for each other: there the range itself is looked at.
    if (range && input.cloths.get(role.cloth)?.fields.collection) return [];
    // Nor are checks that stand together matched by colour.
    if (checks.includes(role.cloth)) return [];
    return strays.map((c) => {
      const near = palette.reduce((a, b) =>
        difference(c.hex, b.hex) < difference(c.hex, a.hex) ? b : a,
      );
      const complement = palette.find((p) => hueRelation(c.hex, p.hex) === "complementary");
      const told = complement
        ? say` It is the complement of ${complement.name} on the ${WHEEL}.`
        : "";
      return finding(
        input.room,
        "colour-outside",
        "worth-a-look",
        {
          message: say`${swatch.name} brings a colour from outside: ${spellColourName(c.name, input.language)}, ${percent(c.share)} of it.${told}`,
          reason: say`A colour that nothing else has stands out (common practice). As an accent that may be just what is wanted.`,
        },
        {
          share: c.share,
          distance: difference(c.hex, near.hex),
          cohesion,
          complementOf: complement?.name ?? "",
        },
        [role.cloth, c.hex],
      );
    });
  });
}

/** Of all that is seen so much must have a known colour before the shares are complained of. Our own choice, no source. */
export const KNOWN_ENOUGH = 0.75;

/** The dominant, second and third share of what is seen against the decorator's 60, 30, 10. */
function levels(input: FindingInput): Finding[] {
  const { say, room, traditions } = input;
  const [first, second, ...rest] = input.shares;
  if (!first || !second || rest.length === 0) return [];
  const third = rest.reduce((a, s) => a + s.hundredths, 0);
  const stands = proportionOf(first.hundredths, second.hundredths, third);
  // Near one colour is what a restrained room and a room of textures want; pattern all over has no leader by its nature.
  const quiet = room.fields.approach === "restrained" || traditions.has("room-of-textures");
  const allowed = (stands === "one-colour" && quiet) || (stands === "even" && traditions.covers);
  // Nearly all one colour, or none that leads, is only known where most of what is seen has a colour.
  const unknown = input.knownShare < KNOWN_ENOUGH;
  if (unknown && !allowed && (stands === "even" || stands === "one-colour")) return [];
  const works = allowed || (stands !== "even" && stands !== "one-colour");
  const words =
    stands === "even"
      ? say`: no colour clearly leads`
      : stands === "one-colour"
        ? say`: nearly all is one colour`
        : "";
  return [
    finding(
      room,
      "shares-level",
      works ? "works" : "worth-a-look",
      {
        message: say`${first.name} ${first.hundredths}, ${second.name} ${second.hundredths}, all others ${third} parts of a hundred${works ? "" : words}.`,
        reason: say`60, 30 and 10 is the rule of thumb for a leading colour, a second and accents (common practice).`,
      },
      {
        first: first.hundredths,
        second: second.hundredths,
        others: third,
        stands,
        known: input.knownShare,
      },
      [],
      ["colours"],
    ),
  ];
}

/** Colours: each palette colour carried around the room, each cloth's share in the palette, the strays by name, the shares. */
export function colourFindings(input: FindingInput): Finding[] {
  const { approach } = input.room.fields;
  if (approach === "free") return [];
  const tied = approach === "restrained" ? [] : belonging(input);
  return [...carried(input), ...tied, ...levels(input)];
}
