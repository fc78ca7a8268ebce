import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import { finestStep } from "../../common/finestStep.ts";
import { hasMotif } from "../../common/join/centredMotif.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { PieceEntry } from "../job.ts";
import type { HeadboardFields } from "./schema.ts";

/** Round each edge and behind: the board's depth and the tack-off. */
export function wrapOf(fields: HeadboardFields, context: ItemContext): Length {
  const depth = (fields.size as [Length, Length, Length])[1];
  return depth.plus(context.length("tack-off"));
}

/** Along the seam that takes the welt: round the inner panel, or along head and sides of the board. */
export function weltRun(fields: HeadboardFields): Length {
  const [width, , height] = fields.size as [Length, Length, Length];
  const border = fields.border ?? Length.zero;
  return width.minus(border.times(2)).plus(height.minus(border).times(2));
}

/**
 * The pieces that follow from the size. Plain: the face and its wrap on all four edges; deep buttons take up a share more each way.
 * With a border: an inner panel sewn at head and sides, and strips that wrap the edge. Exact lengths.
 */
export function headboardEntries(fields: HeadboardFields, context: ItemContext): PieceEntry[] {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const [width, depth, height] = fields.size as [Length, Length, Length];
  const wrap = wrapOf(fields, context);
  const wrapWords = `${p(depth)} edge + ${p(wrap.minus(depth))} tack-off`;
  const centred = fields.centred ?? (hasMotif(context.cloth(fields.cloth)) && !fields.railroad);
  const deep = fields.buttoning === "deep" && fields.buttons !== undefined;
  const share = deep ? context.ratio("buttoning").sub(1) : null;
  const taken = (l: Length) => (share ? l.times(share).upTo(finestStep(units)) : Length.zero);
  const deepWords = share ? `${share.mul(100).toString()} % for the buttons each way + ` : "";
  const at = { keyPath: [], sizeKey: "size" } as const;
  const { border } = fields;
  if (!border)
    return [
      {
        piece: "face",
        size: [width, height],
        centred,
        added: {
          width: taken(width).plus(wrap.times(2)),
          length: taken(height).plus(wrap.times(2)),
          words: `${deepWords}2 × (${wrapWords}) each way`,
        },
        ...at,
      },
    ];
  // Only what is used is asked for, since a default that was used is listed.
  const seam = context.length("seam");
  const inner = [width.minus(border.times(2)), height.minus(border)] as const;
  const cloth = fields["border-cloth"] ? { cloth: fields["border-cloth"] } : {};
  return [
    {
      piece: "panel",
      size: inner,
      centred,
      added: {
        width: taken(inner[0]).plus(seam.times(2)),
        length: taken(inner[1]).plus(seam).plus(wrap),
        ends: { foot: wrap, head: seam },
        words: `${deepWords}2 × ${p(seam)} seams across, ${p(seam)} seam + ${wrapWords} along`,
      },
      ...at,
    },
    {
      piece: "border-top",
      // An arched strip is cut from the rectangle that holds its curve.
      size: [width, fields.shape === "arched" ? border.plus(fields.rise ?? Length.zero) : border],
      ...cloth,
      added: {
        width: wrap.times(2),
        length: seam.plus(wrap),
        words: `2 × (${wrapWords}) across, ${p(seam)} seam + ${wrapWords} along`,
      },
      ...at,
    },
    {
      piece: "border-side",
      size: [border, height],
      ...cloth,
      added: {
        width: seam.plus(wrap),
        length: wrap.times(2),
        words: `${p(seam)} seam + ${wrapWords} across, 2 × (${wrapWords}) along`,
      },
      ...at,
    },
  ];
}
