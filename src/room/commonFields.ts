import type { Placement } from "../fields/placementField.ts";
import type { ItemRecord } from "../records/records.ts";
import type { Length } from "../units/length.ts";

/**
 * What placing an item needs to know of its fields, whatever its kind: what `fields/itemBase.ts` gives to all, and the sizes that go
 * by the same name in every kind that has them. All else in an item's fields belongs to its kind alone.
 */
export interface CommonFields {
  readonly at?: Placement;
  readonly on?: unknown;
  readonly cloth?: string;
  readonly colour?: string;
  readonly object?: string;
  readonly maker?: string;
  readonly count?: number;
  readonly touches?: readonly string[];
  readonly existing?: boolean;
  readonly owner?: string;
  readonly after?: readonly string[];
  readonly "second-hand"?: boolean;
  readonly mount?: "inside" | "outside";
  /** Width x height, or width x depth x height. */
  readonly size?: readonly Length[];
  readonly width?: Length;
  readonly height?: Length;
  readonly drop?: Length;
  readonly pole?: Length;
  readonly "pole-height"?: Length;
  readonly to?: "floor" | "sill" | "below-sill";
}

export function commonFields(item: ItemRecord): CommonFields {
  return item.fields as CommonFields;
}
