import type { ObjectFacts } from "../items/itemKind.ts";
import type { ObjectRecord } from "../records/records.ts";
import type { Length } from "../units/length.ts";
import type { LookUps } from "./lookUps.ts";

/**
 * What an item may know of an object's card. Of two measures the first is the width; the second is a rug's depth, and the height of
 * all else.
 */
export function objectFacts(
  record: ObjectRecord | null,
  lookUps: Pick<LookUps, "objectColours">,
): ObjectFacts | null {
  if (!record) return null;
  const { fields } = record;
  const shape = fields.shape ?? "box";
  const [width, second, third] = (fields.size ?? []) as readonly (Length | undefined)[];
  const two = third === undefined;
  const rug = shape === "rug";
  return {
    id: record.id,
    name: fields.object,
    shape,
    width: width ?? null,
    depth: two && !rug ? null : (second ?? null),
    height: two ? (rug ? null : (second ?? null)) : (third ?? null),
    weight: fields.weight ?? null,
    stays: fields.stays ?? false,
    owner: fields.owner ?? null,
    round: fields.round ?? false,
    mattress: (fields.mattress as [Length, Length, Length] | undefined) ?? null,
    hasPhoto: fields.photo !== undefined,
    colours: lookUps.objectColours(record.id),
  };
}
