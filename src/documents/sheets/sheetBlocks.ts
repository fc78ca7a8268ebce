import { marked } from "../words/marks.ts";
import { checkRow, notForCutting, onNext, reasonsMore, SOME_ITEM } from "./blockWords.ts";
import type { ItemWords } from "./itemHeights.ts";
import { type ItemLayout, PAGE_HEIGHT, pageLayout, type SheetPaper, SLACK } from "./itemLayout.ts";
import type { SheetItem } from "./itemWords.ts";
import { BETWEEN, type Block, leavesOf, type Standing } from "./leaves.ts";
import { leastShared, sharedLayout } from "./sharedLayout.ts";
import { workshopDrawings } from "./workshopDrawings.ts";

/** What every item of a sheet bears at its head. */
export interface SheetHead {
  readonly where: string;
  readonly released: string;
}

/** An item with why nothing of it may be cut yet; no reason where it may. */
export interface OpenItem extends SheetItem {
  readonly reasons: readonly string[];
}

/** All words of an item with its head, at its place among the others. */
function wordsOf(
  { heading, estimate, words, reasons }: OpenItem,
  { where, released }: SheetHead,
  number: string,
  first: string | null,
): ItemWords {
  const state = notForCutting(reasons, first) || released;
  const frames = [state, estimate === "" ? "" : `ESTIMATE. ${estimate}`];
  return { ...words, head: [heading, where, number], frames: frames.filter((f) => f !== "") };
}

/** A block on a page: an item on its own page or on one that it shares, its second page, or a cloth's plan. */
interface ItemPlace extends Block {
  readonly at: number;
  readonly own: ItemLayout;
}
type Place<C> = ItemPlace | (Block & { readonly cloth: C });

/** A cloth's plan, at its least height and, with its list of cuts over the whole width, at its height where there is room. */
interface ClothPlace extends Block {
  readonly roomyMm: number;
  readonly listBeside: boolean;
}

/** An item that takes more of a page than this leaves no room for another. */
const MOST_SHARED = 0.6;

function numberWords(at: number, of: number): string {
  return `Item ${at} of ${of}`;
}

/** An item's own page, or its first and second; and the least that it takes of a page that it shares. */
function placesOf(
  sheetItem: OpenItem,
  at: number,
  head: SheetHead,
  alike: boolean,
  of: number,
  paper: SheetPaper,
): ItemPlace[] {
  // Its number is not known before it has a place; the last is the longest.
  const number = numberWords(of, of);
  const own = pageLayout(wordsOf(sheetItem, head, number, null), sheetItem.views, paper);
  const short = wordsOf(sheetItem, head, number, alike ? number : null);
  const least = leastShared(short, sheetItem.views, own, MOST_SHARED * PAGE_HEIGHT[paper]);
  const heightMm = least ?? own.heightMm;
  const first = { at, own, heightMm, alone: least === null };
  if (!own.overleaf) return [first];
  return [first, { ...first, heightMm: own.overleaf.heightMm, alone: false, second: true }];
}

/** What an item bears by its place: its number, and the mark over it. */
interface ItemHead extends Standing {
  readonly number: string;
  readonly notForCutting: string;
}

function itemModel(
  { item, heading, estimate }: SheetItem,
  { words, rows, wide, overleaf, ...layout }: ItemLayout,
  standing: ItemHead,
  prefix: string,
) {
  const { sheet, since, questions, cautions, rate, materials } = words;
  const more = workshopDrawings(overleaf?.rows ?? [], `${prefix}n`);
  return {
    ...standing,
    heading,
    estimate,
    since,
    kind: item.kind.kind,
    drawings: workshopDrawings(rows, prefix),
    wide: workshopDrawings(wide, `${prefix}w`),
    onNext: overleaf ? onNext(more.length, materials.length) : "",
    overleaf: overleaf ? { drawings: more } : null,
    shared: layout.shared,
    wordColumns: layout.wordColumns,
    checksAcross: layout.checksAcross,
    wordsBelow: layout.wordsBelow,
    groups: sheet.groups.map((g) => ({ heading: g.heading, lines: g.lines.map(marked) })),
    signs: sheet.signs.join(" "),
    checks: sheet.checks.map(checkRow),
    // Nobody cuts paint, or a picture that is hung.
    askBefore: ["paint", "object"].includes(item.kind.kind)
      ? "Ask before you begin"
      : "Ask before cutting",
    questions: questions.map(marked),
    cautions,
    rate,
    materials: materials.map((m) => ({
      text: marked(m.text),
      by: m.by === "studio" ? "supplied by the studio" : "from your stock",
    })),
  };
}

