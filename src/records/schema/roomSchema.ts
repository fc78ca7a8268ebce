import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { dateField } from "../../fields/dateField.ts";
import { lengthField, positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import {
  colourField,
  countField,
  listField,
  nameField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "../../fields/plainFields.ts";

export const ROLES = ["main", "supporting", "geometric", "small-print", "plain", "accent"] as const;
export const APPROACHES = ["restrained", "from-anchor", "collection", "free"] as const;
export const HEIGHTS = ["floor", "seat", "table", "wall", "window", "overhead"] as const;

const windowSchema = z.strictObject({
  window: nameField("a window").meta({
    description: "its name; items hang `at` it",
    examples: ["bay"],
  }),
  "from-left": lengthField().meta({
    description: "from the wall's left end, seen from inside, to the opening's left edge",
    examples: [`4' 2"`],
  }),
  size: sizeField(2).meta({
    description: "width x height of the opening",
    examples: [`72" x 60"`],
  }),
  sill: lengthField().meta({ description: "from the floor to the sill", examples: [`30"`] }),
  recess: lengthField()
    .optional()
    .meta({ description: "depth of the reveal, from the wall to the frame", examples: [`5"`] }),
});
const doorSchema = z.strictObject({
  door: nameField("a door")
    .optional()
    .meta({ description: "its name", examples: ["hall"] }),
  "from-left": lengthField().meta({
    description: "from the wall's left end, seen from inside, to the door's left edge",
    examples: [`1' 2"`],
  }),
  size: sizeField(2).meta({
    description: "width x height with its frame",
    examples: [`32" x 80"`],
  }),
});

const wallSchema = z.strictObject({
  wall: nameField("a wall").meta({
    description:
      "its name: north, east, south, west, or one of yours; a compass word in it (`south 2`, `alcove west`) says where one looks when one looks at it, without one it turns right from the wall before",
    examples: ["north"],
  }),
  length: positiveLengthField().meta({
    description: "from corner to corner",
    examples: [`16' 6"`],
  }),
  windows: z.array(windowSchema).optional().meta({ description: "its windows" }),
  doors: z.array(doorSchema).optional().meta({ description: "its doors" }),
  breast: z
    .strictObject({
      "from-left": lengthField().meta({
        description: "from the wall's left end, seen from inside, to the breast's left edge",
        examples: ["1'"],
      }),
      width: positiveLengthField().meta({ description: "its width", examples: [`3' 6"`] }),
      depth: lengthField().meta({ description: "how far it stands out", examples: [`14"`] }),
    })
    .optional()
    .meta({ description: "a chimney breast" }),
});

/** The room's own part; `items` is validated apart, by each kind's schema. */
export const roomSchema = z.strictObject({
  room: textField().meta({ description: "its name", examples: ["Dining room"] }),
  height: positiveLengthField()
    .optional()
    .meta({ description: "floor to ceiling", examples: [`8' 9"`] }),
  floor: sizeField(2)
    .optional()
    .meta({
      description: "a rectangle: north wall's length x east wall's length",
      examples: [`16' 6" x 12' 4"`],
    }),
  flooring: z
    .strictObject({
      what: textField()
        .optional()
        .meta({ description: "boards, tiles, carpet", examples: ["oak boards"] }),
      colour: colourField().meta({
        description: "its colour as one sees it from the door; in quotes",
      }),
    })
    .optional()
    .meta({
      description:
        "the bare floor: with its colour it counts in what is seen; without, the floor is left out of the shares",
    }),
  walls: z.array(wallSchema).optional().meta({ description: "clockwise as seen from above" }),
  measured: z
    .strictObject({
      by: textField().meta({ description: "who measured", examples: ["studio"] }),
      on: dateField().meta({ description: "when" }),
      checked: dateField()
        .optional()
        .meta({ description: "when it was measured again, before cutting" }),
    })
    .optional()
    .meta({
      description:
        "who measured, when, and when it was check-measured: until then nothing is for cutting",
    }),
  anchor: refField("an object or a cloth")
    .optional()
    .meta({ description: "the piece that the scheme is built on" }),
  approach: wordField(APPROACHES)
    .optional()
    .meta({ description: "how the scheme is built; the findings follow it" }),
  colours: z
    .union([
      countField(2, 5),
      z.array(
        z.union([
          colourField(),
          z.strictObject({
            colour: colourField().meta({
              description: "the colour as a screen shows it; in quotes",
            }),
            name: textField()
              .optional()
              .meta({ description: "what you call it", examples: ["rust"] }),
          }),
        ]),
      ),
    ])
    .optional()
    .meta({
      description:
        "how many colours to draw from the anchor, two to five, or a list that fixes or names them",
      examples: ["4"],
    }),
  budget: amountField()
    .optional()
    .meta({ description: "what the client wants to spend on this room", examples: ["6500"] }),
  cloths: z
    .array(
      z.union([
        refField("a cloth"),
        z.record(
          refField("a cloth"),
          wordField(ROLES, {
            geometrics: "geometric",
            "small-prints": "small-print",
            solid: "plain",
          }),
        ),
      ]),
    )
    .optional()
    .meta({
      description: "the mix; a role can be fixed",
      examples: ["[fern-trellis, { harbour-ikat: geometric }]"],
    }),
  items: z
    .array(z.unknown())
    .optional()
    .meta({
      description: "what is made or placed in the room, each begun by its kind and title",
      examples: ['[{ cushion: Window seat, cloth: seed-print, size: 20" x 20" }]'],
    }),
  accessories: z
    .array(
      z.strictObject({
        what: textField().meta({ description: "what it is", examples: ["copper moulds"] }),
        where: textField()
          .optional()
          .meta({ description: "where it stands", examples: ["dresser"] }),
        height: wordField(HEIGHTS).optional().meta({ description: "at what height it is seen" }),
        colours: listField(textField())
          .optional()
          .meta({ description: "the colours that it carries", examples: ["[rust]"] }),
      }),
    )
    .optional()
    .meta({ description: "small things that carry colour" }),
  light: listField(textField())
    .optional()
    .meta({
      description: "lamps, and where the daylight comes from",
      examples: ["[north light, two table lamps]"],
    }),
  accept: z
    .array(
      z.strictObject({
        finding: refField("a finding").meta({ description: "its code" }),
        of: listField(textField())
          .optional()
          .meta({
            description: "what it is a finding of",
            examples: ["[fern-trellis, seed-print]"],
          }),
        because: textField().meta({
          description: "your reason",
          examples: ["They are on opposite walls."],
        }),
      }),
    )
    .optional()
    .meta({ description: "findings that you overrule, with your reason" }),
  publish: listField(refField("a finding")).optional().meta({
    description:
      "findings that the client reads beside what works, by their codes; of what works, those that stand first; what the studio pays (ready-unpriced) is never published",
  }),
  decisions: listField(textField())
    .optional()
    .meta({ description: "what the client is asked to decide" }),
  compare: z
    .array(
      z.strictObject({
        cloth: refField("a cloth").meta({ description: "a cloth of this room" }),
        with: refField("a cloth").meta({ description: "what could stand in its place" }),
      }),
    )
    .optional()
    .meta({
      description: "cloths to compare by what the finished room costs; for the studio alone",
      examples: ["[{ cloth: fern-trellis, with: harbour-ikat }]"],
    }),
  standfirst: textField()
    .optional()
    .meta({ description: "a sentence below the room's name on its board" }),
  "paper-ground": yesNoField()
    .optional()
    .meta({ description: "yes: the board keeps white paper instead of the wall's colour" }),
  "hang-at": z
    .array(
      z.strictObject({
        piece: refField("an object or a cloth").meta({
          description: "the piece that hangs there: a cloth of the mix, or the anchor",
          examples: ["fern-trellis"],
        }),
        "from-left": lengthField().meta({
          description: "on the printed board, from the sheet's left edge to the piece's",
          examples: [`5"`],
        }),
        "from-top": lengthField().meta({
          description: "on the printed board, from the sheet's upper edge to the piece's",
          examples: [`2 1/2"`],
        }),
        size: sizeField(2)
          .optional()
          .meta({
            description: "width x height on the printed board; otherwise as it is worked out",
            examples: [`4" x 5 1/2"`],
          }),
      }),
    )
    .optional()
    .meta({
      description: "pieces of the board that hang where you say; the others make room for them",
    }),
  private: textField().optional().meta({ description: "for the studio alone" }),
});

export type RoomFields = z.output<typeof roomSchema>;
