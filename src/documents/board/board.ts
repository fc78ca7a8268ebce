import { capital } from "../../units/capital.ts";
import { spelled } from "../../units/spelling.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { type ElevationPage, elevationPages } from "../room/elevation.ts";
import { type WherePage, wherePageOf } from "../room/wherePage.ts";
import { dateInWords } from "../words/dates.ts";
import { boardWords } from "../words/prose.ts";
import { type GreyPage, greyPageOf } from "./greyPage.ts";
import { type Mix, mixOfRoom } from "./mix.ts";
import { listHead, shownAlike, shownAt } from "./oneOrMore.ts";
import { type ScalePage, scalePageOf } from "./scalePage.ts";
import { boardSheet } from "./sheetGeometry.ts";
import { CROWD_SHIFT_MM, type StripPart, shareStrip, stripLeaders } from "./strip.ts";

/** A room's board as its layouts show it: every place a number, every choice made. */
export interface Board {
  readonly paper: "a3" | "tabloid";
  readonly width: number;
  readonly height: number;
  readonly field: number;
  readonly left: number;
  readonly top: number;
  readonly title: string;
  readonly longTitle: boolean;
  /** The anchor's name, where there is room to say below the title that the scheme began with it. */
  readonly begunFrom: string | null;
  readonly underTitleY: number;
  readonly underTitleWidth: number;
  readonly mix: Mix;
  readonly strip: readonly StripPart[];
  readonly leads: readonly string[];
  readonly labelX: number;
  readonly crowdX: number;
  readonly textX: number;
  readonly textY: number;
  readonly textWidth: number;
  readonly project: string;
  readonly issue: string;
  readonly standfirst: string;
  readonly words: string;
  readonly further: string;
  readonly decisions: readonly string[];
  readonly decisionsY: number;
  /** What the pieces' scale is on paper, and on a screen that shows them as large as it can. */
  readonly smallScale: string;
  readonly screenScale: string;
  readonly small: string;
  readonly smallY: number;
  readonly armLength: string;
  readonly standX: number;
  readonly pageTitleY: number;
  readonly underPageTitleY: number;
  readonly whereY: number;
  readonly eachColour: string;
  readonly elevations: readonly ElevationPage[];
  /** Null while there is neither a plan nor a cloth or colour to tell the places of. */
  readonly where: WherePage | null;
  /** The word itself, in the studio's spelling. */
  readonly grey: string;
  readonly greyPage: GreyPage | null;
  readonly scale:
    | (ScalePage & {
        readonly noteX: number;
        readonly rows: readonly (ScalePage["rows"][number] & {
          captionY: number;
        })[];
      })
    | null;
}

/** Revision and date in words; what stands under the project's name on each board. */
export function issueWords(data: ProjectData): string {
  const date = dateInWords(data.dated, data.studio.fields.language);
  return data.project.fields.revision ? `Revision ${data.project.fields.revision}, ${date}` : date;
}

/** Builds the board of a room. `prefix` keeps ids apart where several boards stand in one document. */
export function boardOf(
  data: ProjectData,
  room: RoomData,
  book: PictureBook,
  prefix: string,
): Board {
  const paper = data.studio.fields.paper;
  const sheet = boardSheet(paper);
  const mix = mixOfRoom(data, room, sheet, book, prefix);
  const title = capital(room.record.fields.room);
  const space = mix.titleFoot - sheet.margin.top - 8;
  const width = mix.titleWidth;
  const { long: longTitle, heightMm } = mix.title;
  const words = boardWords(room.record.body, room.record.fields.standfirst ?? null);
  const anchor = room.record.fields.anchor
    ? data.objects.get(room.record.fields.anchor)
    : undefined;
  const strip = shareStrip(room.scheme, sheet.height, sheet.margin.top + 13, sheet.height - 10);
  const scale = scalePageOf(data, room, sheet, book, `${prefix}-scale`);
  // Names that run over the text's column lift what stands at its foot.
  const crowdTop = Math.min(
    ...strip.map((p) => (p.oneLine && p.y > sheet.height / 2 ? p.labelY : sheet.height)),
  );
  const capHeight = 2.2;
  const where = wherePageOf(data, room, sheet, book, `${prefix}-where`);
  return {
    paper,
    width: sheet.width,
    height: sheet.height,
    field: sheet.fieldWidth,
    left: sheet.margin.left,
    top: sheet.margin.top,
    title,
    longTitle,
    begunFrom: anchor && heightMm + 16 < space ? anchor.name : null,
    underTitleY: sheet.margin.top + heightMm + 4.5,
    underTitleWidth: Math.min(width, 70),
    mix,
    strip,
    leads: stripLeaders(strip, sheet.fieldWidth + sheet.stripWidth, sheet.labelX - 0.5),
    labelX: sheet.labelX,
    crowdX: sheet.labelX + CROWD_SHIFT_MM,
    textX: sheet.textX,
    textY: Math.max(sheet.margin.top + 20, mix.mainTop - capHeight),
    textWidth: sheet.textWidth,
    project: data.project.fields.project,
    issue: issueWords(data),
    standfirst: words.standfirst,
    words: words.onBoard,
    further: words.further,
    decisions: room.record.fields.decisions ?? [],
    decisionsY: mix.lowerTop,
    smallScale: shownAt(mix.captions.length, mix.scale),
    screenScale: shownAlike(mix.captions.length),
    small: spelled(
      `Paper and screens cannot show colour exactly: please judge from the sample, in the room, by day and by lamp.`,
      data.studio.fields.language,
    ),
    smallY: Math.min(sheet.height - sheet.margin.bottom, crowdTop - 4) - 12,
    armLength:
      data.studio.fields.units === "inches" ? "arm’s length, about 20 inches" : "half a metre",
    standX: sheet.width * 0.43,
    pageTitleY: sheet.margin.top - 3.4,
    underPageTitleY: sheet.margin.top + 16,
    whereY: sheet.margin.top + 20,
    eachColour: spelled(listHead("colour", where.colours.length), data.studio.fields.language),
    elevations: elevationPages(data, room, sheet, book, prefix),
    where: where.plan || where.cloths.length + where.colours.length > 0 ? where : null,
    grey: spelled("grey", data.studio.fields.language),
    greyPage: greyPageOf(data, room, sheet, book, mix, `${prefix}-grey`),
    scale: scale && {
      ...scale,
      noteX: scale.distanceX,
      rows: scale.rows.map((r) => ({ ...r, captionY: r.y + 15.4 })),
    },
  };
}
