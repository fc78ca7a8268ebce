import type { Ladder } from "./ladder.ts";
import type { RoomPalette } from "./palette.ts";
import type { RoleOf } from "./roles.ts";
import type { SchemeInput } from "./schemeInput.ts";
import type { Carried, SharePart } from "./seenColours.ts";

/** What the findings may look at. */
export interface FindingInput extends SchemeInput {
  readonly palette: RoomPalette;
  readonly roles: readonly RoleOf[];
  readonly ladder: Ladder;
  readonly shares: readonly SharePart[];
  readonly carried: readonly Carried[];
  readonly plainShare: number | null;
}
