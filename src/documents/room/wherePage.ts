import type { Binding } from "../../drawing/binding.ts";
import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Carried } from "../../scheme/seenColours.ts";
import { spelled } from "../../units/spelling.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";
import { type SheetPart, sheetPart } from "../board/sheetPart.ts";
import { partAboutMotif } from "../pictures/aboutMotif.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { capital, type Language, listed, roleWord, shortened } from "../words/phrases.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { roomBindings } from "./bindings.ts";
import { floorPlanShapes } from "./floorPlan.ts";
import { type Box, drawPlanNames, planNames } from "./planNames.ts";
import { whereWords } from "./whereWords.ts";
import { fitting, type RoomWords, worksWords } from "./worksWords.ts";

export interface WherePage {
  readonly plan: Markup | null;
  /** The part of the sheet that the plan takes. */
  readonly pan: SheetPart | null;
  readonly planWords: string;
  /** The plan's scale in words, which is true on paper alone. */
  readonly planScale: string;
  readonly cloths: readonly {
    readonly name: string;
    readonly role: string;
    readonly where: string;
    readonly square: Markup;
  }[];
  readonly colours: readonly {
    readonly name: string;
    readonly hex: string;
    readonly where: string;
    readonly square: Markup;
  }[];
  /** What works in the room, and what else the studio publishes of its findings; as much as the page holds. */
  readonly words: RoomWords;
  /** Where these words stand: below the plan where that has more room, else null, and they follow the lists. */
  readonly wordsAt: { readonly x: number; readonly y: number; readonly width: number } | null;
  readonly nameWidth: number;
  readonly listX: number;
  readonly listWidth: number;
}

const SCALES = [20, 24, 25, 30, 32, 40, 48, 50, 60, 80, 100];
const SQUARE_MM = 9;
/** On the page a letter of the lists takes so much on average, and a line so much; the two heads with the space about them. */
const LETTER_MM = 1.8;
const LINE_MM = 5;
const HEADS_MM = 26;
const r = svgNumber;

/** Furniture in plan is filled with its cloth's average, never with pattern: at this scale a pattern is only noise. */
function flatBindings(bindings: (surface: string) => Binding): (surface: string) => Binding {
  return (surface) => {
    const b = bindings(surface);
    if (b === null || "hex" in b) return b;
    return { hex: b.averageHex };
  };
}

function square(hex: string, href: string | null, id: string): Markup {
  const inner = href
    ? `<image href="${escapeHtml(href)}" width="${SQUARE_MM}" height="${SQUARE_MM}" preserveAspectRatio="xMidYMid slice"/>`
    : `<rect width="${SQUARE_MM}" height="${SQUARE_MM}" fill="${hex}"/>`;
  return {
    html: `<svg class="square" viewBox="0 0 ${SQUARE_MM} ${SQUARE_MM}" aria-hidden="true" xmlns="http://www.w3.org/2000/svg"><clipPath id="${id}"><rect width="${SQUARE_MM}" height="${SQUARE_MM}"/></clipPath><g clip-path="url(#${id})">${inner}</g></svg>`,
  };
}

/** A small square of a cloth at a quarter of its size, from the middle of its photograph. */
function cut(data: ProjectData, cloth: string, book: PictureBook): string | null {
  const swatch = data.swatches.get(cloth);
  const photo = swatch?.photo;
  if (!swatch || !photo?.showsMm) return null;
  const size = Math.min(SQUARE_MM * 4, photo.showsMm * 0.6);
  const part = partAboutMotif(photo, photo.showsMm, { width: size, height: size });
  return book.crop(swatch, part, SQUARE_MM)?.href ?? null;
}

/** The places that carry a colour, in words. */
function coloursWords(c: Carried): string {
  const titles = c.items.map((i) => i.title.charAt(0).toLowerCase() + i.title.slice(1));
  return titles.length > 0 ? capital(listed([...new Set(titles)])) : "Nowhere yet";
}

/** The column of names: wider where a name is long, and a longer one is cut; the board has it in full. */
const NAME_MM = 54;
const LONG_NAME = { from: 24, mm: 84, letters: 38 };

/** Millimetres of a row of the lists: its square, or the lines of its places beside `names` of names. */
function rowMm(places: readonly string[], listWidth: number, names: number): number {
  const letters = (listWidth - 13 - names) / LETTER_MM;
  return Math.max(9, Math.ceil(listed(places).length / letters) * 4.4) + 2.4;
}

