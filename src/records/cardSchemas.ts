import { z } from "zod";
import { allowancesSchema } from "./allowancesSchema.ts";
import type { ItemTable } from "./itemTable.ts";
import { clothSchema } from "./schema/clothSchema.ts";
import { objectSchema } from "./schema/objectSchema.ts";
import { projectSchema } from "./schema/projectSchema.ts";
import { roomSchema } from "./schema/roomSchema.ts";
import { studioSchema } from "./schema/studioSchema.ts";

/** The files that a user writes. */
export const CARDS = ["studio", "cloth", "object", "project", "room"] as const;
export type CardName = (typeof CARDS)[number];

/** The schema of each file, whole: allowances and items are composed from the kinds. */
export function cardSchemas(items: ItemTable): Readonly<Record<CardName, z.ZodType>> {
  const kinds = items.map((entry) => entry.kind);
  const choices = items.map((entry) => entry.schema) as [z.ZodType, ...z.ZodType[]];
  const room = roomSchema.extend({
    items: z
      .array(z.union(choices))
      .optional()
      .meta(roomSchema.shape.items.meta() ?? {}),
  });
  return {
    studio: studioSchema(allowancesSchema(items), kinds),
    cloth: clothSchema,
    object: objectSchema,
    project: projectSchema,
    room,
  };
}