/** A block as the layout shows it: one of the three. */
function blockOf<I, C>(part: { item?: I; second?: I; cloth?: C & Standing }) {
  return { item: part.item ?? null, second: part.second ?? null, cloth: part.cloth ?? null };
}

/** A page's blocks, its plans with their lists over the whole width where it has room for that, and what it then has to spare, millimetres. */
function spreadOut<C extends ClothPlace>(blocks: readonly Place<C>[], pageMm: number) {
  let spare = blocks.reduce((left, p) => left - p.heightMm - BETWEEN, pageMm + BETWEEN);
  const leaf = blocks.map((place): Place<C> => {
    if (!("cloth" in place)) return place;
    const more = place.cloth.roomyMm - place.heightMm;
    if (more <= 0 || more > spare) return place;
    spare -= more;
    return { heightMm: place.cloth.roomyMm, cloth: { ...place.cloth, listBeside: false } };
  });
  return { leaf, spare };
}

/**
 * Items and cutting plans of a sheet on their pages, the items numbered as they follow each other. Small ones share a page where two or
 * more of them fit whole, their drawings as large as the page then lets them be; any other has its own.
 */
export function sheetBlocks<C extends ClothPlace>(
  items: readonly OpenItem[],
  cloths: readonly C[],
  head: SheetHead,
  paper: SheetPaper,
) {
  // Where the items have not all the same reasons, each says its own.
  const reasons = items[0]?.reasons ?? [];
  const alike = items.every((each) => each.reasons.join() === reasons.join());
  const pageMm = PAGE_HEIGHT[paper] - SLACK - (alike ? reasonsMore(reasons) : 0);
  const places: Place<C>[] = [
    ...items.flatMap((one, at) => placesOf(one, at, head, alike, items.length, paper)),
    ...cloths.map((cloth) => ({ heightMm: cloth.heightMm, cloth })),
  ];
  const leaves = leavesOf(places, pageMm);
  const order = leaves.flat().flatMap((p) => ("cloth" in p || p.second ? [] : [p.at]));
  const numberOf = (at: number) => order.indexOf(at) + 1;
  return leaves.flatMap((whole, leafAt) => {
    const { leaf, spare } = spreadOut(whole, pageMm);
    const growing = leaf.filter((p) => "at" in p && !p.second).length;
    const first = leaf[0] as Place<C>;
    return leaf.map((place, at) => {
      const standing = { begins: at === 0 && leafAt > 0, follows: at > 0 };
      if ("cloth" in place) return blockOf({ cloth: { ...place.cloth, ...standing } });
      const one = items[place.at] as OpenItem;
      const says = alike && at > 0 && "at" in first ? `Item ${numberOf(first.at)}` : null;
      const short = wordsOf(
        one,
        head,
        numberWords(items.length, items.length),
        alike ? (says ?? SOME_ITEM) : null,
      );
      const partMm = place.heightMm + spare / growing;
      const shared =
        leaf.length > 1 && !place.second ? sharedLayout(short, one.views, place.own, partMm) : null;
      const layout = shared ?? place.own;
      const itemHead = {
        ...standing,
        number: numberWords(numberOf(place.at), items.length),
        notForCutting: notForCutting(one.reasons, says),
      };
      const model = itemModel(one, layout, itemHead, `i${place.at}`);
      return blockOf(place.second ? { second: model } : { item: model });
    });
  });
}
