import type { ItemKind, Made } from "../items/itemKind.ts";
import type { Account } from "../money/account/account.ts";
import type { Alternative } from "../money/alternatives.ts";
import type { ProjectMoney } from "../money/projectMoney.ts";
import type { ProjectQuantities } from "../quantities/quantityTypes.ts";
import type {
  ItemRecord,
  ProjectRecord,
  Records,
  RoomRecord,
  StudioRecord,
} from "../records/records.ts";
import type { Changes } from "../revisions/changes.ts";
import type { SentRevision } from "../revisions/sentRevision.ts";
import type { RoomPlan } from "../room/roomPlan.ts";
import type { SchemeChanges } from "../scheme/changes.ts";
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

/** One way to make an item, worked out whole. */
export interface ChoiceOption {
  readonly title: string;
  /** True for what the drawings and sums now show. */
  readonly stands: boolean;
  readonly priced: Alternative;
  /** Cards that the item then uses, by surface. */
  readonly uses: readonly { readonly surface: string; readonly cloth: string }[];
  /** What is then bought of each cloth that the item shares in, in words. */
  readonly buys: readonly { readonly cloth: string; readonly text: string }[];
  readonly changes: SchemeChanges;
}

/** An item with options; refused ones are left out. */
export interface ItemChoice {
  readonly room: string;
  readonly item: string;
  /** True until one has the answer yes. */
  readonly open: boolean;
  readonly options: readonly ChoiceOption[];
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
  readonly account: Account;
  readonly choices: readonly ItemChoice[];
  /** Cloths that the rooms' files ask to compare; for the studio alone. */
  readonly compared: readonly Alternative[];
  /** What was sent before, by its days. */
  readonly sent: readonly SentRevision[];
  /** The proposal as it would be recorded now, and what is another in it than in the one that was sent before it, or null. */
  readonly state: SentRevision;
  readonly changes: Changes | null;
  /** ISO date on the documents. */
  readonly dated: string;
}
