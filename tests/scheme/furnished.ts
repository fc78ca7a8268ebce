import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { furnishRoom } from "../../src/room/furnishRoom.ts";
import { schemeInputOf } from "../../src/scheme/fromRoom.ts";
import { type RoomScheme, roomScheme } from "../../src/scheme/roomScheme.ts";
import type { SchemeInput } from "../../src/scheme/schemeInput.ts";
import type { Swatch } from "../../src/swatches/swatch.ts";
import { usedCloth, usedObject } from "../../src/swatches/usedCloth.ts";
import { lookUpsOf, projectOf, recordsOf, type SmallStudio } from "../quantities/studioOf.ts";

/** The first room of a small studio, read, furnished and judged by the program; its cloths have the colours of their cards. */
export function furnishedScheme(
  small: SmallStudio,
  swatchMore: Readonly<Record<string, Partial<Swatch>>> = {},
  on = "2026-11-25",
): { readonly input: SchemeInput; readonly scheme: RoomScheme } {
  const records = recordsOf(small);
  const project = projectOf(records);
  const record = project.rooms[0];
  if (!record) throw new Error("no room");
  const room = furnishRoom(records, record, ITEM_KINDS, lookUpsOf(records));
  const input = schemeInputOf({
    records,
    room,
    swatches: new Map(
      [...records.cloths].map(([id, card]) => [
        id,
        { ...usedCloth(card, null, null), ...swatchMore[id] },
      ]),
    ),
    objects: new Map([...records.objects].map(([id, card]) => [id, usedObject(card, null, null)])),
    unpriced: [],
    language: records.studio?.fields.language ?? "en-GB",
    on,
  });
  return { input, scheme: roomScheme(input) };
}
