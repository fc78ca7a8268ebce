import type { Pen } from "./shape.ts";

/** How wide each pen is and how it breaks, in millimetres on paper. Weights after ISO 128, from memory; print design 8 and 10. */
interface PenStyle {
  readonly width: number;
  readonly dash: readonly number[] | null;
}

/** For elevations. The shortest dashes become dots, since lines end round. */
const ROOM: Readonly<Record<Pen, PenStyle>> = {
  cut: { width: 0.7, dash: null },
  outline: { width: 0.35, dash: null },
  edge: { width: 0.25, dash: null },
  dimension: { width: 0.18, dash: null },
  fold: { width: 0.13, dash: null },
  hidden: { width: 0.18, dash: [2, 1] },
  centre: { width: 0.18, dash: [6, 1.4, 1, 1.4] },
  seam: { width: 0.18, dash: [6, 1.2, 0.05, 1.2, 0.05, 1.2] },
  level: { width: 0.25, dash: [0.05, 1.2] },
};

/** For makers' sheets, which are copied: heavier, and nothing but hatching under 0.18. */
const WORKSHOP: Readonly<Record<Pen, PenStyle>> = {
  ...ROOM,
  outline: { width: 0.5, dash: null },
  edge: { width: 0.25, dash: null },
  fold: { width: 0.18, dash: null },
  hidden: { width: 0.25, dash: [2, 1] },
  centre: { width: 0.25, dash: [6, 1.4, 1, 1.4] },
  seam: { width: 0.3, dash: [6, 1.3, 0.05, 1.3, 0.05, 1.3] },
  level: { width: 0.35, dash: [0.05, 1.2] },
};

export type DrawingStyle = "cloth" | "workshop" | "grey";

/** Never pure black over cloth; pure black where it will be copied. */
export function inkOf(style: DrawingStyle): string {
  return style === "workshop" ? "#000" : "#23282e";
}

export function penWidth(pen: Pen, style: DrawingStyle): number {
  return (style === "workshop" ? WORKSHOP : ROOM)[pen].width;
}

/** Stroke attributes of a pen; `scale` undoes the drawing's own scale, so that a pen is as wide on every sheet. */
export function strokeOf(pen: Pen | null, style: DrawingStyle, scale: number): string {
  if (pen === null) return 'stroke="none"';
  const { width, dash } = (style === "workshop" ? WORKSHOP : ROOM)[pen];
  const size = (mm: number) => Number((mm / scale).toPrecision(5));
  const dashes = dash ? ` stroke-dasharray="${dash.map(size).join(" ")}"` : "";
  return `stroke="${inkOf(style)}" stroke-width="${size(width)}"${dashes}`;
}
