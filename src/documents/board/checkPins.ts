import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { CAPTION_MM } from "./hangPiece.ts";
import type { PinFault } from "./hangPinned.ts";
import { mixField, mixOfRoom } from "./mix.ts";
import { boardSheet } from "./sheetGeometry.ts";

/** What is wrong with the pins of a room's board: warnings, since a pin that cannot be followed leaves its piece to hang as computed. */
export function checkPins(data: ProjectData, room: RoomData): Diagnostic[] {
  const pins = room.record.fields.pins ?? [];
  if (pins.length === 0) return [];
  const sheet = boardSheet(data.studio.fields.paper);
  const mix = mixOfRoom(data, room, sheet, pictureBook("", ""), "pins");
  const nameOf = (id: string): string =>
    data.swatches.get(id)?.name ?? data.objects.get(id)?.name ?? id;
  const out: Diagnostic[] = [];
  const say = (at: number, code: string, message: string, hint: string): void => {
    out.push(
      diagnostic(room.record.place(["pins", at]), code, message, {
        severity: "warning",
        actual: pins[at]?.pin ?? null,
        hint,
      }),
    );
  };
  const onBoard = new Set(mix.pieces);
  for (const [at, pin] of pins.entries()) {
    const first = pins.findIndex((p) => p.pin === pin.pin);
    if (!onBoard.has(pin.pin))
      say(
        at,
        "pin-not-on-board",
        `${nameOf(pin.pin)} is pinned, and it is not on this room's board.`,
        "Pin a cloth of the mix, or the anchor where it is an object with a photograph.",
      );
    else if (first < at)
      say(
        at,
        "pin-twice",
        `${nameOf(pin.pin)} is pinned twice; the first place is kept.`,
        "Take one of the two out.",
      );
  }
  for (const fault of mix.pinFaults) {
    const at = pins.findIndex((p) => p.pin === fault.id);
    const { message, hint } = words(fault, nameOf, data, room);
    say(at, `pin-${fault.fault}`, `${message} It hangs as worked out.`, hint);
  }
  return out;
}

function words(
  fault: PinFault,
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
        message: `The place pinned for ${name} leaves the board's field.`,
        hint: `Keep it between ${print(sheet.margin.left)} and ${right} from the sheet's left edge, and between ${print(sheet.margin.top)} and ${foot} from its upper edge: its caption hangs below it.`,
      };
    case "meets-title":
      return {
        message: `The place pinned for ${name} covers the room's name.`,
        hint: `The name “${room.record.fields.room}” stands in the upper left corner: pin the piece lower, or further to the right.`,
      };
    case "meets-another":
      return {
        message: `The places pinned for ${name} and ${other} meet.`,
        hint: `Leave ${print(6)} beside a piece and ${print(CAPTION_MM)} below it for its caption.`,
      };
    case "leaves-no-room":
      return {
        message: `With ${name} where it is pinned, no room is left for ${other}.`,
        hint: "Pin it nearer to an edge, or smaller.",
      };
  }
}
