import type { RoleOf } from "../../scheme/roles.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import { spelled } from "../../units/spelling.ts";
import { AWAITED } from "../pictures/colourCard.ts";
import { type Language, listed, roleWord, shortened } from "../words/phrases.ts";
import { LETTER_MM as PLACE_LETTER_MM, placesInOneLine } from "./captionPlaces.ts";
import type { CloseUp } from "./closeUp.ts";
import { CAPTION_MM, type HungPiece } from "./hangPiece.ts";

export interface MixCaption {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly name: string;
  /** True where the name is so long for its width that it is set smaller. */
  readonly small: boolean;
  readonly role: string;
  /** The declared colours of a cloth that nobody has photographed yet, in words; else empty. */
  readonly colours: string;
  readonly place: string;
  /** The piece itself, for a narrow screen on which the pieces follow each other, the widest first. */
  readonly piece: {
    readonly id: string;
    readonly width: number;
    readonly order: number;
    readonly view: string;
  };
  /** What opens on a screen where the piece is pressed; null without a photograph whose size is known. */
  readonly closeUp: CloseUp | null;
}

/** About how wide a letter of a cloth's name runs, millimetres. */
const NAME_LETTER_MM = 2.05;

/** A caption of more lines than its channel holds would touch what hangs so close below it. */
const CLOSE_BELOW_MM = CAPTION_MM + 4;

/** True where another piece hangs close below a piece and its caption. */
function hangsBelow(other: HungPiece, piece: HungPiece): boolean {
  const foot = piece.y + piece.height;
  const under = other.x < piece.x + piece.width && other.x + other.width > piece.x;
  return under && other.y >= foot && other.y < foot + CLOSE_BELOW_MM;
}

/** True where a piece, or the caption below it, stands at the height of another's caption. */
function beside(other: HungPiece, piece: HungPiece): boolean {
  const from = piece.y + piece.height;
  return other.y < from + CAPTION_MM && other.y + other.height + CAPTION_MM > from;
}

/** What a caption says, and of which piece. */
export interface Captioned {
  readonly x: number;
  readonly y: number;
  readonly swatch: Swatch;
  /** Null of the anchor. */
  readonly role: RoleOf | null;
  readonly isPaper: boolean;
  /** True where its declared colours stand for it. */
  readonly awaited: boolean;
  readonly places: readonly string[];
  readonly language: Language;
  readonly fieldWidth: number;
  readonly pieceId: string;
  readonly closeUp: CloseUp | null;
}

/** A small name's letter, and how many lines of it, with one for the rest, stand in the channel over what hangs close below. */
const SMALL_LETTER_MM = 1.64;
const CHANNEL_NAME_LINES = 3;

/** Name, role and place below a piece, at its left edge; as wide as the next piece beside it leaves. */
export function mixCaption(h: HungPiece, hung: readonly HungPiece[], of: Captioned): MixCaption {
  const { x, y, swatch, role, language } = of;
  const next = hung.filter((o) => o.x > h.x && beside(o, h)).sort((a, b) => a.x - b.x)[0];
  const width = Math.max(h.width + 4, next ? next.x - h.x - 2 : of.fieldWidth - x - 8);
  const isClose = hung.some((o) => hangsBelow(o, h));
  const most = Math.floor((width / SMALL_LETTER_MM) * CHANNEL_NAME_LINES * 0.85);
  const name = isClose ? shortened(swatch.name, most) : swatch.name;
  const lines = Math.ceil((name.length * NAME_LETTER_MM) / width);
  const kind = role
    ? roleWord(role.role, swatch.kind, of.isPaper)
    : spelled("where the colours come from", language);
  const unscaled = role !== null && swatch.photo !== null && swatch.photo.showsMm === null;
  const said = of.awaited ? `${kind}, ${AWAITED}` : unscaled ? `${kind}, not to scale` : kind;
  // Of a name of several lines the rest has one line, role and place together.
  const left = lines > 1 ? width - (said.length + 2) * PLACE_LETTER_MM : width;
  const place = isClose ? placesInOneLine(of.places, left) : listed(of.places);
  return {
    x,
    y: y + h.height + 2,
    width,
    name,
    // A name of two lines or more leaves one line for the rest, so that the caption keeps to its channel.
    small: lines > 2,
    role: lines > 1 && place !== "" ? `${said}; ${place}` : said,
    colours: of.awaited ? listed(swatch.colours.map((c) => c.name)) : "",
    place: lines > 1 ? "" : place,
    piece: {
      id: of.pieceId,
      width: Number(h.width.toFixed(2)),
      order: -Math.round(h.width),
      // The shadow reaches a little further than the piece.
      view: [x, y, h.width + 1.5, h.height + 2].map((n) => n.toFixed(2)).join(" "),
    },
    closeUp: of.closeUp,
  };
}

/** The mix in words, for who does not see it. */
export function spokenMix(captions: readonly MixCaption[]): string {
  const each = captions.map((c) => {
    const said = [c.name, c.role, c.place].filter((w) => w !== "").join(", ");
    return c.colours === "" ? said : `${said}: ${c.colours}`;
  });
  return `${each.join("; ")}.`;
}
