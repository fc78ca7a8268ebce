import type { Length } from "../../units/length.ts";
import { printCloth, printLength, printSize } from "../../units/printLength.ts";
import type { ItemContext, ItemCut, WorkingLine } from "../itemKind.ts";
import { type WeltReserve, weltReserve } from "../welt.ts";
import type { ArmchairFields } from "./schema.ts";

export interface CoverWelt {
  readonly cloth: string;
  /** Of one chair. */
  readonly each: Length;
  readonly length: Length;
  readonly strip: Length;
  readonly reserve: WeltReserve;
  /** False where the usual length was taken. */
  readonly measured: boolean;
}

/** The welt of all the chairs, on the bias; null where none is asked for. */
export function coverWelt(fields: ArmchairFields, context: ItemContext): CoverWelt | null {
  if (!fields.welt) return null;
  const each = fields["welt-length"] ?? context.length("welt-length");
  const length = each.times(fields.count ?? 1);
  const strip = context.length("welt-strip");
  const reserve = weltReserve({
    length,
    strip,
    cut: "bias",
    biasExtra: context.ratio("bias-extra"),
    joinTurning: context.length("join-turning"),
    usableWidth: context.cloth(fields.welt)?.usableWidth ?? null,
    units: context.units,
  });
  return {
    cloth: fields.welt,
    each,
    length,
    strip,
    reserve,
    measured: fields["welt-length"] !== undefined,
  };
}

export function weltCut(welt: CoverWelt, context: ItemContext): ItemCut {
  return {
    piece: "welt, on the bias",
    surface: "welt",
    cloth: welt.cloth,
    width: welt.reserve.width,
    height: welt.reserve.height,
    count: 1,
    mayTurn: !(context.cloth(welt.cloth)?.nap ?? false),
    across: { how: "free" },
    along: { how: "free" },
    instead: welt.reserve.instead,
    because: `${printCloth(welt.length, context.units)} of ${printLength(welt.strip, context.units)} strip`,
  };
}

export function weltWorking(welt: CoverWelt, context: ItemContext): WorkingLine {
  const { units } = context;
  return {
    what: "Welt",
    sum: `root of ${printCloth(welt.length, units)} × ${printLength(welt.strip, units)} strip, and a share more`,
    result: printSize([welt.reserve.width, welt.reserve.height], units),
    rounded: units === "inches" ? "up to the whole inch" : "up to the whole centimetre",
  };
}
