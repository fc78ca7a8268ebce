import type { Made } from "../../items/itemKind.ts";
import { capital, within } from "../../units/capital.ts";
import { issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { fittingPath } from "../paths.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { makersRate } from "../sheets/itemWords.ts";
import { cautionsOf } from "../words/cautions.ts";
import { dateInWords } from "../words/dates.ts";
import { runningWords } from "../words/pageStyle.ts";
import type { Language } from "../words/phrases.ts";
import { isFitter } from "./fitter.ts";
import { fittingItems } from "./fittingItems.ts";
import { wallBlock } from "./wallBlock.ts";

/** How the room was measured; a fitter measures again what is not checked. */
function measuredWords({ record }: RoomData, language: string): string {
  const { measured } = record.fields;
  if (!measured) return "Not yet measured: measure before drilling.";
  const first = `Measured by ${measured.by}, ${dateInWords(measured.on, language)}`;
  return measured.checked
    ? `${first}; check-measured ${dateInWords(measured.checked, language)}.`
    : `${first}; not yet check-measured: measure before drilling.`;
}

/** Cautions of its making that hold for its fitting too. */
const FITTERS_TOO: ReadonlySet<string> = new Set(["cords", "way-out"]);

/** What is made, with the cautions of fitting it: all of it is fixed to a wall, and a wall's paint may be old. */
function forFitter(made: Made): Made {
  const own = made.cautions.filter((code) => FITTERS_TOO.has(code));
  return { ...made, cautions: [...own, "heavy-hanging", "lead-paint"] };
}

/** The sheet of one fitter for one room, wall by wall; null where nothing goes up. */
export function fittingPage(data: ProjectData, room: RoomData, fitter: string): Page | null {
  const { project, studio } = data;
  const card = studio.fields.makers?.[fitter];
  const items = fittingItems(data, room, fitter).map((one, at) => ({ ...one, number: at + 1 }));
  if (!card || items.length === 0) return null;
  const language = studio.fields.language as Language;
  const roomName = capital(room.record.fields.room);
  const paper = studio.fields.paper === "a3" ? "a4" : "letter";
  const walls = room.plan.walls ?? [];
  const pieces = [...new Set(items.flatMap((i) => i.piece ?? []))];
  const isNowhere = (i: (typeof items)[number]) =>
    i.piece === null && !walls.some(({ name }) => name === i.wall);
  const parts = [
    ...walls.map((on) => ({ on, its: items.filter((i) => i.wall === on.name) })),
    ...pieces.map((on) => ({ on, its: items.filter((i) => i.piece === on) })),
    { on: null, its: items.filter(isNowhere) },
  ].filter(({ its }) => its.length > 0);
  const title = `${card.name}, fitting: ${project.fields.project}, ${within(roomName)}`;
  const model = {
    kind: "fitting",
    style: runningWords(
      `${project.fields.project}, ${within(roomName)}`,
      `${card.name}, ${issueWords(data)}`,
      "",
    ),
    letter: `${paper}-page`,
    heading: `Fitting: ${within(roomName)}`,
    project: project.fields.project,
    fitting: project.fields.fitting
      ? `Fitting is planned for ${dateInWords(project.fields.fitting, language)}.`
      : "No day of fitting is named yet.",
    measured: measuredWords(room, language),
    left: "All places count from a wall's left end as one faces it from inside; heights from the finished floor. Of what hangs, the drawing shows the closed or lowered state, dashed.",
    rate: makersRate(data, fitter, "fitting"),
    walls: parts.map(({ on, its }, at) =>
      wallBlock(data, room, on, its, { of: items.length, fitter, at }),
    ),
    cautions: cautionsOf(
      items.map(({ item }) => ({ ...item, made: forFitter(item.made) })),
      language,
      "maker",
    ),
    studio: {
      name: studio.fields.studio,
      phone: studio.fields.phone ?? "",
      email: studio.fields.email ?? "",
    },
    ways: [],
  };
  return {
    reader: "maker",
    project: project.id,
    room: `${project.id}/${room.record.id}`,
    path: fittingPath(fitter, project.id, room.record.id),
    title,
    language,
    paper,
    pdf: true,
    model,
    pictures: [],
  };
}

/** Every fitter's sheets of a project, room by room; none where no maker of the studio fits. */
export function fittingPages(data: ProjectData): Page[] {
  const fitters = Object.keys(data.studio.fields.makers ?? {}).filter((m) => isFitter(data, m));
  return fitters
    .sort()
    .flatMap((fitter) => data.rooms.flatMap((room) => fittingPage(data, room, fitter) ?? []));
}
