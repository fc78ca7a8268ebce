import type { ItemKind, Made } from "../items/itemKind.ts";
import type { ProjectMoney } from "../money/projectMoney.ts";
import type { ProjectQuantities } from "../quantities/quantityTypes.ts";
import type {
  ItemRecord,
  ProjectRecord,
  Records,
  RoomRecord,
  StudioRecord,
} from "../records/records.ts";
import type { RoomPlan } from "../room/roomPlan.ts";
import type { RoomScheme } from "../scheme/roomScheme.ts";
import type { Swatch } from "../swatches/swatch.ts";

/** An item with everything that was worked out for it. */
export interface ItemData {
  readonly record: ItemRecord;
  readonly kind: ItemKind;
  readonly made: Made;
  /** The maker's key in studio.md, or null. */
  readonly maker: string | null;
  readonly phase: number;
}

/** A room with everything that was worked out for it. */
export interface RoomData {
  readonly record: RoomRecord;
  readonly plan: RoomPlan;
  readonly scheme: RoomScheme;
  readonly items: readonly ItemData[];
  /** The wall colour that the board stands on, or null without paint or paper. */
  readonly wallColour: string | null;
}

/** A project with everything that was worked out for it: what documents may choose from. */
export interface ProjectData {
  readonly studio: StudioRecord;
  readonly records: Records;
  readonly project: ProjectRecord;
  readonly rooms: readonly RoomData[];
  /** Cloths by card, as used. */
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly objects: ReadonlyMap<string, Swatch>;
  readonly quantities: ProjectQuantities;
  readonly money: ProjectMoney;
  /** ISO date on the documents. */
  readonly dated: string;
}
