import { difference } from "../../colour/difference.ts";
import { hueRelation } from "../../colour/wheel.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { isNeutral, nearestInPalette, SAME_COLOUR } from "../palette.ts";
import { finding, listed, percent } from "./make.ts";

/** A colour is carried around when it stands in this many places, at two heights or more; common practice, no source. */
const PLACES = 3;
const HEIGHTS = 2;
/** A colour outside the palette is spoken of from this share of its cloth. */
const SPOKEN_OF = 0.05;

function carried(input: FindingInput): Finding[] {
  return input.carried.map((c) => {
    const places = c.items.map((i) => i.title);
    const enough = c.items.length >= PLACES && c.zones.length >= HEIGHTS;
    const evidence = { places: c.items.length, heights: c.zones.length };
    if (enough) {
      return finding(
        input.room,
        "colour-carried",
        "works",
        {
          message: `${c.colour.name} is carried around the room: ${listed(places)}.`,
          reason: `A colour in ${PLACES} places or more, at different heights, holds a room together (common practice).`,
        },
        evidence,
        [c.colour.hex],
        ["colours"],
      );
    }
    const where =
      c.items.length === 0
        ? "nowhere yet"
        : c.items.length === 1
          ? `once, on ${places[0]}`
          : `in ${c.items.length} places, ${listed(places)}${c.zones.length < HEIGHTS ? ", all at one height" : ""}`;
    return finding(
      input.room,
      "colour-once",
      "worth-a-look",
      {
        message: `${c.colour.name} is seen ${where}.`,
        reason: `A colour of the palette wants ${PLACES} places at ${HEIGHTS} heights (common practice). A cushion, a welt or an accessory carries it at little cost.`,
      },
      evidence,
      [c.colour.hex],
      ["colours"],
    );
  });
}

function belonging(input: FindingInput): Finding[] {
  const palette = input.palette.colours;
  if (palette.length === 0) return [];
  return input.roles.flatMap((role): Finding[] => {
    const swatch = input.swatches.get(role.cloth);
    if (!swatch || swatch.colours.length === 0) return [];
    const inside = (hex: string): boolean =>
      isNeutral(hex) || (nearestInPalette(hex, palette)?.distance ?? 100) <= SAME_COLOUR;
    const cohesion = swatch.colours.filter((c) => inside(c.hex)).reduce((a, c) => a + c.share, 0);
    const strays = swatch.colours.filter((c) => !inside(c.hex) && c.share >= SPOKEN_OF);
    if (strays.length === 0) {
      return [
        finding(
          input.room,
          "cloth-belongs",
          "works",
          {
            message: `${percent(cohesion)} of ${swatch.name} is in the room's colours.`,
            reason:
              "What a cloth shares with the palette is what ties it to the others (common practice).",
          },
          { cohesion },
          [role.cloth],
        ),
      ];
    }
    return strays.map((c) => {
      const near = palette.reduce((a, b) =>
        difference(c.hex, b.hex) < difference(c.hex, a.hex) ? b : a,
      );
      const complement = palette.find((p) => hueRelation(c.hex, p.hex) === "complementary");
      const told = complement ? ` It is the complement of ${complement.name}.` : "";
      return finding(
        input.room,
        "colour-outside",
        "worth-a-look",
        {
          message: `${swatch.name} brings a colour from outside: ${c.name}, ${percent(c.share)} of it.${told}`,
          reason:
            "A colour that nothing else has stands out (common practice). As an accent that may be just what is wanted.",
        },
        { share: c.share, distance: difference(c.hex, near.hex), cohesion },
        [role.cloth, c.hex],
      );
    });
  });
}

/** The dominant, second and third share of what is seen against the decorator's 60, 30, 10. */
function levels(input: FindingInput): Finding[] {
  const [first, second, ...rest] = input.shares;
  if (!first || !second || rest.length === 0) return [];
  const third = rest.reduce((a, s) => a + s.hundredths, 0);
  const spread = first.hundredths >= 40 && first.hundredths > second.hundredths * 1.25;
  return [
    finding(
      input.room,
      "shares-level",
      spread ? "works" : "worth-a-look",
      {
        message: `${first.name} ${first.hundredths}, ${second.name} ${second.hundredths}, all others ${third} parts of a hundred${spread ? "" : ": no colour clearly leads"}.`,
        reason:
          "60, 30 and 10 is the rule of thumb for a leading colour, a second and accents (common practice).",
      },
      { first: first.hundredths, second: second.hundredths, others: third },
      [],
      ["colours"],
    ),
  ];
}

/** Colours: each palette colour carried around the room, each cloth's share in the palette, the strays by name, the shares. */
export function colourFindings(input: FindingInput): Finding[] {
  if (input.room.fields.approach === "free") return [];
  return [...carried(input), ...belonging(input), ...levels(input)];
}
