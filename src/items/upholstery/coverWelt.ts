import type { Length } from "../../units/length.ts";
import { printCloth, printLength, printSize } from "../../units/printLength.ts";
import { enlargedWords, type WeltReserve, weltPiece, weltReserve } from "../common/welt/welt.ts";
import type { ItemContext, ItemCut, WorkingLine } from "../itemKind.ts";
import type { CoverJob } from "./job.ts";

export interface CoverWelt {
  readonly cloth: string;
  readonly cut: "bias" | "straight";
  /** Of one. */
  readonly each: Length;
  readonly length: Length;
  readonly strip: Length;
  readonly reserve: WeltReserve;
  /** False where the usual length was taken. */
  readonly measured: boolean;
}

/** The welt of the whole job, as a bias square or straight strips; null where none is asked for. */
export function coverWelt(job: CoverJob, context: ItemContext): CoverWelt | null {
  if (!job.welt) return null;
  const each = job.weltLength ?? context.length("welt-length");
  const length = each.times(job.count);
  const strip = context.length("welt-strip");
  const reserve = weltReserve({
    length,
    strip,
    cut: job.weltCut,
    biasExtra: context.ratio("bias-extra"),
    biasTurning: context.length("bias-turning"),
    joinTurning: context.length("join-turning"),
    usableWidth: context.cloth(job.welt)?.usableWidth ?? null,
    units: context.units,
  });
  return {
    cloth: job.welt,
    cut: job.weltCut,
    each,
    length,
    strip,
    reserve,
    measured: job.weltLength !== null,
  };
}

/** Cloth set aside for the welt of the whole job as one piece to cut. */
export function weltCut(welt: CoverWelt, context: ItemContext): ItemCut {
  const { units } = context;
  const because = `${printCloth(welt.length, units)} of ${printLength(welt.strip, units)} strip`;
  return weltPiece(welt, context, because);
}

export function weltWorking(welt: CoverWelt, context: ItemContext): WorkingLine {
  const { units } = context;
  return {
    what: "Welt",
    sum:
      welt.cut === "bias"
        ? `root of ${printCloth(welt.length, units)} × ${printLength(welt.strip, units)} strip, and ${context.ratio("bias-extra").sub(1).mul(100).toString()} % more area${enlargedWords(welt.reserve)}`
        : `${printCloth(welt.length, units)} in ${welt.reserve.strips} strips of ${printLength(welt.strip, units)}, with their joins`,
    result: printSize([welt.reserve.width, welt.reserve.height], units),
    rounded: units === "inches" ? "up to the whole inch" : "up to the whole centimetre",
  };
}
