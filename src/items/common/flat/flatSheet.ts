import type { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { DrawingContext, SheetCheck, SheetGroup } from "../../itemDrawing.ts";
import { clothLines } from "../clothLines.ts";
import { hasMotifInMiddle } from "../join/joinPiece.ts";
import { blankUnit, filledGroups } from "../sheetWords.ts";
import type { FlatCover, FlatCoverFields } from "./flatCover.ts";
import type { FlatPanel } from "./flatPanel.ts";

/** The groups of a flat cover on its maker's sheet; `finished` and `more` are the kind's own. */
export function flatGroups(
  fields: FlatCoverFields & { readonly note?: string | undefined },
  cover: FlatCover,
  finished: readonly string[],
  more: readonly SheetGroup[],
  curve: "circle" | "oval" | null,
  context: DrawingContext,
): SheetGroup[] {
  const { language } = context;
  const us = language === "en-US";
  const p = (l: Length) => printLength(l, context.units);
  const { welt, face } = cover;
  const groups: SheetGroup[] = [
    { heading: "Cloth", lines: clothLines(fields.cloth, context) },
    { heading: "Finished", lines: finished },
    {
      heading: "Cut",
      lines: [
        ...[cover.face, cover.back, cover.wadding].flatMap((panel) =>
          panel ? cutLines(panel, context) : [],
        ),
        `${p(cover.turning)} ${cover.lined ? "seams" : "hems, both turnings"} are included on each ${cover.endTurning.equals(cover.turning) ? "edge" : "long edge"}${cover.headTurning.equals(cover.endTurning) ? "" : ` but the head, which has a hem of ${p(cover.headTurning)}, both turnings`}.`,
        ...(fields.quilted
          ? [
              `Joined, before quilting, ${printSize(cover.cut, context.units)}; what is over finished size and turnings is for what quilting takes up. Widths from join to join are before quilting.`,
            ]
          : []),
        ...(curve === "circle"
          ? ["Join first; fold in four and cut the circle from the joined piece."]
          : curve === "oval"
            ? [
                "Join first; lay it on the table, weighted, and mark the hem all round at the drop from the table’s edge. An oval drawn to the outer size alone would hang short at its shoulders.",
              ]
            : []),
      ],
    },
    {
      heading: "Match",
      lines: [
        ...(face?.parts
          ? [
              `${hasMotifInMiddle(face.parts) ? "One width" : "Whole width"} in the middle, strips at the sides; never a join down the middle.`,
            ]
          : []),
        ...(face?.parts && face.cloth.repeat && face.cloth.repeat.match !== "free"
          ? ["Pattern matched at every join."]
          : []),
        ...(face?.centred
          ? [
              face.parts
                ? hasMotifInMiddle(face.parts)
                  ? "Middle of a motif on the middle of what it covers: the width in the middle is cut to that."
                  : face.gap
                    ? "Middle of the whole width, the gap between two motifs, on the middle of what it covers."
                    : "Middle of the whole width, with its motif, on the middle of what it covers."
                : "Motif in the middle, its top to the head.",
            ]
          : face?.cloth.repeat
            ? ["Pattern as it falls, its top to the head."]
            : []),
      ],
    },
    {
      heading: "Back",
      lines: fields.back
        ? [
            fields.back === fields.cloth ? "The same cloth." : `${nameOf(fields.back, context)}.`,
            ...(fields.wadding ? [`${nameOf(fields.wadding, context)} between.`] : []),
            ...(fields.quilted
              ? ["Quilted through all layers: tack from the middle outwards."]
              : []),
          ]
        : [
            welt
              ? `One layer: the turnings of the ${us ? "welt" : "piping"} are neatened${cover.headTurning.equals(cover.endTurning) ? "" : ", the head is hemmed"}.`
              : "One layer, hemmed.",
          ],
    },
    {
      heading: "Edge",
      lines: [
        ...(welt
          ? [
              `${us ? "Welt" : "Piping"} of ${nameOf(welt.cloth, context)}, strip ${p(welt.strip)}, ${welt.cut === "bias" ? "on the bias" : "straight"}; ${p(welt.total)} in all.`,
            ]
          : []),
        ...(fields.trim ? [`${nameOf(fields.trim, context)}, ${p(cover.edge)} a piece.`] : []),
      ],
    },
    ...more,
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return filledGroups(groups);
}

function nameOf(id: string, context: DrawingContext): string {
  return context.cloth(id)?.name ?? id;
}

function cutLines(panel: FlatPanel, context: DrawingContext): string[] {
  const seen = new Map<string, { count: number; text: string }>();
  for (const cut of panel.cuts) {
    const text = `${cut.piece}, ${printSize([cut.width, cut.height], context.units)}`;
    const before = seen.get(text);
    seen.set(text, { count: cut.count + (before?.count ?? 0), text });
  }
  return [
    ...[...seen.values()].map(({ count, text }) => `${count} × ${text}.`),
    ...(panel.sideways ? ["Cloth run sideways for it: its width lies along the bolt."] : []),
  ];
}

/** Ticks at the foot of a flat cover's sheet. */
export function flatChecks(
  cover: FlatCover,
  finished: readonly [Length, Length],
  context: DrawingContext,
): SheetCheck[] {
  const blank = blankUnit(context.units);
  return [
    { text: "Cloth checked for flaws; length received", blank },
    ...(cover.face?.cloth.repeat ? [{ text: "Repeat measured", blank }] : []),
    ...(cover.face?.parts ? [{ text: "Joins matched and equal at both sides", blank: null }] : []),
    { text: `Finished size ${printSize(finished, context.units)}`, blank: null },
  ];
}

/** What the signs of its drawing mean. */
export function flatSigns(cover: FlatCover): string[] {
  return [
    "Dashed: edge as cut.",
    ...(cover.face?.parts ? ["Long line with two dots: join."] : []),
    ...(cover.face?.centred && !cover.face.gap ? ["Lozenge: middle of the motif."] : []),
    "Arrow: up the cloth.",
  ];
}
