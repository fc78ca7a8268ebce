import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { lengthField, positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { colourField, countField, dateField, listField, nameField, refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";

export const ROLES = ["main", "supporting", "geometric", "small-print", "plain", "accent"] as const;
export const APPROACHES = ["restrained", "from-anchor", "collection", "free"] as const;
export const HEIGHTS = ["floor", "seat", "table", "wall", "window", "overhead"] as const;

const windowSchema = z.strictObject({
  window: nameField("a window").meta({ description: "its name; items hang `at` it" }),
  "from-left": lengthField().meta({ description: "from the wall's left end, seen from inside, to the opening's left edge" }),
  size: sizeField(2).meta({ description: "width x height of the opening" }),
  sill: lengthField().meta({ description: "from the floor to the sill" }),
  recess: lengthField().optional(),
});
const doorSchema = z.strictObject({
  door: nameField("a door").optional(),
  "from-left": lengthField(),
  size: sizeField(2),
});

const wallSchema = z.strictObject({
  wall: nameField("a wall"),
  length: positiveLengthField(),
  windows: z.array(windowSchema).optional(),
  doors: z.array(doorSchema).optional(),
  breast: z.strictObject({ "from-left": lengthField(), width: positiveLengthField(), depth: lengthField() }).optional().meta({ description: "a chimney breast" }),
});

/** The room's own part; `items` is validated apart, by each kind's schema. */
export const roomSchema = z.strictObject({
  room: textField().meta({ description: "its name" }),
  height: positiveLengthField().optional().meta({ description: "floor to ceiling" }),
  floor: sizeField(2).optional().meta({ description: "a rectangle: north wall's length x east wall's length" }),
  walls: z.array(wallSchema).optional().meta({ description: "clockwise as seen from above" }),
  measured: z
    .strictObject({ by: textField(), on: dateField(), checked: dateField().optional() })
    .optional()
    .meta({ description: "who measured, when, and when it was check-measured: until then nothing is for cutting" }),
  anchor: refField("an object or a cloth").optional().meta({ description: "the piece that the scheme is built on" }),
  approach: wordField(APPROACHES).optional(),
  colours: z
    .union([countField(2, 5), z.array(z.union([colourField(), z.strictObject({ colour: colourField(), name: textField().optional() })]))])
    .optional()
    .meta({ description: "how many colours to draw from the anchor, two to five, or a list that fixes or names them" }),
  budget: amountField().optional(),
  cloths: z
    .array(z.union([refField("a cloth"), z.record(refField("a cloth"), wordField(ROLES, { geometrics: "geometric", "small-prints": "small-print", solid: "plain" }))]))
    .optional()
    .meta({ description: "the mix; a role can be fixed: { harbour-ikat: geometric }" }),
  items: z.array(z.unknown()).optional(),
  accessories: z
    .array(z.strictObject({ what: textField(), where: textField().optional(), height: wordField(HEIGHTS).optional(), colours: listField(textField()).optional() }))
    .optional(),
  light: listField(textField()).optional(),
  accept: z
    .array(z.strictObject({ finding: refField("a finding"), of: listField(textField()).optional(), because: textField() }))
    .optional()
    .meta({ description: "findings that you overrule, with your reason" }),
  publish: listField(refField("a finding")).optional().meta({ description: "findings that the client may read" }),
  decisions: listField(textField()).optional().meta({ description: "what the client is asked to decide" }),
  standfirst: textField().optional(),
  "paper-ground": yesNoField().optional().meta({ description: "yes: the board keeps white paper instead of the wall's colour" }),
  private: textField().optional(),
});

export type RoomFields = z.output<typeof roomSchema>;