/** Where it goes: the room in plan, then each cloth by its places and each colour by the places that carry it. */
export function wherePageOf(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): WherePage {
  const language = data.studio.fields.language as Language;
  const plan = floorPlanShapes(room, lookUpsOf(data));
  const width = sheet.width * 0.5 - sheet.margin.left;
  const height = sheet.height - sheet.margin.top - sheet.margin.bottom - 40;
  const scale = plan
    ? (SCALES.find((s) => (plan.width + 220) / s <= width && (plan.height + 220) / s <= height) ??
      120)
    : 1;
  let markup: Markup | null = null;
  let pan: SheetPart | null = null;
  const planFoot = plan ? sheet.margin.top + 34 + (plan.height + 260) / scale : 0;
  if (plan) {
    const rendered = renderDrawing(
      {
        widthMm: plan.width,
        heightMm: plan.height,
        shapes: plan.shapes,
        dimensions: [],
        title: `${capital(room.record.fields.room)} from above`,
        description: room.items.map((i) => i.record.title).join("; "),
      },
      {
        scale: 1 / scale,
        bindings: flatBindings(roomBindings(data, room, scale, book)),
        style: "cloth",
        dimensions: false,
        idPrefix: `${prefix}-plan`,
      },
    );
    const edge = 130 / scale;
    const x = sheet.margin.left + edge;
    const y = sheet.margin.top + 34 + edge;
    const inner = rendered.svg
      .replace(
        / width="[^"]*mm" height="[^"]*mm" viewBox="[^"]*"/,
        ` x="${r(x - edge)}" y="${r(y - edge)}" width="${r(plan.width / scale + 2 * edge)}" height="${r(plan.height / scale + 2 * edge)}" viewBox="${r(-edge)} ${r(-edge)} ${r(plan.width / scale + 2 * edge)} ${r(plan.height / scale + 2 * edge)}"`,
      )
      .replace(' xmlns="http://www.w3.org/2000/svg"', "");
    const onPaper = <B extends Box>(box: B): B => ({
      ...box,
      left: x + box.left / scale,
      right: x + box.right / scale,
      top: y + box.top / scale,
      foot: y + box.foot / scale,
    });
    pan = sheetPart(
      x - edge,
      y - edge,
      x + plan.width / scale + edge,
      y + plan.height / scale + edge,
    );
    const floor = onPaper({ left: 0, top: 0, right: plan.width, foot: plan.height });
    const names = planNames(
      plan.pieces.map((piece) =>
        onPaper({ ...piece, title: data.objects.get(piece.object ?? "")?.name ?? piece.title }),
      ),
      floor,
      plan.solid.map(onPaper),
    );
    markup = {
      html: `<svg class="wall-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" xmlns="http://www.w3.org/2000/svg">${inner}${drawPlanNames(names)}</svg>`,
    };
  }
  const listWidth = sheet.width * 0.46 - sheet.margin.right;
  const colours = room.scheme.carried.map((c) => coloursWords(c));
  const isLong = room.scheme.roles.some((role) => role.name.length > LONG_NAME.from);
  const nameWidth = isLong ? LONG_NAME.mm : NAME_MM;
  const rows =
    room.scheme.roles.reduce(
      (sum, role) => sum + rowMm([whereWords(role.cloth, room, language)], listWidth, nameWidth),
      0,
    ) + colours.reduce((sum, words) => sum + rowMm([words], listWidth, nameWidth), 0);
  const foot = sheet.height - sheet.margin.bottom;
  const below = foot - sheet.margin.top - 20 - rows - HEADS_MM;
  const underPlan = plan ? foot - planFoot - 6 : 0;
  const left = underPlan > below;
  const lines = Math.floor(Math.max(below, underPlan) / LINE_MM);
  const wide = left ? width - 20 : listWidth;
  return {
    words: fitting(worksWords(room, language), lines, wide / LETTER_MM),
    wordsAt: left ? { x: sheet.margin.left, y: planFoot + 6, width: wide } : null,
    plan: markup,
    pan,
    planScale: plan ? `, one to ${scale}` : "",
    planWords: plan
      ? spelled(
          `Each piece has its cloth’s colour as it reads from across the room.${plan.spread ? " Chairs stand around their table as is usual." : ""}`,
          language,
        )
      : "",
    cloths: room.scheme.roles.map((role, at) => {
      const swatch = data.swatches.get(role.cloth);
      const paper = data.records.cloths.get(role.cloth)?.fields.roll !== undefined;
      return {
        name: shortened(role.name, LONG_NAME.letters),
        role: roleWord(role.role, swatch?.kind ?? null, paper),
        where: whereWords(role.cloth, room, language),
        square: square(
          swatch?.average ?? "#dddddd",
          cut(data, role.cloth, book),
          `${prefix}-q${at}`,
        ),
      };
    }),
    colours: room.scheme.carried.map((c, at) => {
      return {
        name: capital(c.colour.name),
        hex: c.colour.hex,
        where: coloursWords(c),
        square: square(c.colour.hex, null, `${prefix}-k${at}`),
      };
    }),
    nameWidth,
    listX: sheet.width * 0.54,
    listWidth,
  };
}
