import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import type { PlaceFault } from "./hangFixed.ts";
import { CAPTION_MM } from "./hangPiece.ts";
import { mixField, mixOfRoom } from "./mix.ts";
import { boardSheet } from "./sheetGeometry.ts";

/** What is wrong with the places fixed on a room's board: warnings, since one that cannot be followed leaves its piece to hang as computed. */
export function checkFixedPlaces(data: ProjectData, room: RoomData): Diagnostic[] {
  const fixed = room.record.fields["hang-at"] ?? [];
  if (fixed.length === 0) return [];
  const sheet = boardSheet(data.studio.fields.paper);
  const mix = mixOfRoom(data, room, sheet, pictureBook("", ""), "places");
  const nameOf = (id: string): string =>
    data.swatches.get(id)?.name ?? data.objects.get(id)?.name ?? id;
  const out: Diagnostic[] = [];
  const say = (at: number, code: string, message: string, hint: string): void => {
    out.push(
      diagnostic(room.record.place(["hang-at", at]), code, message, {
        severity: "warning",
        actual: fixed[at]?.piece ?? null,
        hint,
      }),
    );
  };
  const onBoard = new Set(mix.pieces);
  for (const [at, place] of fixed.entries()) {
    const first = fixed.findIndex((p) => p.piece === place.piece);
    if (!onBoard.has(place.piece))
      say(
        at,
        "place-not-on-board",
        `${nameOf(place.piece)} has a place to hang at, and is not on this room's board.`,
        "Name a cloth of the mix, or the anchor where it is an object with a photograph.",
      );
    else if (first < at)
      say(
        at,
        "place-twice",
        `${nameOf(place.piece)} has two places to hang at; the first is kept.`,
        "Take one of the two out.",
      );
  }
  for (const fault of mix.placeFaults) {
    const at = fixed.findIndex((p) => p.piece === fault.id);
    const { message, hint } = words(fault, nameOf, data, room);
    say(at, `place-${fault.fault}`, `${message} It hangs as worked out.`, hint);
  }
  return out;
}

function words(
  fault: PlaceFault,
  nameOf: (id: string) => string,
  data: ProjectData,
  room: RoomData,
): { message: string; hint: string } {
  const sheet = boardSheet(data.studio.fields.paper);
  const { units } = data.studio.fields;
  const field = mixField(sheet);
  const print = (mm: number): string =>
    printLength(Length.mm((Math.floor(mm * 10) / 10).toString()), units);
  const right = print(sheet.margin.left + field.width);
  const foot = print(sheet.margin.top + field.height - CAPTION_MM);
  const name = nameOf(fault.id);
  const other = fault.other === null ? "" : nameOf(fault.other);
  switch (fault.fault) {
    case "leaves-the-field":
      return {
        message: `The place for ${name} leaves the board's field.`,
        hint: `Keep it between ${print(sheet.margin.left)} and ${right} from the sheet's left edge, and between ${print(sheet.margin.top)} and ${foot} from its upper edge: its caption hangs below it.`,
      };
    case "meets-title":
      return {
        message: `The place for ${name} covers the room's name.`,
        hint: `The name “${room.record.fields.room}” stands in the upper left corner: hang the piece lower, or further to the right.`,
      };
    case "shows-less":
      return {
        message: `The photograph of ${name} shows less than the size given would need at the board's scale.`,
        hint: "Hang it smaller, or take a photograph that shows one whole repeat: it can then hang as large as is wanted.",
      };
    case "meets-another":
      return {
        message: `The places for ${name} and ${other} meet.`,
        hint: `Leave ${print(6)} beside a piece and ${print(CAPTION_MM)} below it for its caption.`,
      };
    case "leaves-no-room":
      return {
        message: `With ${name} at the place given, no room is left for ${other}.`,
        hint: "Hang it nearer to an edge, or smaller.",
      };
  }
}
