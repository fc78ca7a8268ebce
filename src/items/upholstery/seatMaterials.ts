import type { Length } from "../../units/length.ts";
import { printLength, printSize, type UnitSystem } from "../../units/printLength.ts";
import { asNeeded, boughtAs } from "../common/boughtLength.ts";
import type { MaterialNeed } from "../itemKind.ts";
import type { CoverPiece } from "./coverPiece.ts";

/** One thing of a stated size, bought or cut from stock: bottom cloth, foam. */
export function sized(
  what: string,
  count: number,
  sizes: readonly Length[],
  units: UnitSystem,
  by: "studio" | "maker" = "maker",
): MaterialNeed {
  const words = `${what} ${printSize(sizes, units)}`;
  return boughtAs(words, `${count > 1 ? `${count} × ` : ""}${words}`, count, by);
}

const finishedOf = (pieces: readonly CoverPiece[], name: string) =>
  pieces.filter((p) => p.piece === name);

/**
 * What an upholsterer asks for with a seat that has a frame: bottom cloth the size of its footprint with an inch or two turned under
 * each way, platform lining under loose cushions, their foam and zips. Usual practice, no source; `turn` is what is turned under, both edges
 * together.
 */
export function seatMaterials(
  pieces: readonly CoverPiece[],
  footprint: readonly [Length, Length],
  count: number,
  turn: Length,
  units: UnitSystem,
): MaterialNeed[] {
  const out: MaterialNeed[] = [];
  const [width, depth] = footprint;
  out.push(sized("bottom cloth (dust cover)", count, [width.plus(turn), depth.plus(turn)], units));
  const boxing = finishedOf(pieces, "boxing")[0];
  for (const [top, depthOf, words] of [
    ["cushion-top", boxing?.finished[1], "seat cushion"],
    ["back-cushion-front", finishedOf(pieces, "back-boxing")[0]?.finished[1], "back cushion"],
  ] as const) {
    for (const cushion of finishedOf(pieces, top)) {
      const n = cushion.count * count;
      const [w, l] = cushion.finished;
      out.push(
        sized(`${words} filling`, n, depthOf ? [w, l, depthOf] : [w, l], units),
        cushionZips(words, w, n, units),
      );
    }
  }
  const loose = finishedOf(pieces, "cushion-top").length > 0;
  if (loose && finishedOf(pieces, "seat").length === 0) {
    const platform = finishedOf(pieces, "cushion-top").map((p) => p.finished[0].times(p.count));
    const wide = platform[0];
    const deep = finishedOf(pieces, "cushion-top")[0]?.finished[1];
    if (wide && deep)
      out.push(sized("platform lining", count, [wide.plus(turn), deep.plus(turn)], units));
  }
  out.push(asNeeded("webbing, wadding, calico, tacks as the frame needs"));
  return out;
}

/** Zips of `n` loose cushions, each as long as its cushion is wide and past its corners. */
function cushionZips(words: string, width: Length, n: number, units: UnitSystem): MaterialNeed {
  const zip = printLength(width, units);
  const many = n === 1 ? "" : "s";
  const text = `${n} zip${many} for the ${words}${many}, ${zip} and as far as they run past the corners`;
  return boughtAs(`zip ${zip}`, text, n);
}

/** What is not said of loose cushions and platform, as questions. */
export function seatQuestions(pieces: readonly CoverPiece[]): string[] {
  const has = (name: string) => pieces.some((p) => p.piece === name);
  if (pieces.length === 0) return [];
  return [
    ...(has("cushion-top") && !has("boxing")
      ? ["A cushion top is listed and no boxing: is the cushion made with a knife edge?"]
      : []),
    ...(has("cushion-top") && !has("cushion-bottom")
      ? ["No cushion bottom is listed: which cloth is under the seat cushion?"]
      : []),
    ...(has("cushion-top") && !has("seat")
      ? ["The platform under the seat cushion is not among the pieces: platform lining is taken."]
      : []),
    ...(has("back-cushion-front") && !has("back-cushion-back")
      ? ["No back of the back cushions is listed: which cloth?"]
      : []),
  ];
}
