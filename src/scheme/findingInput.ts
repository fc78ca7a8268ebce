import type { Ladder } from "./ladder.ts";
import type { RoomPalette } from "./palette.ts";
import type { RoleOf } from "./roles.ts";
import type { SchemeInput } from "./schemeInput.ts";
import type { Carried, SharePart } from "./seenColours.ts";
import type { Traditions } from "./traditions.ts";

/** What the findings may look at. */
export interface FindingInput extends SchemeInput {
  readonly palette: RoomPalette;
  readonly roles: readonly RoleOf[];
  readonly ladder: Ladder;
  readonly traditions: Traditions;
  readonly shares: readonly SharePart[];
  readonly carried: readonly Carried[];
  /** How much of what is seen has a known colour, 0 to 1. */
  readonly knownShare: number;
  readonly plainShare: number | null;
  /** The plain share with curtains closed. */
  readonly plainClosed: number | null;
  /** Sentences in the studio's spelling: our words are spelled, what is put in is not. */
  readonly say: (ours: TemplateStringsArray, ...theirs: readonly (string | number)[]) => string;
}
