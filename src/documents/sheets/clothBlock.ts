import { repeatWords } from "../../items/common/repeatWords.ts";
import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import { lotOfLength, lotWords } from "../../quantities/text/lotWords.ts";
import { lossWords, toMeasure } from "../../quantities/text/washWords.ts";
import { capital, within } from "../../units/capital.ts";
import type { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { ProjectData } from "../projectData.ts";
import { dateInWords } from "../words/dates.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { type Markup, marked } from "../words/marks.ts";
import type { Language } from "../words/phrases.ts";
import { boltHeight, boltRows, boltScale, boltWidth, offCutWords } from "./bolt.ts";
import { printedThrough } from "./boltMotifs.ts";
import {
  type ClothRow,
  clothHeight,
  inOneLine,
  listColumns,
  widthBeside,
  wrapped,
} from "./clothHeight.ts";
import { cutGroups, cutNumbers, placeWords } from "./cutNumbers.ts";
import { planProjectMm, TEXT_WIDTH } from "./itemHeights.ts";
import { openReasons } from "./openReasons.ts";
import { countedWords, spokenPieces } from "./spokenPieces.ts";

function cutRows(
  cloth: ClothQuantity,
  units: ProjectData["studio"]["fields"]["units"],
  several: boolean,
  data: ProjectData,
) {
  return cutGroups(cloth).map((cut) => {
    const first = cut.pieces[0] as (typeof cut.pieces)[number];
    const [w, h] = first.turned ? [first.height, first.width] : [first.width, first.height];
    const room =
      data.rooms.find((r) => r.record.id === first.room)?.record.fields.room ?? first.room;
    const item = data.rooms
      .find((r) => r.record.id === first.room)
      ?.items.find((i) => i.record.id === first.item);
    return {
      number: cut.numbers,
      piece: `${cut.words}${several ? `; ${within(room)}` : ""}`,
      item: item ? item.record.title : first.item,
      count: cut.pieces.length,
      size: marked(`${printLength(w, units)} × ${printLength(h, units)}`),
      at: marked(
        `${lengthName(cloth, first.length)}${cut.pieces.map((p) => printLength(p.y, units)).join(", ")}`,
      ),
      left: marked(placeWords(cut.pieces.map((p) => printLength(p.x, units)))),
      because: marked(first.because),
    };
  });
}

/** `length 2, lot B: ` before distances that run from the start of one length of several. */
function lengthName(cloth: ClothQuantity, length: number): string {
  if (cloth.plan.lengths.length < 2) return "";
  const lot = lotOfLength(cloth, length);
  return `length ${length + 1}${lot === null ? "" : `, lot ${lot}`}: `;
}

/** Where in the pattern cutting begins; silent where nothing lies in register or any point serves as well. */
function startWords(cloth: ClothQuantity, units: UnitSystem): string {
  const { levels, pieces, start, starts, lengths } = cloth.plan;
  if (!pieces.some((p) => p.register?.y)) return "";
  const centred = pieces.some((p) => p.register?.x);
  if (!centred && levels.length > 0 && levels.every((l) => l.motifAboveFoot === null))
    return "The pieces are level with each other; any point of the pattern serves as a beginning.";
  const words = (each: Length) =>
    each.isZero() ? "at a motif’s middle" : `${printLength(each, units)} above a motif’s middle`;
  const used = starts.flatMap((each, i) =>
    lengths[i]?.isZero() ? [] : [{ start: each, name: `length ${i + 1}` }],
  );
  if (used.every((each) => each.start.equals(start))) return `Begin cutting ${words(start)}.`;
  return `Begin ${used.map((each) => `${each.name}: ${words(each.start)}`).join("; ")}.`;
}

/** Who released the plan and when; empty before that. */
export function releasedWords({ plan }: ClothQuantity, language: Language): string {
  if (!plan.released) return "";
  return `Released to cut by ${plan.released.by}, ${dateInWords(plan.released.on, language)}.`;
}

/** What is to come, or that the plan is made on what came. */
function suppliedWords({ lot, buy, spare, facts }: ClothQuantity, units: UnitSystem): string {
  if (lot !== null) return " of what came";
  const start = spare.isZero()
    ? ""
    : `, which holds ${printLength(spare, units)} for where the pattern begins`;
  const washed = facts.washing ? " before washing" : "";
  return `; ${buy.text} to be supplied${washed}${start}`;
}

/** What a cloth that is washed before it is cut needs first; empty of any other. */
function washedWords({ facts, washing, lot }: ClothQuantity): string {
  if (!facts.washing) return "";
  if (lot !== null && washing === null)
    return " Washed before it is cut: these are its measures since.";
  const measure = toMeasure(washing, ["again, which here is", "again, which here are"]);
  if (measure) return ` Washed before it is cut: measure its ${measure} what is expected.`;
  const measured = lot === null ? "" : " again";
  const asItComes = facts.washing.acrossUnsaid ? ", its width as it comes" : "";
  return ` Washed before it is cut: look it over for flaws, wash the whole length as it will be washed later, press it, and measure it${measured}; the sizes of the cloth here are what is expected then (less ${lossWords(facts.washing)}${asItComes}).`;
}

/** A plan this short on paper has its words beside it; one this much shorter its list of cuts too, where that takes less of the page. */
const SHORT_MM = 62;
const LIST_BESIDE_MM = 44;
/** What stands beside a plan on paper: the distances from the left selvedge, or the words over it. */
const BESIDE_PLAN = 20;
const MOST_OFF_CUTS = 8;

function offCutSentence(cuts: readonly string[]): string {
  if (cuts.length === 0) return "No off-cut is worth keeping.";
  const more = cuts.length > MOST_OFF_CUTS ? ` and ${cuts.length - MOST_OFF_CUTS} sizes more` : "";
  return `Off-cuts to keep, width × length: ${cuts.slice(0, MOST_OFF_CUTS).join(", ")}${more}.`;
}

/** Which room is cut from which lot, where no one lot holds everything. */
function lotsWords(data: ProjectData, { lots }: ClothQuantity): string {
  const roomOf = (id: string) => data.rooms.find((r) => r.record.id === id);
  const words = lotWords(
    lots,
    (room) => within(roomOf(room)?.record.fields.room ?? room),
    (room, item) => roomOf(room)?.items.find((i) => i.record.id === item)?.record.title ?? item,
  );
  return words === "" ? "" : `No one lot holds everything. ${capital(words)}.`;
}

/** The names and the distances of a cut as they are read, without the marks of their fractions. */
function plainRow({
  number,
  piece,
  item,
  size,
  at,
  left,
}: ReturnType<typeof cutRows>[number]): ClothRow {
  const plain = ({ html }: Markup) => html.replace(/<[^>]+>/g, "");
  return { number, piece, item, size: plain(size), at: plain(at), left: plain(left) };
}

/** What is said of the signs of a pattern on its plan. */
const SIGNS = {
  lozenges: " Lozenge: middle of the main motif.",
  lines: " Long and short dashes: middle of each repeat.",
  none: "",
} as const;

/** How the pattern comes again on the length: where nothing meets along it, across alone. */
function repeatOn({ plan, facts }: ClothQuantity, units: UnitSystem): string {
  const { pattern } = plan;
  if (!pattern) return "";
  if (facts.repeat?.match === "free" && pattern.horizontal)
    return `${repeatWords(facts.repeat, (length) => printLength(length, units))}.`;
  return `Repeat ${printLength(pattern.vertical, units)}${pattern.match === "half-drop" ? ", half-drop" : ""}.`;
}

/** One cloth's block on a sheet: its cutting plan, what is used of it, and the list of cuts. */
export function clothBlock(data: ProjectData, planned: ClothQuantity, prefix: string) {
  const cloth = spokenPieces(data, planned);
  const units = data.studio.fields.units;
  const rooms = new Set(cloth.plan.pieces.map((p) => p.room));
  const pattern = cloth.plan.pattern;
  const repeat = pattern
    ? repeatOn(cloth, units)
    : cloth.facts.repeatUnknown
      ? "Repeat not known."
      : "No repeat.";
  const rows = cutRows(cloth, units, rooms.size > 1, data);
  const lots = lotsWords(data, cloth);
  const lot = cloth.lot ?? "not yet received";
  const notForCutting = openReasons(cloth);
  const { language } = data.studio.fields;
  const released = releasedWords(cloth, language);
  const estimates = cloth.estimates.map((e) => inVocabulary(e.text, language));
  const parts = boltRows(cloth, cutNumbers(cloth), units, prefix);
  const long = boltWidth(cloth);
  const motifs = SIGNS[printedThrough(cloth, boltScale(cloth)) ?? "none"];
  const over = `${printLength(cloth.usableWidth, units)} between the selvedges. ${repeat}${washedWords(cloth)} Drawn one to ${boltScale(cloth)}, face up; arrows point up the ${pattern ? "pattern" : "cloth"}, hatching is waste.${motifs} Distances run from the start and from the left selvedge.${countedWords(planned)}`;
  const offCuts = offCutSentence(offCutWords(cloth, units));
  const used = `${printLength(cloth.plan.length, units)} used${cloth.plan.lengths.length > 1 ? ` in ${cloth.plan.lengths.length} lengths` : ""}${suppliedWords(cloth, units)}. No plan can need less than ${printLength(cloth.plan.lowerBound, units)}.`;
  const start = startWords(cloth, units);
  const plainRows = rows.map(plainRow);
  const placing = {
    short: long <= SHORT_MM,
    oneLine: inOneLine(plainRows),
    boltColumnMm: Math.max(40, Math.round(long) + BESIDE_PLAN),
  };
  const state = notForCutting.length > 0 ? `NOT FOR CUTTING. ${notForCutting.join(" ")}` : released;
  const plain = {
    ...placing,
    head: [
      `Cutting plan: ${cloth.facts.name}`,
      data.project.fields.project,
      `Lot: ${lot}`,
      `Plan ${cloth.plan.number}`,
    ] as [string, string, string, string],
    frames: state === "" ? [] : [state],
    over: `${lots} ${over}`,
    words: [`${used} ${start}`, offCuts],
    estimates: estimates.map((text) => `Estimate, not in the plan: ${text}`),
    rows: plainRows,
    planMm: boltHeight(cloth, units),
  };
  const [below, beside] = [false, true].map((listBeside) => clothHeight({ ...plain, listBeside }));
  const listBeside = long <= LIST_BESIDE_MM && (beside as number) <= (below as number);
  const heightMm = (listBeside ? beside : below) as number;
  // Names that wrap in narrow columns are worth a list over the whole width, where the page has room for it.
  const wraps = listBeside && wrapped(plainRows, widthBeside(placing.boltColumnMm));
  return {
    ...placing,
    listBeside,
    heightMm,
    projectMm: planProjectMm(plain.head),
    roomyMm: wraps ? (below as number) : heightMm,
    columnsMm: listColumns(plainRows, listBeside ? widthBeside(placing.boltColumnMm) : TEXT_WIDTH),
    name: cloth.facts.name,
    head: marked(over),
    parts,
    offCuts: marked(offCuts),
    used: marked(used),
    start: marked(start),
    rows,
    lot,
    lots,
    number: cloth.plan.number,
    notForCutting,
    released,
    estimates: estimates.map(marked),
  };
}
