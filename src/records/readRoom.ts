import { type Diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { checkAccepted } from "./checks/accepted.ts";
import { checkBoughtDays, checkMeasuredDays } from "./checks/dates.ts";
import type { Known, Use } from "./checks/known.ts";
import { checkHasItems, checkMix, checkUnused } from "./checks/mix.ts";
import { roomNames } from "./checks/names.ts";
import { checkReferences } from "./checks/references.ts";
import { checkStanding } from "./checks/standing.ts";
import { checkSums } from "./checks/sums.ts";
import { nodeAt } from "./frontMatter/node.ts";
import type { ItemTable } from "./itemTable.ts";
import { placeIn } from "./reading/card.ts";
import { collectLeaves } from "./reading/collectLeaves.ts";
import { type Reading, readCard, type TextFile } from "./reading/readCard.ts";
import { readItems } from "./reading/readItems.ts";
import type { RoomRecord } from "./records.ts";
import { roomSchema } from "./schema/roomSchema.ts";

/** A room as far as it could be read, and the cards that it uses. */
export interface ReadRoom {
  /** Null where anything in the file is an error. */
  readonly record: RoomRecord | null;
  readonly uses: readonly Use[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads a room's file: its own keys, its items by their kinds, and every name that they point at. */
export function readRoom(
  file: TextFile,
  project: string,
  table: ItemTable,
  reading: Reading,
  known: Known,
  currency: string | null,
): ReadRoom {
  const read = readCard(file, roomSchema, reading);
  if (read.card === null) return { record: null, uses: [], diagnostics: read.diagnostics };
  const { card, items, diagnostics: ofItems } = readItems(read.card, table, reading.synonyms);
  const { names, diagnostics: ofNames } = roomNames(card, items);
  const here: Known = { ...known, room: names };
  const own = collectLeaves(card.root, roomSchema);
  const inItems = items.flatMap((item) => {
    const node = nodeAt(card.root, ["items", item.index]);
    if (!node) return [];
    const options = nodeAt(node, ["options"]);
    const inOptions = (options?.kind === "list" ? options.entries : []).flatMap((option, at) =>
      collectLeaves(option, item.entry.schema, ["items", item.index, "options", at]),
    );
    return [...collectLeaves(node, item.entry.schema, ["items", item.index]), ...inOptions];
  });
  const leaves = [...own, ...inItems];
  const references = checkReferences(card, leaves, here);
  const found = [
    ...read.diagnostics,
    ...ofItems,
    ...ofNames,
    ...references.diagnostics,
    ...checkAccepted(card, here),
    ...checkStanding(card, names),
    ...checkMix(card, own),
    ...checkHasItems(card),
    ...checkMeasuredDays(card),
    ...checkBoughtDays(card),
    ...checkSums(card, leaves, currency),
  ];
  // What no item uses, and what stands nowhere, is only known once every item could be read.
  const diagnostics = hasErrors(found)
    ? found.filter((d) => d.code !== "object-not-placed")
    : [...found, ...checkUnused(card, own, inItems)];
  const whole = read.fields !== null && !hasErrors(diagnostics);
  const record: RoomRecord | null =
    whole && read.fields
      ? {
          id: read.id,
          path: file.path,
          project,
          fields: read.fields,
          body: read.body,
          items: items.flatMap((item) => item.record ?? []),
          place: (path) => placeIn(card, path),
        }
      : null;
  return { record, uses: references.uses, diagnostics };
}
