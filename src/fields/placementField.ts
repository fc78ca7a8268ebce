import { z } from "zod";
import { lengthField, pointField } from "./lengthField.ts";
import { refField, wordField } from "./plainFields.ts";

export const COMPASS = ["north", "east", "south", "west"] as const;

/** The sides of a bed at which something hangs; left and right as one looks at it from its foot. */
export const BED_SIDES = ["head", "foot", "left", "right"] as const;
export type BedSide = (typeof BED_SIDES)[number];

/**
 * Where an item is: a window by its name; on a wall, from its left end as seen from inside, its foot at `height`; on the floor,
 * from the west and the north wall to the item's middle; or on another item or object.
 */
export function placementField() {
  return z.union([
    refField("a window").meta({ description: "a window or a door, by its name" }),
    z.strictObject({
      wall: refField("a wall").meta({ description: "the wall that it stands against or hangs on" }),
      "from-left": lengthField()
        .optional()
        .meta({
          description: "from the wall's left end, seen from inside, to the item's left edge",
          examples: [`1' 2"`],
        }),
      height: lengthField()
        .optional()
        .meta({ description: "from the floor to the item's foot", examples: [`48"`] }),
    }),
    z.strictObject({
      floor: pointField().meta({
        description: "the item's middle, from the west and from the north wall",
      }),
      facing: wordField(COMPASS).optional().meta({ description: "where its front looks" }),
      wall: refField("a wall")
        .optional()
        .meta({ description: "the wall that it is drawn against" }),
    }),
    z.strictObject({
      on: refField("an item").meta({
        description:
          "the item or object that it lies on; where there are several, its pieces are dealt out over them",
      }),
      side: wordField(BED_SIDES).optional().meta({
        description:
          "of curtains, a valance or a pelmet that hang on a bed: at which of its sides, left and right as one looks at it from its foot",
      }),
    }),
  ]);
}

export type Placement = z.output<ReturnType<typeof placementField>>;
